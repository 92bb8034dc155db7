// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

/** What is left of a stretch of line when it is cut, as shares of its length from its beginning [-]. By Liang and Barsky's clipping. */
final class Span {
    private double from;
    private double to;

    /** The whole stretch. */
    void whole() {
        from = 0;
        to = 1;
    }

    /** Keeps what has a coordinate between two limits, where the coordinate begins at one value and changes by another. */
    void cut(double begin, double change, double low, double high) {
        if (change > 0) {
            from = Math.max(from, (low - begin) / change);
            to = Math.min(to, (high - begin) / change);
        } else if (change < 0) {
            from = Math.max(from, (high - begin) / change);
            to = Math.min(to, (low - begin) / change);
        } else if (begin <= low || begin >= high) {
            to = from;
        }
    }

    boolean isEmpty() {
        return to <= from;
    }

    double from() {
        return from;
    }

    double to() {
        return to;
    }

    /** Share of the stretch that is left [-]. */
    double share() {
        return Math.max(0, to - from);
    }
}
