// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is wrong with a table of practices is told with its row. */
class PracticesSectionTest {
    @TempDir
    private Path folder;

    private ScenarioFolder with(String header, String row) {
        return new ScenarioFolder(folder)
                .plus("practices: {file: practices.csv}")
                .file("practices.csv", "name," + header + "\nretort," + row + "\n");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            sites,contained                                      | Shad,0.5           | "Shad" is neither a site nor a group
            retorts                                              | 0.5                | retort_recovery: is blank
            reprocessed_recovery                                 | 0.5                | reprocessed: is blank
            contained                                            | 1.5                | 0 to 1
            start_year                                           | 2027               | does nothing
            contained,cost_once                                  | 0.5,400            | life: is blank
            contained,cost_per_year,cost_per_year_low            | 0.5,40,60          | low 60, middle 40, high 40 are not in order
            mercury_free,drums_hold,drums_decay                  | 1,4 kg,2 yr        | start_year: is blank
            mercury_free,start_year,drums_hold                   | 1,2027,4 kg        | drums_decay: is blank
            """)
    void rowThatCannotBeIsTold(String header, String row, String words) {
        assertThat(with(header, row).problems())
                .anySatisfy(problem -> assertThat(problem).contains("practices.csv:2", words));
    }

    @Test
    void unknownNameInForceIsTold() {
        assertThat(with("contained", "0.5")
                        .with("{file: practices.csv}", "{file: practices.csv, in-force: [retorts]}")
                        .problems())
                .anySatisfy(problem -> assertThat(problem).contains("\"retorts\" is no practice of the table"));
    }

    @Test
    void practicesAndYearAreRead() {
        FieldNotesPlan plan = with("contained,start_year", "0.5,2027")
                .with("{file: practices.csv}", "{file: practices.csv, in-force: [retort], year: 2030}")
                .read()
                .fieldNotes();
        assertThat(plan.practicesInForce()).hasSize(1);
        assertThat(plan.year()).isEqualTo(2030);
        assertThat(plan.prices()).isEmpty();
    }
}
