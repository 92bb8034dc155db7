// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.command.Silverwake;
import org.silverwake.cli.demo.DemoCopy;

/** The demo by both doors: the same scenario, and the same bytes of every table and layer. */
class BothDoorsTest {
    private static final Path LANTERN = Path.of("..", "scenarios", "lantern");

    @TempDir
    private Path folder;

    @Test
    void sameTablesAndLayers() throws IOException {
        Path workbook = workbook(folder.resolve("lantern"));
        SmallWorkbook.assertSame(LANTERN, workbook);
        Map<String, byte[]> expected = run(LANTERN, folder.resolve("text"));
        Map<String, byte[]> found = run(workbook, folder.resolve("book"));
        assertThat(found.keySet()).isEqualTo(expected.keySet());
        assertThat(expected).hasSizeGreaterThan(5);
        expected.forEach((name, bytes) -> assertThat(found.get(name)).as(name).isEqualTo(bytes));
        assertThat(Files.readString(folder.resolve("book/run.json")))
                .contains("\"file\" : \"scenario.xlsx\"")
                .doesNotContain("sites.csv");
    }

    @Test
    void sameTablesWithBedHistoryAndFish() throws IOException {
        Path text = DemoCopy.into(folder.resolve("text"));
        Files.writeString(
                text.resolve("scenario.yaml"),
                Files.readString(LANTERN.resolve("years.yaml"))
                        .replace("start: 1996", "start: 2014")
                        .replace("years: 80", "years: 3\n  order: [dry, wet, dry, flood]")
                        .replaceAll("    (before|rush|closed).*\n", "")
                        .replaceAll("use: \\[", "use: [USEPA-CN-acute, USEPA-FISH-MeHg, ")
                        .concat("\nfish: {range: 8 km, species: {lamp perch: 4}, dams: [L042]}\n")
                        .concat(
                                "cyanide: {free-share: 0.6, loss-rate: {value: 0.3 1/d, by-state: {flood: 0.1 1/d}}}\n"));
        Files.writeString(
                text.resolve("sites.csv"),
                Files.readString(text.resolve("sites.csv"))
                        .replace(",note", ",cyanide_concentration,note")
                        .replace("bank,", "bank,,")
                        .replace("bank,,leach-tank", "bank,120 mg/L,leach-tank"));
        Path workbook = workbook(text, folder.resolve("lantern"));
        Map<String, byte[]> expected = run(text, folder.resolve("out"));
        Map<String, byte[]> found = run(workbook, folder.resolve("book"));
        assertThat(expected)
                .containsKeys("tables/bed.csv", "tables/years.csv", "tables/recovery.csv", "tables/fish.csv");
        assertThat(found.keySet()).isEqualTo(expected.keySet());
        expected.forEach((name, bytes) -> assertThat(found.get(name)).as(name).isEqualTo(bytes));
        assertThat(new String(expected.get("tables/balance.csv"), StandardCharsets.UTF_8))
                .contains("lost,WAD cyanide");
    }

    @Test
    void sameTablesWithFurtherForms() throws IOException {
        Path text = DemoCopy.into(folder.resolve("text"));
        Files.writeString(
                text.resolve("scenario.yaml"),
                Files.readString(LANTERN.resolve("scenario.yaml")).replace("\noutputs:\n", """

                                mercury:
                                  forms: [methyl]
                                  oxidation-rate: 0.5 1/d
                                  demethylation-rate: {value: 0.1 1/d, by-state: {dry: 0.05 1/d}}
                                  droplets: {fine: {diameter: 5 um, share: 0.3}, coarse: {diameter: 80 um, share: 0.7}}
                                outputs:
                                  forms: [complex, methyl]
                                  form-media: [whole-water]
                                """));
        Path sites = text.resolve("sites.csv");
        String table = Files.readString(sites)
                .replaceAll("(name,.*)\n", "$1,share_droplets,share_complex\n")
                .replaceAll("(Sconce.*)\n", "$1,0.4,\n")
                .replaceAll("(Girandole.*)\n", "$1,,0.9\n");
        Files.writeString(sites, table.replaceAll("(?m)^(?!name,|Sconce|Girandole)(.+)$", "$1,,"));
        Path workbook = workbook(text, folder.resolve("lantern"));
        SmallWorkbook.assertSame(text, workbook);
        Map<String, byte[]> expected = run(text, folder.resolve("out"));
        Map<String, byte[]> found = run(workbook, folder.resolve("book"));
        assertThat(expected).containsKey("tables/forms.csv");
        assertThat(folder.resolve("book/maps/complex-whole-water-dry.png")).exists();
        assertThat(found.keySet()).isEqualTo(expected.keySet());
        expected.forEach((name, bytes) -> assertThat(found.get(name)).as(name).isEqualTo(bytes));
    }

