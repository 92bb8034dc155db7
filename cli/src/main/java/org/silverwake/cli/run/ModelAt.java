// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.ModelRange;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.ReachValues.Measure;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.Cyanide;
import org.silverwake.model.transport.SampledPart;
import org.silverwake.model.transport.StateSolution;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SuspendedValues;
import org.silverwake.model.water.Cells;

/**
 * The model's range at a place within a reach: in water between the values at the ends of its cell, in a straight line, as
 * profiles draw it, and where one end is dry, as at a spring, the other's; on solids the reach's value.
 */
final class ModelAt {
    private final SteadyResult result;
    private final Optional<Cyanide> cyanide;
    private final SuspendedValues solids;

    ModelAt(SteadyResult result, Optional<Cyanide> cyanide) {
        this.result = result;
        this.cyanide = cyanide;
        this.solids = new SuspendedValues(result);
    }

    /** The range of what was measured, in a flow state; empty where the model has no value there. */
    Optional<ModelRange> range(Finding finding, int state, int reach, double meters) {
        if (finding.medium() == Medium.BED_SEDIMENT) {
            return result.isBedAssessed(reach)
                    ? Optional.of(new ModelRange(result.bedLow(reach), result.bedHigh(reach)))
                    : Optional.empty();
        }
        if (!result.isWet(state, reach)) {
            return Optional.empty();
        }
        if (finding.substance().isCyanide()) {
            return cyanide.flatMap(carried -> new ModelAt(carried.result(), Optional.empty())
                    .water(
                            finding.substance() == Substance.FREE_CYANIDE ? carried.free() : Cyanide.wad(),
                            state,
                            reach,
                            meters));
        }
        if (finding.substance() == Substance.SUSPENDED_SOLIDS) {
            double laidDown = solids.sediment(Bound.LAID_DOWN, state, reach);
            double carried = solids.sediment(Bound.CARRIED_THROUGH, state, reach);
            return Optional.of(new ModelRange(Math.min(laidDown, carried), Math.max(laidDown, carried)));
        }
        if (finding.medium() == Medium.SUSPENDED_SOLIDS) {
            return solids.backgroundSediment(state, reach) > 0
                    ? Optional.of(new ModelRange(
                            solids.contentLow(state, reach, part(finding, Fraction.WHOLE)),
                            solids.contentHigh(state, reach, part(finding, Fraction.WHOLE))))
                    : Optional.empty();
        }
        return water(part(finding, finding.fraction()), state, reach, meters);
    }

    private static SampledPart part(Finding finding, Fraction fraction) {
        return new Measure(Medium.SURFACE_WATER, finding.substance(), fraction).observable();
    }

    private Optional<ModelRange> water(SampledPart part, int state, int reach, double meters) {
        Cells cells = result.cells();
        int cell = cells.start(reach);
        while (cell + 1 < cells.start(reach + 1) && cells.to(cell) < meters) {
            cell++;
        }
        boolean head = result.solution(Bound.LAID_DOWN, state).hasWater(cell, Place.HEAD);
        boolean end = result.solution(Bound.LAID_DOWN, state).hasWater(cell, Place.END);
        if (!head && !end) {
            return Optional.empty();
        }
        double between = Math.max(0, Math.min(1, (meters - cells.from(cell)) / cells.length(cell)));
        double along = head && end ? between : end ? 1 : 0;
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (Bound bound : result.bounds(part)) {
            StateSolution solution = result.solution(bound, state);
            int at = cell;
            for (int v = 0; v < result.variants(); v++) {
                int variant = v;
                ToDoubleFunction<Place> value = place -> solution.part(part, at, place, variant, true);
                double here = 0;
                here += along < 1 ? (1 - along) * value.applyAsDouble(Place.HEAD) : 0;
                here += along > 0 ? along * value.applyAsDouble(Place.END) : 0;
                low = Math.min(low, here);
                high = Math.max(high, here);
            }
        }
        return Optional.of(new ModelRange(low, high));
    }
}
