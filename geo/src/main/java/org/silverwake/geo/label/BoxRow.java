// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

/** The part of a box in a row of cells: how far it reaches, and between which columns it fills the row from top to bottom. Page units, y down. */
final class BoxRow {
    private final Box box;
    private final double cos;
    private final double sin;
    private double west;
    private double east;
    private double innerWest;
    private double innerEast;

    BoxRow(Box box) {
        this.box = box;
        cos = Math.cos(box.angle());
        sin = Math.sin(box.angle());
    }

    /** Looks at a row that the box reaches. */
    void enter(double top, double height) {
        west = Double.POSITIVE_INFINITY;
        east = Double.NEGATIVE_INFINITY;
        innerWest = Double.NEGATIVE_INFINITY;
        innerEast = Double.POSITIVE_INFINITY;
        edge(top - box.y());
        edge(top + height - box.y());
        for (int k = 0; k < 4; k++) {
            double u = k % 2 == 0 ? box.halfWidth() : -box.halfWidth();
            double v = k / 2 == 0 ? box.halfHeight() : -box.halfHeight();
            double y = u * sin + v * cos;
            if (y >= top - box.y() && y <= top + height - box.y()) {
                reach(u * cos - v * sin);
            }
        }
    }

    /** Where a line across the page at a height above the box's middle enters and leaves the box. */
    private void edge(double y) {
        double from = Double.NEGATIVE_INFINITY;
        double to = Double.POSITIVE_INFINITY;
        if (cos != 0) {
            from = -box.halfWidth() / Math.abs(cos) - y * sin / cos;
            to = box.halfWidth() / Math.abs(cos) - y * sin / cos;
        }
        if (sin != 0) {
            from = Math.max(from, y * cos / sin - box.halfHeight() / Math.abs(sin));
            to = Math.min(to, y * cos / sin + box.halfHeight() / Math.abs(sin));
        }
        boolean beyond = sin == 0 && Math.abs(y) > box.halfHeight() || cos == 0 && Math.abs(y) > box.halfWidth();
        if (beyond || from > to) {
            innerEast = Double.NEGATIVE_INFINITY;
            return;
        }
        reach(from);
        reach(to);
        innerWest = Math.max(innerWest, box.x() + from);
        innerEast = Math.min(innerEast, box.x() + to);
    }

    private void reach(double x) {
        west = Math.min(west, box.x() + x);
        east = Math.max(east, box.x() + x);
    }

    /** How far the box reaches in this row; east of {@link #east} where it does not reach it. */
    double west() {
        return west;
    }

    double east() {
        return east;
    }

    /** Whether a cell of this row lies wholly in the box. */
    boolean holds(double from, double to) {
        return innerWest <= from && to <= innerEast;
    }
}
