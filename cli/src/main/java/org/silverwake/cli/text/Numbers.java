// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.text;

import java.math.BigDecimal;
import java.math.MathContext;

/** Numbers for tables: six significant digits, a point, no grouping. */
public final class Numbers {
    private static final MathContext SIX = new MathContext(6);
    private static final int SMALLEST_PLAIN = -6;
    private static final int LARGEST_PLAIN = 9;

    private Numbers() {}

    /** A number as text; empty where it is not finite. */
    public static String text(double value) {
        if (!Double.isFinite(value)) {
            return "";
        }
        if (value == 0) {
            return "0";
        }
        BigDecimal rounded = new BigDecimal(value).round(SIX).stripTrailingZeros();
        int exponent = rounded.precision() - rounded.scale() - 1;
        return exponent < SMALLEST_PLAIN || exponent > LARGEST_PLAIN ? rounded.toString() : rounded.toPlainString();
    }

    /** Degrees with six decimals, about 0.1 m; empty where there are none. */
    public static String degrees(double value) {
        return Double.isFinite(value) ? String.format(java.util.Locale.ROOT, "%.6f", value) : "";
    }

    /** A number rounded to so many significant digits, for people. */
    public static String shown(double value, int digits) {
        if (value == 0 || !Double.isFinite(value)) {
            return Double.isFinite(value) ? "0" : "";
        }
        return new BigDecimal(value)
                .round(new MathContext(digits))
                .stripTrailingZeros()
                .toPlainString();
    }
}
