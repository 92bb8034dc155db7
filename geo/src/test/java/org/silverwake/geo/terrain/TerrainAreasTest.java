// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.geo.assembly.RiverMap;

/** Small rasters whose answer is known by hand. */
class TerrainAreasTest {
    /** ROUNDING: a cell's side as the difference of two projected points, 1e-9 degrees of some 1e-3. */
    private static final double ROUNDING_PERCENT = 1e-4;

    /** DISCRETIZATION: scale of the projection between the middle and 500 m beside it; counts of cells are whole. */
    private static final double CELLS = 1e-3;

    /** UTM's scale along the middle of its zone is 0.9996, so that a cell of 100 m covers more ground than 1 ha [m2]. */
    private static final double CELL = 100 * 100 / (0.9996 * 0.9996);

    @TempDir
    private Path folder;

    private static double local(TerrainAreas areas, int reach) {
        return areas.map().reach(reach).number(TerrainAreas.LOCAL).orElseThrow() / CELL;
    }

    private static double head(TerrainAreas areas, int reach) {
        return areas.map().reach(reach).number(TerrainAreas.HEAD).orElse(0) / CELL;
    }

    @Test
    void aValleyDrainsToTheReachInIt() {
        TerrainAreas areas = Land.meters(9, 9)
                .reach("a", "b", 4, 0, 4, 3.5)
                .reach("b", "c", 4, 3.5, 4, 8)
                .areas(folder, (column, row) -> 10 * Math.abs(column - 4));
        // rows 0 to 3 and 4 to 8; nothing lies above the head
        assertThat(local(areas, 0)).isCloseTo(36, within(CELLS));
        assertThat(head(areas, 0)).isZero();
        assertThat(local(areas, 1)).isCloseTo(45, within(CELLS));
        assertThat(head(areas, 1)).isZero();
        assertThat(areas.edge()).isZero();
        assertThat(areas.drained() / CELL).isCloseTo(81, within(CELLS));
        assertThat(areas.map().reach(1).numbers()).doesNotContainKey(TerrainAreas.HEAD);
    }

    /** On a plane that falls along the river nothing leaves over the edges beside it, and all beyond its end does. */
    @ParameterizedTest
    @CsvSource({"1,0", "1,1", "0,1", "-1,1", "-1,0", "-1,-1", "0,-1", "1,-1"})
    void riversInAllDirectionsOfThePlane(int dx, int dy) {
        double[] line = {5 - 3 * dx, 5 - 3 * dy, 5, 5, 5 + 3 * dx, 5 + 3 * dy};
        TerrainAreas areas = Land.meters(11, 11)
                .reach("a", "b", line[0], line[1], line[2], line[3])
                .reach("b", "c", line[2], line[3], line[4], line[5])
                .areas(folder, (column, row) -> 200 - 10 * dx * column - 10 * dy * row);
        // by hand, straight: three cells abreast of each cell of river, and of the two above its head. Slantwise every
        // cell
        // falls slantwise, and rows of cells next to it and next but one meet it: 2 + 2 x 2 above the head, 3 + 2 x 3 +
        // 2 x 4
        // and 4 + 2 x 3 + 2 x 4 along it
        boolean straight = dx == 0 || dy == 0;
        assertThat(head(areas, 0)).isCloseTo(6, within(CELLS));
        assertThat(local(areas, 0)).isCloseTo(straight ? 9 : 17, within(CELLS));
        assertThat(local(areas, 1)).isCloseTo(straight ? 12 : 18, within(CELLS));
        assertThat((areas.drained() + areas.edge()) / CELL).isCloseTo(121, within(CELLS));
        assertThat(areas.isOpen(0)).isTrue();
        assertThat(areas.isOpen(1)).isFalse();
    }

    /** The pit's lowest way out leads to the left river, though its bottom lies nearer to the right one. */
    @Test
    void aPitSpillsOverItsLowestRim() {
        TerrainAreas areas = Land.meters(11, 5)
                .reach("a", "b", 0, 0, 0, 4)
                .reach("c", "d", 10, 0, 10, 4)
                .areas(folder, (column, row) -> {
                    double slope = column <= 5 ? 100 + column : 200 - 5 * column;
                    boolean pit = column >= 6 && column <= 8 && row >= 1 && row <= 3;
                    return pit ? 20 : column == 9 ? 180 : slope;
                });
        // columns 0 to 5, and the pit with its two rims in columns 6 to 8; column 9 and the river itself to the right
        assertThat(areas.drained() / CELL).isCloseTo(55, within(CELLS));
        assertThat(local(areas, 1) + head(areas, 1)).isCloseTo(10, within(CELLS));
        assertThat(local(areas, 0) + head(areas, 0)).isCloseTo(45, within(CELLS));
    }

