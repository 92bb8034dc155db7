// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.PolygonArea;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.silverwake.geo.GeoDataException;

class LayerCrsTest {
    /** PRINTED: the references give 9 decimals of a degree; 2e-8 degrees are 2 mm, what series of projections differ by. */
    private static final Offset<Double> PRINTED = within(2e-8);
    /** The promise of the class for round trips [degrees], 0.1 m. */
    private static final Offset<Double> ROUND_TRIP = within(1e-6);
    /** ROUNDING: relative, of areas and meridian arcs. */
    private static final Offset<Double> ROUNDING = within(1e-7);

    private static final String GRS80 =
            "GEOGCS[\"x\",DATUM[\"y\",SPHEROID[\"GRS 1980\",6378137,298.257222101]],PRIMEM[\"Greenwich\",0],"
                    + "UNIT[\"degree\",0.0174532925199433]]";
    private static final String NORTH_CAROLINA = "PROJCS[\"North Carolina\"," + GRS80
            + ",PROJECTION[\"Lambert_Conformal_Conic\"],PARAMETER[\"standard_parallel_1\",36.16666666666666],"
            + "PARAMETER[\"standard_parallel_2\",34.33333333333334],PARAMETER[\"latitude_of_origin\",33.75],"
            + "PARAMETER[\"central_meridian\",-79],PARAMETER[\"false_easting\",%s],PARAMETER[\"false_northing\",0],"
            + "UNIT[\"%s\",%s]]";

    /** References: PROJ 9.1.1, cs2cs to OGC:CRS84 (to degrees on the same ellipsoid for 102008, 3035, 5070). */
    @ParameterizedTest
    @CsvSource({
        "EPSG:32726, 250123.4, 7654321.9, -29.406926891, -21.195457677",
        "EPSG:32650, 400000, 120000, 116.101202094, 1.085541891",
        "EPSG:3857, -7000000, 1000000, -62.882069888, 8.946573851",
        "ESRI:102008, -1700000, 1000000, -119.829637222, 46.646710582",
        "EPSG:3035, 4690000, 2840000, 15.001589176, 48.560751263",
        "EPSG:5070, 1520000, 1550000, -78.945750708, 35.772346691",
        "EPSG:3031, 1000000, -500000, 116.565051177, -79.736420851",
        "EPSG:2048, -27986.892, 3500863.295, 19.295000001, -31.630000002",
        "EPSG:3125, 552927.666, 1478124.427, 125.489999987, 13.365000017",
        "EPSG:4326, 115.5, -3.25, 115.5, -3.25",
        "urn:ogc:def:crs:OGC:1.3:CRS84, 115.5, -3.25, 115.5, -3.25",
        "urn:ogc:def:crs:EPSG::4326, 115.5, -3.25, 115.5, -3.25",
    })
    void codesLeadToTheSamePlacesAsAnotherProgram(String code, double x, double y, double longitude, double latitude) {
        double[] lonLat = LayerCrs.of(code).toLonLat(x, y);
        assertThat(lonLat[0]).isCloseTo(longitude, PRINTED);
        assertThat(lonLat[1]).isCloseTo(latitude, PRINTED);
        double[] back = LayerCrs.of(code).fromLonLat(lonLat[0], lonLat[1]);
        double[] again = LayerCrs.of(code).toLonLat(back[0], back[1]);
        assertThat(again[0]).isCloseTo(longitude, ROUND_TRIP);
        assertThat(again[1]).isCloseTo(latitude, ROUND_TRIP);
    }

    /** EPSG Guidance Note 7-2, Lambert Azimuthal Equal Area, EPSG:3035 (from memory): 50 N 5 E. */
    @Test
    void agreesWithTheWorkedExampleOfTheRegister() {
        double[] xy = LayerCrs.of("EPSG:3035").fromLonLat(5, 50);
        Offset<Double> printed = within(0.01);
        assertThat(xy[0]).isCloseTo(3_962_799.45, printed);
        assertThat(xy[1]).isCloseTo(2_999_718.85, printed);
    }

