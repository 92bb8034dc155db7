// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.silverwake.cli.demo.Plane.Spot;

/** The reaches of the Lantern River: a main stem with an island in its lower half, and tributaries of two or three orders. */
final class LanternNetwork {
    private static final long SEED = 30_20;
    private static final double HEAD_AREA = 6;
    private static final double SHORTEST = 2.8;
    private static final double APART = 1.5;
    private static final double OUTLET_HEIGHT = 3;
    /** Vertices nearer than this to the line through their neighbors are left out [km]. */
    private static final double DETAIL = 0.012;
    /** The reach with the island is the longest whose drainage area lies between these [km2]. */
    private static final double ISLAND_FROM = 700;

    private static final double ISLAND_TO = 1900;
    private static final double ISLAND_BOW = 1.5;

    private static final List<String> NAMES = List.of(
            "Cresset Water",
            "Tallow Brook",
            "Emberlow Fork",
            "Sconce Beck",
            "Taper Brook",
            "Quinquet River",
            "Snuffer Burn",
            "Girandole River",
            "Glim Water",
            "Tinder Creek",
            "Argand Brook",
            "Soot Fork",
            "Wickwater",
            "Candelhas Creek",
            "Spill Beck",
            "Amberlight Creek",
            "Flicker Brook",
            "Sulurin Creek",
            "Torchwood Fork",
            "Beeswax Brook",
            "Rushlight River",
            "Lampblack Creek",
            "Pelitarra Creek",
            "Gleam Beck",
            "Kindling Creek",
            "Sputter Burn",
            "Moth Brook",
            "Chandler Fork",
            "Paraffin Creek",
            "Bobeche Brook",
            "Shade Water",
            "Mantle Beck",
            "Globe Creek",
            "Trimmer Brook",
            "Matchlight Fork",
            "Luster Burn",
            "Dimming Creek",
            "Afterglow Brook");

    private final List<Reach> reaches = new ArrayList<>();
    private final Landscape land;
    private final Random random = new Random(SEED);
    private boolean island;
    private int names;

    private LanternNetwork() {
        land = new Landscape(random);
        Stream main = Stream.trace(land, HEAD_AREA, SHORTEST, APART);
        List<Spot> line = bend(main, Meander.smooth(main.spots(land)), 0.26);
        addStream("Lantern River", main, line, OUTLET_HEIGHT);
    }

    /** The network, the same every time. */
    static List<Reach> reaches() {
        return List.copyOf(new LanternNetwork().reaches);
    }

    /** Slope of a river bed by drainage area [km2]: about 1.6 % in headwaters, 0.06 % at the outlet [-]. */
    private static double slope(double area) {
        return Math.min(0.018, Math.max(0.0005, 0.014 * StrictMath.pow(area / 12, -0.6)));
    }

    private List<Spot> bend(Stream stream, List<Spot> smooth, double swing) {
        double length = Meander.length(smooth);
        int last = stream.cells().size() - 1;
        return Meander.bend(
                smooth,
                s -> 0.9
                        + 0.075
                                * StrictMath.pow(
                                        land.area(stream.cells().get(Math.max(1, (int) (s / length * last)))), 0.46),
                swing,
                random);
    }

    /** Adds a stream's reaches from its mouth up, then its tributaries. {@code line} begins at the mouth. */
    private void addStream(String name, Stream stream, List<Spot> line, double mouthHeight) {
        int last = stream.cells().size() - 1;
        List<Integer> cuts = new ArrayList<>();
        for (Stream side : stream.tributaries()) {
            cuts.add(nearest(line, land.spot(side.cells().get(1))));
        }
        List<Double> joinHeights = new ArrayList<>();
        int from = 0;
        double height = mouthHeight;
        for (int k = 0; k <= cuts.size(); k++) {
            int to = k < cuts.size() ? cuts.get(k) : line.size() - 1;
            int lowest = k == 0 ? 1 : stream.joins().get(k - 1) + 1;
            double area = k == 0 && stream.cells().get(0) == land.outlet()
                    ? land.area(land.outlet())
                    : land.area(stream.cells().get(Math.min(last, lowest)));
            height = addReaches(name, area, line.subList(from, to + 1), height);
            joinHeights.add(height);
            from = to;
        }
        for (int k = 0; k < cuts.size(); k++) {
            Stream side = stream.tributaries().get(k);
            List<Spot> path = follow(side.spots(land), line.get(cuts.get(k)));
            addStream(NAMES.get(names++), side, bend(side, Meander.smooth(path), 0.25), joinHeights.get(k));
        }
    }

