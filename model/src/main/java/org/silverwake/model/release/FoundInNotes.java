// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** Collects what is told of notes, and knows the common tests of one number. */
final class FoundInNotes {
    private static final double PERCENT = 100;

    private final List<NoteFinding> found = new ArrayList<>();

    List<NoteFinding> all() {
        return List.copyOf(found);
    }

    void share(String note, double value) {
        if (!(value >= 0 && value <= 1)) {
            refuse(note, value * PERCENT, "%", "give 0 to 100 %");
        }
    }

    void notBelow(String note, double value, String unit) {
        if (!(value >= 0)) {
            refuse(note, value, unit, "give 0 or more");
        }
    }

    void usual(String note, double number, String unit, double factor, Assumed published) {
        Spread range = published.value().map(v -> v * factor);
        if (!range.holds(number)) {
            found.add(NoteFinding.outside(note, number, unit, range, published.source()));
        }
    }

    void refuse(String note, double number, String unit, String words) {
        found.add(NoteFinding.refused(note, number, unit, words));
    }

    void refuse(String note, double number, String unit, String words, Assumed published, double factor) {
        Spread range = published.value().map(v -> v * factor);
        found.add(new NoteFinding(
                note, OptionalDouble.of(number), unit, Optional.of(range), published.source(), true, words));
    }

    void missing(String note, String words) {
        found.add(NoteFinding.missing(note, words));
    }
}
