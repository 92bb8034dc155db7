// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Color;

/** What eyes and copiers make of colors. */
final class Looks {
    /** Largest linear or display value of a channel as 8 bits. */
    private static final double FULL = 255;

    private Looks() {}

    /** One display channel made linear (IEC 61966-2-1, sRGB). */
    private static double linear(int channel) {
        double c = channel / FULL;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static int display(double linear) {
        double c = Math.max(0, Math.min(1, linear));
        double shown = c <= 0.0031308 ? 12.92 * c : 1.055 * Math.pow(c, 1 / 2.4) - 0.055;
        return (int) Math.round(FULL * shown);
    }

    /** Relative luminance [-], 0 to 1 (WCAG 2.2, "relative luminance"; the second row of sRGB's matrix). */
    static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    /** Contrast ratio [-], 1 to 21 (WCAG 2.2, "contrast ratio"). */
    static double contrast(Color one, Color other) {
        double a = luminance(one) + 0.05;
        double b = luminance(other) + 0.05;
        return Math.max(a, b) / Math.min(a, b);
    }

    /** Lightness L* [-], 0 to 100 (CIE 15:2004, 1976 formula). */
    static double lightness(Color color) {
        double y = luminance(color);
        double cube = y > 216.0 / 24389 ? Math.cbrt(y) : (24389.0 / 27 * y + 16) / 116;
        return 116 * cube - 16;
    }

    /** How eyes without long-wave cones see a color. */
    static Color protanope(Color color) {
        return seen(color, (l, m, s) -> new double[] {2.02344 * m - 2.52581 * s, m, s});
    }

    /** How eyes without middle-wave cones see a color. */
    static Color deuteranope(Color color) {
        return seen(color, (l, m, s) -> new double[] {l, 0.494207 * l + 1.24827 * s, s});
    }

    private interface Cones {
        double[] without(double l, double m, double s);
    }

    /**
     * Vienot, Brettel & Mollon (1999), Digital video colourmaps for checking the legibility of displays by dichromats, Color Research and
     * Application 24(4): the matrix from linear RGB to cone excitations and the two reductions; coefficients as they go round in public code, the
     * paper's page not seen.
     */
    private static Color seen(Color color, Cones cones) {
        double r = linear(color.getRed());
        double g = linear(color.getGreen());
        double b = linear(color.getBlue());
        double[] lms = cones.without(
                17.8824 * r + 43.5161 * g + 4.11935 * b,
                3.45565 * r + 27.1554 * g + 3.86714 * b,
                0.0299566 * r + 0.184309 * g + 1.46709 * b);
        return new Color(
                display(0.0809444479 * lms[0] - 0.130504409 * lms[1] + 0.116721066 * lms[2]),
                display(-0.0102485335 * lms[0] + 0.0540193266 * lms[1] - 0.113614708 * lms[2]),
                display(-0.000365296938 * lms[0] - 0.00412161469 * lms[1] + 0.693511405 * lms[2]));
    }
}
