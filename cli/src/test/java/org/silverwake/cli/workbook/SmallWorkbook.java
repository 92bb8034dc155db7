// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.silverwake.cli.run.Scenarios;
import org.silverwake.cli.scenario.ScenarioWriter;

/** A small complete scenario as a workbook in a temporary folder. */
final class SmallWorkbook {
    private SmallWorkbook() {}

    static WorkbookContents.Builder contents() {
        return WorkbookContents.builder()
                .put("title", "Test")
                .put("prepared-by", "Somebody")
                .put("date", "2026-11-25")
                .put("rivers.file", "rivers.gpkg")
                .put("rivers.columns.drainage-area.column", "area")
                .put("rivers.columns.drainage-area.unit", "km2")
                .put("discharge.method", "specific-discharge")
                .put("channel.method", "hydraulic-geometry")
                .put("channel.manning-n", "0.035")
                .put("rivers.snap-tolerance", "2 m")
                .put("flow-states.dry.share-of-year", "0.6")
                .put("flow-states.dry.temperature", "21 degC")
                .put("flow-states.dry.suspended-sediment", "18 mg/L")
                .put("flow-states.dry.lateral-filtered-mercury", "0.6 ng/L")
                .put("flow-states.wet.share-of-year", "0.4")
                .put("flow-states.wet.temperature", "24 degC")
                .put("flow-states.wet.suspended-sediment", "120 mg/L")
                .put("flow-states.wet.lateral-filtered-mercury", "0.8 ng/L")
                .put("discharge.specific-discharge.dry", "7 L/s/km2")
                .put("discharge.specific-discharge.wet", "38 L/s/km2")
                .put("solids.classes.silt.diameter", "20 um")
                .addRow("sites", site("Shed"))
                .addRow("sites", site("Mill"))
                .addRow(
                        "places",
                        Map.of(
                                "name",
                                "Wick",
                                "use",
                                "village",
                                "people",
                                "420",
                                "longitude",
                                "-20.1",
                                "latitude",
                                "-30.2"));
    }

    private static Map<String, String> site(String name) {
        return Map.of("name", name, "longitude", "-20.1", "latitude", "-30.1", "path", "slurry", "release", "12 kg/yr");
    }

    /** Written into the folder, with the river layer that it names beside it. */
    static Path write(Path folder) {
        return write(folder, contents().build(), "en");
    }

    static Path write(Path folder, WorkbookContents contents, String language) {
        try {
            Path file = folder.resolve(WorkbookReader.FILE);
            Files.deleteIfExists(file);
            WorkbookWriter.write(file, contents, language);
            Files.writeString(folder.resolve("rivers.gpkg"), "");
            return file;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Every value of the two scenarios, as the record of the run holds them. */
    static void assertSame(Path one, Path other) {
        assertThat(record(other)).isEqualTo(record(one));
    }

    private static String record(Path scenario) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            ScenarioWriter.write(Scenarios.read(scenario), json);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return text.toString();
    }
}
