// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.run.Planned;
import org.silverwake.cli.run.Planned.Choice;
import org.silverwake.cli.scenario.ScenarioInput.FurtherForm;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.planning.CostRange;
import org.silverwake.model.planning.Cut;
import org.silverwake.model.planning.Level;
import org.silverwake.model.planning.Outcome;
import org.silverwake.model.planning.Plan;

/** What a plan says at its end. */
public final class PlanSummary {
    private static final int DIGITS = 3;
    private static final double WHOLE = 0.999;
    /** From a difference of 1 % on [-]. */
    private static final double NOTICED = 0.01;

    private static final double NOTHING = 1e-6;

    private final Planned planned;
    private final String money;

    private PlanSummary(Planned planned) {
        this.planned = planned;
        this.money = planned.outcome().scenario().fieldNotes().currency();
    }

    /** Prints. */
    public static void print(Planned planned, Path target, PrintWriter print) {
        new PlanSummary(planned).lines().forEach(print::println);
        planned.outcome().warnings().forEach(warning -> print.println("warning: " + warning));
        Cautions.of(planned.outcome()).forEach(caution -> print.println("caution: " + caution));
        print.println("caution: Costs and what is given back are the scenario's, not this program's.");
        print.println("written to " + target);
        print.flush();
    }

    private List<String> lines() {
        List<String> lines = new ArrayList<>();
        Plan plan = planned.plans().at(Level.MIDDLE);
        lines.add(planned.outcome().scenario().project().title()
                + ": the cheapest set of practices; a screening, not a finding of safety");
        int met = (int) plan.outcomes().stream().filter(Outcome::isMet).count();
        lines.add(
                plan.isSufficient()
                        ? "  with it " + (met == 1 ? "the value is" : "all " + met + " values are")
                                + " met by the high estimate in a full run"
                        : "  NO SET SUFFICES of those that were run: the best one meets " + met + " of "
                                + plan.outcomes().size() + " values");
        taken(plan).forEach(line -> lines.add("    " + line));
        asWritten(plan).ifPresent(lines::add);
        lines.add("  cost less what is given back: " + range(plan.cost()) + " " + money
                + " a year; kept out of the river: " + shown(plan.kilograms()) + " kg a year");
        for (Level level : List.of(Level.LOW, Level.HIGH)) {
            double regret = planned.plans().regret(level);
            if (regret > NOTICED * Math.abs(plan.cost().middle())) {
                lines.add("  if costs come out " + level.name().toLowerCase(java.util.Locale.ROOT) + ", another set is "
                        + shown(regret) + " " + money + " a year cheaper (plan.csv)");
            }
        }
        for (Outcome left : plan.remaining()) {
            lines.add(
                    "  remains over: " + left.limit().name() + " at " + shown(left.ratio()) + " times what is allowed, "
                            + shown(left.present() / left.limit().allowed()) + " at present");
        }
        lines.add("  " + cut("releases cut alike everywhere", planned.equalCut()));
        planned.cheapestCut().ifPresent(cut -> lines.add("  " + cut("releases cut where a kilogram is cheapest", cut)));
        boolean bleeding = planned.choices().stream()
                .flatMap(c -> c.offered().stream())
                .anyMatch(o -> o.practice().bleed().isPresent());
        if (bleeding && !planned.outcome().scenario().mercury().forms().contains(FurtherForm.DROPLETS)) {
            lines.add(
                    "  what old drums go on losing is not in it: droplets are not carried (list droplets under mercury.forms)");
        }
        lines.add("  " + plan.runs() + (plan.runs() == 1 ? " set was" : " sets were") + " run in full"
                + (plan.exhaustive()
                        ? ": every set that could be cheaper, so none is"
                        : "; a cheaper one that was not run can exist"));
        return lines;
    }

    private List<String> taken(Plan plan) {
        List<String> lines = new ArrayList<>();
        for (int i = 0; i < planned.choices().size(); i++) {
            double share = plan.shares().get(i);
            Choice choice = planned.choices().get(i);
            if (share > NOTHING) {
                lines.add(choice.option().name() + " at " + choice.site().name()
                        + (share < WHOLE ? ", " + shown(100 * share) + " %" : "") + ": "
                        + range(choice.option().cost()) + " " + money + " a year, "
                        + shown(choice.option().kilograms()) + " kg a year kept out");
            }
        }
        return lines.isEmpty() ? List.of("none of the practices") : lines;
    }

    /** As it stands in a scenario, where no practice is taken up in part. */
    private Optional<String> asWritten(Plan plan) {
        List<String> words =
                new ArrayList<>(planned.outcome().scenario().fieldNotes().inForce());
        for (int i = 0; i < planned.choices().size(); i++) {
            double share = plan.shares().get(i);
            if (share > NOTHING && share < WHOLE) {
                return Optional.empty();
            }
            Choice choice = planned.choices().get(i);
            if (share >= WHOLE) {
                choice.offered()
                        .forEach(o -> words.add(
                                o.practice().name() + " at " + choice.site().name()));
            }
        }
        return Optional.of("    in the scenario: practices.in-force: [" + String.join(", ", words) + "]");
    }

    private static String cut(String how, Cut cut) {
        double least = cut.cuts().stream().mapToDouble(c -> c).min().orElse(0);
        double most = cut.cuts().stream().mapToDouble(c -> c).max().orElse(0);
        String by = least == most ? shown(100 * most) : shown(100 * least) + " to " + shown(100 * most);
        return how + ", whatever does it: by " + by + " % (" + shown(cut.kilograms()) + " kg a year) "
                + (cut.isSufficient()
                        ? "all values are met"
                        : cut.remaining().size() + " values are still not met: background alone is above them");
    }

    private static String range(CostRange cost) {
        return shown(cost.middle())
                + (cost.high() > cost.low() ? " (" + shown(cost.low()) + " to " + shown(cost.high()) + ")" : "");
    }

    private static String shown(double value) {
        return Numbers.shown(value, DIGITS);
    }
}
