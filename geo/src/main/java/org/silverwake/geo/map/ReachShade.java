// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.List;
import java.util.Locale;

/**
 * The looks a reach can have, from far above a guideline to no answer. They differ in lightness, width and dash as well as
 * hue, so that they can be told apart in grey and with any color vision. Own choice: a ramp of falling lightness (CIE L*
 * 3, 24, 36, 49) from plum to orange, a thin blue (61) for "below", which must not look like a promise, and a grey (75) for no
 * answer, told apart by dash. Steps are at least 12, and the five answers have a contrast of at least 3 to paper (WCAG 2.2, 1.4.11).
 */
public enum ReachShade {
    FAR_ABOVE("#150519", 6.4),
    ABOVE("#6e1044", 5.2),
    /** May be above, and the low estimate already is. */
    LIKELY_ABOVE("#a3213e", 4.2, 13.0, 2.5),
    MAY_BE_ABOVE("#b85a14", 3.4, 6.0, 2.5),
    BELOW("#6497ce", 2.2),
    NOT_ASSESSED("#b8b8b8", 2, 4.0, 3.0),
    NO_WATER("#b8b8b8", 2, 0.1, 4.0),
    /** The value on the map is not one of the reach's class. */
    DOES_NOT_APPLY("#b8b8b8", 2, 10.0, 3.0, 2.0, 3.0);

    private final String color;
    private final double width;
    private final List<Double> dash;

    ReachShade(String color, double width, Double... dash) {
        this.color = color;
        this.width = width;
        this.dash = List.of(dash);
    }

    /** The value of the class column in a layer, such as {@code may-be-above}. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** This look with the words of a legend. */
    public LineClass withLegend(String legend) {
        return new LineClass(key(), legend, color, width, dash);
    }
}
