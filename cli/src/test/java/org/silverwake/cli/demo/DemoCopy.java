// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;

/** Copies of the demo, for tests that change it. */
public final class DemoCopy {
    /** Where the demo lies. */
    public static final Path LANTERN = Path.of("..", "scenarios", "lantern");

    private DemoCopy() {}

    /** Copies the demo's files into a folder, which is made; gives the folder. */
    public static Path into(Path folder) {
        return of(LANTERN, folder);
    }

    /** Copies a scenario's files into a folder, which is made; gives the folder. */
    public static Path of(Path scenario, Path folder) {
        try (Stream<Path> files = Files.list(scenario)) {
            Files.createDirectories(folder);
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return folder;
    }
}
