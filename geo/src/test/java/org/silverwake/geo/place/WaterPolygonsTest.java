// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.Assembly;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.assembly.Sketch;
import org.silverwake.geo.layer.LayerSource;

/** A reach of 1 km from north to south, then one of 2 km; lakes as boxes over them. */
class WaterPolygonsTest {
    /** DISCRETIZATION: the sketch's meters per degree hold at its middle; a millionth of the box's side away from it. */
    private static final double SKETCHED = 1e-3;

    @TempDir
    private Path folder;

    private static RiverMap map() {
        return Assembly.assemble(
                new Sketch()
                        .line("upper", 0, 3000, 0, 2000)
                        .line("lower", 0, 2000, 0, 0)
                        .layer(),
                AssemblyOptions.drawn(1));
    }

    private static String lake(String properties, double west, double south, double east, double north) {
        double[] corners = {west, south, east, south, east, north, west, north, west, south};
        StringBuilder ring = new StringBuilder();
        for (int k = 0; k < corners.length; k += 2) {
            Coordinate c = Sketch.at(corners[k], corners[k + 1]);
            ring.append(k == 0 ? "" : ",").append(String.format(Locale.ROOT, "[%.9f,%.9f]", c.x, c.y));
        }
        return "{\"type\":\"Feature\",\"properties\":{" + properties
                + "},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":[[" + ring + "]]}}";
    }

    private static String named(String name, String depth) {
        return "\"name\":\"" + name + "\",\"depth\":" + depth;
    }

    private WaterPolygons read(String... features) throws IOException {
        Path file = folder.resolve("lakes.geojson");
        Files.writeString(file, "{\"type\":\"FeatureCollection\",\"features\":[" + String.join(",", features) + "]}");
        return WaterPolygons.read(
                new LayerSource(file, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                new WaterPolygons.Columns(
                        Optional.of("name"), Optional.of("depth"), 0.3048, List.of("-99"), Optional.empty()));
    }

    @Test
    void areaIsThatOfTheGroundAndDepthHasItsUnit() throws IOException {
        WaterPolygons.Polygon lake = read(lake(named("Round Lake", "10"), -500, 900, 500, 2100))
                .polygons()
                .get(0);
        assertThat(lake.name()).isEqualTo("Round Lake");
        assertThat(lake.area() / 1.2e6).isCloseTo(1, within(SKETCHED));
        assertThat(lake.depth()).hasValue(3.048);
    }

    @Test
    void linesAreCutAtTheEdge() throws IOException {
        WaterPolygons lakes = read(lake(named("Round Lake", "10"), -500, 900, 500, 2100));
        RiverMap cut = lakes.cut(map());
        int[] holding = lakes.holding(cut);
        List<String> inside = new ArrayList<>();
        double length = 0;
        for (int i = 0; i < cut.reachCount(); i++) {
            if (holding[i] == 0) {
                inside.add(cut.reach(i).part().featureId());
                length += cut.reach(i).lengthMeters();
            }
        }
        assertThat(cut.reachCount()).isEqualTo(4);
        assertThat(inside).containsExactly("upper", "lower");
        assertThat(length / 1200).isCloseTo(1, within(SKETCHED));
    }

    @Test
    void whatDrawingPutsALittleOutIsNotCutOff() throws IOException {
        WaterPolygons lakes = read(lake(named("Round Lake", "10"), -500, 10, 500, 1990));
        RiverMap cut = lakes.cut(map());
        assertThat(cut.reachCount()).isEqualTo(2);
        assertThat(lakes.holding(cut)).containsExactly(-1, 0);
    }

    @Test
    void aLakeBesideTheRiverHoldsNoReach() throws IOException {
        WaterPolygons lakes = read(lake(named("Far Pond", "3"), 800, 100, 900, 200));
        assertThat(lakes.holding(lakes.cut(map()))).containsOnly(-1);
    }

    @Test
    void lakesOnOneAnotherAreRefusedWhereALineRunsThroughBoth() throws IOException {
        WaterPolygons lakes = read(
                lake(named("Round Lake", "10"), -500, 900, 500, 2100),
                lake(named("Old Lake", "5"), -400, 500, 600, 1600),
                lake(named("Far Pond", "3"), 800, 100, 900, 200));
        RiverMap cut = lakes.cut(map());
        assertThatThrownBy(() -> lakes.holding(cut))
                .isInstanceOf(GeoDataException.class)
                .hasMessage("polygons Round Lake and Old Lake lie on one another, and line lower runs through both;"
                        + " correct one of them, or leave it out by a filter");
    }

    @Test
    void depthsThatAreNoneAreTold() throws IOException {
        assertThat(read(lake(named("Round Lake", "-99"), 0, 0, 1, 1))
                        .polygons()
                        .get(0)
                        .depth())
                .isEmpty();
        assertThat(read(lake(named("Round Lake", "null"), 0, 0, 1, 1))
                        .polygons()
                        .get(0)
                        .depth())
                .isEmpty();
        assertThatThrownBy(() -> read(
                        lake("\"id\":\"a\"," + named("Round Lake", "-2"), 0, 0, 1, 1),
                        lake("\"id\":\"b\"," + named("Old Lake", "\"deep\""), 0, 0, 1, 1)))
                .hasMessageMatching(
                        "(?s)lakes.geojson: feature .*, column depth: \"-2\" is not a depth; give a number above"
                                + " 0, leave it blank, or list it under missing\n.*\"deep\" is not a depth.*");
    }

    @Test
    void aColumnThatIsNotThereIsTold() throws IOException {
        assertThatThrownBy(() -> read(lake("\"name\":\"Round Lake\",\"tiefe\":3", 0, 0, 1, 1)))
                .hasMessage("lakes.geojson: there is no column depth; its columns are name, tiefe");
    }
}
