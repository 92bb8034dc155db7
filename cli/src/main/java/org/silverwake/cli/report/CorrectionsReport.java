// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import org.silverwake.cli.run.AppliedCorrection;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.scenario.Corrections;
import org.silverwake.cli.scenario.ScenarioInput.Position;
import org.silverwake.cli.text.Numbers;
import org.silverwake.cli.text.TableForm;

/** What became of the user's corrections, in lines and as a table. */
public final class CorrectionsReport {
    private CorrectionsReport() {}

    /** Prints how many there are, then a line for each; nothing where there is none. */
    public static void print(Basin basin, Corrections corrections, PrintWriter print) {
        int count = basin.corrections().size();
        if (count > 0) {
            print.println(
                    "  " + count + (count == 1 ? " correction" : " corrections") + " from " + corrections.file() + ":");
            basin.corrections().forEach(each -> print.println("    " + each.line()));
        }
    }

    /** Writes the table; none where there is no correction. */
    public static void write(Basin basin, Path file, TableForm form) {
        if (basin.corrections().isEmpty()) {
            return;
        }
        List<String> header = List.of(
                "row", "correction", "longitude [deg]", "latitude [deg]", "what became of it", "details", "note");
        try (CsvTableWriter csv = new CsvTableWriter(file, header, form)) {
            for (AppliedCorrection each : basin.corrections()) {
                csv.text(each.row().where())
                        .text(each.row().words())
                        .text(each.row()
                                .at()
                                .map(Position::x)
                                .map(Numbers::degrees)
                                .orElse(""))
                        .text(each.row()
                                .at()
                                .map(Position::y)
                                .map(Numbers::degrees)
                                .orElse(""))
                        .text(each.status())
                        .text(each.outcome().text())
                        .text(each.row().note())
                        .end();
            }
        }
    }
}
