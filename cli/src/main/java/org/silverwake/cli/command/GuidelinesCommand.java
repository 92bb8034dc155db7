// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.concurrent.Callable;
import java.util.function.Predicate;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.GuidelineLibrary;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.NoNationalValue;
import org.silverwake.model.table.CsvTable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** Lists guideline values: unit, what they protect, averaging, source, and whether the printed value was seen. */
@Command(
        name = "guidelines",
        mixinStandardHelpOptions = true,
        description = {
            "Lists guideline values with their sources. Superseded values are listed by --id alone.",
            "Example: silverwake guidelines --jurisdiction Peru --medium \"surface water\""
        })
public final class GuidelinesCommand implements Callable<Integer> {
    private static final String AIR = "air";
    private static final String INTAKE = "intake";

    @Spec
    private CommandSpec spec;

    @Option(
            names = "--jurisdiction",
            paramLabel = "NAME",
            description = "country or body, as \"Peru\", \"EU\", \"Canada (BC)\", \"international\"")
    private String jurisdiction;

    @Option(
            names = "--medium",
            paramLabel = "MEDIUM",
            description = "as \"surface water\", \"bed sediment\", \"fish\"; \"air\" and \"intake\" list limits that"
                    + " nothing is compared with")
    private String medium;

    @Option(names = "--id", paramLabel = "ID", description = "one or more ids, superseded values included")
    private List<String> ids = new ArrayList<>();

    /** Prints the list; 0, or an error of usage with the nearest known name. */
    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        if (isLimits()) {
            printLimits(AIR.equals(medium) ? GuidelineLibrary.airLimits() : GuidelineLibrary.intakeLimits(), out);
            out.flush();
            return 0;
        }
        GuidelineLibrary library = GuidelineLibrary.builtIn();
        try {
            print(library, out);
        } catch (IllegalArgumentException e) {
            throw new ParameterException(spec.commandLine(), e.getMessage(), e);
        }
        out.flush();
        return 0;
    }

    private boolean isLimits() {
        return AIR.equals(medium) || INTAKE.equals(medium);
    }

    private void print(GuidelineLibrary library, PrintWriter out) {
        Predicate<Medium> wanted = wantedMedium();
        List<Guideline> guidelines = new ArrayList<>();
        List<NoNationalValue> gaps = new ArrayList<>();
        if (!ids.isEmpty()) {
            ids.forEach(id -> guidelines.add(library.require(id)));
        } else if (jurisdiction != null) {
            GuidelineLibrary.Selection selection = library.forJurisdiction(jurisdiction);
            guidelines.addAll(selection.guidelines());
            gaps.addAll(selection.none());
        } else {
            library.all().stream()
                    .filter(g -> g.status() != Guideline.Status.SUPERSEDED)
                    .forEach(guidelines::add);
            gaps.addAll(library.noNationalValues());
        }
        guidelines.removeIf(g -> !wanted.test(g.observable().medium()));
        gaps.removeIf(g -> !wanted.test(g.medium()));
        guidelines.forEach(g -> print(g, out));
        gaps.forEach(g -> out.println(g.words() + (g.note().isEmpty() ? "" : "; " + g.note())));
        out.println(guidelines.size()
                + (guidelines.size() == 1 ? " value" : " values")
                + (gaps.isEmpty() ? "" : ", " + gaps.size() + " without a national value"));
    }

    private Predicate<Medium> wantedMedium() {
        if (medium == null) {
            return m -> true;
        }
        String word = medium.toLowerCase(Locale.ROOT);
        List<String> known = new ArrayList<>();
        for (Medium candidate : Medium.values()) {
            if (candidate.word().equals(word)) {
                return m -> m == candidate;
            }
            known.add(candidate.word());
        }
        throw new IllegalArgumentException("--medium: " + medium + " is not known; give one of "
                + String.join(", ", known) + ", " + AIR + ", " + INTAKE);
    }

    private static void print(Guideline g, PrintWriter out) {
        out.println(g.displayName() + ": " + g.printed() + ", " + g.observable().words());
        out.println("    protects: " + g.protects());
        out.println("    averaging: "
                + (g.averaging().isEmpty() || g.averaging().equals("-") ? "not stated" : g.averaging()) + "; here: "
                + g.observable().averaging().words() + "; " + g.scope().words());
        out.println("    source: " + g.source().words() + "; " + g.source().jurisdiction() + ", "
                + g.status().word() + "; checked: " + g.checked().word());
        if (!g.note().isEmpty()) {
            out.println("    note: " + g.note());
        }
    }

    private void printLimits(CsvTable table, PrintWriter out) {
        if (!ids.isEmpty() || jurisdiction != null) {
            throw new ParameterException(
                    spec.commandLine(), "--medium " + medium + " is listed whole; leave out --id and --jurisdiction");
        }
        for (CsvTable.Row row : table.rows()) {
            boolean seen = Guideline.Checked.SEEN.word().equals(row.value("checked"));
            out.println(row.value("id") + (seen ? "" : " (not checked in print)")
                    + ("superseded".equals(row.value("status")) ? " (superseded)" : "") + ": " + row.value("value")
                    + " "
                    + row.value("unit") + ", " + row.value("substance"));
            out.println("    protects: " + row.value("protects") + "; averaging: " + row.value("averaging"));
            out.println("    source: " + row.value("body") + ", " + row.value("document") + " (" + row.value("year")
                    + "); " + row.value("jurisdiction") + "; checked: " + row.value("checked"));
        }
        out.println(table.rows().size() + " values; nothing the program computes is compared with them");
    }
}