    @Test
    void aFlatDrainsByItsOutlet() {
        TerrainAreas areas = Land.meters(7, 7)
                .reach("a", "b", 3, 0, 3, 1)
                .areas(
                        folder,
                        (column, row) -> row < 2
                                ? 50 - (column == 3 ? 20 : 0)
                                : column == 0 || column == 6 || row == 6 ? 60 : 40);
        // all but two cells on either side of the first row, which lie at the edge as low as what is beside them
        assertThat(areas.drained() / CELL).isCloseTo(45, within(CELLS));
        assertThat(areas.edge() / CELL).isCloseTo(4, within(CELLS));
    }

    @Test
    void landThatFallsAwayRunsOffOverTheEdge() {
        TerrainAreas areas = Land.meters(10, 6)
                .reach("a", "b", 0, 0, 0, 5)
                .areas(folder, (column, row) -> 100 - 10 * Math.abs(column - 4.5));
        assertThat(areas.drained() / CELL).isCloseTo(30, within(CELLS));
        assertThat(areas.edge() / CELL).isCloseTo(30, within(CELLS));
        // rows 0 and 5 lie at the raster's edge and drain to the river: more may come from beyond
        assertThat(areas.isOpen(0)).isTrue();
    }

    /** The sea is outside, a hole amid land is a pit, and a river counts where it runs, heights or not. */
    @Test
    void placesWithoutHeights() {
        TerrainAreas areas = Land.meters(9, 9)
                .reach("a", "b", 4, 0, 4, 8)
                .areas(
                        folder,
                        (column, row) -> row >= 7
                                ? Double.NaN
                                : column == 6 && row == 4 ? Double.NaN : 10 * Math.abs(column - 4) + 100);
        assertThat(areas.unknown() / CELL).isCloseTo(1, within(CELLS));
        assertThat((areas.drained() + areas.edge()) / CELL).isCloseTo(63, within(CELLS));
        assertThat(areas.edge()).isZero();
        TerrainAreas nothing = Land.meters(5, 5).reach("a", "b", 1, 1, 3, 3).areas(folder, (column, row) -> Double.NaN);
        assertThat(nothing.drained() + nothing.edge()).isZero();
    }

    /** Beyond where a river ends, what lies lower keeps its way; beside the river, what lies lower is drawn in. */
    @Test
    void theRiverIsBurnedInButNotBeyondItsEnd() {
        RasterFile.Heights plane = (column, row) -> 100 - 10 * row;
        TerrainAreas areas = Land.meters(5, 9).reach("a", "b", 2, 2, 2, 5).areas(folder, plane);
        // three columns down to row 5; below lie 3 rows, beside 2 columns
        assertThat(areas.drained() / CELL).isCloseTo(3 * 6, within(CELLS));
        assertThat(areas.edge() / CELL).isCloseTo(45 - 18, within(CELLS));
        TerrainAreas bank = Land.meters(5, 9)
                .reach("a", "b", 2, 0, 2, 8)
                .areas(folder, (column, row) -> column == 3 ? 10 : 100 - row);
        // the first column runs down to the edge
        assertThat(bank.drained() / CELL).isCloseTo(36, within(CELLS));
        assertThat(bank.edge() / CELL).isCloseTo(9, within(CELLS));
    }

    /** Three reaches meet in one cell and a fourth, shorter than a cell, leaves it: each side's land goes to its own. */
    @Test
    void aConfluenceInOneCell() {
        Land land = Land.meters(9, 9)
                .reach("n", "x", 4, 0, 4, 3.8)
                .reach("w", "x", 0, 4, 4, 3.8)
                .reach("x", "y", 4, 3.8, 4.2, 4)
                .reach("y", "z", 4.2, 4, 4, 8);
        TerrainAreas areas = land.areas(
                folder, (column, row) -> 10 * Math.min(Math.abs(column - 4), row <= 4 ? Math.abs(row - 4) + 1 : 99));
        double sum = 0;
        for (int r = 0; r < 4; r++) {
            assertThat(local(areas, r)).isNotNegative();
            sum += local(areas, r) + head(areas, r);
        }
        assertThat(sum).isCloseTo(areas.drained() / CELL, within(CELLS));
        assertThat(sum + areas.edge() / CELL).isCloseTo(81, within(CELLS));
        // the cell's own center lies nearest to the shortest reach
        assertThat(local(areas, 2)).isGreaterThanOrEqualTo(1 - CELLS);
        assertThat(local(areas, 3)).isCloseTo(4 * 9, within(5.0));
    }

