// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

class MetricPlaneTest {
    /** ROUNDING: 1e-12 degrees are 0.1 micrometers. */
    private static final Offset<Double> ROUNDING = within(1e-11);

    private static final GeometryFactory FACTORY = new GeometryFactory();

    @Test
    void thereAndBackIsTheSamePlace() {
        MetricPlane plane = MetricPlane.around(new Envelope(-21, -19, -31, -29));
        Random random = new Random(7);
        for (int i = 0; i < 1000; i++) {
            Coordinate place = new Coordinate(-20 + 20 * random.nextGaussian(), 80 * random.nextDouble() - 60);
            Coordinate back = plane.toLonLat(plane.toPlane(place));
            assertThat(back.x).isCloseTo(Geodesy.wrap(place.x), ROUNDING);
            assertThat(back.y).isCloseTo(place.y, ROUNDING);
        }
        Coordinate centre = plane.toLonLat(new Coordinate(0, 0));
        assertThat(centre.x).isCloseTo(-20, ROUNDING);
        assertThat(centre.y).isCloseTo(-30, ROUNDING);
    }

    /** Distances against GeographicLib; the distortion that the class states, 1 / cos2(c / 2) - 1 at the far end. */
    @ParameterizedTest
    @CsvSource({"100, 0.011", "500, 0.18", "1000, 0.7"})
    void lengthsAreOffByNoMoreThanTheClassStates(double kilometers, double percent) {
        MetricPlane plane = MetricPlane.around(new Envelope(-20, -20, -30, -30));
        for (double azimuth = 0; azimuth < 360; azimuth += 30) {
            var there = net.sf.geographiclib.Geodesic.WGS84.Direct(-30, -20, azimuth, kilometers * 1000);
            Coordinate a = new Coordinate(there.lon2, there.lat2);
            Coordinate east = new Coordinate(a.x + 1e-3, a.y);
            Coordinate north = new Coordinate(a.x, a.y + 1e-3);
            double scale = plane.scaleAt(a);
            assertThat(Math.abs(scale - 1)).isLessThan(percent / 100);
            // conformal: the same scale in both directions; DISCRETIZATION over 100 m
            for (Coordinate b : List.of(east, north)) {
                double planar = plane.toPlane(a).distance(plane.toPlane(b));
                assertThat(planar / Geodesy.distance(a, b) / scale - 1).isCloseTo(0, within(2e-6));
            }
        }
    }

    @Test
    void aLayerOverTheAntimeridianLiesTogether() {
        List<Geometry> layer = new ArrayList<>();
        layer.add(FACTORY.createPoint(new Coordinate(179.99, -17)));
        layer.add(null);
        layer.add(FACTORY.createPoint(new Coordinate(-179.98, -17.01)));
        MetricPlane plane = MetricPlane.around(layer);
        Coordinate a = plane.toPlane(layer.get(0).getCoordinate());
        Coordinate b = plane.toPlane(layer.get(2).getCoordinate());
        double ground = Geodesy.distance(179.99, -17, -179.98, -17.01);
        assertThat(a.distance(b) / ground - 1).isCloseTo(0, within(1e-4));
        assertThat(a.x).isLessThan(b.x);
        assertThat(plane.toLonLat(b).x).isCloseTo(-179.98, ROUNDING);
    }

    @Test
    void geometriesGoThereAndBack() {
        Geometry line =
                FACTORY.createLineString(new Coordinate[] {new Coordinate(7, 50, 3), new Coordinate(7.01, 50, 2)});
        MetricPlane plane = MetricPlane.around(List.of(line));
        Geometry planar = plane.toPlane(line);
        assertThat(planar.getLength() / Geodesy.distance(7, 50, 7.01, 50) - 1).isCloseTo(0, within(1e-6));
        assertThat(plane.toLonLat(planar).equalsExact(line, 1e-11)).isTrue();
        assertThat(planar.getCoordinates()[0].getZ()).isEqualTo(3);
    }

    @Test
    void nothingHasNoMiddle() {
        assertThatThrownBy(() -> MetricPlane.around(List.of())).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> MetricPlane.around(new Envelope())).isInstanceOf(IllegalArgumentException.class);
    }
}
