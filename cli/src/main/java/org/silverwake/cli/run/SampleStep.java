// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.silverwake.cli.laboratory.LabRow.Standing;
import org.silverwake.cli.scenario.Carried;
import org.silverwake.cli.scenario.Sample;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.geo.place.LocatedPoint;
import org.silverwake.geo.place.LocatedPoint.OnReach;
import org.silverwake.geo.place.Locator;
import org.silverwake.geo.place.PointRequest;
import org.silverwake.model.sample.Agreement;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.ModelRange;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.NotAssessed;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.Cyanide;
import org.silverwake.model.transport.SteadyResult;

/** Samples put on the river as it is, and set beside the model there. */
public final class SampleStep {
    private SampleStep() {}

    /** Finds where each understood sample lies. */
    public static List<LocatedSample> locate(ScenarioInput scenario, Basin basin, List<String> warnings) {
        List<LocatedSample> located = new ArrayList<>();
        if (scenario.samples().isEmpty()) {
            return located;
        }
        Locator locator = new Locator(basin.map(), basin.layer().crs());
        CorrectionStep step = new CorrectionStep(scenario.corrections());
        Iterator<PointRequest> requests =
                step.moved(requests(scenario), basin.layer().crs()).iterator();
        for (Sample sample : scenario.samples()) {
            if (!sample.isUsable()) {
                boolean understood = sample.row().standing() == Standing.UNDERSTOOD;
                located.add(new LocatedSample(sample, Optional.empty(), understood ? sample.unplaced() : ""));
                continue;
            }
            LocatedPoint point = locator.locate(requests.next());
            warnings.addAll(point.warnings());
            located.add(new LocatedSample(sample, point.at(), point.refusal()));
        }
        warnings.addAll(locator.shifts());
        warnings.addAll(SampleDoubts.of(scenario));
        long unplaced = located.stream().filter(s -> !s.unplaced().isEmpty()).count();
        if (unplaced > 0) {
            warnings.add("samples: " + unplaced + " are understood but not placed on the river, each with its reason in"
                    + " samples.csv");
        }
        return List.copyOf(located);
    }

    /** What is asked of the river for the samples that are understood and say where they were taken. */
    static List<PointRequest> requests(ScenarioInput scenario) {
        return scenario.samples().stream()
                .filter(Sample::isUsable)
                .map(sample -> request(scenario, sample))
                .toList();
    }

    private static PointRequest request(ScenarioInput scenario, Sample sample) {
        return Basin.request(
                "sample",
                sample.name(),
                sample.where(),
                sample.position().orElseThrow(),
                scenario.settings().value("places.snap-distance"),
                sample.river());
    }

    static List<ComparedSample> compare(
            ScenarioInput scenario,
            List<LocatedSample> located,
            Basin basin,
            SteadyResult result,
            Optional<Cyanide> cyanide) {
        ModelAt model = new ModelAt(result, cyanide);
        List<ComparedSample> compared = new ArrayList<>();
        for (LocatedSample each : located) {
            if (each.sample().row().standing() == Standing.UNDERSTOOD) {
                compared.add(new Comparison(scenario, each, basin, result, model).run());
            }
        }
        return List.copyOf(compared);
    }

    /** One sample. */
    private record Comparison(
            ScenarioInput scenario, LocatedSample located, Basin basin, SteadyResult result, ModelAt model) {
        ComparedSample run() {
            Sample sample = located.sample();
            Finding finding = sample.row().finding().orElseThrow();
            boolean yearly = finding.medium() == Medium.BED_SEDIMENT;
            List<Integer> all =
                    IntStream.range(0, scenario.states().size()).boxed().toList();
            List<Integer> states = yearly ? all : states(sample);
            String words = yearly ? "over the year" : stateWords(sample, states);
            Optional<String> never = finding.notCompared(Carried.substances(scenario));
            if (never.isPresent()) {
                return without(states, words, never.get());
            }
            if (located.at().isEmpty()) {
                return without(states, words, "not placed: " + located.unplaced());
            }
            OnReach at = located.at().get();
            int reach = basin.network().reachOfInput(at.reach());
            if (states.stream()
                    .anyMatch(s -> result.solution(Bound.LAID_DOWN, s).isWithinOneWidth(reach))) {
                return without(states, words, NotAssessed.NEAR_BANK_OUTFALL.words());
            }
            Optional<ModelRange> range = states.stream()
                    .map(s -> model.range(finding, s, reach, at.reachMeters()))
                    .flatMap(Optional::stream)
                    .reduce(ModelRange::with);
            if (range.isEmpty()) {
                return without(
                        states, words, yearly ? "no solids settle here" : "the model has no value here in this state");
            }
            return new ComparedSample(
                    located, states, words, range, Optional.of(Agreement.of(finding.reported(), range.get())), "");
        }

        private ComparedSample without(List<Integer> states, String words, String reason) {
            return new ComparedSample(located, states, words, Optional.empty(), Optional.empty(), reason);
        }

        private List<Integer> states(Sample sample) {
            List<Integer> states = new ArrayList<>();
            for (int s = 0; s < scenario.states().size(); s++) {
                ScenarioInput.FlowState state = scenario.states().get(s);
                boolean named = sample.row()
                        .state()
                        .map(name -> name.equals(state.name()))
                        .orElseGet(() -> sample.row()
                                .date()
                                .filter(d -> state.months().contains(d.getMonthValue()))
                                .isPresent());
                if (named) {
                    states.add(s);
                }
            }
            return states.isEmpty()
                    ? IntStream.range(0, scenario.states().size()).boxed().toList()
                    : states;
        }

        private String stateWords(Sample sample, List<Integer> states) {
            if (sample.row().state().isPresent()) {
                return "as given";
            }
            boolean byMonth = sample.row()
                    .date()
                    .filter(d -> states.stream()
                            .allMatch(s -> scenario.states().get(s).months().contains(d.getMonthValue())))
                    .isPresent();
            return byMonth ? "by the month" : "not known: range over all states";
        }
    }
}
