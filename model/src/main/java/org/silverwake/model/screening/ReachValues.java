// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.Arrays;
import java.util.BitSet;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What screening compares: values of every reach and flow state for both bounds and for background alone. Values of the
 * bounds hold background too. A reach's water value is the largest among its cell heads (after mixing) and ends, its bed
 * value the length-weighted mean of its cells. Immutable; made by a {@link Builder}.
 */
public final class ReachValues {
    private final int reaches;
    private final List<Double> shares;
    private final Set<Substance> carried;
    private final Map<Measure, double[][]> water;
    private final double[][] bed;
    private final double[][] fish;
    private final boolean[] dry;
    private final NotAssessed[] reasons;
    private final NotAssessed[] doubts;
    private final BitSet cyanideNotGiven;
    private final NotAssessed[] fishDoubts;

    private ReachValues(Builder from) {
        reaches = from.reaches;
        shares = from.shares;
        carried = from.carried;
        water = from.water;
        bed = from.bed;
        fish = from.fish;
        fishDoubts = from.fishDoubts;
        dry = from.dry;
        reasons = from.reasons;
        doubts = from.doubts;
        cyanideNotGiven = from.cyanideNotGiven;
    }

    /** Which solution of the same river a value comes from. */
    public enum Estimate {
        /** Everything that settles stays down. */
        LAID_DOWN,
        /** Nothing stays down but the stated net sedimentation. */
        CARRIED_THROUGH,
        /** Background without any site; the same in both bounds. */
        BACKGROUND
    }

    /**
     * A quantity that differs from flow state to flow state.
     *
     * @param medium surface water or suspended solids
     * @param substance what is measured
     * @param fraction part of the water sample, {@code NONE} for suspended solids
     */
    public record Measure(Medium medium, Substance substance, Fraction fraction) {
        /** Total mercury of whole water [kg/m3]. */
        public static final Measure WHOLE_WATER =
                new Measure(Medium.SURFACE_WATER, Substance.TOTAL_MERCURY, Fraction.WHOLE);

        /** Total mercury of filtered water [kg/m3]. */
        public static final Measure FILTERED_WATER =
                new Measure(Medium.SURFACE_WATER, Substance.TOTAL_MERCURY, Fraction.FILTERED);

        /** Mercury on suspended solids [kg/kg dry]; left out where the water carries no solids. */
        public static final Measure SUSPENDED_CONTENT =
                new Measure(Medium.SUSPENDED_SOLIDS, Substance.TOTAL_MERCURY, Fraction.NONE);

        /** Methylmercury of filtered water, from which fish have theirs [kg/m3]; where it is carried. */
        public static final Measure FILTERED_METHYL =
                new Measure(Medium.SURFACE_WATER, Substance.METHYLMERCURY, Fraction.FILTERED);

        /** Suspended solids themselves [kg/m3]. */
        public static final Measure SUSPENDED_SOLIDS =
                new Measure(Medium.SURFACE_WATER, Substance.SUSPENDED_SOLIDS, Fraction.WHOLE);

        private static Measure of(Observable observable) {
            Medium medium = observable.medium().isWater() ? Medium.SURFACE_WATER : observable.medium();
            return new Measure(medium, observable.substance(), observable.fraction());
        }

        private Measure with(Substance other) {
            return new Measure(medium, other, fraction);
        }

        /** The same for screening: a yearly value of it. */
        public Observable observable() {
            return new Observable(medium, substance, fraction, medium.basis(), Averaging.YEAR);
        }
    }

    /** Substances that the water carries. */
    public Set<Substance> carried() {
        return Collections.unmodifiableSet(carried);
    }

    /** The measure that answers for an observable; empty where it is not computed in water. */
    Optional<Measure> measure(Observable observable) {
        return measure(observable, carried);
    }

    /**
     * The measure that answers for an observable in a run that carries these substances; empty where it is not computed in
     * water. Inorganic mercury is all there is where no methylmercury is carried.
     */
    public static Optional<Measure> measure(Observable observable, Set<Substance> carried) {
        boolean ofWater = observable.medium() != Medium.BED_SEDIMENT && observable.medium() != Medium.FISH;
        if (!ofWater || !observable.isModelled(carried)) {
            return Optional.empty();
        }
        Measure measure = Measure.of(observable);
        boolean all = measure.substance() == Substance.INORGANIC_MERCURY && !carried.contains(Substance.METHYLMERCURY);
        return Optional.of(all ? measure.with(Substance.TOTAL_MERCURY) : measure);
    }

