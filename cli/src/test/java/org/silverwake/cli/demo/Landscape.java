// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.PriorityQueue;
import java.util.Random;
import org.silverwake.cli.demo.Plane.Spot;

/**
 * A basin drained by rivers that cut it: cells in rows, shaken off their places, whose heights are brought near the steady
 * balance of uplift and cutting (slope falls with the power 0.45 of drainage area) while the water finds its way anew each
 * time. What comes out is a tree of cells with drainage areas.
 */
final class Landscape {
    private static final double CELL = 0.6;
    private static final int COLUMNS = 160;
    private static final int ROWS = 96;
    private static final double LEFT = -48;
    private static final double BOTTOM = -30;
    private static final double LENGTH = 86;
    private static final double SHAKE = 0.6;
    private static final int ROUNDS = 40;
    private static final double CONCAVITY = 0.45;

    private final Spot[] spot = new Spot[COLUMNS * ROWS];
    private final boolean[] inside = new boolean[COLUMNS * ROWS];
    private final double[] hardness = new double[COLUMNS * ROWS];
    private final double[] height = new double[COLUMNS * ROWS];
    private final int[] receiver = new int[COLUMNS * ROWS];
    private final double[] area = new double[COLUMNS * ROWS];
    /** Cells inside, each after the one it drains to. */
    private final int[] upward;

    private final int outlet;

    Landscape(Random random) {
        double[] edge = new double[24];
        for (int k = 0; k < edge.length; k++) {
            edge[k] = random.nextDouble() - 0.5;
        }
        int lowest = -1;
        int count = 0;
        double best = Double.MAX_VALUE;
        for (int k = 0; k < spot.length; k++) {
            spot[k] = new Spot(
                    LEFT + CELL * (k % COLUMNS + SHAKE * (random.nextDouble() - 0.5)),
                    BOTTOM + CELL * (k / COLUMNS + SHAKE * (random.nextDouble() - 0.5)));
            hardness[k] = StrictMath.exp(0.7 * random.nextGaussian());
            double along = along(spot[k]);
            inside[k] = isInside(spot[k], along, edge);
            height[k] = 60 * along + 6 * random.nextDouble();
            if (inside[k]) {
                count++;
                if (along < best) {
                    best = along;
                    lowest = k;
                }
            }
        }
        outlet = lowest;
        height[outlet] = 0;
        upward = new int[count];
        for (int round = 0; round < ROUNDS; round++) {
            drain();
            cut(round < ROUNDS - 1 ? 0.5 : 1);
        }
    }

    /** Share of the way up the basin's axis, an arc from the mouth in the southwest. */
    private static double along(Spot s) {
        return (s.x() + LENGTH / 2) / LENGTH;
    }

    private static double axis(double along) {
        return -15 + 26 * along + 9 * StrictMath.sin(StrictMath.PI * along * 1.3);
    }

    private static boolean isInside(Spot s, double along, double[] edge) {
        if (along < 0 || along > 1) {
            return false;
        }
        double offset = s.y() - axis(along);
        double place = along * (edge.length / 2 - 1.001);
        int k = (int) place + (offset > 0 ? edge.length / 2 : 0);
        double share = place - (int) place;
        double ragged = edge[k] * (1 - share) + edge[k + 1] * share;
        double half = 18 * StrictMath.sqrt(StrictMath.sin(StrictMath.PI * (0.02 + 0.93 * along))) + 7 * ragged;
        return Math.abs(offset) < half * Math.min(1, 0.25 + 6 * along);
    }

    /** Fills hollows and lets each cell drain to its steepest neighbor. */
    private void drain() {
        double[] level = new double[spot.length];
        Arrays.fill(level, Double.NaN);
        PriorityQueue<Integer> queue = new PriorityQueue<>((a, b) -> {
            int byLevel = Double.compare(level[a], level[b]);
            return byLevel != 0 ? byLevel : Integer.compare(a, b);
        });
        level[outlet] = height[outlet];
        receiver[outlet] = -1;
        queue.add(outlet);
        int count = 0;
        while (!queue.isEmpty()) {
            int cell = queue.remove();
            upward[count++] = cell;
            double steepest = -1;
            for (int next : neighbors(cell)) {
                if (Double.isNaN(level[next])) {
                    level[next] = Math.max(height[next], level[cell] + 1e-6);
                    queue.add(next);
                } else if (cell != outlet && level[next] < level[cell]) {
                    double slope = (level[cell] - level[next]) / spot[cell].distance(spot[next]);
                    if (slope > steepest) {
                        steepest = slope;
                        receiver[cell] = next;
                    }
                }
            }
        }
        for (int k = 0; k < count; k++) {
            area[upward[k]] = CELL * CELL;
        }
        for (int k = count - 1; k > 0; k--) {
            area[receiver[upward[k]]] += area[upward[k]];
        }
    }

    private void cut(double weight) {
        for (int k = 1; k < upward.length; k++) {
            int cell = upward[k];
            double slope = hardness[cell] / StrictMath.pow(area[cell], CONCAVITY);
            double steady = height[receiver[cell]] + 20 * slope * spot[cell].distance(spot[receiver[cell]]);
            height[cell] += weight * (steady - height[cell]);
        }
    }

    private List<Integer> neighbors(int cell) {
        List<Integer> list = new ArrayList<>(8);
        int column = cell % COLUMNS;
        int row = cell / COLUMNS;
        for (int r = Math.max(0, row - 1); r <= Math.min(ROWS - 1, row + 1); r++) {
            for (int c = Math.max(0, column - 1); c <= Math.min(COLUMNS - 1, column + 1); c++) {
                int next = r * COLUMNS + c;
                if (next != cell && inside[next]) {
                    list.add(next);
                }
            }
        }
        return list;
    }

    int outlet() {
        return outlet;
    }

    Spot spot(int cell) {
        return spot[cell];
    }

    /** Drainage area at the lower end of a cell [km2]. */
    double area(int cell) {
        return area[cell];
    }

    /** Cells that drain to a cell and have at least an area, the largest first. */
    List<Integer> donors(int cell, double minArea) {
        List<Integer> list = new ArrayList<>();
        for (int next : neighbors(cell)) {
            if (receiver[next] == cell && area[next] >= minArea) {
                list.add(next);
            }
        }
        list.sort((a, b) -> Double.compare(area[b], area[a]));
        return list;
    }
}
