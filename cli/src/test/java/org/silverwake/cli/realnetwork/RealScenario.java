// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;

/** A scenario of the test resources, filled into a temporary folder; the open data it names is read where it lies. */
final class RealScenario {
    private static final String YAML = "scenario.yaml";

    private final Path folder;
    private String yaml;

    private RealScenario(Path folder, String yaml) {
        this.folder = folder;
        this.yaml = yaml;
    }

    /** Skips the test where the open data is not here. */
    static RealScenario of(String name, Path folder) {
        Path open = open();
        try (Stream<Path> files = Files.list(
                Path.of(RealScenario.class.getResource("/realnetwork/" + name).toURI()))) {
            for (Path file : files.toList()) {
                Files.copy(file, folder.resolve(file.getFileName().toString()));
            }
            String text = Files.readString(folder.resolve(YAML), StandardCharsets.UTF_8);
            return new RealScenario(
                    folder, text.replace("@OPEN@", open.toString().replace('\\', '/')));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (URISyntaxException e) {
            throw new IllegalStateException(e);
        }
    }

    static Path open() {
        String shared = System.getProperty("silverwake.shared");
        Path open = Path.of(shared == null ? "." : shared, "data", "open")
                .toAbsolutePath()
                .normalize();
        assumeTrue(Files.isDirectory(open.resolve("networks")), "skipped: the open test data is not here");
        return open;
    }

    /** Replaces a piece of the scenario, which must be there. */
    RealScenario with(String old, String replacement) {
        if (!yaml.contains(old)) {
            throw new IllegalArgumentException("not in the scenario: " + old);
        }
        yaml = yaml.replace(old, replacement);
        return this;
    }

    /** Replaces the way of discharge, its gauges included. */
    RealScenario discharge(String lines) {
        yaml = yaml.replaceAll("(?m)^gauges:.*\\n", "").replaceAll("(?m)^discharge:.*$", lines);
        return this;
    }

    /** Adds lines at the end. */
    RealScenario plus(String lines) {
        yaml += lines + "\n";
        return this;
    }

    /** Writes a table beside the scenario. */
    RealScenario table(String name, List<String> lines) {
        write(name, String.join("\n", lines) + "\n");
        return this;
    }

    Path written() {
        write(YAML, yaml);
        return folder;
    }

    Outcome run() {
        return MainRun.run(written(), step -> {});
    }

    private void write(String name, String text) {
        try {
            Files.writeString(folder.resolve(name), text, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