    @Test
    void sameTablesByFieldNotes() throws IOException {
        Path text = DemoCopy.into(folder.resolve("text"));
        for (String file : new String[] {"sites-by-notes.csv", "field-notes.csv", "practices.csv"}) {
            Files.copy(LANTERN.resolve(file), text.resolve(file), StandardCopyOption.REPLACE_EXISTING);
        }
        Files.writeString(
                text.resolve("scenario.yaml"),
                Files.readString(LANTERN.resolve("contained.yaml"))
                        .replace("field-notes: {", "field-notes: {level: high, ")
                        .replace(
                                "in-force: [retorts, ponds]",
                                "in-force: [retorts, ponds at Upper Lamp]\n  year: 2028"));
        Path workbook = workbook(text, folder.resolve("lantern"));
        SmallWorkbook.assertSame(text, workbook);
        Map<String, byte[]> expected = run(text, folder.resolve("out"));
        Map<String, byte[]> found = run(workbook, folder.resolve("book"));
        assertThat(expected).containsKeys("tables/site-balance.csv", "tables/practices.csv");
        assertThat(found.keySet()).isEqualTo(expected.keySet());
        expected.forEach((name, bytes) -> assertThat(found.get(name)).as(name).isEqualTo(bytes));
    }

    private static Path workbook(Path into) throws IOException {
        return workbook(LANTERN, into);
    }

    private static Path workbook(Path from, Path into) throws IOException {
        Files.createDirectories(into);
        for (String file : new String[] {
            "rivers.gpkg",
            "dem.tif",
            "lab.csv",
            "forest.geojson",
            "lakes.geojson",
            "settlements.geojson",
            "roads.geojson"
        }) {
            Files.copy(from.resolve(file), into.resolve(file));
        }
        WorkbookWriter.write(into.resolve(WorkbookReader.FILE), TextDoor.contents(from), "en");
        return into;
    }

    private static Map<String, byte[]> run(Path scenario, Path out) throws IOException {
        StringWriter err = new StringWriter();
        int code = Silverwake.commandLine()
                .setOut(new PrintWriter(new StringWriter()))
                .setErr(new PrintWriter(err))
                .execute("run", scenario.toString(), "--out", out.toString());
        assertThat(code).as("%s", err).isZero();
        Map<String, byte[]> files = new TreeMap<>();
        for (String part : new String[] {"tables", "layers"}) {
            try (Stream<Path> all = Files.list(out.resolve(part))) {
                for (Path file : all.toList()) {
                    files.put(part + "/" + file.getFileName(), Files.readAllBytes(file));
                }
            }
        }
        return files;
    }

    @Test
    void whatHasNoPlaceIsNotDroppedUnsaid() {
        Path file = folder.resolve("other.xlsx");
        WorkbookContents contents =
                WorkbookContents.builder().put("rivers.colour", "brown").build();
        assertThatThrownBy(() -> WorkbookWriter.write(file, contents, "en"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("the workbook has no place for rivers.colour");
        assertThat(file).doesNotExist();
    }
}
