// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.silverwake.model.quantity.Dimension;

/** Every key that a scenario may hold. The reader, its messages and the reference page all take it from here. */
public final class KeyTable {
    /** Columns of the river layer that may be mapped; the value is what they measure. */
    private static final Map<String, Dimension> RIVER_COLUMNS = Collections.unmodifiableMap(new TreeMap<>(Map.ofEntries(
            Map.entry("drainage-area", Dimension.AREA),
            Map.entry("local-area", Dimension.AREA),
            Map.entry("slope", Dimension.SLOPE),
            Map.entry("velocity", Dimension.VELOCITY),
            Map.entry("depth", Dimension.LENGTH),
            Map.entry("width", Dimension.LENGTH),
            Map.entry("split", Dimension.DIMENSIONLESS),
            Map.entry("kind", Dimension.DIMENSIONLESS),
            Map.entry("water-body", Dimension.DIMENSIONLESS),
            Map.entry("water-body-area", Dimension.AREA),
            Map.entry("water-body-depth", Dimension.LENGTH),
            Map.entry("elevation-upper", Dimension.LENGTH),
            Map.entry("elevation-lower", Dimension.LENGTH),
            Map.entry("discharge", Dimension.DISCHARGE),
            Map.entry("headwater-discharge", Dimension.DISCHARGE),
            Map.entry("bed-content", Dimension.MASS_CONTENT),
            Map.entry("manning-n", Dimension.DIMENSIONLESS))));

    /** Those of them that may be mapped once per flow state. */
    public static final Set<String> BY_STATE = Set.of("discharge", "headwater-discharge", "velocity", "depth", "width");

    /** Those of them that hold text. */
    static final Set<String> OF_TEXT = Set.of("kind", "water-body");

    private static final List<Key> ALL = KeyList.build();

    private KeyTable() {}

    /** Columns of the river layer that may be mapped, by name, and what they measure. */
    public static Map<String, Dimension> riverColumns() {
        return RIVER_COLUMNS;
    }

    /** All keys, settings included, in the order of the reference page. */
    public static List<Key> all() {
        return ALL;
    }

    /** The key of a path pattern. */
    static Key require(String pattern) {
        return ALL.stream()
                .filter(k -> k.path().equals(pattern))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no key " + pattern));
    }

    /** Whether the path pattern is itself a key, not only the start of some. */
    public static boolean isKey(String pattern) {
        return ALL.stream().anyMatch(k -> k.path().equals(pattern));
    }

    /** Names that may stand below a path pattern; {@code *} among them where the user chooses. */
    static Set<String> children(String pattern) {
        String prefix = pattern.isEmpty() ? "" : pattern + ".";
        Set<String> names = new LinkedHashSet<>();
        for (Key key : ALL) {
            if (key.path().startsWith(prefix)) {
                names.add(key.path().substring(prefix.length()).split("\\.")[0]);
            }
        }
        return names;
    }
}