    /**
     * An empty set of values, to be filled.
     *
     * @param reaches number of reaches [-], at least 1
     * @param shares share of the year of each flow state [-], above 0
     * @throws IllegalArgumentException if there are no reaches, no states, or a share is not above 0
     */
    public static Builder builder(int reaches, List<Double> shares) {
        return new Builder(reaches, shares);
    }

    /** Number of reaches [-]. */
    public int reaches() {
        return reaches;
    }

    /** Number of flow states [-]. */
    public int states() {
        return shares.size();
    }

    /** Share of the year of a flow state [-]. */
    public double share(int state) {
        return shares.get(state);
    }

    /** Whether a reach carries water in a flow state. */
    public boolean hasWater(int state, int reach) {
        return !dry[state * reaches + reach];
    }

    /** Why a reach is not assessed at all; empty where it is. */
    public Optional<NotAssessed> notAssessed(int reach) {
        return Optional.ofNullable(reasons[reach]);
    }

    /** Why a reach cannot be said to be below a value of any substance, though it may be above; empty where it can. */
    public Optional<NotAssessed> doubt(int reach) {
        return Optional.ofNullable(doubts[reach]);
    }

    /** Why a reach cannot be said to be below a value of a substance, though it may be above; empty where it can. */
    public Optional<NotAssessed> neverBelow(int reach, Substance substance) {
        return doubts[reach] == null && substance.isCyanide() && cyanideNotGiven.get(reach)
                ? Optional.of(NotAssessed.CYANIDE_NOT_GIVEN)
                : Optional.ofNullable(doubts[reach]);
    }

    /** Whether a measure was computed at all. */
    boolean has(Measure measure) {
        return water.containsKey(measure);
    }

    /** Whether a measure has a value here [kg/m3 or kg/kg]. */
    public boolean has(Measure measure, int state, int reach) {
        return hasWater(state, reach)
                && has(measure)
                && !Double.isNaN(value(measure, Estimate.BACKGROUND, state, reach));
    }

    /** Value of a measure, NaN where there is none [kg/m3 or kg/kg]. */
    public double value(Measure measure, Estimate estimate, int state, int reach) {
        return water.get(measure)[estimate.ordinal()][state * reaches + reach];
    }

    /** Whether bed contents were computed at all. */
    public boolean hasBed() {
        return bed != null;
    }

    /** Bed content, NaN where no solids deposit [kg/kg dry]. */
    public double bed(Estimate estimate, int reach) {
        return bed[estimate.ordinal()][reach];
    }

    /** Whether fish were computed at all. */
    public boolean hasFish() {
        return fish != null;
    }

    /** Content of fish, NaN where there is none [kg/kg wet]. */
    public double fish(Estimate estimate, int reach) {
        return fish[estimate.ordinal()][reach];
    }

    /** Why fish of a reach cannot be said to be below a value, though they may be above; empty where they can. */
    public Optional<NotAssessed> fishNeverBelow(int reach) {
        return Optional.ofNullable(fishDoubts[reach]);
    }

    /** Collects values; {@link #build} checks that none is missing. For one thread. */
    public static final class Builder {
        private final int reaches;
        private final List<Double> shares;
        private final Set<Substance> carried = EnumSet.copyOf(Substance.always());
        private final Map<Measure, double[][]> water = new LinkedHashMap<>();
        private double[][] bed;
        private double[][] fish;
        private final boolean[] dry;
        private final NotAssessed[] reasons;
        private final NotAssessed[] doubts;
        private final BitSet cyanideNotGiven = new BitSet();
        private final NotAssessed[] fishDoubts;

        private Builder(int reaches, List<Double> shares) {
            if (reaches < 1 || shares.isEmpty() || shares.stream().anyMatch(s -> !(s > 0 && s <= 1))) {
                throw new IllegalArgumentException(
                        "screening needs reaches, and flow states with shares above 0 up to 1");
            }
            this.reaches = reaches;
            this.shares = List.copyOf(shares);
            this.dry = new boolean[reaches * shares.size()];
            this.reasons = new NotAssessed[reaches];
            this.doubts = new NotAssessed[reaches];
            this.fishDoubts = new NotAssessed[reaches];
        }

        /** Says that the water carries a substance that not every run does. */
        public Builder carries(Substance substance) {
            carried.add(substance);
            return this;
        }

