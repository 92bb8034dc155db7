// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.silverwake.cli.command.Silverwake;

class NewCommandTest {
    private static final int USAGE = 2;

    @TempDir
    private Path temporary;

    private final StringWriter err = new StringWriter();

    private int run(String... arguments) {
        return Silverwake.commandLine()
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err))
                .execute(arguments);
    }

    @ParameterizedTest
    @ValueSource(strings = {"en", "es"})
    void unfilledWorkbookTellsWhatIsMissing(String language) {
        Path folder = temporary.resolve("new");
        assertThat(run("new", folder.toString(), "--language", language)).isZero();
        List<String> said = WrongWorkbooksTest.refused(folder);
        assertThat(said.stream().map(s -> s.replaceFirst(".*![A-Z]+\\d+ ", "")))
                .containsExactlyInAnyOrder(
                        "title: is missing; give it (title of the work, on every map)",
                        "prepared-by: is missing; give it (who made it, on every map)",
                        "date: is missing; give it (date of the work as YYYY-MM-DD, on every map)",
                        "rivers.file: is missing; give it (river layer)",
                        "discharge.method: is missing; give attribute or specific-discharge or gauges or headwaters",
                        "channel.method: is missing; give hydraulic-geometry or manning or attribute",
                        "flow-states: holds no flow state; give at least one, with share-of-year 1",
                        "solids.classes: holds no particle class; give at least one, with its diameter");
        assertThat(said.get(0)).startsWith(language.equals("en") ? "Project!" : "Proyecto!");
    }

    @Test
    void textForm() throws IOException {
        Path folder = temporary.resolve("text");
        assertThat(run("new", folder.toString(), "--yaml")).isZero();
        assertThat(folder.resolve("sites.csv"))
                .content()
                .startsWith("name,longitude,latitude,")
                .doesNotContain("STATE");
        assertThat(WrongWorkbooksTest.refused(folder))
                .allSatisfy(line -> assertThat(line).contains(": has no value; give "));
        Path file = folder.resolve("scenario.yaml");
        Files.writeString(folder.resolve("r.gpkg"), "");
        Files.writeString(
                file,
                Files.readString(file)
                        .replaceFirst("title: ", "title: A")
                        .replaceFirst("prepared-by: ", "prepared-by: B")
                        .replaceFirst("date: ", "date: 2026-03-04")
                        .replaceFirst("  file: ", "  file: r.gpkg")
                        .replaceFirst("share-of-year: ?", "share-of-year: 1")
                        .replaceFirst("temperature: ", "temperature: 24 degC")
                        .replaceFirst("sediment: ", "sediment: 20 mg/L")
                        .replaceFirst("mercury: ", "mercury: 0.4 ng/L ")
                        .replaceFirst("    dry:  ", "    dry: 6 L/s/km2 ")
                        .replaceFirst("diameter: ", "diameter: 20 um"));
        assertThat(org.silverwake.cli.run.Scenarios.read(folder).sites()).isEmpty();
    }

    @Test
    void nothingIsWrittenOver() throws IOException {
        Path folder = temporary.resolve("old");
        Files.createDirectories(folder);
        Files.writeString(folder.resolve("scenario.yaml"), "title: A\n");
        assertThat(run("new", folder.toString())).isEqualTo(USAGE);
        assertThat(err.toString().strip())
                .isEqualTo(folder + ": holds scenario.yaml already; give another folder, or take that file away");
        assertThat(folder.resolve("scenario.xlsx")).doesNotExist();
    }

    @Test
    void unknownLanguage() {
        assertThat(run("new", temporary.resolve("x").toString(), "--language", "fr"))
                .isEqualTo(USAGE);
        assertThat(err.toString())
                .contains("there are no words in \"fr\" yet; give --language en or es")
                .hasLineCount(1);
        assertThat(temporary.resolve("x")).doesNotExist();
    }
}
