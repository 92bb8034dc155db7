// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

/** The flood against its slow twin, cell by cell, on random land. */
class SlowFlowTest {
    /** ROUNDING: sums of a few hundred areas that agree to 1e-12 of them, relative. */
    private static final double ROUNDING = 1e-9;

    private static final int EACH = 40;
    private static final GeometryFactory FACTORY = new GeometryFactory();

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 4, 5})
    void everyCellGoesWhereTheTwinSays(int block) {
        for (int seed = block * EACH; seed < (block + 1) * EACH; seed++) {
            compare(new Random(seed), seed);
        }
    }

    private void compare(Random random, int seed) {
        int columns = 3 + random.nextInt(14);
        int rows = 3 + random.nextInt(12);
        double[] heights = heights(random, columns, rows);
        List<double[]> drawn = rivers(random, columns, rows);
        Land land = Land.meters(columns, rows);
        for (int k = 0; k < drawn.size(); k++) {
            land.reach(k == 2 ? "x" : "start" + k, k == 2 ? "end" : k < 2 ? "x" : "end" + k, drawn.get(k));
        }
        List<LineString> lines = new ArrayList<>();
        for (double[] places : drawn) {
            lines.add(line(places));
            clear(heights, columns, rows, places);
        }
        ElevationModel model = land.model(folder, (column, row) -> heights[row * columns + column]);
        int[] expected = new SlowFlow(columns, rows, heights, lines.toArray(new LineString[0])).labels();
        int[] found = new int[heights.length];
        java.util.Arrays.fill(found, SlowFlow.OUTSIDE);
        CellGround ground = CellGround.of(model);
        double[] total = {0};
        new PriorityFlood(model, ground, BurnedRivers.of(land.map(), model)).run((column, row, label, atRim, known) -> {
            int cell = row * columns + column;
            assertThat(found[cell]).as("seed " + seed + ": taken once").isEqualTo(SlowFlow.OUTSIDE);
            assertThat(known).isEqualTo(!Double.isNaN(heights[cell]));
            found[cell] = label == PriorityFlood.EDGE ? SlowFlow.EDGE : label / 2;
            total[0] += ground.area(column, row);
        });
        assertThat(found).as("seed " + seed).isEqualTo(expected);
        TerrainAreas areas = TerrainAreas.of(land.map(), model);
        assertThat((areas.drained() + areas.edge()) / total[0]).isCloseTo(1, within(ROUNDING));
    }

    /** Whole and all different, rough or falling one way; here and there none. */
    private static double[] heights(Random random, int columns, int rows) {
        List<Integer> order = new ArrayList<>();
        for (int cell = 0; cell < columns * rows; cell++) {
            order.add(cell);
        }
        Collections.shuffle(order, random);
        boolean rough = random.nextBoolean();
        double[] heights = new double[columns * rows];
        for (int cell = 0; cell < heights.length; cell++) {
            int slope = rough ? 0 : 37 * (cell / columns) + 11 * (cell % columns);
            heights[cell] = order.get(cell) + columns * rows * (slope / 20);
            boolean hole = cell % columns % 4 == 2 && cell / columns % 4 == 2 && random.nextInt(3) == 0;
            boolean sea = cell / columns == 0 && random.nextInt(4) == 0;
            heights[cell] = hole || sea ? Double.NaN : heights[cell];
        }
        return heights;
    }

    /** Two that join, the one below, and one apart; or fewer. */
    private static List<double[]> rivers(Random random, int columns, int rows) {
        double[][] p = new double[8][];
        for (int k = 0; k < p.length; k++) {
            p[k] = new double[] {random.nextDouble() * (columns - 1), random.nextDouble() * (rows - 1)};
        }
        List<double[]> all =
                List.of(join(p[0], p[1], p[2]), join(p[3], p[2]), join(p[2], p[4], p[5]), join(p[6], p[7]));
        return all.subList(0, random.nextInt(all.size() + 1));
    }

    private static double[] join(double[]... points) {
        double[] all = new double[2 * points.length];
        for (int k = 0; k < points.length; k++) {
            all[2 * k] = points[k][0];
            all[2 * k + 1] = points[k][1];
        }
        return all;
    }

    private static LineString line(double[] places) {
        Coordinate[] points = new Coordinate[places.length / 2];
        for (int k = 0; k < points.length; k++) {
            points[k] = new Coordinate(places[2 * k], places[2 * k + 1]);
        }
        return FACTORY.createLineString(points);
    }

    /** No holes near rivers: where one lies beside two, either may take it. */
    private static void clear(double[] heights, int columns, int rows, double[] places) {
        LineString line = line(places);
        for (int row = 1; row < rows; row++) {
            for (int column = 0; column < columns; column++) {
                int cell = row * columns + column;
                boolean near = line.distance(FACTORY.createPoint(new Coordinate(column, row))) < 4;
                if (near && Double.isNaN(heights[cell])) {
                    heights[cell] = 8000.5 + cell;
                }
            }
        }
    }
}
