// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.cli.command.Silverwake;

/** Workbooks with one thing wrong: one clear line with sheet and cell, exit code 2, no stack trace. */
class WrongWorkbooksTest {
    private static final int SCENARIO = 2;

    @TempDir
    private Path folder;

    static Stream<Arguments> wrong() {
        return Stream.of(
                // units
                wrong(
                        "a number without its unit",
                        b -> b.blank("[Flow states|temperature_unit|6]"),
                        "[Flow states|temperature|6] flow-states.dry.temperature: 21 has no unit; give a temperature in one of K, degC, degF"),
                wrong(
                        "a unit of another dimension",
                        b -> b.text("[Flow states|suspended-sediment_unit|6]", "mg/kg"),
                        "[Flow states|suspended-sediment|6] flow-states.dry.suspended-sediment: mg/kg is a unit of content per dry mass, not of"
                                + " concentration; give one of kg/m3, g/L, g/m3, mg/L, ug/L, ng/L, pg/L, mg/m3"),
                wrong(
                        "an unknown unit in a table",
                        b -> b.text("[Sites|release_unit|6]", "kilos"),
                        "[Sites|release|6] release: kilos is not known as a unit of mass per time; give one of kg/s, g/s, mg/s, kg/h, g/h,"
                                + " t/h, kg/d, g/d, t/d, kg/yr, g/yr, t/yr"),
                wrong(
                        "a unit twice",
                        b -> b.text("[Sites|release|6]", "12 t/yr"),
                        "Sites!G6: \"12 t/yr\" holds a unit, and kg/yr stands beside it; keep one of them"),
                wrong(
                        "a unit without a value",
                        b -> b.blank("[Settings|rivers.snap-tolerance]"),
                        "[Settings|rivers.snap-tolerance] rivers.snap-tolerance: is blank while a unit is given; give the value, or clear the unit"),
                wrong(
                        "out of range",
                        b -> b.number("[Settings|channel.manning-n]", "35"),
                        "[Settings|channel.manning-n] channel.manning-n: 35 is not allowed; give 0.01 to 0.3"),
                // numbers
                wrong(
                        "a number that can be read in two ways",
                        b -> b.text("[Sites|release|6]", "1,234"),
                        "[Sites|release|6] release: \"1,234\" could be 1234 or 1.234; give decimals with a point and no thousands"
                                + " separators"),
                wrong(
                        "a point for thousands beside decimal commas",
                        b -> b.text("[Sites|longitude|6]", "-20,15").text("[Sites|release|6]", "1.234"),
                        "Sites!G6: \"1.234\" could be 1234 or 1,234; give decimals with a comma and no thousands separators"),
                wrong(
                        "a number that became a date",
                        b -> b.date("[Sites|release|6]", "46085"),
                        "Sites!G6: holds the date 2026-03-04, into which spreadsheet programs turn numbers such as 1.5; set the"
                                + " cell's format to number and type it again"),
                wrong(
                        "a share of a form above 1",
                        b -> b.number("[Sites|share_complex|6]", "1.5"),
                        "[Sites|share_complex|6] share_complex: 1.5 is not allowed; give 0 to 1"),
                wrong(
                        "an unknown form",
                        b -> b.text("[Settings|mercury.forms]", "cyanide"),
                        "[Settings|mercury.forms] mercury.forms[1]: \"cyanide\" is not known; give elemental or methyl or complex or droplets"),
                wrong(
                        "an unknown form to be drawn",
                        b -> b.text("[Project|outputs.forms]", "MeHg"),
                        "[Project|outputs.forms] outputs.forms[1]: \"MeHg\" is not known; give divalent or grain-bound or droplets or complex"
                                + " or elemental or methyl"),
                wrong(
                        "a word for a number",
                        b -> b.text("[Sites|release|6]", "about ten"),
                        "[Sites|release|6] release: \"about ten kg/yr\" is not a mass per time; give a number and one of kg/s, g/s, mg/s,"
                                + " kg/h, g/h, t/h, kg/d, g/d, t/d, kg/yr, g/yr, t/yr"),
                wrong(
                        "a negative release",
                        b -> b.number("[Sites|release|6]", "-1.0E-3"),
                        "[Sites|release|6] release: -0.001 kg/yr is not allowed; give 0 to 1000000 kg/yr"),
                // formulas
                wrong(
                        "a broken reference",
                        b -> b.formulaWithError("[Sites|release|6]", "Sheet9!A1", "#REF!"),
                        "Sites!G6: holds the error #REF!; mend the formula, or type the value"),
                wrong(
                        "a value that is not available",
                        b -> b.error("[Flow states|temperature|6]", "#N/A"),
                        "Flow states!D6: holds the error #N/A; mend the formula, or type the value"),
                wrong(
                        "an error for a unit",
                        b -> b.error("[Sites|release_unit|6]", "#NAME?"),
                        "Sites!H6: holds the error #NAME?; mend the formula, or type the value"),
                wrong(
                        "a formula that was never computed",
                        b -> b.formula("[Sites|release|6]", "6*2", ""),
                        "Sites!G6: holds a formula without its result; open the workbook in the spreadsheet program and save it"
                                + " there, or type the value"),
                // words
                wrong(
                        "an unknown choice",
                        b -> b.text("[Rivers|discharge.method]", "guess"),
                        "[Rivers|discharge.method] discharge.method: \"guess\" is not known; give attribute or specific-discharge or gauges or"
                                + " headwaters"),
                wrong(
                        "an unknown path",
                        b -> b.text("[Sites|path|6]", "air"),
                        "[Sites|path|6] path: \"air\" is not known; give slurry or leach-tank or seepage or erosion or runoff"),
                wrong(
                        "neither true nor false",
                        b -> b.text("[Flow states|flood|6]", "perhaps"),
                        "[Flow states|flood|6] flow-states.dry.flood: \"perhaps\" is not known; give true or false"),
                wrong(
                        "a date in another order",
                        b -> b.text("[Project|date]", "25/11/2026"),
                        "[Project|date] date: \"25/11/2026\" is not a date; give it as YYYY-MM-DD, such as 2026-03-04"),
                wrong(
                        "an unknown guideline, second in its cell",
                        b -> b.text("[Guidelines|guidelines.use]", "CCME-FW-iHg; CCME-FW-iHgg"),
                        "[Guidelines|guidelines.use] guidelines.use[2]: guideline CCME-FW-iHgg is not known (did you mean CCME-FW-iHg?); \"silverwake"
                                + " guidelines\" lists all of them"),
                wrong(
                        "a file that is not there",
                        b -> b.text("[Rivers|rivers.file]", "river.gpkg"),
                        "[Rivers|rivers.file] rivers.file: there is no file river.gpkg; give a path from the scenario's folder"),
                // what is missing, what is too much
                wrong(
                        "no title",
                        b -> b.blank("[Project|title]"),
                        "[Project|title] title: is missing; give it (title of the work, on every map)"),
                wrong(
                        "a state without a temperature",
                        b -> b.blank("[Flow states|temperature|7]").blank("[Flow states|temperature_unit|7]"),
                        "[Flow states|temperature|7] flow-states.wet.temperature: is missing; give 0 to 45 degC"),
                wrong(
                        "a state without a name",
                        b -> b.number("[Flow states|share-of-year|8]", "0"),
                        "[Flow states|name|8] flow-states: the name is blank; give each row a name of its own"),
                wrong(
                        "a name twice",
                        b -> b.text("[Sites|name|7]", "Shed"),
                        "[Sites|name|7] name: \"Shed\" is there twice; give each row its own name"),
                wrong(
                        "a state twice",
                        b -> b.text("[Flow states|name|7]", "dry"),
                        "[Flow states|name|7] flow-states.dry: is written twice; keep one"),
                wrong(
                        "two ways of release",
                        b -> b.number("[Sites|tailings|6]", "5").text("[Sites|tailings_unit|6]", "t/yr"),
                        "[Sites|release|6] release, tailings, effluent: several are given; give exactly one: release, or tailings with"
                                + " content, or effluent with concentration; or field notes"),
                wrong(
                        "a share for a third state of two",
                        b -> b.number("[Sites|year_share_#3|6]", "0.5"),
                        "[Sites|year_share_#3|6]: is for flow state 3, but there are 2; clear the cell, or add the missing one on its sheet"),
                wrong(
                        "an unknown key",
                        b -> b.text("More keys!A5", "rivers.snap-tolerence").text("More keys!C5", "3 m"),
                        "More keys!C5 rivers.snap-tolerence: is not a key; the nearest known one is snap-tolerance"),
                wrong(
                        "a value without a key",
                        b -> b.text("More keys!C5", "3 m"),
                        "More keys!C5: holds a value, but column A of its row names no key"),
                wrong(
                        "a key that stands on its own sheet too",
                        b -> b.text("More keys!A5", "title").text("More keys!C5", "Other"),
                        "More keys!C5 title: is written twice; keep one"),
                wrong(
                        "a river column without its name",
                        b -> b.blank("[River columns|column|9]"),
                        "[River columns|column|9] rivers.columns.drainage-area.column: is missing; give it (column of the river layer)"),
                // sheets
                wrong(
                        "merged rows",
                        b -> b.merge("Sites", "G6:G7"),
                        "Sites!G6:G7: is merged into one cell; unmerge it and write every row's own value"),
                wrong(
                        "a copied sheet",
                        b -> b.duplicate("Sites", "Sites (2)"),
                        "Sites (2)!A1: is a second sheet like \"Sites\"; delete one of the two"),
                wrong(
                        "a sheet whose row of names was deleted",
                        b -> b.blank("Sites!A3"),
                        "Sites!A1: the row of fixed names above the headings is gone; copy the sheet's rows into a new"
                                + " workbook"),
                wrong(
                        "a sheet that is gone",
                        b -> b.remove("Flow states"),
                        "scenario.xlsx flow-states: holds no flow state; give at least one, with share-of-year 1"),
                wrong(
                        "a renamed sheet is cited by its new name",
                        b -> b.blank("[Sites|release_unit|6]").rename("Sites", "Mis sitios"),
                        "[Mis sitios|release|6] release: 12 has no unit; give a mass per time in one of kg/s, g/s, mg/s, kg/h, g/h, t/h,"
                                + " kg/d, g/d, t/d, kg/yr, g/yr, t/yr"));
    }

