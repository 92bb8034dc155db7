// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

class PageLineTest {
    /** ROUNDING: of distances on a page of some hundred points. */
    private static final double ROUNDING = 1e-9;

    private static final GeometryFactory SHAPES = new GeometryFactory();

    /** Distances by JTS, which the thinning does not use: no point of the line is farther from the thinned one than is allowed. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void thinnedLinePassesNearEveryPoint(long seed) {
        LineString line = wandering(new Random(seed), 3000, seed % 4 == 0 ? 3 : 0.2);
        PageLine thinned = PageLine.of(line);
        LineString drawn = geometry(thinned);
        assertThat(thinned.size()).as("seed %d", seed).isLessThan(line.getNumPoints());
        for (Coordinate point : line.getCoordinates()) {
            assertThat(drawn.distance(SHAPES.createPoint(point)))
                    .as("seed %d, %s", seed, point)
                    .isLessThanOrEqualTo(PageLine.FINEST + ROUNDING);
        }
        assertThat(drawn.getCoordinateN(0)).isEqualTo(line.getCoordinateN(0));
        assertThat(drawn.getCoordinateN(drawn.getNumPoints() - 1))
                .isEqualTo(line.getCoordinateN(line.getNumPoints() - 1));
    }

    /** A page of A3 is one of A4 enlarged, 300 dots to 72 points. */
    @Test
    void thatIsAQuarterOfAPixelOnA3() {
        double pixels = Paper.DOTS_PER_INCH / 72.0 * Paper.A3.width() / Paper.A4.width();
        assertThat(PageLine.FINEST * pixels).isLessThan(0.25);
    }

    /** All points of a straight line but its ends, and not the tip of a line that turns back on itself. */
    @Test
    void pointsThatShowNothingAreLeftOut() {
        assertThat(PageLine.of(new double[] {0, 1, 2, 3, 4}, new double[] {0, 2, 4, 6, 8})
                        .size())
                .isEqualTo(2);
        assertThat(PageLine.of(new double[] {0, 5, 1}, new double[] {0, 0, 0}).xs())
                .containsExactly(0, 5, 1);
        assertThat(PageLine.of(new double[] {7, 7}, new double[] {3, 3}).size()).isEqualTo(2);
    }

    private static LineString wandering(Random random, int points, double step) {
        Coordinate[] line = new Coordinate[points];
        double heading = 0;
        double x = 0;
        double y = 0;
        for (int k = 0; k < points; k++) {
            line[k] = new Coordinate(x, y);
            heading += 0.3 * random.nextGaussian();
            x += step * Math.cos(heading);
            y += step * Math.sin(heading);
        }
        return SHAPES.createLineString(line);
    }

    private static LineString geometry(PageLine line) {
        Coordinate[] points = new Coordinate[line.size()];
        for (int k = 0; k < points.length; k++) {
            points[k] = new Coordinate(line.x(k), line.y(k));
        }
        return SHAPES.createLineString(points);
    }
}
