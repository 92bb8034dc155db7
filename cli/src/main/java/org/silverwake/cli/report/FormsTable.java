// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SampledPart;
import org.silverwake.model.transport.StateSolution;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult;

/**
 * A row per reach, flow state and carried form, where more than the standard forms are carried: what leaves the reach and what
 * its water holds, lowest and highest over bounds and unknown splits. Concentrations of the forms that a water sample holds
 * sum up to total mercury of whole water in each bound and split.
 */
final class FormsTable {
    private static final double NANOGRAMS_PER_LITER = 1e9;

    private final Outcome outcome;
    private final SteadyResult result;
    private final StateLayout layout;

    private FormsTable(Outcome outcome) {
        this.outcome = outcome;
        this.result = outcome.result();
        this.layout = result.input().layout();
    }

    static void write(Outcome outcome, Path file) {
        FormsTable table = new FormsTable(outcome);
        if (table.layout.forms().isEmpty()) {
            return;
        }
        List<String> header = List.of(
                "reach",
                "feature",
                "river",
                "flow state",
                "form",
                "in a water sample",
                "load at end, low [kg/yr]",
                "load at end, high [kg/yr]",
                "background load at end [kg/yr]",
                "at head, mixed, low [ng/L]",
                "at head, mixed, high [ng/L]",
                "at end, mixed, low [ng/L]",
                "at end, mixed, high [ng/L]",
                "largest, low [ng/L]",
                "largest, high [ng/L]");
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header, outcome.scenario().outputs().tables())) {
            for (int r = 0; r < outcome.basin().network().size(); r++) {
                for (int s = 0; s < outcome.scenario().states().size(); s++) {
                    for (int form = 0; form < table.layout.count(); form++) {
                        table.row(csv, r, s, form);
                    }
                }
            }
        }
    }

    private void row(CsvTableWriter csv, int r, int s, int form) {
        var reach = outcome.basin().reach(r);
        csv.text(reach.id())
                .text(reach.part().featureId())
                .text(reach.name().orElse(""))
                .text(outcome.scenario().states().get(s).name())
                .text(layout.name(form))
                .yes(layout.isSampled(form));
        if (!result.isWet(s, r)) {
            csv.endBlank();
            return;
        }
        SampledPart part = (states, state, filtered) -> state == form ? 1 : 0;
        int first = result.cells().start(r);
        int last = result.cells().start(r + 1) - 1;
        double yearly = result.solution(Bound.CARRIED_THROUGH, s).water().end(last) * Quantity.SECONDS_PER_YEAR;
        Range end = range(s, part, (solution, v) -> at(solution, last, Place.END, form, v));
        csv.number(end.low() * yearly).number(end.high() * yearly);
        csv.number(result.solution(Bound.CARRIED_THROUGH, s).background(part, last, Place.END) * yearly);
        range(s, part, (solution, v) -> at(solution, first, Place.HEAD, form, v))
                .write(csv);
        end.write(csv);
        csv.number(result.low(s, r, part) * NANOGRAMS_PER_LITER)
                .number(result.high(s, r, part) * NANOGRAMS_PER_LITER)
                .end();
    }

    private static double at(StateSolution solution, int cell, Place place, int form, int variant) {
        return solution.hasWater(cell, place) ? solution.form(cell, place, form, variant) : Double.NaN;
    }

    private record Range(double low, double high) {
        void write(CsvTableWriter csv) {
            csv.number(low * NANOGRAMS_PER_LITER).number(high * NANOGRAMS_PER_LITER);
        }
    }

    /** Lowest and highest over bounds and splits; NaN where there is no water. */
    private Range range(int s, SampledPart part, ToDoubleBiFunction<StateSolution, Integer> value) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Bound bound : result.bounds(part)) {
            for (int v = 0; v < result.variants(); v++) {
                double here = value.applyAsDouble(result.solution(bound, s), v);
                low = Math.min(low, here);
                high = Math.max(high, here);
            }
        }
        return new Range(low, high);
    }
}