    /** On the central meridian, UTM northing is 0.9996 times the meridian arc, here from GeographicLib. */
    @Test
    void utmNorthingIsTheScaledMeridianArc() {
        double arc = Geodesic.WGS84.Inverse(0, 117, 37, 117).s12;
        double[] xy = LayerCrs.of("EPSG:32650").fromLonLat(117, 37);
        assertThat(xy[1] / (0.9996 * arc) - 1).isCloseTo(0, ROUNDING);
        assertThat(xy[0]).isCloseTo(500_000, within(1e-6));
    }

    /** Equal-area systems keep the area of a small field, here from GeographicLib. */
    @ParameterizedTest
    @CsvSource({"EPSG:3035, 15, 48.5", "EPSG:5070, -79, 36", "ESRI:102008, -120, 48"})
    void equalAreaSystemsKeepAreas(String code, double longitude, double latitude) {
        LayerCrs crs = LayerCrs.of(code);
        PolygonArea area = new PolygonArea(Geodesic.WGS84, false);
        double[][] ring = {{0, 0}, {0.01, 0}, {0.01, 0.01}, {0, 0.01}};
        double planar = 0;
        double[] before = crs.fromLonLat(longitude, latitude + 0.01);
        for (double[] corner : ring) {
            area.AddPoint(latitude + corner[1], longitude + corner[0]);
            double[] xy = crs.fromLonLat(longitude + corner[0], latitude + corner[1]);
            planar += (before[0] * xy[1] - xy[0] * before[1]) / 2;
            before = xy;
        }
        // DISCRETIZATION: straight edges of the plane are no geodesics; 1 km edges differ by 1e-5 of the area.
        assertThat(planar / area.Compute().area - 1).isCloseTo(0, within(2e-5));
    }

    /** Reference: PROJ 9.1.1, +proj=lcc in m and in us-ft. The same place in both units. */
    @Test
    void unitsMayBeMetersOrFeet() {
        LayerCrs meters = LayerCrs.of(NORTH_CAROLINA.formatted("609601.22", "Meter", "1"));
        LayerCrs feet = LayerCrs.of(NORTH_CAROLINA.formatted("2000000.0026166666", "Foot_US", "0.304800609601219"));
        double[] fromMeters = meters.toLonLat(640_000, 220_000);
        double[] fromFeet = feet.toLonLat(640_000 / 0.304800609601219, 220_000 / 0.304800609601219);
        assertThat(fromMeters[0]).isCloseTo(-78.663947432, PRINTED);
        assertThat(fromMeters[1]).isCloseTo(35.732740231, PRINTED);
        assertThat(fromFeet[0]).isCloseTo(fromMeters[0], PRINTED);
        assertThat(fromFeet[1]).isCloseTo(fromMeters[1], PRINTED);
        assertThat(feet.isDegrees()).isFalse();
        assertThat(feet.name()).isEqualTo("North Carolina (no code)");
    }

    @Test
    void anAuthoritysAxisOrderChangesNothing() {
        String northFirst = GRS80.replace("UNIT", "AXIS[\"Lat\",NORTH],AXIS[\"Long\",EAST],UNIT")
                .replace("0.0174532925199433]]", "0.0174532925199433],AXIS[\"Lat\",NORTH],AXIS[\"Long\",EAST]]");
        double[] lonLat = LayerCrs.of(
                        GRS80.substring(0, GRS80.length() - 1) + ",AXIS[\"Lat\",NORTH],AXIS[\"Long\",EAST]]")
                .toLonLat(-80, 36);
        assertThat(northFirst).contains("NORTH");
        assertThat(lonLat).containsExactly(-80, 36);
        double[] europe = LayerCrs.of("PROJCS[\"z\"," + GRS80
                        + ",PROJECTION[\"Lambert_Azimuthal_Equal_Area\"],PARAMETER[\"latitude_of_center\",52],"
                        + "PARAMETER[\"longitude_of_center\",10],PARAMETER[\"false_easting\",4321000],"
                        + "PARAMETER[\"false_northing\",3210000],UNIT[\"metre\",1],AXIS[\"Northing\",NORTH],"
                        + "AXIS[\"Easting\",EAST]]")
                .toLonLat(4_690_000, 2_840_000);
        assertThat(europe[0]).isCloseTo(15.001589176, PRINTED);
        assertThat(europe[1]).isCloseTo(48.560751263, PRINTED);
    }

