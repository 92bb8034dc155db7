// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Color;

/** How far colors are apart for the eye. */
final class Contrast {
    private Contrast() {}

    /** Contrast ratio of two colors [-], 1 to 21: WCAG 2.2, "contrast ratio" and "relative luminance". */
    static double ratio(Color a, Color b) {
        double one = luminance(a) + 0.05;
        double other = luminance(b) + 0.05;
        return Math.max(one, other) / Math.min(one, other);
    }

    /** Relative luminance of an sRGB color [-], 0 to 1. */
    static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int channel) {
        double share = channel / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
