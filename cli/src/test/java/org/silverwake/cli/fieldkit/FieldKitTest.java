// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.laboratory.LabRow.Standing;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.scenario.Sample;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioReader;
import org.silverwake.cli.text.TableForm;

/** The demo's kit, and a hard one, read back from the PDF. */
class FieldKitTest {
    private static final Path LANTERN = DemoCopy.LANTERN;
    private static final String DEMO_SAMPLES =
            "samples:\n  file: lab.csv\n  columns: {date: sampled, type: kind}\n  words: {Hg-T: total mercury}\n";
    private static final int BOTTLES = 46; // 12 places, 2 duplicates each of 3 kinds, 2 blanks each of 2 kinds of water

    @TempDir
    private static Path folder;

    private static Path hard;

    /** The demo with a long name, signs that the font lacks, a line break and many flow states. */
    @BeforeAll
    static void copyDemo() throws IOException {
        hard = DemoCopy.into(folder.resolve("hard"));
        String longName = "Tallowby " + "am Ufer des sehr langen Flusses ".repeat(8) + "Ende";
        Path places = hard.resolve("places.csv");
        Files.writeString(
                places,
                Files.readString(places)
                        .replace("Tallowby", longName)
                        .replace("Emberfold", "Mỹ Đức Ørsted Łódź 河村")
                        .replace("market town", "x ".repeat(200)));
    }

    private static List<String> write(Path scenario, String to) {
        ScenarioInput input = ScenarioReader.read(scenario);
        return FieldKit.write(input, Basin.of(input), folder.resolve(to), FieldKit.EVERY);
    }

