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
    private static final String ROUND = "round";
    private static final Pattern COLOR = Pattern.compile("#[0-9a-f]{6}");

    private static final double THREAD = 0.3;
    /** A first dash shorter than this part of the width is a dot [-]. */
    private static final double DOT = 0.5;

    /**
     * One line of those that a class is drawn by, the lowest first.
     *
     * @param width [points], > 0
     * @param dash lengths of dashes and gaps in turn [points]; empty for an unbroken line
     * @param cap how its ends look: round or butt
     */
    public record Stroke(double width, List<Double> dash, String cap) {}

    /** Copies and checks. */
    public LineClass {
        dash = List.copyOf(dash);
        if (!COLOR.matcher(color).matches() || !(width > 0)) {
            throw new IllegalArgumentException("line class " + key + ": " + color + ", " + width
                    + " is not allowed; give #rrggbb and a width above 0");
        }
    }

    /** Under a dashed line a thin unbroken one, so that the river does not fall apart, then the line itself. */
    public List<Stroke> strokes() {
        boolean dotted = !dash.isEmpty() && dash.get(0) < DOT * width;
        Stroke line = new Stroke(width, dash, dash.isEmpty() || dotted ? ROUND : "butt");
        return dash.isEmpty() || dotted ? List.of(line) : List.of(new Stroke(width * THREAD, List.of(), ROUND), line);
    }
}
