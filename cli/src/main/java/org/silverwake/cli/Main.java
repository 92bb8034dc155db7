// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.silverwake.cli.command.Silverwake;
import org.silverwake.geo.map.Fonts;
import picocli.CommandLine;

/** Starts the program. */
public final class Main {
    private static final int TOO_LARGE = 3;
    private static final long MEBIBYTE = 1L << 20;

    private Main() {}

    /** With the command line's arguments. */
    public static void main(String[] arguments) {
        Fonts.prepare(cache().resolve("fonts"));
        System.exit(execute(arguments));
    }

    private static int execute(String... arguments) {
        CommandLine line = Silverwake.commandLine();
        try {
            return line.execute(arguments);
        } catch (OutOfMemoryError e) {
            line.getErr()
                    .println("river layer: too large for the "
                            + Runtime.getRuntime().maxMemory() / MEBIBYTE
                            + " MiB that Java may use; set SILVERWAKE_JAVA_OPTIONS=-Xmx4g (or more) and run again");
            line.getErr().flush();
            return TOO_LARGE;
        }
    }

    /** The user's own cache, or where there is no home to keep one in, a folder among the temporary files. */
    private static Path cache() {
        String local = System.getenv("LOCALAPPDATA");
        String given = System.getenv("XDG_CACHE_HOME");
        Path base = local != null && !local.isBlank()
                ? Path.of(local)
                : given != null && !given.isBlank()
                        ? Path.of(given)
                        : Path.of(System.getProperty("user.home"), ".cache");
        Path own = base.resolve("silverwake");
        try {
            Files.createDirectories(own);
            if (Files.isWritable(own)) {
                return own;
            }
        } catch (IOException e) {
            return temporary();
        }
        return temporary();
    }

    private static Path temporary() {
        return Path.of(System.getProperty("java.io.tmpdir"), "silverwake-" + System.getProperty("user.name"));
    }
}
