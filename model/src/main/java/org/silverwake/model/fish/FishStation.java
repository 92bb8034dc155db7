// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * Fish measured in one reach. Of each trophic level: the geometric mean in the middle, and a range that holds every fish and at
 * least a stated factor about the middle, since a few fish do not tell of all.
 */
final class FishStation {
    private final int reach;
    private final double factor;
    private final Map<TrophicLevel, List<Double>> contents = new EnumMap<>(TrophicLevel.class);

    FishStation(int reach, double factor) {
        this.reach = reach;
        this.factor = factor;
    }

    void add(MeasuredFish fish) {
        contents.computeIfAbsent(fish.level(), l -> new ArrayList<>()).add(fish.content());
    }

    int reach() {
        return reach;
    }

    /** Number of fish of a level. */
    int count(TrophicLevel level) {
        return contents.getOrDefault(level, List.of()).size();
    }

    /**
     * What fish of a level hold here: measured, or told from those of the other level by the ratio of the bioaccumulation
     * factors, the stated factor then acting twice.
     *
     * @param toOther bioaccumulation factor of the level over that of the other one [-]
     */
    FishContent content(TrophicLevel level, double toOther) {
        boolean own = contents.containsKey(level);
        List<Double> measured =
                own ? contents.get(level) : contents.values().iterator().next();
        double ratio = own ? 1 : toOther;
        double spread = own ? factor : factor * factor;
        double logs = 0;
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (double content : measured) {
            logs += StrictMath.log(content);
            low = Math.min(low, content);
            high = Math.max(high, content);
        }
        double middle = StrictMath.exp(logs / measured.size());
        return new FishContent(
                ratio * Math.min(low, middle / spread), ratio * middle, ratio * Math.max(high, middle * spread));
    }
}
