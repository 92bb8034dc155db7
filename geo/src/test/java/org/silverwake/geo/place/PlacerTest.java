// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.Assembly;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.assembly.Sketch;
import org.silverwake.geo.assembly.Topology;
import org.silverwake.geo.crs.LayerCrs;
import org.silverwake.model.network.RiverNetwork;

class PlacerTest {
    /** MEASUREMENT: the sketch's meters are laid on a plane; 1 cm in 1 km is well above its error. */
    private static final double SKETCH = 0.01;

    /** MEASUREMENT: a degree of longitude is 1e-4 shorter 1 km north of where the sketch's scale is taken. */
    private static final double SKETCH_EAST = 0.15;

    /** A main stem of 2 km to the south, and a tributary of 1 km that joins it half way, from the east. */
    private static RiverMap fork() {
        return Assembly.assemble(
                new Sketch()
                        .line("upper", Map.of("n", "Lantern River"), 0, 2000, 0, 1000)
                        .line("lower", Map.of("n", "Lantern River"), 0, 1000, 0, 0)
                        .line("trib", Map.of("n", "Río Ñandú"), 1000, 1000, 0, 1000)
                        .layer(),
                AssemblyOptions.drawn(1).withNameColumn("n"));
    }

    private static PointRequest at(double east, double north, String river) {
        Coordinate c = Sketch.at(east, north);
        return degrees(c.x, c.y, river);
    }

    private static PointRequest degrees(double x, double y, String river) {
        return new PointRequest("site", "Camp", "sites.csv:2", x, y, false, 500, Optional.ofNullable(river));
    }

    private static Placement place(RiverMap map, PointRequest... requests) {
        return Placer.place(map, LayerCrs.wgs84(), List.of(requests));
    }

    @Test
    void reachIsCutAtThePoint() {
        Placement placement = place(fork(), at(30, 1600, null));
        PlacedPoint point = placement.points().get(0);
        assertThat(point.distanceMeters()).isCloseTo(30, within(SKETCH));
        assertThat(point.featureId()).isEqualTo("upper");
        assertThat(point.chainageMeters()).isCloseTo(400, within(SKETCH));
        RiverMap.Reach head = placement.map().reach(point.headReach());
        assertThat(head.id()).isEqualTo("upper.2");
        assertThat(head.lengthMeters()).isCloseTo(600, within(SKETCH));
        assertThat(head.line().getCoordinateN(0).y).isCloseTo(point.snappedLatitude(), within(1e-12));
        assertThat(placement.map().reachCount()).isEqualTo(4);
        assertThat(placement.map().nodeCount()).isEqualTo(fork().nodeCount() + 1);
        RiverNetwork.of(
                placement.map().ids(),
                placement.map().reaches().stream()
                        .mapToInt(RiverMap.Reach::fromNode)
                        .toArray(),
                placement.map().reaches().stream()
                        .mapToInt(RiverMap.Reach::toNode)
                        .toArray());
        assertThat(Topology.of(placement.map()).lengthMeters())
                .isCloseTo(Topology.of(fork()).lengthMeters(), within(1e-6));
    }

    @Test
    void manyPointsOnOneReachKeepOrderAndShareCuts() {
        Placement placement = place(
                fork(), at(0, 300, null), at(0, 700, null), at(20, 700, null), at(0, 700.4, null), at(0, 500, null));
        List<PlacedPoint> points = placement.points();
        assertThat(placement.map().ids()).contains("lower.1", "lower.2", "lower.3", "lower.4");
        assertThat(points.stream().map(p -> placement.map().reach(p.headReach()).id()))
                .containsExactly("lower.4", "lower.2", "lower.2", "lower.2", "lower.3");
        assertThat(points.get(4).chainageMeters()).isCloseTo(500, within(SKETCH));
    }

    @Test
    void aPointAtAHeadUsesItAndOneAtTheEndStaysOnItsTributary() {
        Placement placement = place(fork(), at(0, 1999.5, null), at(0.2, 1000.05, null), at(5, 1001, null));
        assertThat(placement
                        .map()
                        .reach(placement.points().get(0).headReach())
                        .part()
                        .featureId())
                .isEqualTo("upper");
        assertThat(placement.points().get(0).chainageMeters()).isZero();
        PlacedPoint mouth = placement.points().get(1);
        assertThat(mouth.featureId()).isEqualTo("trib");
        assertThat(mouth.chainageMeters()).isCloseTo(999, within(SKETCH_EAST));
        assertThat(placement.map().reach(mouth.headReach()).lengthMeters()).isCloseTo(1, within(SKETCH));
        assertThat(placement.points().get(2).featureId()).isEqualTo("trib");
    }

    @Test
    void aPointOnTheConfluenceIsAtTheHeadBelowIt() {
        Placement placement = place(fork(), at(0, 1000, null));
        assertThat(placement.points().get(0).featureId()).isEqualTo("lower");
        assertThat(placement.map().reachCount()).isEqualTo(3);
    }

    @Test
    void chainageFollowsTheFlowOnATurnedLine() {
        RiverMap turned = Assembly.assemble(
                new Sketch().line("r", 0, 0, 0, 1000).layer(),
                AssemblyOptions.drawn(1)
                        .withOrientBy(AssemblyOptions.Criterion.OUTLET)
                        .withOutlets(AssemblyOptions.Outlet.ofPoint(Sketch.at(0, 0).x, Sketch.at(0, 0).y)));
        Placement placement = place(turned, at(0, 700, null));
        assertThat(placement.points().get(0).chainageMeters()).isCloseTo(300, within(SKETCH));
        RiverMap.Reach head = placement.map().reach(placement.points().get(0).headReach());
        assertThat(head.part().fromMeters()).isCloseTo(0, within(SKETCH));
        assertThat(head.part().toMeters()).isCloseTo(700, within(SKETCH));
        assertThat(head.id()).isEqualTo("r.2");
    }

