// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.compare;

import java.io.PrintWriter;
import java.util.Locale;
import org.silverwake.cli.report.Cautions;
import org.silverwake.cli.report.SummaryLines;
import org.silverwake.cli.report.Words;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.screening.Guideline;

/** What a comparison says at its end: people, intakes and river by answer, then mercury by path, scenario by scenario. */
public final class CompareSummary {
    private static final int DIGITS = 4;

    private CompareSummary() {}

    /** Prints. */
    public static void print(Comparison comparison, PrintWriter print) {
        for (Guideline guideline : comparison.guidelines()) {
            print.println(guideline.displayName() + " (" + guideline.printed() + ", "
                    + guideline.observable().words() + "):");
            for (NamedOutcome scenario : comparison.scenarios()) {
                print.println("  " + scenario.name() + ": "
                        + SummaryLines.of(scenario.outcome()).inOneLine(guideline));
            }
        }
        print.println("mercury of a year [kg], "
                + String.join(
                        " / ",
                        comparison.scenarios().stream().map(NamedOutcome::name).toList()) + ":");
        for (MercuryByPath.Row row : MercuryByPath.rows(comparison)) {
            String what =
                    row.what() + row.bound().map(b -> ", " + Words.bound(b)).orElse("");
            print.println(String.format(
                    Locale.ROOT,
                    "  %-34s %s",
                    what,
                    String.join(
                            " / ",
                            row.amounts().stream().map(CompareSummary::range).toList())));
        }
        comparison.notes().forEach(note -> print.println("note: " + note));
        comparison.scenarios().stream()
                .flatMap(s -> Cautions.of(s.outcome()).stream())
                .distinct()
                .forEach(caution -> print.println("caution: " + caution));
        print.flush();
    }

    private static String range(MercuryByPath.Amount amount) {
        String low = Numbers.shown(amount.low(), DIGITS);
        String high = Numbers.shown(amount.high(), DIGITS);
        return low.equals(high) ? low : low + " to " + high;
    }
}
