// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A small complete scenario in a temporary folder, to be changed by one thing at a time. */
final class ScenarioFolder {
    static final String YAML = """
            title: Test
            prepared-by: Somebody
            date: 2026-11-25
            rivers:
              file: rivers.gpkg
            flow-states:
              dry: {share-of-year: 0.6, temperature: 21 degC, suspended-sediment: 18 mg/L, lateral-filtered-mercury: 0.6 ng/L}
              wet: {share-of-year: 0.4, temperature: 24 degC, suspended-sediment: 120 mg/L, lateral-filtered-mercury: 0.8 ng/L}
            discharge:
              method: specific-discharge
              specific-discharge: {dry: 7 L/s/km2, wet: 38 L/s/km2}
            channel: {method: hydraulic-geometry}
            solids:
              classes:
                wash-load: {diameter: 5 um, background-share: 0.6, tailings-share: 0.3}
                fine sand: {diameter: 100 um, background-share: 0.4, tailings-share: 0.7}
            sites: {file: sites.csv}
            places: {file: places.csv}
            """;

    static final String SITES = """
            name,longitude,latitude,path,release
            Shed,-20.1,-30.1,slurry,12 kg/yr
            """;

    static final String PLACES = """
            name,use,people,people_source,longitude,latitude
            Wick,village;fishing,420,head count,-20.1,-30.2
            """;

    private final Path folder;
    private String yaml = YAML;

    ScenarioFolder(Path folder) {
        this.folder = folder;
        file("rivers.gpkg", "");
        file("sites.csv", SITES);
        file("places.csv", PLACES);
    }

    /** Replaces a piece of the YAML, which must be there. */
    ScenarioFolder with(String old, String replacement) {
        if (!yaml.contains(old)) {
            throw new IllegalArgumentException("not in the test's scenario: " + old);
        }
        yaml = yaml.replace(old, replacement);
        return this;
    }

    /** Adds lines at the end of the YAML. */
    ScenarioFolder plus(String lines) {
        yaml += lines + "\n";
        return this;
    }

    ScenarioFolder file(String name, String text) {
        return file(name, text, StandardCharsets.UTF_8);
    }

    ScenarioFolder file(String name, String text, Charset charset) {
        try {
            Files.write(folder.resolve(name), text.getBytes(charset));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** A sites table of one row. */
    ScenarioFolder site(String header, String row) {
        return file("sites.csv", "name,longitude,latitude,path," + header + "\nShed,-20.1,-30.1,slurry," + row + "\n");
    }

    ScenarioInput read() {
        file(ScenarioReader.FILE, yaml);
        return ScenarioReader.read(folder);
    }

    List<String> problems() {
        return catchThrowableOfType(ScenarioException.class, this::read).problems();
    }
}
