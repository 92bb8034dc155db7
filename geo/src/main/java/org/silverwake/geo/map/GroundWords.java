// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.EnumMap;
import java.util.Map;

/**
 * Words for what a map lies upon, and for ways over it. In patterns, {0} and {1} are filled in.
 *
 * @param kinds legend of each kind of layer; of {@link BackdropLayer.Kind#OTHER} the layer's own name is used
 * @param relief legend of shaded slopes; {0} is what heights were multiplied by
 * @param straight beside the scale bar; {0} is a length, {1} the times it takes
 * @param onFoot {0} is a time
 * @param byBoat {0} is a time
 * @param longer beside the scale bar: that ways are longer than straight lines
 * @param hours a time; {0} is hours
 * @param minutes a time; {0} is minutes
 * @param hoursMinutes a time; {0} is hours, {1} minutes
 * @param equator on the small globe
 */
public record GroundWords(
        Map<BackdropLayer.Kind, String> kinds,
        String relief,
        String straight,
        String onFoot,
        String byBoat,
        String longer,
        String hours,
        String minutes,
        String hoursMinutes,
        String equator) {
    /** Copies the map; every kind but OTHER needs a name. */
    public GroundWords {
        kinds = Map.copyOf(kinds);
        for (BackdropLayer.Kind kind : BackdropLayer.Kind.values()) {
            if (kind != BackdropLayer.Kind.OTHER && !kinds.containsKey(kind)) {
                throw new IllegalArgumentException("no word for " + kind);
            }
        }
    }

    /** English. */
    public static GroundWords english() {
        Map<BackdropLayer.Kind, String> kinds = new EnumMap<>(BackdropLayer.Kind.class);
        kinds.put(BackdropLayer.Kind.ROADS, "Road");
        kinds.put(BackdropLayer.Kind.LAKES, "Lake");
        kinds.put(BackdropLayer.Kind.SETTLEMENTS, "Settlement");
        kinds.put(BackdropLayer.Kind.FOREST, "Forest");
        kinds.put(BackdropLayer.Kind.BORDERS, "Border");
        return new GroundWords(
                kinds,
                "Slopes, lit from the northwest, heights x {0}",
                "{0} in a straight line: about {1}.",
                "{0} on foot",
                "{0} by boat",
                "Paths and rivers wind: the way is longer.",
                "{0} h",
                "{0} min",
                "{0} h {1} min",
                "Equator");
    }
}
