// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the places where a label could go. Page units, y down. */
public final class Spots {
    private static final double GAP = 2.5;
    private static final double[] RINGS = {10, 18, 28, 40, 56, 75};
    /** Of having a leader at all, and of each point of its length. Chosen by looking at maps. */
    private static final double LEADER_COST = 5;

    /** Shorter leaders are not drawn: the name stands beside its symbol. */
    private static final double SHORTEST = 2;

    private static final double LENGTH_COST = 0.35;
    /** From this length on a leader costs twice as much for each point. */
    private static final double LONG = 25;

    private static final int DIRECTIONS = 24;
    /** From this sine or cosine on [1 / it], a label hangs by its end and not by its middle: 42 degrees off the axis. */
    private static final double SLANT = 1.5;

    /** How far a line may bend under its name, as a share of the name's height. */
    private static final double MAX_SAG = 1.6;
    /** Least share of its length that a line under a name must cover as the crow flies. */
    private static final double LEAST_STRAIGHT = 0.75;

    private Spots() {}

    /** Around a point whose symbol has the same size both ways, half of it {@code radius}. */
    public static List<Spot> around(double x, double y, double radius, double width, double height) {
        return around(new Box(x, y, radius, radius, 0), width, height);
    }

    /**
     * Around an upright symbol: right, left, above, below and the corners close to it, then rings farther out with a leader from its
     * edge.
     */
    public static List<Spot> around(Box symbol, double width, double height) {
        List<Spot> spots = new ArrayList<>();
        double x = symbol.x();
        double y = symbol.y();
        double dx = symbol.halfWidth() + GAP + width / 2;
        double dy = symbol.halfHeight() + GAP + height / 2;
        double[][] close = {
            {dx, 0, 0},
            {-dx, 0, 2},
            {dx, -dy * 0.6, 1},
            {dx, dy * 0.6, 1.5},
            {-dx, -dy * 0.6, 3},
            {-dx, dy * 0.6, 3},
            {0, -dy, 3},
            {0, dy, 3.5},
            {width / 4, -dy, 3.5},
            {width / 4, dy, 4},
            {-width / 4, -dy, 4},
            {-width / 4, dy, 4}
        };
        for (double[] place : close) {
            Box box = new Box(x + place[0], y + place[1], width / 2, height / 2, 0);
            spots.add(new Spot(box, place[2], Optional.of(symbol), Optional.empty()));
        }
        for (double ring : RINGS) {
            for (int k = 0; k < DIRECTIONS; k++) {
                double direction = 2 * Math.PI * k / DIRECTIONS;
                spots.add(hung(symbol, direction, ring, width, height));
                spots.add(around(symbol, direction, ring, width, height));
            }
        }
        return spots;
    }

    /** With the nearest corner or side of the label at the end of a leader of about a length. */
    private static Spot hung(Box symbol, double direction, double length, double width, double height) {
        double right = Math.cos(direction);
        double down = Math.sin(direction);
        Spot.Anchor end = new Spot.Anchor(
                symbol.x() + right * (symbol.halfWidth() + length), symbol.y() + down * (symbol.halfHeight() + length));
        double x = end.x() + toSide(right) * width / 2;
        double y = end.y() + toSide(down) * height / 2;
        return joined(symbol, new Box(x, y, width / 2, height / 2, 0), end);
    }

    /** With its middle on an oval around the symbol, the leader to its nearest point. */
    private static Spot around(Box symbol, double direction, double length, double width, double height) {
        double x = symbol.x() + Math.cos(direction) * (symbol.halfWidth() + GAP + length + width / 2);
        double y = symbol.y() + Math.sin(direction) * (symbol.halfHeight() + GAP + length + height / 2);
        Box box = new Box(x, y, width / 2, height / 2, 0);
        return joined(symbol, box, box.nearest(new Spot.Anchor(symbol.x(), symbol.y())));
    }

    private static Spot joined(Box symbol, Box label, Spot.Anchor end) {
        Spot.Leader leader = Spot.Leader.between(symbol, end);
        double cost = LEADER_COST + LENGTH_COST * (leader.length() + Math.max(0, leader.length() - LONG));
        return new Spot(label, cost, Optional.of(symbol), Optional.of(leader).filter(line -> line.length() > SHORTEST));
    }

    private static double toSide(double part) {
        return Math.max(-1, Math.min(1, SLANT * part));
    }

    /**
     * Along a line, above and below it, wherever it is straight enough, the middle first.
     *
     * @param xs at least two points
     * @param ys as many
     * @param halfStroke half the width the line is drawn with
     */
    public static List<Spot> along(double[] xs, double[] ys, double halfStroke, double width, double height) {
        double[] chainage = new double[xs.length];
        for (int k = 1; k < xs.length; k++) {
            chainage[k] = chainage[k - 1] + Math.hypot(xs[k] - xs[k - 1], ys[k] - ys[k - 1]);
        }
        double length = chainage[xs.length - 1];
        List<Spot> spots = new ArrayList<>();
        for (double start = 0; start + width <= length; start += Math.max(width / 4, length / 200)) {
            addAt(spots, xs, ys, chainage, start, halfStroke, width, height);
        }
        return spots;
    }

    private static void addAt(
            List<Spot> spots,
            double[] xs,
            double[] ys,
            double[] chainage,
            double start,
            double halfStroke,
            double width,
            double height) {
        double[] from = at(xs, ys, chainage, start);
        double[] to = at(xs, ys, chainage, start + width);
        double chord = Math.hypot(to[0] - from[0], to[1] - from[1]);
        if (chord < LEAST_STRAIGHT * width) {
            return;
        }
        double ux = (to[0] - from[0]) / chord;
        double uy = (to[1] - from[1]) / chord;
        double low = 0;
        double high = 0;
        for (int k = 0; k < xs.length; k++) {
            if (chainage[k] > start && chainage[k] < start + width) {
                double off = -(xs[k] - from[0]) * uy + (ys[k] - from[1]) * ux;
                low = Math.min(low, off);
                high = Math.max(high, off);
            }
        }
        if (high - low > MAX_SAG * height) {
            return;
        }
        double angle = Math.atan2(uy, ux);
        double upright = Math.abs(angle) > Math.PI / 2 ? angle - Math.signum(angle) * Math.PI : angle;
        double length = chainage[chainage.length - 1];
        double cost = (high - low) / height * 3
                + 4 * Math.abs(start + width / 2 - length / 2) / length
                + 6 * Math.abs(Math.sin(upright));
        double midX = (from[0] + to[0]) / 2;
        double midY = (from[1] + to[1]) / 2;
        double clear = halfStroke + GAP + height / 2;
        for (double side : new double[] {low - clear, high + clear}) {
            Box box = new Box(midX - side * uy, midY + side * ux, width / 2, height / 2, upright);
            spots.add(new Spot(box, cost));
        }
    }

    private static double[] at(double[] xs, double[] ys, double[] chainage, double where) {
        int k = 1;
        while (k < xs.length - 1 && chainage[k] < where) {
            k++;
        }
        double span = chainage[k] - chainage[k - 1];
        double share = span > 0 ? (where - chainage[k - 1]) / span : 0;
        return new double[] {xs[k - 1] + share * (xs[k] - xs[k - 1]), ys[k - 1] + share * (ys[k] - ys[k - 1])};
    }
}
