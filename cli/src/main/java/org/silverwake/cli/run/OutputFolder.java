// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.silverwake.cli.scenario.ScenarioException;

/**
 * Where results go: they are written to a folder beside the target and moved into place when complete, so a run that fails
 * leaves the last good output alone.
 */
public final class OutputFolder {
    private static final String MARK = "run.json";
    private final Path target;
    private final Path work;

    private OutputFolder(Path target, Path work) {
        this.target = target;
        this.work = work;
    }

    /**
     * Begins.
     *
     * @throws ScenarioException if the target is a file, or a folder that holds something else than an earlier output
     */
    public static OutputFolder begin(Path target) {
        Path absolute = target.toAbsolutePath().normalize();
        try {
            if (Files.exists(absolute) && !isReplaceable(absolute)) {
                throw new ScenarioException(List.of(
                        "--out " + target + ": holds files that are no earlier output; give an empty or a new folder"));
            }
            Files.createDirectories(absolute.getParent());
            return new OutputFolder(
                    absolute, Files.createTempDirectory(absolute.getParent(), "." + absolute.getFileName() + "-"));
        } catch (IOException e) {
            throw new ScenarioException(
                    List.of("--out " + target + ": cannot be written (" + e.getMessage() + "); give another folder"));
        }
    }

    private static boolean isReplaceable(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> files = Files.list(folder)) {
            List<Path> found = files.toList();
            return found.isEmpty()
                    || Files.exists(folder.resolve(MARK))
                    || found.stream()
                            .allMatch(f -> String.valueOf(f.getFileName()).startsWith("check"));
        }
    }

    /** The folder to write into. */
    public Path path() {
        return work;
    }

    /** Moves everything into place, in the stead of an earlier output. */
    public void complete() {
        try {
            if (Files.exists(target)) {
                Path old = target.resolveSibling(work.getFileName() + "-old");
                Files.move(target, old, StandardCopyOption.ATOMIC_MOVE);
                Files.move(work, target, StandardCopyOption.ATOMIC_MOVE);
                delete(old);
            } else {
                Files.move(work, target, StandardCopyOption.ATOMIC_MOVE);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Throws away what was written, if it is still there. */
    public void discard() {
        if (Files.exists(work)) {
            try {
                delete(work);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(file);
            }
        }
    }
}
