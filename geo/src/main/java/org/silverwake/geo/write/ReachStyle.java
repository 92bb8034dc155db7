// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.List;
import org.silverwake.geo.map.LineClass;

/**
 * A style of a layer of reaches: one look per value of a column, as on the maps.
 *
 * @param name by which it is chosen; all different in one layer
 * @param column the text column that holds the keys of the classes
 * @param classes the classes, in the order of the legend
 */
public record ReachStyle(String name, String column, List<LineClass> classes) {
    /** Copies the list. */
    public ReachStyle {
        classes = List.copyOf(classes);
    }
}
