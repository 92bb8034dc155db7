// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Names reaches after the user's features: the feature's id where it gave one reach, else the id with ".1", ".2" ... in
 * flow direction. Always unique.
 */
public final class ReachIds {
    private ReachIds() {}

    /** Ids in the order of the parts. */
    public static List<String> of(List<ReachPart> parts) {
        Map<String, List<Integer>> byFeature = new LinkedHashMap<>();
        for (int i = 0; i < parts.size(); i++) {
            byFeature
                    .computeIfAbsent(parts.get(i).featureId(), id -> new ArrayList<>())
                    .add(i);
        }
        String[] ids = new String[parts.size()];
        Set<String> used = new HashSet<>(byFeature.keySet());
        byFeature.forEach((feature, reaches) -> {
            if (reaches.size() == 1) {
                ids[reaches.get(0)] = feature;
                return;
            }
            reaches.sort(downstream(parts));
            int number = 1;
            for (int reach : reaches) {
                while (!used.add(feature + "." + number)) {
                    number++;
                }
                ids[reach] = feature + "." + number;
            }
        });
        return List.of(ids);
    }

    private static Comparator<Integer> downstream(List<ReachPart> parts) {
        return Comparator.comparingInt((Integer i) -> parts.get(i).feature())
                .thenComparingInt(i -> parts.get(i).part())
                .thenComparingDouble(i -> parts.get(i).flipped()
                        ? -parts.get(i).fromMeters()
                        : parts.get(i).fromMeters());
    }
}