    private static Arguments wrong(String name, UnaryOperator<RawWorkbook> change, String line) {
        return Arguments.of(name, change, line);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrong")
    void isRefusedInOneLine(String name, UnaryOperator<RawWorkbook> change, String line) {
        Path file = SmallWorkbook.write(folder);
        RawWorkbook book = RawWorkbook.copyOf(file);
        String expected = book.resolve(line);
        change.apply(book).write(file);
        assertThat(refused(folder)).as("all that is said of %s", name).contains(expected);
    }

    @Test
    void thereAreThirtyOrMore() {
        assertThat(wrong()).hasSizeGreaterThanOrEqualTo(30);
    }

    @Test
    void allProblemsInOneGoInTheOrderOfTheSheets() {
        Path file = SmallWorkbook.write(folder);
        RawWorkbook.copyOf(file)
                .blank("[Sites|release_unit|7]")
                .number("[Settings|channel.manning-n]", "35")
                .blank("[Project|title]")
                .blank("[Flow states|temperature_unit|6]")
                .text("[Sites|path|6]", "air")
                .write(file);
        assertThat(refused(folder).stream().map(s -> s.split("!")[0]))
                .containsExactly("Project", "Flow states", "Sites", "Sites", "Settings");
    }

    /** What the program says to {@code check}, which must refuse. */
    static List<String> refused(Path scenario) {
        StringWriter err = new StringWriter();
        int code = Silverwake.commandLine()
                .setErr(new PrintWriter(err))
                .setOut(new PrintWriter(new StringWriter()))
                .execute("check", scenario.toString());
        List<String> lines = err.toString().lines().toList();
        assertThat(code).as("%s", lines).isEqualTo(SCENARIO);
        assertThat(lines).noneMatch(line -> line.contains("Exception") || line.startsWith("\tat "));
        return lines;
    }
}