    private static String text(Path file, int first, int last) throws IOException {
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            PDFTextStripper stripper = new PDFTextStripper();
            stripper.setSortByPosition(true);
            stripper.setStartPage(first);
            stripper.setEndPage(last);
            return stripper.getText(document);
        }
    }

    @Test
    void theDemosKitIsCompleteAndTheSameEachTime() throws IOException {
        assertThat(write(LANTERN, "a").get(0)).contains("12 places, " + BOTTLES + " bottles");
        write(LANTERN, "b");
        for (String name : List.of("field-sheets.pdf", "labels.pdf", "results.csv")) {
            assertThat(folder.resolve("a").resolve(name))
                    .hasSameBinaryContentAs(folder.resolve("b").resolve(name));
        }
        Path sheets = folder.resolve("a").resolve("field-sheets.pdf");
        try (PDDocument document = Loader.loadPDF(sheets.toFile())) {
            assertThat(document.getNumberOfPages())
                    .as("plan, 12 places, 2 of custody")
                    .isEqualTo(15);
            for (PDPage page : document.getPages()) {
                for (var name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    assertThat(font.isEmbedded()).as(font.getName()).isTrue();
                }
            }
        }
        assertThat(text(sheets, 1, 1)).contains("Sampling plan", "common practice, no source", "36 6 4 46");
        String fourth = text(sheets, 5, 5);
        assertThat(fourth)
                .contains(
                        "Ljóskelda", "-30.05980", "-20.00450", "LANT-04-W-D", "Mercury vapor", "Never alone", "feature")
                .doesNotContainIgnoringCase("is safe");
        // the river point, 200 m from the village, stands beside the village's own position
        assertThat(fourth.replaceAll("\\s+", " "))
                .containsPattern("at latitude -30\\.05\\d{4}, longitude -20\\.00\\d{4}");
        String labels = text(folder.resolve("a").resolve("labels.pdf"), 1, 100);
        for (String line :
                Files.readAllLines(folder.resolve("a").resolve("results.csv")).subList(1, BOTTLES + 1)) {
            assertThat(labels).contains(line.substring(0, line.indexOf(',')));
            assertThat(text(sheets, 14, 15)).as("custody").contains(line.substring(0, line.indexOf(',')));
        }
    }

    @Test
    void longNamesAndOddLettersAreDrawn() throws IOException {
        write(hard, "hard-kit");
        Path sheets = folder.resolve("hard-kit").resolve("field-sheets.pdf");
        assertThat(text(sheets, 2, 2)).contains("Tallowby am Ufer", "…");
        assertThat(text(sheets, 3, 3)).contains("Mỹ Đức Ørsted Łódź □□");
        try (PDDocument document = Loader.loadPDF(sheets.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(15);
        }
    }

    /** Filled in, the table is read as samples: duplicates and blanks are known and left out, the rest is placed by its station. */
    @ParameterizedTest
    @EnumSource(TableForm.class)
    void resultsComeBack(TableForm form) throws IOException {
        Path scenario = DemoCopy.of(hard, folder.resolve("filled-" + form));
        Path yaml = scenario.resolve("scenario.yaml");
        String tables = "\noutputs:\n  tables: " + form.name().toLowerCase(Locale.ROOT) + "\n";
        Files.writeString(yaml, Files.readString(yaml).replace("\noutputs:\n", tables));
        String separator = form == TableForm.COMMA ? "," : ";";
        write(scenario, "back-" + form);
        StringBuilder filled = new StringBuilder();
        List<String> lines = Files.readAllLines(folder.resolve("back-" + form).resolve("results.csv"));
        Files.write(scenario.resolve("results.csv"), lines);
        String before = Files.readString(yaml);
        Files.writeString(yaml, before.replace(DEMO_SAMPLES, "samples: {file: results.csv}\n"));
        assertThat(ScenarioReader.read(scenario).samples())
                .as("not filled in yet")
                .filteredOn(s -> s.row().standing() == Standing.NO_RESULT)
                .hasSize(36);
        Files.writeString(yaml, before);
        assertThat(lines.get(0)).contains("longitude" + separator + "latitude");
        List<String> header = List.of(lines.get(0).split(separator));
        for (String line : lines) {
            String[] cells = line.split(separator, -1);
            if (filled.length() > 0) {
                cells[header.indexOf("date")] = "2026-11-20";
                cells[header.indexOf("value")] = form == TableForm.COMMA ? "0.5" : "0,5";
                boolean water = cells[header.indexOf("medium")].equals("surface water");
                cells[header.indexOf("unit")] = water ? "ng/L" : "mg/kg";
            }
            filled.append(String.join(separator, cells)).append('\n');
        }
        Files.writeString(scenario.resolve("results.csv"), filled);
        String text = Files.readString(yaml);
        assertThat(text).contains(DEMO_SAMPLES);
        Files.writeString(yaml, text.replace(DEMO_SAMPLES, "samples: {file: results.csv}\n"));
        List<Sample> samples = ScenarioReader.read(scenario).samples();
        assertThat(samples).hasSize(BOTTLES);
        assertThat(samples).filteredOn(Sample::isUsable).hasSize(36);
        assertThat(samples)
                .filteredOn(s -> s.row().standing() == Standing.LEFT_OUT)
                .hasSize(10);
    }

    @Test
    void withoutPlacesThereIsNothingToSample() throws IOException {
        Path scenario = Files.createDirectories(folder.resolve("empty"));
        for (String name : List.of(
                "rivers.gpkg",
                "dem.tif",
                "sites.csv",
                "abstractions.csv",
                "lab.csv",
                "forest.geojson",
                "lakes.geojson",
                "settlements.geojson",
                "roads.geojson")) {
            Files.copy(LANTERN.resolve(name), scenario.resolve(name));
        }
        String yaml = Files.readString(LANTERN.resolve("scenario.yaml"));
        assertThat(yaml).contains("places: {");
        Files.writeString(scenario.resolve("scenario.yaml"), yaml.replaceAll("(?m)^places: .*$", ""));
        assertThatThrownBy(() -> write(scenario, "none"))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("places: none");
        assertThat(folder.resolve("none")).doesNotExist();
    }

    @Test
    void whatIsThereIsLeftAlone() throws IOException {
        Path there = Files.createDirectories(folder.resolve("there"));
        Files.writeString(there.resolve("results.csv"), "mine");
        assertThatThrownBy(() -> write(LANTERN, "there"))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("results.csv: is there already");
        assertThat(there.resolve("results.csv")).hasContent("mine");
        assertThat(there.resolve("labels.pdf")).doesNotExist();
    }
}
