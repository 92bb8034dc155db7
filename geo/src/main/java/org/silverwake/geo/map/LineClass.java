// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.List;
import java.util.regex.Pattern;

/**
 * How one class of reaches is drawn, on maps and in layers alike.
 *
 * @param key the value of the class column that names it
 * @param legend what the legend says of it
 * @param color as #rrggbb
 * @param width [points], > 0
 * @param dash lengths of dashes and gaps in turn [points]; empty for an unbroken line
 */
public record LineClass(String key, String legend, String color, double width, List<Double> dash) {
    private static final Pattern COLOR = Pattern.compile("#[0-9a-f]{6}");

    /** Copies and checks. */
    public LineClass {
        dash = List.copyOf(dash);
        if (!COLOR.matcher(color).matches() || !(width > 0)) {
            throw new IllegalArgumentException("line class " + key + ": " + color + ", " + width
                    + " is not allowed; give #rrggbb and a width above 0");
        }
    }
}
