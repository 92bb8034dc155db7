// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with field notes is told with its row, and that of all rows at once. */
class FieldNotesTableTest {
    private static final String WORK =
            "site,practice,ore_per_cycle,cycles_per_day,working_days,mercury_per_cycle,squeezed_back_per_cycle,river_share,gold";
    private static final String SHED = "Shed,whole-ore,60 kg,6,250,120 g,90 g,1,1.2 kg/yr";

    @TempDir
    private Path folder;

    private ScenarioFolder with(String header, String row) {
        return new ScenarioFolder(folder)
                .file("sites.csv", "name,longitude,latitude\nShed,-20.1,-30.1\n")
                .plus("field-notes: {file: notes.csv}")
                .file("notes.csv", WORK + header + "\n" + SHED + row + "\n");
    }

    private static void told(List<String> problems, String words) {
        assertThat(problems).anySatisfy(problem -> assertThat(problem).contains("notes.csv:2", words));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ,retort_recovery            | ,120 %     | is 120 %; a retort cannot give back more than was in the amalgam; usual 75 to 95 %
            ,amalgam_mercury_share      | ,1.2       | 0 to 1
            ,table_test_mass            | ,15 kg     | table_test_mercury: is blank
            ,tank_volume                | ,2 m3      | tank_cycles: is blank
            ,heap_mass                  | ,900 t     | give exactly one of practice
            ,storage                    | ,basket    | "basket" is not known
            ,burned_among_homes         | ,perhaps   | give yes or no
            """)
    void cellThatCannotBeIsTold(String header, String cell, String words) {
        told(with(header, cell).problems(), words);
    }

    /** 15 kg of tailings cannot give 2 kg of mercury. */
    @Test
    void testThatYieldsAnEighthOfItsMassIsTold() {
        told(
                with(",table_test_mass,table_test_mercury", ",15 kg,2000 g").problems(),
                "more mercury would come out than was put in");
    }

    @Test
    void moreSqueezedBackThanPutInIsTold() {
        told(
                with("", "")
                        .file("notes.csv", WORK + "\n" + SHED.replace("90 g", "150 g") + "\n")
                        .problems(),
                "mercury");
    }

    @Test
    void amalgamOfHardlyAnyGoldIsTold() {
        told(
                with(",amalgam_per_cycle,amalgam_mercury_share", ",20 g,98 %")
                        .read()
                        .warnings(),
                "is 98 %; outside the usual range, and kept; usual 40 to 75 %");
    }

    @Test
    void problemsOfAllRowsAreToldAtOnce() {
        List<String> problems = with("", "")
                .file(
                        "notes.csv",
                        WORK
                                + "\nShad,whole-ore,60 kg,6,250,120 g,90 g,1,1.2 kg/yr\nShed,wholly,60 kg,6,250,120 g,90 g,1,1.2 kg/yr\n")
                .problems();
        assertThat(problems)
                .anySatisfy(p -> assertThat(p).contains("notes.csv:2", "\"Shad\" is no site of the table of sites"))
                .anySatisfy(p -> assertThat(p).contains("notes.csv:3", "\"wholly\" is not known"));
    }

    @Test
    void siteWithNotesAndReleaseIsTold() {
        assertThat(with("", "").file("sites.csv", ScenarioFolder.SITES).problems())
                .anySatisfy(p -> assertThat(p).contains("sites.csv:2", "field notes"));
    }
}
