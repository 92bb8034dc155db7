// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.model.release.Spread.Level;

/** Hands out assumed numbers at chosen levels, and remembers which were asked for. */
final class Assumptions {
    /** More assumptions than these have their range shown, but are not combined with the others. */
    private static final int COMBINED = 8;

    private final Map<String, Level> levels;
    private final Map<String, Assumed> asked = new LinkedHashMap<>();

    Assumptions(Map<String, Level> levels) {
        this.levels = levels;
    }

    /** The number at its level, the middle where none is chosen. */
    double ask(Assumed assumed) {
        asked.put(assumed.what(), assumed);
        return assumed.value().at(levels.getOrDefault(assumed.what(), Level.MIDDLE));
    }

    /** A noted number; one whose standard deviation is stated has the range that it means. */
    double noted(String what, Noted noted, String unit) {
        double half = Reconciliation.IMPROBABLE * noted.sd().orElse(0);
        Spread range = new Spread(Math.max(0, noted.value() - half), noted.value(), noted.value() + half);
        return half == 0 ? noted.value() : ask(new Assumed(what, range, unit, "noted with its standard deviation"));
    }

    List<Assumed> asked() {
        return List.copyOf(asked.values());
    }

    /** Every combination of low and high of what was asked for. Outcomes are monotone in each, so extremes are among them. */
    List<Map<String, Level>> corners() {
        List<String> open = asked.values().stream()
                .filter(a -> a.value().hasWidth())
                .map(Assumed::what)
                .limit(COMBINED)
                .toList();
        List<Map<String, Level>> corners = new ArrayList<>();
        for (int bits = 0; bits < 1 << open.size(); bits++) {
            Map<String, Level> corner = new LinkedHashMap<>();
            for (int k = 0; k < open.size(); k++) {
                corner.put(open.get(k), (bits >> k & 1) == 0 ? Level.LOW : Level.HIGH);
            }
            corners.add(corner);
        }
        return corners;
    }
}
