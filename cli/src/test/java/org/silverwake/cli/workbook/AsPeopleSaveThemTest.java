// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.run.Scenarios;
import org.silverwake.cli.scenario.ScenarioInput;

/** Workbooks as people and their programs leave them: the same scenario, with a warning where one should look again. */
class AsPeopleSaveThemTest {
    private static final int MINUTES = 3;

    @TempDir
    private Path original;

    @TempDir
    private Path changed;

    private RawWorkbook book;

    @BeforeEach
    void write() {
        book = RawWorkbook.copyOf(SmallWorkbook.write(original));
    }

    private ScenarioInput same() {
        SmallWorkbook.write(changed);
        book.write(changed.resolve(WorkbookReader.FILE));
        SmallWorkbook.assertSame(original, changed);
        return Scenarios.read(changed);
    }

    @Test
    void asItIs() {
        same();
    }

    @Test
    void dateAsNumberWithAndWithoutItsFormat() {
        // 2026-11-25 is day 46351 counted from 1899-12-30, as spreadsheet programs count
        book.date("[Project|date]", "46351");
        same();
        book.number("[Project|date]", "46351");
        same();
    }

    @Test
    void decimalCommasAsText() {
        book.text("[Sites|longitude|6]", "-20,1")
                .text("[Sites|release|6]", "12,0")
                .text("[Sites|latitude|7]", "-30,1");
        same();
    }

    @Test
    void numbersAsTextAndWithExponents() {
        book.text("[Sites|release|6]", "\u00a012 ")
                .number("[Sites|release|7]", "1.2E1")
                .text("[Flow states|temperature|6]", "21");
        same();
    }

    /** 0.6 as some programs write it, with 17 digits. */
    @Test
    void seventeenDigits() {
        book.number("[Flow states|share-of-year|6]", "0.59999999999999998");
        same();
    }

    @Test
    void numberWithItsUnitInOneCell() {
        book.text("[Sites|release|6]", "12 kg/yr")
                .blank("[Sites|release_unit|6]")
                .text("[Sites|release|7]", "12 kg/yr");
        same();
    }

    @Test
    void formulasWithTheirResults() {
        book.formula("[Sites|release|6]", "6*2", "<v>12</v>")
                .formula("[Settings|channel.manning-n]", "0.07/2", "<v>0.035</v>");
        same();
    }

    @Test
    void blanksAtTheEndsOfWords() {
        book.text("[Sites|path|6]", " slurry\u00a0")
                .text("[Sites|release_unit|6]", "kg/yr\u202f")
                .text("[Project|title]", "Test  ");
        same();
    }

    @Test
    void trueAsTruthAndAsText() {
        book.truth("[Flow states|flood|6]", false).text("[Flow states|flood|7]", "FALSE");
        same();
    }

    @Test
    void tenThousandRowsWithoutContent() {
        book.emptyRows("Sites", 10_000).text("Sites!B9000", "  ");
        same();
    }

    @Test
    void renamedSheet() {
        book.rename("Sites", "Molinos & pozas");
        same();
    }

    @Test
    void hiddenRowsAndSheetsAreReadAndTold() {
        book.hideRow("Sites", 7).hide("Settings");
        assertThat(same().warnings())
                .contains("Sites!A7: is a hidden row; it was read", "Settings!A1: is a hidden sheet; it was read");
    }

    @Test
    void sheetsOfOnesOwnAreTold() {
        book.add("Pivot").text("Pivot!A1", "sums").add("Blank");
        assertThat(same().warnings())
                .contains("scenario.xlsx: sheet \"Pivot\" is not one of Silverwake's; it was not read")
                .noneMatch(w -> w.contains("Blank"));
    }

    @Test
    void markedRowsAreNotReadAndTold() {
        book.text("Sites!A8", "later").text("[Sites|name|8]", "Pit").text("[Sites|path|8]", "slurry");
        assertThat(same().warnings())
                .contains(
                        "Sites!A8: this row is not read, since column A holds \"later\"; clear that cell to have it read");
    }

    @Test
    void changedExampleIsTold() {
        book.text("[Sites|name|5]", "Pit");
        assertThat(same().warnings())
                .contains(
                        "Sites!A5: the example row was changed, but is not read; clear column A of it to have it read");
    }

    @Test
    void practicesAreRead() throws IOException {
        book.text("[Practices|name|6]", "retort")
                .number("[Practices|retorts|6]", "0.8")
                .number("[Practices|retort_recovery|6]", "0.9");
        book.write(changed.resolve(WorkbookReader.FILE));
        Files.writeString(changed.resolve("rivers.gpkg"), "");
        assertThat(Scenarios.read(changed).fieldNotes().practices())
                .singleElement()
                .satisfies(offered -> assertThat(offered.practice().name()).isEqualTo("retort"));
    }

    @Test
    void mergedHeadings() {
        book.merge("Sites", "B2:F2");
        same();
    }

    @Test
    void otherLanguage() {
        SmallWorkbook.write(changed, SmallWorkbook.contents().build(), "es");
        SmallWorkbook.assertSame(original, changed);
    }

    /** Saved again by a spreadsheet program, as its own kind and back. */
    @Test
    void savedByASpreadsheetProgram() throws Exception {
        Path again = convert(original.resolve(WorkbookReader.FILE), "xlsx", changed.resolve("1"));
        Files.writeString(again.resolveSibling("rivers.gpkg"), "");
        SmallWorkbook.assertSame(original, again.getParent());
        Path open = convert(again, "ods", changed.resolve("2"));
        Path back = convert(open, "xlsx", changed.resolve("3"));
        Files.writeString(back.resolveSibling("rivers.gpkg"), "");
        SmallWorkbook.assertSame(original, back.getParent());
        Path old = convert(again, "xls", changed.resolve("4"));
        assertThat(WrongWorkbooksTest.refused(old))
                .containsExactly(
                        "scenario.xls: is a workbook of the old kind (.xls); save it from the spreadsheet program as an"
                                + " Excel workbook (.xlsx)");
    }

    private Path convert(Path file, String kind, Path into) throws IOException, InterruptedException {
        boolean found = Stream.of(System.getenv("PATH").split(java.io.File.pathSeparator))
                .anyMatch(p -> Files.isExecutable(Path.of(p, "soffice")));
        assumeTrue(found, "no soffice on this machine: workbooks saved by a spreadsheet program are not tried");
        Files.createDirectories(into);
        Process process = new ProcessBuilder(List.of(
                        "soffice",
                        "-env:UserInstallation=" + changed.resolve("profile").toUri(),
                        "--headless",
                        "--convert-to",
                        kind,
                        "--outdir",
                        into.toString(),
                        file.toString()))
                .redirectErrorStream(true)
                .redirectOutput(into.resolve("log").toFile())
                .start();
        assertThat(process.waitFor(MINUTES, TimeUnit.MINUTES)).isTrue();
        return into.resolve("scenario." + kind);
    }
}
