// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.List;

/** How the values of flow states make the one value that is compared: the column {@code compare} of guideline tables. */
public enum Averaging {
    /** The worst flow state. */
    ANY_STATE("any-state", "worst flow state"),
    /** The mean over the year, weighted by the states' shares; the worst state is shown beside it. */
    YEAR("year", "mean over the year, the worst flow state beside it"),
    /** The worst flow state, marked: peaks shorter than a state are not seen. */
    SHORT("short", "worst flow state; peaks of hours within a state are not seen"),
    /** The largest mean over 30 days of states. */
    THIRTY_DAY("30-day", "largest mean over 30 days"),
    /** One value per reach. */
    BED("bed", "one value per reach"),
    /** Methylmercury over the year and the fish's range. */
    FISH("fish", "methylmercury over the year and the fish's range"),
    /** Raw water, worst flow state, at intakes and villages alone. */
    TAP("tap", "raw water against a drinking-water value, worst flow state"),
    /** Compared with a release. */
    EFFLUENT("effluent", "compared with the release itself"),
    /** Listed only. */
    SOIL("soil", "listed only");

    /** Days of a year [d]; a year is 365.25 d everywhere in the program. */
    private static final double DAYS_OF_YEAR = 365.25;

    private static final double WINDOW_DAYS = 30;

    private final String word;
    private final String words;

    Averaging(String word, String words) {
        this.word = word;
        this.words = words;
    }

    /** Word used in tables. */
    public String word() {
        return word;
    }

    /** Whether a reach has one value for all flow states. */
    public boolean isOneForAllStates() {
        return this == BED || this == FISH;
    }

    /** In words, for captions. */
    public String words() {
        return words;
    }

    /**
     * A flow state with water in it.
     *
     * @param index index of the state
     * @param share share of the year [-], above 0 up to 1
     * @param value value in it [kg/m3 or kg/kg], at least 0
     */
    public record StateValue(int index, double share, double value) {}

    /**
     * The value that is compared, and the worst state beside it.
     *
     * @param value compared value [kg/m3 or kg/kg]
     * @param worst largest value of a state [kg/m3 or kg/kg]
     * @param worstState index of that state
     */
    public record Compared(double value, double worst, int worstState) {}

    /**
     * The compared value of a reach.
     *
     * @param states flow states that have water, in any order; those without are left out by the caller, who says so
     * @throws IllegalArgumentException if there are no states, or this averaging is not over flow states
     */
    public Compared compare(List<StateValue> states) {
        StateValue worst = states.stream()
                .reduce((a, b) -> b.value() > a.value() ? b : a)
                .orElseThrow(() -> new IllegalArgumentException("no flow state has water"));
        double value = switch (this) {
            case ANY_STATE, SHORT, TAP -> worst.value();
            case YEAR -> yearMean(states);
            case THIRTY_DAY -> windowMean(states);
            case BED, FISH, EFFLUENT, SOIL ->
                throw new IllegalArgumentException(word + " is not an average over flow states");
        };
        return new Compared(value, worst.value(), worst.index());
    }

    private static double yearMean(List<StateValue> states) {
        double sum = 0;
        double shares = 0;
        for (StateValue state : states) {
            sum += state.share() * state.value();
            shares += state.share();
        }
        return sum / shares;
    }

    /** The worst states fill the 30 days, each for as long as it lasts; if all last less, their whole time is taken. */
    private static double windowMean(List<StateValue> states) {
        List<StateValue> worstFirst = states.stream()
                .sorted((a, b) -> Double.compare(b.value(), a.value()))
                .toList();
        double filled = 0;
        double sum = 0;
        for (StateValue state : worstFirst) {
            double days = Math.min(WINDOW_DAYS - filled, state.share() * DAYS_OF_YEAR);
            sum += days * state.value();
            filled += days;
        }
        return sum / filled;
    }
}