    @Test
    void farPointsAreAllNamedWithDistanceAndReach() {
        assertThatThrownBy(() -> place(fork(), at(-2000, 500, null), at(0, 500, null), at(0, -3000, null)))
                .isInstanceOf(GeoDataException.class)
                .satisfies(e -> assertThat(e.getMessage().lines()).hasSize(2))
                .hasMessageContaining("lies 2.0 km from the nearest reach, lower (Lantern River)")
                .hasMessageContaining("at most 500 m")
                .hasMessageContaining("3.0 km");
    }

    @ParameterizedTest
    @CsvSource({"-30, -20, swapped", "20, -30, longitude's sign", "-20, 30, latitude's sign", "20, 30, both signs"})
    void likelySlipsAreNamed(double x, double y, String guess) {
        RiverMap map = Assembly.assemble(new Sketch().line("r", 0, 100, 0, -100).layer(), AssemblyOptions.drawn(1));
        assertThatThrownBy(() -> place(map, degrees(x, y, null))).hasMessageContaining(guess);
    }

    @Test
    void degreesAndMinutesReadAsDecimalsAreNamed() {
        // 19 deg 45.0 min W, 30 deg 15.0 min S written as -19.45, -30.15
        double east = 0.25 * org.silverwake.geo.crs.Ground.metersPerDegreeEast(-30);
        double north = -0.25 * org.silverwake.geo.crs.Ground.metersPerDegreeNorth(-30);
        RiverMap map = Assembly.assemble(
                new Sketch().line("r", east, north + 100, east, north - 100).layer(), AssemblyOptions.drawn(1));
        assertThatThrownBy(() -> place(map, degrees(-19.45, -30.15, null)))
                .hasMessageContaining("degrees and minutes")
                .hasMessageContaining("-19.750000, -30.250000");
        assertThat(FarPoint.minutes(12.30)).isCloseTo(12.5, within(1e-9));
        assertThat(FarPoint.minutes(-12.30)).isCloseTo(-12.5, within(1e-9));
        assertThat(FarPoint.minutes(12.75)).isCloseTo(12.75, within(1e-9));
    }

    @Test
    void noFixAndImpossibleDegrees() {
        assertThatThrownBy(() ->
                        place(fork(), degrees(0, 0, null), degrees(-20, -130, null), degrees(453210, 8123456, null)))
                .hasMessageContaining("no position fix")
                .hasMessageContaining("longitude first")
                .satisfies(e -> assertThat(e.getMessage().lines()).hasSize(3));
    }

    @Test
    void anotherRiversNameNearbyIsAWarningWithBothDistances() {
        assertThat(place(fork(), at(30, 1040, "rio nandu")).warnings())
                .singleElement()
                .asString()
                .contains("30 m")
                .contains("40 m")
                .contains("Lantern River")
                .contains("Río Ñandú");
        assertThat(place(fork(), at(30, 1400, "rio nandu")).warnings())
                .singleElement()
                .asString()
                .contains("upper (Lantern River), 30 m away")
                .contains("trib (Río Ñandú) lies 400 m away");
        // beyond the 500 m within which a point is put on a reach
        assertThat(place(fork(), at(-30, 1900, "rio nandu")).warnings())
                .singleElement()
                .asString()
                .contains("trib (Río Ñandú) lies 900 m away");
        assertThat(place(fork(), at(40, 1030, "RIO NANDU")).warnings()).isEmpty();
        assertThat(place(fork(), at(30, 1400, "LANTERN  river")).warnings()).isEmpty();
    }

    @Test
    void aRiverNameThatTheLayerDoesNotHoldIsAWarning() {
        assertThat(place(fork(), at(30, 1400, "Wick Creek")).warnings())
                .singleElement()
                .asString()
                .startsWith("sites.csv:2 site \"Camp\"")
                .contains("upper (Lantern River), 30 m away")
                .contains("\"Wick Creek\"")
                .contains("no river of that name in the layer");
        RiverMap nameless =
                Assembly.assemble(new Sketch().line("r", 0, 1000, 0, 0).layer(), AssemblyOptions.drawn(1));
        assertThat(place(nameless, at(30, 400, "Wick Creek")).warnings())
                .singleElement()
                .asString()
                .contains("no names to compare");
    }

    /** For looking at: those that find no place are kept apart with their reason, the others are placed. */
    @Test
    void pointsWithoutAPlaceAreKeptApart() {
        PointRequest near = at(30, 1600, null);
        PointRequest far = at(5000, 1600, null);
        PointRequest nowhere = degrees(200, 0, null);
        Placement placement = Placer.placeWhereFound(fork(), LayerCrs.wgs84(), List.of(far, near, nowhere));
        assertThat(placement.points()).extracting(PlacedPoint::request).containsExactly(near);
        assertThat(placement.unplaced()).extracting(UnplacedPoint::request).containsExactly(far, nowhere);
        UnplacedPoint first = placement.unplaced().get(0);
        assertThat(first.longitude()).hasValue(far.x());
        assertThat(first.latitude()).hasValue(far.y());
        assertThat(first.reason()).contains("from the nearest reach");
        assertThat(placement.unplaced().get(1).longitude()).isEmpty();
        assertThat(placement.unplaced().get(1).reason()).contains("is no place on Earth");
        assertThatThrownBy(placement::requireAll)
                .isInstanceOf(GeoDataException.class)
                .hasMessage(first.reason() + "\n" + placement.unplaced().get(1).reason());
    }
}
