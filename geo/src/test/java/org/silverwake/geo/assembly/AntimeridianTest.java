// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.crs.LayerCrs;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.geo.place.Placement;
import org.silverwake.geo.place.Placer;
import org.silverwake.geo.place.PointRequest;

/** Rivers drawn across the antimeridian, or cut there. Lengths are checked against GeographicLib. */
class AntimeridianTest {
    /** ROUNDING: the short-line formula of Ground is good to 1e-6; on 20 km that is 2 cm. */
    private static final double LENGTH = 0.02;

    /** ROUNDING: adding a whole turn to a longitude costs some 1e-13 degrees. */
    private static final double DEGREES = 1e-9;

    private static final double LATITUDE = -16.5;

    private static LineString line(double... lonLat) {
        Coordinate[] points = new Coordinate[lonLat.length / 2];
        for (int k = 0; k < points.length; k++) {
            points[k] = new Coordinate(lonLat[2 * k], lonLat[2 * k + 1]);
        }
        return new GeometryFactory().createLineString(points);
    }

    private static RiverMap assembled(LineString... lines) {
        Sketch sketch = new Sketch();
        for (int k = 0; k < lines.length; k++) {
            sketch.shape(String.valueOf(k + 1), lines[k], Map.of());
        }
        return Assembly.assemble(sketch.layer(), AssemblyOptions.drawn(1));
    }

    private static RiverMap across() {
        return assembled(line(179.9, LATITUDE, -179.9, LATITUDE));
    }

    private static RiverMap cut() {
        return assembled(
                line(179.8, LATITUDE, 179.9, LATITUDE),
                line(179.9, LATITUDE, 180, LATITUDE),
                line(-180, LATITUDE, -179.9, LATITUDE),
                line(-179.9, LATITUDE, -179.8, LATITUDE));
    }

    private static double geodesic(double lon1, double lon2) {
        return Geodesic.WGS84.Inverse(LATITUDE, lon1, LATITUDE, lon2).s12;
    }

    private static PlacedPoint placed(RiverMap map, double longitude) {
        PointRequest request = new PointRequest(
                "site", "Shed", "sites.csv:2", longitude, LATITUDE + 0.001, false, 500, Optional.empty());
        Placement placement = Placer.place(map, LayerCrs.wgs84(), List.of(request));
        return placement.points().get(0);
    }

    @Test
    void aLineAcrossIsShortAndKeepsItsPlace() {
        RiverMap map = across();
        assertThat(map.defects()).isEmpty();
        RiverMap.Reach reach = map.reach(0);
        assertThat(reach.lengthMeters()).isCloseTo(geodesic(179.9, -179.9), within(LENGTH));
        assertThat(reach.line().getEnvelopeInternal().getWidth()).isCloseTo(0.2, within(DEGREES));
    }

    @Test
    void featuresCutThereHangTogether() {
        RiverMap map = cut();
        assertThat(map.defects()).isEmpty();
        Topology topology = Topology.of(map);
        assertThat(topology.components()).isEqualTo(1);
        assertThat(topology.outlets()).isEqualTo(1);
        assertThat(topology.lengthMeters()).isCloseTo(4 * geodesic(179.9, 180), within(LENGTH));
        assertThat(map.reach(1).toNode()).isEqualTo(map.reach(2).fromNode());
    }

    @Test
    void theLayerAsDrawnIsCountedAsOnePart() {
        Sketch sketch = new Sketch()
                .shape("1", line(179.9, LATITUDE, 180, LATITUDE), Map.of())
                .shape("2", line(-180, LATITUDE, -179.9, LATITUDE), Map.of());
        assertThat(Topology.of(sketch.layer()).components()).isEqualTo(1);
    }

    @Test
    void pointsOnBothSidesArePlaced() {
        PlacedPoint west = placed(cut(), 179.85);
        assertThat(west.featureId()).isEqualTo("1");
        assertThat(west.snappedLongitude()).isCloseTo(179.85, within(DEGREES));
        PlacedPoint east = placed(cut(), -179.95);
        assertThat(east.featureId()).isEqualTo("3");
        assertThat(east.snappedLongitude()).isCloseTo(-179.95, within(DEGREES));
        assertThat(east.chainageMeters()).isCloseTo(geodesic(-180, -179.95), within(LENGTH));
        assertThat(placed(across(), -179.95).chainageMeters()).isCloseTo(geodesic(179.9, -179.95), within(LENGTH));
        assertThat(placed(across(), -179.95).longitude()).isCloseTo(-179.95, within(DEGREES));
    }

    @Test
    void aPointIsPlacedAcrossTheAntimeridianOnALayerOfOneSide() {
        RiverMap map = assembled(line(179.5, LATITUDE, 179.999, LATITUDE));
        assertThat(placed(map, -179.999).distanceMeters()).isBetween(200.0, 300.0);
    }

    @Test
    void theOutletMayBeNamedByAPointOnTheFarSide() {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .shape("1", line(-179.9, LATITUDE, 179.9, LATITUDE), Map.of())
                        .layer(),
                AssemblyOptions.drawn(1)
                        .withOrientBy(AssemblyOptions.Criterion.OUTLET)
                        .withOutlets(AssemblyOptions.Outlet.ofPoint(-179.9, LATITUDE)));
        assertThat(map.reach(0).part().flipped()).isTrue();
    }

    @Test
    void defectsAreReportedFrom180WestTo180East() {
        RiverMap map = assembled(
                line(179.9, LATITUDE, -179.9, LATITUDE), line(-179.5, LATITUDE, -179.45, LATITUDE, -179.4, LATITUDE));
        assertThat(map.defects()).singleElement().satisfies(defect -> {
            assertThat(defect.kind()).isEqualTo(Defect.Kind.ISOLATED_PART);
            assertThat(defect.longitude()).isCloseTo(-179.45, within(DEGREES));
        });
        assertThat(DefectLog.place(new Coordinate(180.1, LATITUDE))).isEqualTo("179.90000 W, 16.50000 S");
    }

    @Test
    void heightsAreAskedForAlongTheLine() {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .shape("1", line(-179.9, LATITUDE, 179.9, LATITUDE), Map.of())
                        .layer(),
                AssemblyOptions.drawn(1)
                        .withOrientBy(AssemblyOptions.Criterion.ELEVATION)
                        .withElevation((lon, lat) -> OptionalDouble.of(1000 - 500 * (lon - 179))));
        assertThat(map.reach(0).part().flipped()).isTrue();
    }

    @Test
    void layersOfOneSideOrOfTheWholeGlobeStayAsTheyAre() {
        var west = new Sketch().shape("1", line(-70, 0, -60, 0), Map.of()).layer();
        assertThat(Antimeridian.joined(west)).isSameAs(west);
        var greenwich = new Sketch().shape("1", line(-1, 0, 1, 0), Map.of()).layer();
        assertThat(Antimeridian.joined(greenwich)).isSameAs(greenwich);
        var globe = new Sketch()
                .shape("1", line(-179, 0, -178, 0), Map.of())
                .shape("2", line(-1, 0, 1, 0), Map.of())
                .shape("3", line(178, 0, 179, 0), Map.of())
                .layer();
        assertThat(Antimeridian.joined(globe)).isSameAs(globe);
    }
}
