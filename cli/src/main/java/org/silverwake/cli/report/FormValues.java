// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs.ShownForm;
import org.silverwake.cli.scenario.Outputs.ShownMedium;
import org.silverwake.model.transport.BedAnswer;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SampledPart;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SuspendedValues;

/** Values of one form of mercury in one medium, by reach and flow state, in the unit in which they are shown. */
final class FormValues {
    /** In place of a flow state where there is but one value for all. */
    static final int ALL_STATES = -1;

    private static final double NANOGRAMS_PER_LITER = 1e9;
    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;
    private static final double MICROGRAMS_PER_KILOGRAM = 1e9;

    private final SteadyResult result;
    private final SuspendedValues solids;
    private final FormGroup group;
    private final ShownMedium medium;
    private final SampledPart part;

    FormValues(SteadyResult result, FormGroup group, ShownMedium medium) {
        this.result = result;
        this.solids = new SuspendedValues(result);
        this.group = group;
        this.medium = medium;
        this.part = group.in(medium);
    }

    /** Of all forms that a run carries and its scenario asks for, in each medium that somewhere holds some. */
    static List<FormValues> asked(Outcome outcome) {
        SteadyResult result = outcome.result();
        return FormGroup.carried(result.input().layout()).stream()
                .filter(group -> outcome.scenario().outputs().forms().contains(group.form()))
                .flatMap(group -> outcome.scenario().outputs().formMedia().stream()
                        .filter(medium -> medium != ShownMedium.BED_SEDIMENT
                                || result.bedAnswer().isPresent())
                        .map(medium -> new FormValues(result, group, medium)))
                .filter(values -> values.largest() > 0)
                .toList();
    }

    FormGroup group() {
        return group;
    }

    ShownMedium medium() {
        return medium;
    }

    SampledPart part() {
        return part;
    }

    boolean isOfWater() {
        return medium == ShownMedium.WHOLE_WATER || medium == ShownMedium.FILTERED_WATER;
    }

    String unit() {
        return isOfWater() ? "ng/L" : group.form() == ShownForm.METHYL ? "ug/kg" : "mg/kg";
    }

    private double factor() {
        return isOfWater()
                ? NANOGRAMS_PER_LITER
                : group.form() == ShownForm.METHYL ? MICROGRAMS_PER_KILOGRAM : MILLIGRAMS_PER_KILOGRAM;
    }

    /** In words, for titles. */
    String words() {
        return group.words()
                + switch (medium) {
                    case WHOLE_WATER -> " in river water";
                    case FILTERED_WATER -> " in filtered river water";
                    case SUSPENDED_SOLIDS -> " on suspended solids, dry weight";
                    case BED_SEDIMENT -> " in the bed, dry weight";
                };
    }

    /** Flow states that have values of their own. */
    List<Integer> states() {
        return medium == ShownMedium.BED_SEDIMENT
                ? List.of(ALL_STATES)
                : IntStream.range(0, result.input().stateCount()).boxed().toList();
    }

    /** Whether a reach has a value. */
    boolean has(int state, int reach) {
        return switch (medium) {
            case WHOLE_WATER, FILTERED_WATER -> result.isWet(state, reach);
            case SUSPENDED_SOLIDS -> result.isWet(state, reach) && solids.backgroundSediment(state, reach) > 0;
            case BED_SEDIMENT -> bed().hasBed(reach);
        };
    }

    private BedAnswer bed() {
        return result.bedAnswer().orElseThrow();
    }

    /** Lowest over bounds and unknown splits; there must be a value. */
    double low(int state, int reach) {
        return factor()
                * switch (medium) {
                    case WHOLE_WATER, FILTERED_WATER -> result.low(state, reach, part);
                    case SUSPENDED_SOLIDS -> solids.contentLow(state, reach, part);
                    case BED_SEDIMENT -> variants(v -> bed(reach, v)).min().orElse(0);
                };
    }

    /** Highest over bounds and unknown splits; there must be a value. */
    double high(int state, int reach) {
        return factor()
                * switch (medium) {
                    case WHOLE_WATER, FILTERED_WATER -> result.high(state, reach, part);
                    case SUSPENDED_SOLIDS -> solids.contentHigh(state, reach, part);
                    case BED_SEDIMENT -> variants(v -> bed(reach, v)).max().orElse(0);
                };
    }

    /** Background alone; there must be a value. */
    double background(int state, int reach) {
        return factor()
                * switch (medium) {
                    case WHOLE_WATER, FILTERED_WATER -> result.background(state, reach, part);
                    case SUSPENDED_SOLIDS -> solids.backgroundContent(state, reach, part);
                    case BED_SEDIMENT -> bed().backgroundContent(reach, group.states()::contains);
                };
    }

    private DoubleStream variants(IntToDoubleFunction value) {
        return IntStream.range(0, result.variants()).mapToDouble(value);
    }

    private double bed(int reach, int variant) {
        double sum = 0;
        for (int form : group.states()) {
            sum += bed().content(reach, form, variant);
        }
        return sum;
    }

    /** Whether low and high span the two bounds, which the bed's own answer does not. */
    boolean isOfBounds() {
        return medium != ShownMedium.BED_SEDIMENT && result.bounds(part).size() > 1;
    }

    /** Whether bounds of water differ by more than a ratio though nothing but what the bed gives back is unknown. */
    boolean isApart(int state, int reach, double ratio) {
        boolean apart = false;
        for (int v = 0; isOfWater() && v < result.variants(); v++) {
            double low = Double.POSITIVE_INFINITY;
            double high = 0;
            for (Bound bound : result.bounds(part)) {
                double here = result.largest(bound, v, state, reach, part);
                low = Math.min(low, here);
                high = Math.max(high, here);
            }
            apart |= high > ratio * low;
        }
        return apart;
    }

    /** Highest anywhere in any flow state. */
    double largest() {
        double largest = 0;
        int reaches = result.input().hydraulics().reaches().size();
        for (int state : states()) {
            for (int r = 0; r < reaches; r++) {
                largest = has(state, r) ? Math.max(largest, high(state, r)) : largest;
            }
        }
        return largest;
    }
}
