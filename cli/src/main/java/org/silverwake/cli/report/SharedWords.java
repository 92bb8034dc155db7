// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.silverwake.cli.run.Apportioned;
import org.silverwake.cli.run.SharedValue;
import org.silverwake.cli.run.SharedValue.What;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;

/** Words for shared-out values, the same in table, picture and summary. */
final class SharedWords {
    /** What shares are not. */
    static final String NO_EVIDENCE =
            "Shares are a model's estimate of the listed sites: not evidence against a person.";

    private static final double PERCENT = 100;
    /** From a rise of 1 % on [-]. */
    private static final double NOTICED = 1.01;

    private SharedWords() {}

    /** Change of values when a site is closed, one after the other: "-42 | -35 %"; "?" where it is not known. */
    static String closing(List<SharedValue> values, int site) {
        return values.isEmpty()
                ? ""
                : values.stream().map(value -> change(value, site)).collect(Collectors.joining(" | ")) + " %";
    }

    /** The value that closing a site raises most, if it raises any by more than it takes to be noticed. */
    static Optional<SharedValue> worse(List<SharedValue> values, int site) {
        return values.stream()
                .filter(value ->
                        value.closed().get(site) > NOTICED * value.parts().value())
                .max(Comparator.comparingDouble(
                        value -> value.closed().get(site) / value.parts().value()));
    }

    /** What a value is a value of: "filtered water, dry". */
    static String of(Apportioned apportioned, SharedValue value) {
        return what(value.what()) + (value.what() == What.BED ? "" : ", " + state(apportioned, value));
    }

    /** Change of a value when a site is closed [%], in words. */
    static String change(SharedValue value, int site) {
        double change = PERCENT * (value.closed().get(site) / value.parts().value() - 1);
        if (!Double.isFinite(change)) {
            return "?";
        }
        String shown = Numbers.shown(Math.abs(change), Math.abs(change) < 10 ? 1 : 2);
        return Math.abs(change) < 0.05 ? "0" : (change < 0 ? "\u2212" : "+") + shown;
    }

    static String place(Apportioned apportioned, int place) {
        return of(apportioned, place).name();
    }

    private static ScenarioInput.Place of(Apportioned apportioned, int place) {
        return apportioned.outcome().scenario().places().get(place);
    }

    static String reach(Apportioned apportioned, int place) {
        var basin = apportioned.outcome().basin();
        return basin.reach(basin.reachAt(basin.points("place").get(place))).id();
    }

    static String state(Apportioned apportioned, SharedValue value) {
        return value.state() == SharedValue.WHOLE_YEAR
                ? "all"
                : apportioned.outcome().scenario().states().get(value.state()).name();
    }

    static String what(What what) {
        return switch (what) {
            case WHOLE -> "whole water";
            case FILTERED -> "filtered water";
            case BED -> "bed";
        };
    }
}