        /**
         * Sets a value of a flow state.
         *
         * @param value the value, background held in both bounds [kg/m3 or kg/kg, as the measure says], at least 0
         * @return this builder
         * @throws IllegalArgumentException if it is negative or not finite
         */
        public Builder water(Measure measure, Estimate estimate, int state, int reach, double value) {
            double[][] values = water.computeIfAbsent(measure, m -> empty(reaches * shares.size()));
            values[estimate.ordinal()][state * reaches + reach] =
                    checked(measure.observable().words(), reach, value);
            return this;
        }

        /**
         * Sets a bed content. Left out where no solids deposit.
         *
         * @param value the content, background held in both bounds [kg/kg dry], at least 0
         * @return this builder
         * @throws IllegalArgumentException if it is negative or not finite
         */
        public Builder bed(Estimate estimate, int reach, double value) {
            if (bed == null) {
                bed = empty(reaches);
            }
            bed[estimate.ordinal()][reach] = checked("bed content", reach, value);
            return this;
        }

        /**
         * Sets a content of fish: low, high and background alone, in place of laid down, carried through and background. Left
         * out where there is no water.
         *
         * @param value the content, background held in low and high [kg/kg wet], at least 0
         * @return this builder
         * @throws IllegalArgumentException if it is negative or not finite
         */
        public Builder fish(Estimate estimate, int reach, double value) {
            if (fish == null) {
                fish = empty(reaches);
            }
            fish[estimate.ordinal()][reach] = checked("content of fish", reach, value);
            return this;
        }

        /** Says that mercury that values leave out may reach the range of a reach's fish, and why. */
        public Builder fishNeverBelow(int reach, NotAssessed reason) {
            fishDoubts[reach] = reason;
            return this;
        }

        /** Says that a reach carries no water in a flow state. */
        public Builder noWater(int state, int reach) {
            dry[state * reaches + reach] = true;
            return this;
        }

        /** Says that a reach is not assessed, and why; its values may then be left out. */
        public Builder notAssessed(int reach, NotAssessed reason) {
            reasons[reach] = reason;
            return this;
        }

        /** Says that mercury may reach a reach that its values leave out, and why: it is not assessed where it would be below. */
        public Builder neverBelow(int reach, NotAssessed reason) {
            doubts[reach] = reason;
            return this;
        }

        /** Says that cyanide may reach a reach that its values leave out, from leach tanks of which none is given. */
        public Builder cyanideNotGiven(int reach) {
            cyanideNotGiven.set(reach);
            return this;
        }

        /**
         * The values. The builder must not be used afterwards.
         *
         * @throws IllegalArgumentException if a value is missing where there is water
         */
        public ReachValues build() {
            for (Map.Entry<Measure, double[][]> entry : water.entrySet()) {
                boolean optional = entry.getKey().medium() == Medium.SUSPENDED_SOLIDS;
                for (int i = 0; i < dry.length; i++) {
                    boolean needed = !dry[i] && reasons[i % reaches] == null;
                    int given = given(entry.getValue(), i);
                    if (needed && given < Estimate.values().length && !(optional && given == 0)) {
                        throw new IllegalArgumentException(
                                entry.getKey().observable().words() + " of reach " + i % reaches + " in flow state "
                                        + i / reaches + ": " + given + " of 3 estimates given");
                    }
                }
            }
            requireAllOrNone("bed content", bed);
            requireAllOrNone("content of fish", fish);
            return new ReachValues(this);
        }

        private void requireAllOrNone(String what, double[][] values) {
            for (int r = 0; values != null && r < reaches; r++) {
                int given = given(values, r);
                if (given > 0 && given < Estimate.values().length) {
                    throw new IllegalArgumentException(
                            what + " of reach " + r + ": " + given + " of 3 estimates given");
                }
            }
        }

        private static int given(double[][] values, int at) {
            int given = 0;
            for (double[] estimate : values) {
                given += Double.isNaN(estimate[at]) ? 0 : 1;
            }
            return given;
        }

        private static double[][] empty(int length) {
            double[][] values = new double[Estimate.values().length][length];
            for (double[] estimate : values) {
                Arrays.fill(estimate, Double.NaN);
            }
            return values;
        }

        private static double checked(String what, int reach, double value) {
            if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException(
                        what + " of reach " + reach + ": " + value + " must be finite and not negative");
            }
            return value;
        }
    }
}
