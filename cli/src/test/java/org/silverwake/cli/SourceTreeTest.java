// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Rules that class files do not show, over the sources of all modules. */
class SourceTreeTest {
    private static final List<String> MODULES = List.of("model", "geo", "cli");
    private static final int MOST_LINES = 500;
    private static final List<String> NAMES_THAT_SAY_NOTHING =
            List.of("util", "utils", "common", "helper", "helpers", "manager", "impl", "misc");

    @Test
    void everyPackageSaysWhatItIsFor() throws IOException {
        TreeSet<Path> packages = new TreeSet<>();
        for (Path file : sources("main")) {
            packages.add(file.getParent());
        }
        assertThat(packages)
                .allSatisfy(p -> assertThat(p.resolve("package-info.java")).exists());
    }

    @Test
    void noClassIsLongerThanFiveHundredLines() throws IOException {
        List<String> tooLong = new ArrayList<>();
        for (Path file : Stream.concat(sources("main").stream(), sources("test").stream())
                .toList()) {
            long lines;
            try (Stream<String> all = Files.lines(file)) {
                lines = all.count();
            }
            if (lines > MOST_LINES) {
                tooLong.add(file + " has " + lines + " lines");
            }
        }
        assertThat(tooLong).isEmpty();
    }

    @Test
    void packagesAreNamedByTheirJob() throws IOException {
        assertThat(sources("main"))
                .noneMatch(f -> NAMES_THAT_SAY_NOTHING.contains(
                        f.getParent().getFileName().toString()));
    }

    private static List<Path> sources(String kind) throws IOException {
        List<Path> files = new ArrayList<>();
        for (String module : MODULES) {
            try (Stream<Path> all = Files.walk(Path.of("..", module, "src", kind, "java"))) {
                all.filter(f -> f.toString().endsWith(".java")).sorted().forEach(files::add);
            }
        }
        assertThat(files).isNotEmpty();
        return files;
    }
}
