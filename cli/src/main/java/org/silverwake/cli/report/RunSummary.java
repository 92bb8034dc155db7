// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.silverwake.cli.run.BedNotes;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SteadyResult;

/** What a run prints at its end: people first, then the river, the budget, defects, warnings, where things are. */
public final class RunSummary {
    private static final double MILLIS = 1000;

    private RunSummary() {}

    /** Prints; wall time in milliseconds. */
    public static void print(Outcome outcome, Path target, long milliseconds, PrintWriter print) {
        print.println(outcome.scenario().project().title() + ": a screening, not a finding of safety");
        if (outcome.scenario().sites().isEmpty()) {
            print.println("no site is listed: what follows is background alone");
        }
        answers(outcome, print);
        for (String gap : outcome.gaps()) {
            print.println("  " + gap);
        }
        outcome.years().ifPresent(years -> recovery(outcome, years, print));
        budget(outcome, print);
        BedNotes.slowest(outcome.basin(), outcome.result()).ifPresent(line -> print.println("  " + line));
        new CyanideReport(outcome).lines().forEach(line -> print.println("  " + line));
        outcome.breaks().lines().forEach(line -> print.println("  " + line));
        SampleSummary.compared(outcome, print);
        BalanceTables.lines(outcome).forEach(line -> print.println("  " + line));
        FishTable.lines(outcome).forEach(line -> print.println("  " + line));
        Abstractions.lines(outcome).forEach(line -> print.println("  " + line));
        defects(outcome.basin().map().defects(), print);
        CorrectionsReport.print(outcome.basin(), outcome.scenario().corrections(), print);
        outcome.warnings().forEach(w -> print.println("warning: " + w));
        Cautions.of(outcome).forEach(c -> print.println("caution: " + c));
        print.printf(
                java.util.Locale.ROOT,
                "%d reaches, %d cells; cutting cells in two again changes loads by at most %s %%%n",
                outcome.basin().network().size(),
                outcome.result().cells().count(),
                Numbers.shown(100 * outcome.changeOnHalving().loads(), 2));
        outcome.changeOnHalving()
                .beds()
                .ifPresent(change -> print.println(
                        "cutting cells in two again changes beds by at most " + Numbers.shown(100 * change, 2) + " %"));
        outcome.years().ifPresent(years -> years(years, print));
        print.printf(java.util.Locale.ROOT, "written to %s in %.1f s%n", target, milliseconds / MILLIS);
        print.flush();
    }

    private static void recovery(Outcome outcome, YearsRun years, PrintWriter print) {
        RecoveryClasses classes = new RecoveryClasses(outcome, years);
        print.println("  " + Recoveries.supposed(outcome));
        for (Guideline guideline : classes.drawn(false)) {
            print.println("  How long from " + classes.now() + " until the high estimate is below "
                    + guideline.displayName() + " (" + guideline.printed() + ", "
                    + guideline.observable().words() + "):");
            classes.summary(classes.shades(guideline)).forEach(line -> print.println("    " + line));
        }
    }

    private static void years(YearsRun years, PrintWriter print) {
        print.println(String.format(
                java.util.Locale.ROOT,
                "through the years %d to %d: left over %.1e of what is there and enters, at worst; at most 1e-8 is allowed",
                years.firstYear(),
                years.lastYear(),
                years.result().worstClosure()));
        years.otherTogether()
                .ifPresent(change ->
                        print.println("flow states taken together in place of one after another change beds by at"
                                + " most " + Numbers.shown(100 * change, 2) + " %"));
    }

    /** People first: drinking-water values together, river-water values together, then each value by itself. */
    private static void answers(Outcome outcome, PrintWriter print) {
        SummaryLines lines = SummaryLines.of(outcome);
        lines.groups().forEach(group -> lines.paragraph(group).forEach(line -> print.println("  " + line)));
        lines.uncounted().forEach(line -> print.println("  " + line));
        SampleAgainst.lines(outcome).forEach(line -> print.println("  " + line));
        List<Guideline> notModelled = new ArrayList<>();
        for (Guideline guideline : outcome.screening().compared()) {
            String answers = lines.inOneLine(guideline);
            if (!outcome.screening().isModelled(guideline)) {
                notModelled.add(guideline);
            } else if (!answers.isEmpty()) {
                print.println("  " + guideline.displayName() + " (" + guideline.printed() + ", "
                        + guideline.observable().words() + "): " + answers);
            }
        }
        if (!notModelled.isEmpty()) {
            print.println("  not assessed anywhere, as the model does not carry what they are values of: "
                    + notModelled.stream().map(Guideline::displayName).collect(Collectors.joining(", ")));
        }
        outcome.screening()
                .listed()
                .forEach(g ->
                        print.println("  " + g.displayName() + ": " + g.scope().words()));
    }

    private static void budget(Outcome outcome, PrintWriter print) {
        SteadyResult result = outcome.result();
        print.println("  mercury over the year [kg], "
                + result.bounds().stream().map(Words::bound).collect(Collectors.joining(" / ")) + ":");
        for (Balance.Process process : Balance.Process.values()) {
            List<String> ends = new ArrayList<>();
            boolean any = false;
            for (Bound bound : result.bounds()) {
                double low = Double.POSITIVE_INFINITY;
                double high = 0;
                for (int v = 0; v < result.variants(); v++) {
                    double year = result.yearly(bound, v, process) * Quantity.SECONDS_PER_YEAR;
                    low = Math.min(low, year);
                    high = Math.max(high, year);
                }
                any |= high > 0;
                String lowText = Numbers.shown(low, 4);
                String highText = Numbers.shown(high, 4);
                ends.add(lowText.equals(highText) ? lowText : lowText + " to " + highText);
            }
            if (any) {
                print.printf(java.util.Locale.ROOT, "    %-12s %s%n", Words.process(process), String.join(" / ", ends));
            }
        }
        print.println(String.format(
                java.util.Locale.ROOT,
                "    left over    %.1e of what enters, at worst; at most 1e-9 is allowed",
                result.worstClosure()));
    }

    /** Prints how many defects of each kind there are. */
    public static void defects(List<Defect> defects, PrintWriter print) {
        Map<Defect.Kind, Integer> open = new EnumMap<>(Defect.Kind.class);
        Map<Defect.Kind, Integer> mended = new EnumMap<>(Defect.Kind.class);
        for (Defect defect : defects) {
            (defect.repaired() ? mended : open).merge(defect.kind(), 1, Integer::sum);
        }
        mended.forEach((kind, n) -> print.println("  repaired in the river layer: " + Words.defect(kind) + ": " + n));
        open.forEach((kind, n) -> print.println("  found in the river layer: " + Words.defect(kind) + ": " + n));
    }
}
