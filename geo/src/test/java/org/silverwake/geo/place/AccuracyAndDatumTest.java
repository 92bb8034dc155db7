// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.Assembly;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.assembly.Sketch;
import org.silverwake.geo.crs.LayerCrs;
import org.silverwake.geo.crs.PointReader;
import org.silverwake.geo.crs.PointSystem;

class AccuracyAndDatumTest {
    /** ROUNDING: degrees, 1 mm. */
    private static final double ROUNDING = 1e-8;

    /** A main stem of 2 km in two features, and a tributary that joins it half way, from the east. */
    private static RiverMap fork(boolean named) {
        Sketch sketch = named
                ? new Sketch()
                        .line("upper", Map.of("n", "Lantern River"), 0, 2000, 0, 1000)
                        .line("lower", Map.of("n", "Lantern River"), 0, 1000, 0, 0)
                        .line("trib", Map.of("n", "Wick Brook"), 1000, 1000, 0, 1000)
                : new Sketch()
                        .line("upper", 0, 2000, 0, 1000)
                        .line("lower", 0, 1000, 0, 0)
                        .line("last", 0, 0, 0, -500)
                        .line("trib", 1000, 1000, 0, 1000);
        AssemblyOptions options = AssemblyOptions.drawn(1);
        return Assembly.assemble(sketch.layer(), named ? options.withNameColumn("n") : options);
    }

    private static List<String> warnings(RiverMap map, double east, double north, double accuracy, String river) {
        Coordinate c = Sketch.at(east, north);
        PointRequest request = new PointRequest(
                "site",
                "Camp",
                "sites.csv:2",
                c.x,
                c.y,
                PointSystem.wgs84(),
                OptionalDouble.of(accuracy),
                500,
                Optional.ofNullable(river));
        return Placer.place(map, LayerCrs.wgs84(), List.of(request)).warnings();
    }

    @Test
    void aPositionThatCannotTellTwoRiversApartIsAWarningWithBothDistances() {
        // 30 m west of the tributary's line, 60 m from the main stem
        assertThat(warnings(fork(true), 60, 1030, 100, null))
                .containsExactly("sites.csv:2 site \"Camp\": its position is good to 100 m, but another river, upper"
                        + " (Lantern River), lies 60 m away; it was put on trib (Wick Brook), 30 m away: make sure that this"
                        + " is its river, and name it in the column river");
        assertThat(warnings(fork(true), 60, 1030, 50, null)).isEmpty();
    }

    @Test
    void aRowThatNamesItsRiverNeedsNoWarning() {
        assertThat(warnings(fork(true), 60, 1030, 100, "wick brook")).isEmpty();
    }

    @Test
    void theSameRiverFurtherOnIsNoOther() {
        // a side channel of the same name, 60 m away
        RiverMap channels = Assembly.assemble(
                new Sketch()
                        .line("left", Map.of("n", "Lantern River"), 0, 2000, 0, 0)
                        .line("right", Map.of("n", "LANTERN RIVER"), 80, 2000, 80, 0)
                        .layer(),
                AssemblyOptions.drawn(1).withNameColumn("n"));
        assertThat(warnings(channels, 20, 1000, 100, null)).isEmpty();
        // without names, the next piece of a line where nothing joins is the same river
        assertThat(warnings(fork(false), 20, 20, 50, null)).isEmpty();
        assertThat(warnings(fork(false), 15, 980, 50, null))
                .singleElement()
                .asString()
                .contains("another river, trib, lies 20 m away")
                .contains("put on lower, 15 m away");
    }

    @Test
    void pointsOnAnOldDatumAreShiftedAndToldOncePerDatum() {
        // at the sketch's place no old datum is in use, so one that holds everywhere: WGS 72
        RiverMap map = fork(true);
        Coordinate c = Sketch.at(20, 500);
        PointSystem old = PointSystem.degrees("EPSG:4322");
        PointRequest one = new PointRequest(
                "site", "Camp", "sites.csv:2", c.x, c.y, old, OptionalDouble.empty(), 500, Optional.empty());
        PointRequest two = new PointRequest(
                "place", "Village", "places.csv:3", c.x, c.y, old, OptionalDouble.empty(), 500, Optional.empty());
        Placement placement = Placer.place(map, LayerCrs.wgs84(), List.of(one, two));
        assertThat(placement.warnings())
                .singleElement()
                .asString()
                .startsWith("sites.csv:2 site \"Camp\", places.csv:3 place \"Village\": shifted 1")
                .contains(" m to the east, from datum WGS 72 (EPSG:4322) to WGS 84, by transformation EPSG:1238");
        // 0.554 seconds of arc to the east (EPSG:1238)
        assertThat(placement.points().get(0).longitude() - c.x).isCloseTo(0.554 / 3600, within(ROUNDING));
    }

    @Test
    void theNoteNamesTheTransformationsOfNeighborCountries() {
        ShiftNotes notes = new ShiftNotes();
        PointSystem old = PointSystem.degrees("EPSG:4618");
        PointRequest request = new PointRequest(
                "site", "Camp", "sites.csv:2", -58.9, 5.0, old, OptionalDouble.empty(), 500, Optional.empty());
        notes.add(
                request,
                new PointReader(LayerCrs.wgs84()).read(old, -58.9, 5.0).shift().orElseThrow());
        assertThat(notes.lines())
                .singleElement()
                .asString()
                .contains("(Brazil; good to 5 m)")
                .contains("The boxes of other areas hold the place too")
                .containsPattern("EPSG:1872 \\(Guyana - onshore; good to 12 m\\): \\d+ m");
    }

    @Test
    void aWrongZoneIsGuessed() {
        Coordinate c = Sketch.at(20, 500);
        double[] xy = LayerCrs.of("EPSG:32727").fromLonLat(c.x, c.y);
        PointRequest request = new PointRequest(
                "site",
                "Camp",
                "sites.csv:2",
                xy[0],
                xy[1],
                PointSystem.utm(26, true, "EPSG:4326"),
                OptionalDouble.empty(),
                500,
                Optional.empty());
        assertThatThrownBy(() -> Placer.place(fork(true), LayerCrs.wgs84(), List.of(request)))
                .isInstanceOf(GeoDataException.class)
                .hasMessageEndingWith("; in UTM zone 27 south, WGS 84 it would lie on the network: is that it?");
    }

    @Test
    void aDatumThatIsNotUsedThereIsRefusedWithItsPlace() {
        Coordinate c = Sketch.at(20, 500);
        PointRequest request = new PointRequest(
                "site",
                "Camp",
                "sites.csv:2",
                c.x,
                c.y,
                PointSystem.degrees("EPSG:4313"),
                OptionalDouble.empty(),
                500,
                Optional.empty());
        PointRequest arc = new PointRequest(
                "site",
                "Yard",
                "sites.csv:3",
                c.x,
                c.y,
                PointSystem.degrees("EPSG:4267"),
                OptionalDouble.empty(),
                500,
                Optional.empty());
        assertThatThrownBy(() -> Placer.place(fork(true), LayerCrs.wgs84(), List.of(arc)))
                .isInstanceOf(GeoDataException.class)
                .hasMessageStartingWith(
                        "sites.csv:3 site \"Yard\": no transformation from datum NAD27 (EPSG:4267) to WGS"
                                + " 84 is known at ");
        assertThat(request.system().text()).isEqualTo("degrees, EPSG:4313");
    }
}
