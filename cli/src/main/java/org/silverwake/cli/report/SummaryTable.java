// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.ScreeningSummary.Line;

/**
 * People, intakes and river by answer: first drinking-water and river-water values together, then each value by itself, as it
 * asks and in each flow state alone. Then what is listed without being compared.
 */
final class SummaryTable {
    private static final String AS_ASKED = "as the guideline asks";
    private static final double KILOMETER = 1000;

    private final Outcome outcome;
    private final SummaryLines lines;
    private final CsvTableWriter csv;

    private SummaryTable(Outcome outcome, CsvTableWriter csv) {
        this.outcome = outcome;
        this.lines = SummaryLines.of(outcome);
        this.csv = csv;
    }

    static void write(Outcome outcome, Path file) {
        List<String> header = List.of(
                "guideline",
                "flow state",
                "answer",
                "people [-]",
                "drinking intakes [-]",
                "river [km]",
                "places without a number of people [-]");
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header, outcome.scenario().outputs().tables())) {
            new SummaryTable(outcome, csv).rows();
        }
    }

    private void rows() {
        for (SummaryLines.Group group : lines.groups()) {
            rows(group.title(), group.guidelines());
        }
        for (Guideline guideline : outcome.screening().compared()) {
            rows(guideline.displayName(), List.of(guideline));
        }
        for (Guideline listed : outcome.screening().listed()) {
            csv.text(listed.displayName()).text("").text(listed.scope().words()).endBlank();
        }
        for (String gap : outcome.gaps()) {
            csv.text(gap).text("").text("no national value").endBlank();
        }
    }

    private void rows(String name, List<Guideline> guidelines) {
        rows(name, AS_ASKED, guidelines, OptionalInt.empty());
        if (guidelines.stream().allMatch(g -> g.observable().averaging().isOneForAllStates())) {
            return; // the bed has one value for all states
        }
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            rows(name, outcome.scenario().states().get(s).name(), guidelines, OptionalInt.of(s));
        }
    }

    private void rows(String name, String asked, List<Guideline> guidelines, OptionalInt state) {
        boolean river = SummaryLines.isAlongRivers(guidelines);
        for (Line line : lines.summary().lines(guidelines, state)) {
            if (line.answer().isPresent() || SummaryLines.isAnything(line)) {
                csv.text(name)
                        .text(asked)
                        .text(SummaryLines.answer(line))
                        .number(line.people())
                        .number(line.intakes())
                        .number(river ? line.riverLength() / KILOMETER : Double.NaN)
                        .number(line.withoutNumber())
                        .end();
            }
        }
    }
}
