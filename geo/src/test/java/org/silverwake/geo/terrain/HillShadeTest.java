// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.geom.Point2D;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.geo.crs.Ground;

class HillShadeTest {
    /** DISCRETIZATION: the plane's meters are those of its middle row, off by 2e-4 at its rim. */
    private static final double PLANE = 1e-3;
    /** PRINTED: the other program writes 1 + 254 times the shade as a whole number; and 4e-4 of slope, as it takes meters of the grid for meters of the ground. */
    private static final double WHOLE_NUMBER = 1.0 / 254 + 1e-3;

    private static final int SIDE = 40;
    private static final double CELL = 0.001;
    private static final int MANY = 1000;

    @TempDir
    private Path folder;

    /**
     * By hand, light from 315 degrees at 45: (-0.5)(-a) + (0.5)(-b) + 0.70711 over sqrt(1 + a2 + b2). a = 0.2, b = 0.1: 0.757107 / 1.024695 =
     * 0.73886; a = -0.2, b = 0.1: 0.557107 / 1.024695 = 0.54368; level: 0.70711.
     */
    @Test
    void planesInDegreesHaveTheShadeWorkedOutByHand() {
        assertThat(middle(plane(0.2, 0.1), 1)).isCloseTo(0.73886, within(PLANE));
        assertThat(middle(plane(-0.2, 0.1), 1)).isCloseTo(0.54368, within(PLANE));
        assertThat(middle(plane(0, 0), 1)).isCloseTo(0.70711, within(PLANE));
        assertThat(middle(plane(0.02, 0.01), 10)).isCloseTo(0.73886, within(PLANE));
    }

    @Test
    void blocksOfCellsGiveTheSamePlane() {
        HillShade shade =
                HillShade.of(plane(0.2, 0.1), -20, -30.02, -19.98, -29.98, 10).exaggerated(1);
        Point2D at = shade.toGrid(-19.99, -30);
        assertThat((double) shade.at(at.getX(), at.getY())).isCloseTo(0.73886, within(PLANE));
    }

    @Test
    void flatLandIsExaggeratedAndSteepLandIsNot() {
        assertThat(shade(plane(0.035, 0)).exaggeration()).isEqualTo(10);
        assertThat(shade(plane(0.5, 0)).exaggeration()).isEqualTo(1);
        assertThat(shade(plane(0.0001, 0)).exaggeration()).isEqualTo(20);
        assertThat(shade(plane(0, 0)).exaggeration()).isEqualTo(1);
    }

    @Test
    void whereThereIsNoHeightThereIsNoShade() {
        Path file = raster(4326, -20.02, -29.98, CELL)
                .write(folder.resolve("half.tif"), (column, row) -> column < SIDE / 2 ? 5 : Double.NaN);
        HillShade shade = shade(ElevationModel.read(file, 1));
        assertThat(at(shade, -20.01, -30)).isCloseTo(0.70711, within(PLANE));
        assertThat(at(shade, -19.99, -30)).isNaN();
        assertThat(at(shade, -21, -30)).isNaN();
        assertThat(shade.isEmpty()).isFalse();
        assertThat(HillShade.of(ElevationModel.read(file, 1), 10, 10, 11, 11, MANY)
                        .isEmpty())
                .isTrue();
    }

    /** An independent program, where the machine has one: gdaldem hillshade, which also goes by Horn (1981). On the middle meridian of its zone, where north is up. */
    @Test
    void agreesWithGdaldem() throws Exception {
        assumeTrue(
                runs("gdalinfo", "--version"),
                "no GDAL programs on the path: not compared with an independent program");
        Path file = raster(32727, 500_000, 6_680_000, 30)
                .write(
                        folder.resolve("hills.tif"),
                        (column, row) -> 100 + 40 * Math.sin(column / 5.0) + 30 * Math.cos(row / 4.0 + column / 9.0));
        Path shaded = folder.resolve("shaded.tif");
        Path grid = folder.resolve("shaded.asc");
        assertThat(runs("gdaldem", "hillshade", file.toString(), shaded.toString()))
                .isTrue();
        assertThat(runs("gdal_translate", "-of", "AAIGrid", shaded.toString(), grid.toString()))
                .isTrue();
        ElevationModel model = ElevationModel.read(file, 1);
        HillShade shade = shade(model).exaggerated(1);
        List<String> lines = Files.readAllLines(grid).stream()
                .filter(line -> !line.matches("[a-zA-Z].*"))
                .toList();
        for (int row = 1; row < SIDE - 1; row++) {
            String[] numbers = lines.get(row).strip().split(" +");
            for (int column = 1; column < SIDE - 1; column++) {
                double theirs = (Double.parseDouble(numbers[column]) - 1) / 254;
                double[] place = model.toLonLat(column, row);
                assertThat(at(shade, place[0], place[1]))
                        .as("column %d, row %d", column, row)
                        .isCloseTo(theirs, within(WHOLE_NUMBER));
            }
        }
    }

    private static RasterFile raster(int code, double west, double north, double cell) {
        return new RasterFile(SIDE, SIDE, code, west, north, cell);
    }

    private ElevationModel plane(double east, double north) {
        double width = CELL * Ground.metersPerDegreeEast(-30);
        double height = CELL * Ground.metersPerDegreeNorth(-30);
        Path file = raster(4326, -20, -29.98, CELL)
                .write(
                        folder.resolve("plane.tif"),
                        (column, row) -> 100 + east * column * width - north * row * height);
        return ElevationModel.read(file, 1);
    }

    private static HillShade shade(ElevationModel model) {
        double[] corner = model.toLonLat(0, model.rows() - 1.0);
        double[] other = model.toLonLat(model.columns() - 1.0, 0);
        return HillShade.of(model, corner[0], corner[1], other[0], other[1], MANY);
    }

    private static double middle(ElevationModel model, double exaggeration) {
        return at(shade(model).exaggerated(exaggeration), -19.98, -30);
    }

    private static double at(HillShade shade, double longitude, double latitude) {
        Point2D at = shade.toGrid(longitude, latitude);
        return shade.at(at.getX(), at.getY());
    }

    private static boolean runs(String... command) throws Exception {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            process.getInputStream().readAllBytes();
            return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0;
        } catch (java.io.IOException e) {
            return false;
        }
    }
}
