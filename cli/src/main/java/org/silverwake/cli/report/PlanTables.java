// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.run.Planned;
import org.silverwake.cli.run.Planned.Choice;
import org.silverwake.cli.run.Planned.Held;
import org.silverwake.model.planning.CostPoint;
import org.silverwake.model.planning.CostRange;
import org.silverwake.model.planning.Cut;
import org.silverwake.model.planning.Level;
import org.silverwake.model.planning.Outcome;
import org.silverwake.model.planning.Plan;

/** Tables of a plan: which practice where, what becomes of each value, what each budget buys, by how much releases must fall. */
public final class PlanTables {
    private final Planned planned;
    private final String money;

    private PlanTables(Planned planned) {
        this.planned = planned;
        this.money = planned.outcome().scenario().fieldNotes().currency() + "/yr";
    }

    /** Writes all into a folder. */
    public static void write(Planned planned, Path folder) {
        PlanTables tables = new PlanTables(planned);
        tables.choices(folder.resolve("plan.csv"));
        tables.values(folder.resolve("plan-values.csv"));
        tables.budgets(folder.resolve("budgets.csv"));
        tables.cuts(folder.resolve("release-cuts.csv"));
    }

    private CsvTableWriter table(Path file, List<String> header) {
        return new CsvTableWriter(
                file, header, planned.outcome().scenario().outputs().tables());
    }

    private void choices(Path file) {
        List<String> header = List.of(
                "practice",
                "site",
                "group",
                "taken up, by middle costs [-]",
                "by low costs [-]",
                "by high costs [-]",
                "cost less what it gives back, low [" + money + "]",
                "middle [" + money + "]",
                "high [" + money + "]",
                "kept out of the river [kg/yr]");
        try (CsvTableWriter csv = table(file, header)) {
            for (int i = 0; i < planned.choices().size(); i++) {
                Choice choice = planned.choices().get(i);
                CostRange cost = choice.option().cost();
                csv.text(choice.option().name())
                        .text(choice.site().name())
                        .text(choice.site().group())
                        .number(planned.plans().middle().shares().get(i))
                        .number(planned.plans().low().shares().get(i))
                        .number(planned.plans().high().shares().get(i))
                        .number(cost.low())
                        .number(cost.middle())
                        .number(cost.high())
                        .number(choice.option().kilograms())
                        .end();
            }
        }
    }

    private void values(Path file) {
        List<String> header = List.of(
                "place",
                "guideline",
                "medium",
                "flow state",
                "unit",
                "allowed",
                "high estimate at present",
                "with the plan",
                "met",
                "with releases cut alike");
        Plan plan = planned.plans().at(Level.MIDDLE);
        try (CsvTableWriter csv = table(file, header)) {
            for (int k = 0; k < planned.held().size(); k++) {
                Held held = planned.held().get(k);
                Outcome found = plan.outcomes().get(k);
                double unit = held.guideline().fromSi();
                csv.text(planned.outcome().scenario().places().get(held.place()).name())
                        .text(held.guideline().displayName())
                        .text(held.guideline().observable().words())
                        .text(state(held))
                        .text(held.guideline().unit())
                        .number(held.limit().allowed() * unit)
                        .number(found.present() * unit)
                        .number(found.planned() * unit)
                        .yes(found.isMet())
                        .number(planned.equalCut().outcomes().get(k).planned() * unit)
                        .end();
            }
        }
    }

    private String state(Held held) {
        return held.state() < 0
                ? held.guideline().observable().averaging().words()
                : planned.outcome().scenario().states().get(held.state()).name();
    }

    private void budgets(Path file) {
        List<String> header = new ArrayList<>(List.of(
                "budget [" + money + "]",
                "most kilograms: cost [" + money + "]",
                "kept out of the river [kg/yr]",
                "values met by that [-]",
                "most values met: cost [" + money + "]",
                "values met [-]",
                "of [-]"));
        try (CsvTableWriter csv = table(file, header)) {
            for (int k = 0; k < planned.curve().mostKilograms().size(); k++) {
                CostPoint kilograms = planned.curve().mostKilograms().get(k);
                CostPoint limits = planned.curve().mostLimits().get(k);
                csv.number(kilograms.budget())
                        .number(kilograms.cost())
                        .number(kilograms.kilograms())
                        .text(String.valueOf(kilograms.limitsMet()))
                        .number(limits.cost())
                        .text(String.valueOf(limits.limitsMet()))
                        .text(String.valueOf(planned.held().size()))
                        .end();
            }
        }
    }

    private void cuts(Path file) {
        List<String> header = List.of(
                "discharge point", "cut, alike at all [%]", "cut, at least cost of what practices keep out [%]");
        List<String> names = planned.outcome().scenario().sites().stream()
                .map(site -> site.name())
                .toList();
        try (CsvTableWriter csv = table(file, header)) {
            for (int i = 0; i < names.size(); i++) {
                int at = i;
                csv.text(names.get(i))
                        .number(percent(planned.equalCut(), at))
                        .number(planned.cheapestCut()
                                .map(cut -> percent(cut, at))
                                .orElse(Double.NaN))
                        .end();
            }
        }
    }

    private static double percent(Cut cut, int site) {
        return 100 * cut.cuts().get(site);
    }
}
