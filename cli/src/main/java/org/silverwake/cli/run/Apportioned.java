// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What each site brings of what arrives at places.
 *
 * @param outcome the run that is shared out
 * @param places places asked for, each its place in the scenario's list
 * @param values place by place
 * @param notes what could not be computed, one line each
 */
public record Apportioned(Outcome outcome, List<Integer> places, List<SharedValue> values, List<String> notes) {
    /** Copies the lists. */
    public Apportioned {
        places = List.copyOf(places);
        values = List.copyOf(values);
        notes = List.copyOf(notes);
    }

    private Stream<SharedValue> of(int place, SharedValue.What what, int state) {
        return values.stream().filter(v -> v.place() == place && v.what() == what && v.state() == state);
    }

    /** The highest value of bounds and extremes, which is the one that guideline values are compared with first. */
    public Optional<SharedValue> highest(int place, SharedValue.What what, int state) {
        return of(place, what, state)
                .max(Comparator.comparingDouble(v -> v.parts().value()));
    }

    /** The lowest. */
    public Optional<SharedValue> lowest(int place, SharedValue.What what, int state) {
        return of(place, what, state)
                .min(Comparator.comparingDouble(v -> v.parts().value()));
    }

    /** The highest values at a place, in the order in which they are shown: water by flow state, whole then filtered, then bed. */
    public List<SharedValue> shown(int place) {
        List<SharedValue> shown = new ArrayList<>();
        for (SharedValue.What what : SharedValue.What.values()) {
            for (int s = SharedValue.WHOLE_YEAR; s < outcome.scenario().states().size(); s++) {
                highest(place, what, s).ifPresent(shown::add);
            }
        }
        return shown;
    }

    /** How far sites and background are from adding up to a value, at worst, relative to it [-]. */
    public double worstSum() {
        return values.stream()
                .filter(v -> v.parts().value() > 0)
                .mapToDouble(v -> Math.abs(v.parts().sum() - v.parts().value())
                        / v.parts().value())
                .max()
                .orElse(0);
    }
}
