// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import java.awt.geom.Line2D;
import java.util.Optional;

/**
 * A place where a label could go.
 *
 * @param box what it would cover
 * @param cost how much worse than the best place [page units], >= 0
 * @param symbol of the point that it names, upright; empty where it names no point
 * @param leader the line that joins it to its symbol, where it stands far off
 */
public record Spot(Box box, double cost, Optional<Box> symbol, Optional<Leader> leader) {
    /** A place without a symbol. */
    public Spot(Box box, double cost) {
        this(box, cost, Optional.empty(), Optional.empty());
    }

    /** Between a leader and its symbol or label [page units]. */
    private static final double OFF = 1;

    /** A point on the page. */
    public record Anchor(double x, double y) {}

    /** A line from the edge of an upright symbol towards its label. */
    public record Leader(double fromX, double fromY, double toX, double toY) {
        /** Away from the symbol's middle; it begins a little off the symbol and ends a little before the label. */
        static Leader between(Box symbol, Anchor label) {
            double dx = label.x() - symbol.x();
            double dy = label.y() - symbol.y();
            double from =
                    Math.min((symbol.halfWidth() + OFF) / Math.abs(dx), (symbol.halfHeight() + OFF) / Math.abs(dy));
            double to = Math.max(from, 1 - OFF / Math.hypot(dx, dy));
            return new Leader(
                    symbol.x() + from * dx, symbol.y() + from * dy, symbol.x() + to * dx, symbol.y() + to * dy);
        }

        /** How long it is, in the unit of the page. */
        public double length() {
            return Math.hypot(toX - fromX, toY - fromY);
        }

        double lengthInside(Box box) {
            return box.lengthInside(fromX, fromY, toX, toY);
        }

        /** Whether two leaders cross or touch. */
        boolean crosses(Leader other) {
            return Line2D.linesIntersect(fromX, fromY, toX, toY, other.fromX, other.fromY, other.toX, other.toY);
        }
    }
}