    @Test
    void reachesOutsideOfTheRasterHaveNoAreaAndThoseThatLeaveItAreOpen() {
        RiverMap map = Land.meters(9, 9)
                .reach("a", "b", 4, -5, 4, -2)
                .reach("b", "c", 4, -2, 4, 4)
                .reach("c", "d", 4, 4, 4, 7)
                .map();
        ElevationModel model = Land.meters(9, 9).model(folder, (column, row) -> 10 * Math.abs(column - 4) + 20 - row);
        TerrainAreas areas = TerrainAreas.of(map, model);
        assertThat(areas.map().reach(0).numbers()).doesNotContainKey(TerrainAreas.LOCAL);
        assertThat(areas.map().reach(1).numbers()).containsKey(TerrainAreas.LOCAL);
        assertThat(areas.isOpen(0)).isTrue();
        assertThat(areas.isOpen(1)).isTrue();
    }

    /** As at the corners of a raster that was turned into another coordinate system. */
    @Test
    void reachesWhereTheRastersBorderHasNoHeightsHaveNoAreaAndThoseThatComeFromThereAreOpen() {
        TerrainAreas areas = Land.meters(9, 9)
                .reach("a", "b", 4, 0, 4, 1.8)
                .reach("b", "c", 4, 1.8, 4, 6)
                .reach("c", "d", 4, 6, 4, 8)
                .areas(folder, (column, row) -> row < 4 ? Double.NaN : 10 * Math.abs(column - 4) + 20 - row);
        assertThat(areas.map().reach(0).numbers()).doesNotContainKey(TerrainAreas.LOCAL);
        assertThat(areas.isOpen(0)).isTrue();
        assertThat(local(areas, 1)).isPositive();
        assertThat(areas.isOpen(1)).isTrue();
        assertThat(local(areas, 2)).isPositive();
        // its land lies at the raster's lower edge, where the valley's sides fall inward
        assertThat(areas.drained() / CELL).isCloseTo(45, within(CELLS));
    }

    /**
     * Area of 0.4 by 0.3 degrees on the ellipsoid between two latitudes: zone from the equator a^2 (1 - e^2) / 2 (sin p / (1 -
     * e^2 sin^2 p) + ln((1 + e sin p) / (1 - e sin p)) / (2 e)) per radian (Snyder 1987, Map projections, USGS PP 1395, eq. 3-12).
     */
    @Test
    void cellsInDegreesHaveTheirAreaOnTheEllipsoid() {
        TerrainAreas areas = Land.degrees(40, 30)
                .reach("a", "b", 20, 0, 20, 29)
                .areas(folder, (column, row) -> 10 * Math.abs(column - 20));
        double zone = Math.toRadians(0.4) * (zone(40) - zone(39.7));
        assertThat(areas.drained()).isCloseTo(zone, withinPercentage(ROUNDING_PERCENT));
        assertThat(areas.edge()).isZero();
    }

    private static double zone(double latitude) {
        double a = 6378137;
        double e2 = 0.00669437999014;
        double e = Math.sqrt(e2);
        double s = Math.sin(Math.toRadians(latitude));
        return a * a * (1 - e2) / 2 * (s / (1 - e2 * s * s) + Math.log((1 + e * s) / (1 - e * s)) / (2 * e));
    }

    /** A cell of UTM lies at 0.9996 of its ground size in the middle of the zone (Snyder 1987, section 8). */
    @Test
    void cellsInMetersHaveTheirAreaOnTheGround() {
        CellGround ground = CellGround.of(Land.meters(9, 9).model(folder, (column, row) -> 1));
        assertThat(ground.area(4, 4)).isCloseTo(CELL, withinPercentage(ROUNDING_PERCENT));
        assertThat(ground.east(4)).isCloseTo(100 / 0.9996, withinPercentage(ROUNDING_PERCENT));
        assertThat(ground.south(8)).isCloseTo(100 / 0.9996, withinPercentage(ROUNDING_PERCENT));
    }

    @Test
    void aRasterOfOneCell() {
        TerrainAreas areas =
                Land.meters(1, 1).reach("a", "b", -0.3, 0, 0.2, 0.2).areas(folder, (column, row) -> 7);
        assertThat(areas.drained() / CELL).isCloseTo(1, within(CELLS));
    }
}