    @Test
    void bringsWholeGeometriesAndKeepsTheirHeights() {
        Geometry line = new GeometryFactory().createLineString(new Coordinate[] {
            new Coordinate(400_000, 120_000, 12.5), new Coordinate(400_100, 120_000, 11)
        });
        Geometry lonLat = LayerCrs.of("EPSG:32650").toLonLat(line);
        assertThat(lonLat.getCoordinates()[0].x).isCloseTo(116.101202094, PRINTED);
        assertThat(lonLat.getCoordinates()[0].getZ()).isEqualTo(12.5);
        assertThat(line.getCoordinates()[0].x).isEqualTo(400_000);
    }

    @Test
    void longitudesFromZeroToAFullTurnAreBroughtBack() {
        assertThat(LayerCrs.wgs84().toLonLat(190.5, -17)).containsExactly(-169.5, -17);
    }

    @Test
    void swappedDegreesSayThatLongitudeComesFirst() {
        assertThatThrownBy(() -> LayerCrs.of("EPSG:4326").toLonLat(-3.25, 115.5))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("x = -3.25000, y = 115.500")
                .hasMessageContaining("longitude comes first");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "EPSG:999999 | EPSG:999999: not in the EPSG register",
                "ESRI:7 | ESRI:7: unknown code",
                "somewhere | neither a code such as EPSG:32726 nor well-known text",
                "PROJCS[\"a\",GEOGCS[\"b\" | broken at character",
                "LOCAL_CS[\"site grid\",UNIT[\"m\",1]] | no tie to the earth",
                "EPSG:4978 | not a system of places on the earth's surface",
                "EPSG:8857 | projection \"Equal Earth\" is not read",
                "GEOGCS[\"b\",PRIMEM[\"Greenwich\",0],UNIT[\"degree\",0.0174532925199433]] | lacks its DATUM",
            })
    void whatCannotBeUsedIsRefusedInOneLine(String text, String message) {
        assertThatThrownBy(() -> LayerCrs.of(text))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining(message)
                .satisfies(e -> assertThat(e.getMessage()).doesNotContain("\n"));
    }

    @Test
    void anOldDatumWithoutAShiftIsDoubted() {
        String old = GRS80.replace("GRS 1980\",6378137,298.257222101", "International 1924\",6378388,297");
        assertThat(LayerCrs.of(old).doubt())
                .hasValueSatisfying(
                        line -> assertThat(line).contains("some hundred meters").contains("rivers.crs"));
        assertThat(LayerCrs.of(GRS80).doubt()).isEmpty();
        assertThat(LayerCrs.of("EPSG:24818").doubt()).isEmpty();
    }

    @Test
    void systemsAreComparedByWhereTheyPutThings() {
        LayerCrs utm = LayerCrs.of("EPSG:32650");
        assertThat(utm.disagreement(LayerCrs.of("EPSG:32650"), 400_000, 120_000))
                .isZero();
        assertThat(utm.disagreement(LayerCrs.of("EPSG:32651"), 400_000, 120_000))
                .isGreaterThan(600_000);
        assertThat(utm.disagreement(LayerCrs.wgs84(), 400_000, 120_000)).isInfinite();
    }
}
