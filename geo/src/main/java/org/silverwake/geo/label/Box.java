// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

/**
 * A rectangle, turned or not. Page units, y down.
 *
 * @param x middle
 * @param y middle
 * @param halfWidth half its side along the text, >= 0
 * @param halfHeight half its side across, >= 0
 * @param angle how far it is turned, clockwise as y runs down [rad]
 */
public record Box(double x, double y, double halfWidth, double halfHeight, double angle) {
    /** Upright, from its upper left corner. */
    public static Box upright(double left, double top, double width, double height) {
        return new Box(left + width / 2, top + height / 2, width / 2, height / 2, 0);
    }

    /** The same, larger on all sides. */
    public Box grown(double margin) {
        return grown(margin, margin);
    }

    /** The same, larger on both ends along the text and on both sides across. */
    public Box grown(double along, double across) {
        return new Box(x, y, halfWidth + along, halfHeight + across, angle);
    }

    /** Whether the two share more than an edge. By the separating axis theorem. */
    public boolean overlaps(Box other) {
        double reach = Math.hypot(halfWidth, halfHeight) + Math.hypot(other.halfWidth, other.halfHeight);
        if (Math.hypot(other.x - x, other.y - y) >= reach) {
            return false;
        }
        return !separated(this, other, angle)
                && !separated(this, other, angle + Math.PI / 2)
                && !separated(this, other, other.angle)
                && !separated(this, other, other.angle + Math.PI / 2);
    }

    /** Whether it lies wholly within an upright box. */
    public boolean isWithin(Box upright) {
        double right = halfSpan(0);
        double down = halfSpan(Math.PI / 2);
        return Math.abs(x - upright.x) + right <= upright.halfWidth
                && Math.abs(y - upright.y) + down <= upright.halfHeight;
    }

    /** The point of an upright box that lies nearest to another point. */
    public Spot.Anchor nearest(Spot.Anchor to) {
        return new Spot.Anchor(
                Math.max(x - halfWidth, Math.min(x + halfWidth, to.x())),
                Math.max(y - halfHeight, Math.min(y + halfHeight, to.y())));
    }

    /** How much of a stretch of line from one point to another lies inside [page units]. By Liang and Barsky's clipping. */
    public double lengthInside(double fromX, double fromY, double toX, double toY) {
        double cos = Math.cos(angle);
        double sin = Math.sin(angle);
        double u = (fromX - x) * cos + (fromY - y) * sin;
        double v = -(fromX - x) * sin + (fromY - y) * cos;
        double du = (toX - fromX) * cos + (toY - fromY) * sin;
        double dv = -(toX - fromX) * sin + (toY - fromY) * cos;
        double enter = Math.max(entry(u, du, halfWidth), entry(v, dv, halfHeight));
        double leave = Math.min(exit(u, du, halfWidth), exit(v, dv, halfHeight));
        return Math.max(0, Math.min(1, leave) - Math.max(0, enter)) * Math.hypot(du, dv);
    }

    private static double entry(double u, double du, double half) {
        if (du == 0) {
            return Math.abs(u) < half ? Double.NEGATIVE_INFINITY : Double.POSITIVE_INFINITY;
        }
        return (-half * Math.signum(du) - u) / du;
    }

    private static double exit(double u, double du, double half) {
        if (du == 0) {
            return Math.abs(u) < half ? Double.POSITIVE_INFINITY : Double.NEGATIVE_INFINITY;
        }
        return (half * Math.signum(du) - u) / du;
    }

    private static boolean separated(Box a, Box b, double axis) {
        double distance = Math.abs((b.x - a.x) * Math.cos(axis) + (b.y - a.y) * Math.sin(axis));
        return distance >= a.halfSpan(axis) + b.halfSpan(axis);
    }

    /** Half of how far it reaches along a direction [rad]. */
    double halfSpan(double axis) {
        return halfWidth * Math.abs(Math.cos(axis - angle)) + halfHeight * Math.abs(Math.sin(axis - angle));
    }
}