    /** Lets a tributary's lowest cells follow its mouth to where the bent river now runs. */
    private static List<Spot> follow(List<Spot> path, Spot mouth) {
        List<Spot> moved = new ArrayList<>();
        for (int k = 0; k < path.size(); k++) {
            double share = Math.max(0, 1 - k / 5.0);
            moved.add(path.get(k)
                    .plus(
                            share * (mouth.x() - path.get(0).x()),
                            share * (mouth.y() - path.get(0).y())));
        }
        moved.set(0, mouth);
        return moved;
    }

    /** Adds a stretch as one reach or, where the island lies, as four; returns the height of its upper end. */
    private double addReaches(String name, double area, List<Spot> upward, double height) {
        if (!name.equals("Lantern River") || area < ISLAND_FROM || area > ISLAND_TO || !longest(upward)) {
            return add(name, area, upward, height);
        }
        island = true;
        int low = upward.size() / 4;
        int high = upward.size() * 3 / 4;
        double foot = add(name, area, upward.subList(0, low + 1), height);
        List<Spot> arm = upward.subList(low, high + 1);
        double head = add(name, area, arm, foot);
        addArm(name, area, sideArm(arm), foot, head);
        return add(name, area, upward.subList(high, upward.size()), head);
    }

    private boolean longest(List<Spot> upward) {
        return Meander.length(upward) > 6 && !island;
    }

    /** An arm that runs more straight, bowed to the right as one looks upstream. */
    private List<Spot> sideArm(List<Spot> arm) {
        Spot foot = arm.get(0);
        Spot head = arm.get(arm.size() - 1);
        double dx = (head.x() - foot.x()) / foot.distance(head);
        double dy = (head.y() - foot.y()) / foot.distance(head);
        List<Spot> bowed = new ArrayList<>();
        int pieces = 60;
        for (int k = 0; k <= pieces; k++) {
            double out = ISLAND_BOW * StrictMath.sin(StrictMath.PI * k / pieces);
            bowed.add(foot.towards(head, (double) k / pieces).plus(dy * out, -dx * out));
        }
        bowed.set(pieces, head);
        return Meander.bend(Meander.smooth(bowed), s -> 1.4, 0.16, random);
    }

    private double add(String name, double area, List<Spot> upward, double height) {
        return add(name, area, upward, height, slope(area));
    }

    private void addArm(String name, double area, List<Spot> upward, double foot, double head) {
        add(name, area, upward, foot, (head - foot) / (1000 * Meander.length(thin(upward))));
    }

    private double add(String name, double area, List<Spot> upward, double height, double slope) {
        List<Spot> line = new ArrayList<>(thin(upward));
        List<Double> heights = new ArrayList<>(List.of(height));
        for (int k = 1; k < line.size(); k++) {
            heights.add(heights.get(k - 1) + 1000 * slope * line.get(k - 1).distance(line.get(k)));
        }
        double top = heights.get(heights.size() - 1);
        Collections.reverse(line);
        Collections.reverse(heights);
        String id = String.format(Locale.ROOT, "L%03d", reaches.size() + 1);
        reaches.add(new Reach(id, name, area, "channel", line, heights));
        return top;
    }

    private static int nearest(List<Spot> line, Spot spot) {
        int best = 1;
        for (int k = 1; k < line.size() - 1; k++) {
            if (line.get(k).distance(spot) < line.get(best).distance(spot)) {
                best = k;
            }
        }
        return best;
    }

    /** Leaves out vertices that a straight line does without (Douglas and Peucker 1973). */
    static List<Spot> thin(List<Spot> line) {
        int far = 0;
        double most = DETAIL;
        Spot a = line.get(0);
        Spot b = line.get(line.size() - 1);
        for (int k = 1; k < line.size() - 1; k++) {
            double off = offLine(line.get(k), a, b);
            if (off > most) {
                most = off;
                far = k;
            }
        }
        if (far == 0) {
            return List.of(a, b);
        }
        List<Spot> thinned = new ArrayList<>(thin(line.subList(0, far + 1)));
        thinned.remove(thinned.size() - 1);
        thinned.addAll(thin(line.subList(far, line.size())));
        return thinned;
    }

    private static double offLine(Spot p, Spot a, Spot b) {
        double length = a.distance(b);
        if (length < 1e-9) {
            return p.distance(a);
        }
        return Math.abs((b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x())) / length;
    }
}
