// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import org.silverwake.cli.chart.Profile;
import org.silverwake.cli.chart.ReachStack;
import org.silverwake.cli.chart.ReachStackChart;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.StateSolution;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult;

/**
 * Where the mercury is along the scenario's profiles, where more than the standard forms are carried: loads that pass each
 * point, by form, in each flow state; with the bed where it is modelled, else in both bounds on one page.
 */
public final class FormStacks {
    private static final double MILLIGRAMS_PER_DAY = 86_400e6;
    private static final double THOUSAND = 1000;
    private static final int BACKGROUND = 0;
    private static final String ONE_ARM = " \u00B7 where the river divides, one arm is followed";

    private final Outcome outcome;
    private final SteadyResult result;
    private final List<FormGroup> groups;
    private final boolean withSites;

    private FormStacks(Outcome outcome, boolean withSites) {
        this.outcome = outcome;
        this.result = outcome.result();
        this.groups = FormGroup.carried(result.input().layout());
        this.withSites = withSites;
    }

    /** Draws all, with or without single sites. */
    public static void draw(Outcome outcome, MapFiles files, boolean withoutSites) {
        if (outcome.result().input().layout().forms().isEmpty()) {
            return;
        }
        FormStacks stacks = new FormStacks(
                outcome, !withoutSites && !outcome.scenario().sites().isEmpty());
        for (Outputs.Profile wanted : outcome.scenario().outputs().profiles()) {
            Along along = new Along(outcome, stacks.withSites, RiverPath.of(outcome, wanted));
            for (int s = 0; s < outcome.scenario().states().size(); s++) {
                for (int v = 0; v < outcome.result().variants(); v++) {
                    ReachStack stack = stacks.stack(wanted, along, s, v);
                    String name = wanted.name() + " forms "
                            + outcome.scenario().states().get(s).name()
                            + (outcome.result().variants() > 1
                                    ? " " + Words.variant(outcome.result().input(), v)
                                    : "");
                    files.each(Profiles.fileName(name), file -> ReachStackChart.write(stack, file));
                }
            }
        }
    }

    /** Amounts [kg/s] before the unit is chosen. */
    private List<List<ReachStack.Point>> amounts(Along along, IntPredicate wet, StateSolution solution, int variant) {
        return along.stretches(wet, (cell, place, at) -> {
            if (!solution.hasWater(cell, place)) {
                return Optional.empty();
            }
            return Optional.of(new ReachStack.Point(at, amounts(solution, cell, place, variant)));
        });
    }

    private List<Double> amounts(StateSolution solution, int cell, Place place, int variant) {
        List<Double> amounts = new ArrayList<>(List.of(solution.backgroundLoad(cell, place)));
        for (FormGroup group : groups) {
            double sum = 0;
            for (int form : group.states()) {
                sum += solution.released(cell, place, form, variant);
            }
            amounts.add(sum);
        }
        return amounts;
    }

    private ReachStack stack(Outputs.Profile wanted, Along along, int state, int variant) {
        IntPredicate wet = r -> result.isWet(state, r);
        List<Bound> bounds = result.bedAnswer().isPresent()
                ? List.of(Bound.WITH_BED)
                : List.of(Bound.CARRIED_THROUGH, Bound.LAID_DOWN);
        List<List<List<ReachStack.Point>>> loads = bounds.stream()
                .map(bound -> amounts(along, wet, result.solution(bound, state), variant))
                .toList();
        Unit unit = Unit.of(loads.stream()
                .flatMap(List::stream)
                .flatMap(List::stream)
                .mapToDouble(p -> p.amounts().stream().mapToDouble(a -> a).sum())
                .max()
                .orElse(0));
        List<ReachStack.Panel> panels = new ArrayList<>();
        for (int b = 0; b < bounds.size(); b++) {
            panels.add(new ReachStack.Panel(
                    title(bounds.get(b)), loads.get(b).stream().map(unit::in).toList()));
        }
        List<ReachStack.Layer> layers = new ArrayList<>(List.of(new ReachStack.Layer("background", BACKGROUND)));
        groups.forEach(group ->
                layers.add(new ReachStack.Layer(group.words(), 1 + group.form().ordinal())));
        return new ReachStack(frame(wanted, along, wet, state, variant, unit.name()), layers, panels);
    }

    private static String title(Bound bound) {
        return switch (bound) {
            case LAID_DOWN -> "laid down: what settles stays";
            case CARRIED_THROUGH -> "carried through: the bed keeps little or nothing";
            case WITH_BED -> "with the bed: it takes in and gives back";
        };
    }

    /** A unit in which the largest load has a number that people can read out. */
    private record Unit(String name, double factor) {
        static Unit of(double kilogramsPerSecond) {
            double milligrams = kilogramsPerSecond * MILLIGRAMS_PER_DAY;
            if (milligrams < THOUSAND) {
                return new Unit("mg/d", MILLIGRAMS_PER_DAY);
            }
            return milligrams < 10 * THOUSAND * THOUSAND
                    ? new Unit("g/d", MILLIGRAMS_PER_DAY / THOUSAND)
                    : new Unit("kg/d", MILLIGRAMS_PER_DAY / THOUSAND / THOUSAND);
        }

        List<ReachStack.Point> in(List<ReachStack.Point> points) {
            return points.stream()
                    .map(p -> new ReachStack.Point(
                            p.kilometers(),
                            p.amounts().stream().map(a -> a * factor).toList()))
                    .toList();
        }
    }

    private Profile frame(Outputs.Profile wanted, Along along, IntPredicate wet, int state, int variant, String unit) {
        ScenarioInput.Project project = outcome.scenario().project();
        String split = Words.variant(result.input(), variant);
        return new Profile(
                "Where the mercury is: " + wanted.name() + ", " + project.title(),
                Profiles.subtitle(outcome, state) + (split.isEmpty() ? "" : "; unknown split taken as " + split),
                "mercury carried past each point, by form",
                unit,
                wanted.from(),
                along
                        .<Profile.Point>stretches(wet, (cell, place, at) -> Optional.of(new Profile.Point(at, 0, 0, 0)))
                        .stream()
                        .map(Profile.Stretch::new)
                        .toList(),
                along.gaps(wet, "no water"),
                along.marks(),
                List.of(),
                Profiles.caution(withSites),
                project.preparedBy() + ", " + project.date() + (along.isByOneArm() ? ONE_ARM : ""));
    }
}
