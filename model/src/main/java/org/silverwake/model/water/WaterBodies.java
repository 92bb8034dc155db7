// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.network.RiverNetwork;

/**
 * Still waters and wetlands of known area and depth, and the reaches that run through them. All reaches of one still water
 * are one mixed tank, wherever its tributaries enter: water comes to it through the upper reaches unchanged, and the volume
 * stands in the reach by which it is left. Where it is left in several places, each has a part of the volume, in proportion
 * to the water that leaves there over the year, so that water stays equally long in all. Reaches of a wetland are a channel
 * with its depth and its area spread along them. Immutable.
 */
public final class WaterBodies {
    private static final int NONE = -1;

    private final RiverNetwork network;
    private final List<Body> bodies;
    private final int[] bodyOf;

    private WaterBodies(RiverNetwork network, List<Body> bodies, int[] bodyOf) {
        this.network = network;
        this.bodies = bodies;
        this.bodyOf = bodyOf;
    }

    /**
     * A body of water.
     *
     * @param name its name
     * @param kind still water or wetland
     * @param area of its surface [m2], above 0
     * @param depth mean depth [m], above 0
     * @param reaches that run through it, at least one
     */
    public record Body(String name, ReachKind kind, double area, double depth, List<Integer> reaches) {
        /**
         * Checks and copies.
         *
         * @throws IllegalArgumentException if one of them is not allowed
         */
        public Body {
            reaches = List.copyOf(reaches);
            if (kind != ReachKind.STILL_WATER && kind != ReachKind.WETLAND) {
                throw new IllegalArgumentException(
                        name + ": a body of water is still water or wetland, not " + kind.word());
            }
            if (!(area > 0 && depth > 0) || reaches.isEmpty()) {
                throw new IllegalArgumentException(
                        name + ": area " + area + " m2, depth " + depth + " m, " + reaches.size() + " reaches");
            }
        }
    }

    /** No body of water in a network. */
    static WaterBodies none(RiverNetwork network) {
        return of(network, List.of());
    }

    /**
     * Bodies of a network.
     *
     * @throws IllegalArgumentException if a reach is in two of them, or a still water is left and entered again
     */
    public static WaterBodies of(RiverNetwork network, List<Body> bodies) {
        int[] bodyOf = new int[network.size()];
        Arrays.fill(bodyOf, NONE);
        for (int b = 0; b < bodies.size(); b++) {
            Body body = bodies.get(b);
            for (int r : body.reaches()) {
                if (bodyOf[r] != NONE) {
                    throw new IllegalArgumentException("reach " + network.id(r) + " lies in "
                            + bodies.get(bodyOf[r]).name() + " and in " + body.name());
                }
                bodyOf[r] = b;
            }
            if (body.kind() == ReachKind.STILL_WATER
                    && !between(network, body.reaches()).isEmpty()) {
                throw new IllegalArgumentException(body.name() + ": water leaves it and comes back");
            }
        }
        return new WaterBodies(network, List.copyOf(bodies), bodyOf);
    }

    /** Reaches by which water that leaves some reaches comes back to them, rising. */
    public static List<Integer> between(RiverNetwork network, List<Integer> reaches) {
        BitSet own = new BitSet();
        reaches.forEach(own::set);
        BitSet between = network.below(own);
        between.and(network.above(own));
        between.andNot(own);
        return between.stream().boxed().toList();
    }

    /** All bodies. */
    public List<Body> all() {
        return bodies;
    }

    /** The body that a reach runs through. */
    public Optional<Body> of(int reach) {
        return bodyOf[reach] == NONE ? Optional.empty() : Optional.of(bodies.get(bodyOf[reach]));
    }

    /** Whether a reach runs through a still water of known volume. */
    public boolean isStill(int reach) {
        return bodyOf[reach] != NONE && bodies.get(bodyOf[reach]).kind() == ReachKind.STILL_WATER;
    }

    /** Reaches by which a body is left, rising. */
    public List<Integer> exits(Body body) {
        return body.reaches().stream().filter(this::isExit).sorted().toList();
    }

    private boolean isExit(int reach) {
        int node = network.toNode(reach);
        for (int k = 0; k < network.outCount(node); k++) {
            if (bodyOf[network.out(node, k)] != bodyOf[reach]) {
                return true;
            }
        }
        return network.outCount(node) == 0;
    }

    /**
     * Area of water that stands in each reach [m2]: of a wetland by length; of a still water all in the reaches by which it
     * is left; 0 elsewhere.
     */
    double[] standing(ReachTable reaches, List<RoutedWater> water, double[] share) {
        double[] area = new double[network.size()];
        for (Body body : bodies) {
            boolean still = body.kind() == ReachKind.STILL_WATER;
            List<Integer> holds = still ? exits(body) : body.reaches();
            double[] part = holds.stream()
                    .mapToDouble(r -> still ? leaving(r, water, share) : reaches.length(r))
                    .toArray();
            double all = Arrays.stream(part).sum();
            for (int k = 0; k < part.length; k++) {
                area[holds.get(k)] = body.area() * (all > 0 ? part[k] / all : 1.0 / part.length);
            }
        }
        return area;
    }

    /** Water that leaves its body at the end of a reach, mean over the year [m3/s]. */
    private double leaving(int reach, List<RoutedWater> water, double[] share) {
        int node = network.toNode(reach);
        double mean = 0;
        for (int s = 0; s < share.length; s++) {
            double out = network.outCount(node) == 0 ? 1 : 0;
            for (int k = 0; k < network.outCount(node); k++) {
                int below = network.out(node, k);
                out += bodyOf[below] == bodyOf[reach]
                        ? 0
                        : water.get(s).splits().share(below);
            }
            mean += share[s] * water.get(s).end(reach) * out;
        }
        return mean;
    }
}
