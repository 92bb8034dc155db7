// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.List;
import java.util.Locale;

/**
 * The looks a reach can have, from far above a guideline to no answer. They differ in lightness, width and dash as well as
 * hue, so that they can be told apart in grey and with any color vision. Own choice: a ramp of rising lightness (CIE L*
 * 5, 27, 44, 60) from plum to orange, a thin pale blue (L* 73) for "below", which must not look like a promise, and greys for no
 * answer, which are told from each other by their dashes.
 */
public enum ReachShade {
    FAR_ABOVE("#1d0824", 6.4),
    ABOVE("#7a1248", 5.2),
    /** May be above, and the low estimate already is. */
    LIKELY_ABOVE("#bb3640", 4.2, 13.0, 2.5),
    MAY_BE_ABOVE("#d9782f", 3.4, 6.0, 2.5),
    BELOW("#92b6e2", 2.2),
    NOT_ASSESSED("#7c7c7c", 1.6, 4.0, 3.0),
    NO_WATER("#9a9a9a", 1.6, 0.1, 4.0),
    /** The value on the map is not one of the reach's class. */
    DOES_NOT_APPLY("#8c8c8c", 1.6, 10.0, 3.0, 2.0, 3.0);

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
