// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli;

import java.nio.file.Path;
import org.silverwake.cli.command.Silverwake;
import org.silverwake.geo.map.Fonts;

/** Starts the program. */
public final class Main {
    private Main() {}

    /** With the command line's arguments. */
    public static void main(String[] arguments) {
        Fonts.prepare(cache().resolve("fonts"));
        System.exit(Silverwake.commandLine().execute(arguments));
    }

    private static Path cache() {
        String given = System.getenv("XDG_CACHE_HOME");
        Path home =
                given != null && !given.isBlank() ? Path.of(given) : Path.of(System.getProperty("user.home"), ".cache");
        return home.resolve("silverwake");
    }
}
