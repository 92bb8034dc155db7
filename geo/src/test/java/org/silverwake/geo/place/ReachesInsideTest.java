// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
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

/** A reach of 1 km from north to south, then one of 2 km; boxes around parts of them. */
class ReachesInsideTest {
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

    /** From south to north [m], 500 m to either side. */
    private static String box(double south, double north) {
        return ring(-500, south, 500, south, 500, north, -500, north, -500, south);
    }

    private static String ring(double... meters) {
        StringBuilder ring = new StringBuilder();
        for (int k = 0; k < meters.length; k += 2) {
            Coordinate c = Sketch.at(meters[k], meters[k + 1]);
            ring.append(k == 0 ? "" : ",").append(String.format(Locale.ROOT, "[%.9f,%.9f]", c.x, c.y));
        }
        return feature("Polygon", "[" + ring.insert(0, '[').append(']') + "]");
    }

    private static String feature(String type, String coordinates) {
        return "{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":\"" + type + "\",\"coordinates\":"
                + coordinates + "}}";
    }

    private ReachesInside find(RiverMap map, String... features) throws IOException {
        Path file = folder.resolve("areas.geojson");
        Files.writeString(file, "{\"type\":\"FeatureCollection\",\"features\":[" + String.join(",", features) + "]}");
        return ReachesInside.find(
                map, new LayerSource(file, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()));
    }

    private List<String> names(String... features) throws IOException {
        RiverMap map = map();
        return find(map, features).reaches().stream()
                .map(i -> map.reach(i).id())
                .toList();
    }

    @Test
    void moreThanHalfOfTheLengthMustLieWithin() throws IOException {
        assertThat(names(box(-100, 3100))).containsExactly("upper", "lower");
        assertThat(names(box(-100, 1100))).containsExactly("lower");
        assertThat(names(box(-100, 900))).isEmpty();
        assertThat(names(box(2490, 3100))).containsExactly("upper");
        assertThat(names(box(2510, 3100))).isEmpty();
    }

    /** 700 m in one box and 400 m in its neighbor are 1.1 of 2 km; the same 700 m told twice stay 700 m. */
    @Test
    void polygonsCountTogether() throws IOException {
        assertThat(names(box(0, 700), box(700, 1100))).containsExactly("lower");
        assertThat(names(box(0, 700), box(100, 700))).isEmpty();
    }

    /** Drawn as a figure of eight: its upper half still holds the upper reach. */
    @Test
    void aCrossedOutlineIsMended() throws IOException {
        assertThat(names(ring(-500, 3100, 500, 3100, -400, -3000, 400, -3000, -500, 3100)))
                .contains("upper");
    }

    @Test
    void linesArePointedOut() {
        assertThatThrownBy(() -> find(map(), feature("LineString", "[[-20,-30],[-20.1,-30]]"), box(0, 100)))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("areas.geojson: feature 1 is a LineString; give a layer of polygons");
    }

    @Test
    void nullShapesAreToldAndPassedOver() throws IOException {
        ReachesInside inside =
                find(map(), "{\"type\":\"Feature\",\"properties\":{},\"geometry\":null}", box(-100, 3100));
        assertThat(inside.reaches()).hasSize(2);
        assertThat(inside.warnings()).anySatisfy(w -> assertThat(w).contains("has no shape and is passed over"));
    }
}
