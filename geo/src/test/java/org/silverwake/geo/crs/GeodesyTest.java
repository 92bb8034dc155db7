// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;

class GeodesyTest {
    /** PRINTED: references in millimeters. */
    private static final Offset<Double> PRINTED = within(1e-3);
    /** ROUNDING: a micrometer of thousands of kilometers. */
    private static final Offset<Double> ROUNDING = within(1e-6);

    private static final LineString BEND = new GeometryFactory().createLineString(new Coordinate[] {
        new Coordinate(-20, -30, 100), new Coordinate(-19.99, -30, 90), new Coordinate(-19.99, -30.02, 60)
    });

    /**
     * Flinders Peak to Buninyon, 54972.271 m on GRS 80 (Geoscience Australia, GDA94 technical manual, from memory); on WGS
     * 84 the same within 1 mm.
     */
    @Test
    void distanceAgreesWithTheSurveyorsExample() {
        double distance = Geodesy.distance(
                144 + 25 / 60.0 + 29.52440 / 3600,
                -(37 + 57 / 60.0 + 3.72030 / 3600),
                143 + 55 / 60.0 + 35.38390 / 3600,
                -(37 + 39 / 60.0 + 10.15610 / 3600));
        assertThat(distance).isCloseTo(54_972.271, PRINTED);
    }

    @Test
    void theShortWayOverTheAntimeridian() {
        assertThat(Geodesy.distance(179.9, -17, -179.9, -17))
                .isCloseTo(Geodesy.distance(-0.1, -17, 0.1, -17), ROUNDING);
    }

    @Test
    void lengthIsTheSumOfItsSegments() {
        double first = Geodesy.distance(-20, -30, -19.99, -30);
        double second = Geodesy.distance(-19.99, -30, -19.99, -30.02);
        assertThat(Geodesy.length(BEND)).isCloseTo(first + second, ROUNDING);
        assertThat(Geodesy.chainages(BEND)[1]).isCloseTo(first, ROUNDING);
        assertThat(Geodesy.length(new GeometryFactory().createLineString())).isZero();
    }

    @Test
    void aPointLiesAtItsDistance() {
        double length = Geodesy.length(BEND);
        Coordinate at = Geodesy.pointAt(BEND, length - 500);
        assertThat(Geodesy.distance(at, new Coordinate(-19.99, -30.02))).isCloseTo(500, within(1e-2));
        assertThat(at.getZ()).isBetween(60.0, 90.0);
        assertThat(Geodesy.pointAt(BEND, -5)).isEqualTo(BEND.getCoordinateN(0));
        assertThat(Geodesy.pointAt(BEND, length + 5)).isEqualTo(BEND.getCoordinateN(2));
    }

    @Test
    void partsJoinToTheWhole() {
        double length = Geodesy.length(BEND);
        LineString head = Geodesy.part(BEND, 0, 1200);
        LineString tail = Geodesy.part(BEND, 1200, length);
        assertThat(head.getCoordinateN(head.getNumPoints() - 1)).isEqualTo(tail.getCoordinateN(0));
        assertThat(Geodesy.length(head)).isCloseTo(1200, within(1e-2));
        assertThat(Geodesy.length(head) + Geodesy.length(tail)).isCloseTo(length, within(1e-3));
        assertThat(Geodesy.part(BEND, 0, length).equalsExact(BEND)).isTrue();
        assertThat(Geodesy.length(Geodesy.part(BEND, 700, 700))).isZero();
    }

    @Test
    void aPartEndsAtAVertexWithoutDoublingIt() {
        double corner = Geodesy.chainages(BEND)[1];
        assertThat(Geodesy.part(BEND, 0, corner).getNumPoints()).isEqualTo(2);
        assertThat(Geodesy.part(BEND, corner, Geodesy.length(BEND)).getNumPoints())
                .isEqualTo(2);
    }

    /**
     * GeographicLib's own example of the area of Antarctica, 18 vertices (Planimeter, documentation of GeographicLib, from memory):
     * 13,662,703,680,020.1 m2.
     */
    @Test
    void areaOfAntarctica() {
        double[] latLon = {
            -63.1, -58, -72.9, -74, -71.9, -102, -74.9, -102, -74.3, -131, -77.5, -163, -77.4, 163, -71.7, 172, -65.9,
            140, -65.7, 113, -66.6, 88, -66.9, 59, -69.8, 25, -70.0, -4, -71.0, -14, -77.3, -33, -77.9, -46, -74.7, -61,
            -63.1, -58
        };
        Coordinate[] ring = new Coordinate[latLon.length / 2];
        for (int k = 0; k < ring.length; k++) {
            ring[k] = new Coordinate(latLon[2 * k + 1], latLon[2 * k]);
        }
        // PRINTED: one decimal of a square meter
        assertThat(Geodesy.area(new GeometryFactory().createPolygon(ring)))
                .isCloseTo(13_662_703_680_020.1, within(0.05));
    }

    @Test
    void aHoleIsLeftOut() {
        GeometryFactory shapes = new GeometryFactory();
        Coordinate[] outer = square(0.02);
        Coordinate[] inner = square(0.01);
        double whole = Geodesy.area(shapes.createPolygon(outer));
        double hole = Geodesy.area(shapes.createPolygon(inner));
        double left = Geodesy.area(shapes.createPolygon(
                shapes.createLinearRing(outer),
                new org.locationtech.jts.geom.LinearRing[] {shapes.createLinearRing(inner)}));
        // ROUNDING: a difference of 1e7 m2
        assertThat(left).isCloseTo(whole - hole, within(1e-6));
        assertThat(hole).isGreaterThan(1e6);
    }

    private static Coordinate[] square(double half) {
        return new Coordinate[] {
            new Coordinate(-half, -half),
            new Coordinate(half, -half),
            new Coordinate(half, half),
            new Coordinate(-half, half),
            new Coordinate(-half, -half)
        };
    }
}
