// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.geo.GeoDataException;

class PointFeaturesTest {
    /** ROUNDING: a few operations on coordinates of size 10. */
    private static final double TOLERANCE = 1e-12;

    @TempDir
    private Path folder;

    private PointFeatures.Row read(String type, String coordinates) throws IOException {
        return layer(type, coordinates).rows().get(0);
    }

    private PointFeatures layer(String type, String coordinates) throws IOException {
        String shape = type.isEmpty() ? "null" : "{\"type\":\"" + type + "\",\"coordinates\":" + coordinates + "}";
        return PointFeatures.read(Files.writeString(
                folder.resolve("places.geojson"),
                "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{\"name\":\"001\","
                        + "\"people\":420,\"share\":0.15,\"tons\":12000000,\"none\":null},\"geometry\":" + shape
                        + "}]}"));
    }

    private static void isAt(PointFeatures.Row row, double longitude, double latitude) {
        assertThat(row.longitude()).isCloseTo(longitude, within(TOLERANCE));
        assertThat(row.latitude()).isCloseTo(latitude, within(TOLERANCE));
    }

    @Test
    void aPointStaysWhereItIs() throws IOException {
        isAt(read("Point", "[-20.1,-30.2]"), -20.1, -30.2);
    }

    @Test
    void severalPointsGiveTheirMean() throws IOException {
        isAt(read("MultiPoint", "[[1,1],[2,1],[3,4]]"), 2, 2);
    }

    @Test
    void anAreaGivesItsCentroid() throws IOException {
        isAt(read("Polygon", "[[[1,1],[3,1],[3,2],[1,2],[1,1]]]"), 2, 1.5);
    }

    /** A pond like a U, legs 1 wide and 4 high, base 1 high, 3 wide: its centroid, 1.5 from the left, lies in the gap. */
    @Test
    void aCrookedAreaGivesAPointInside() throws IOException {
        PointFeatures.Row row = read("Polygon", "[[[0,0],[3,0],[3,4],[2,4],[2,1],[1,1],[1,4],[0,4],[0,0]]]");
        boolean inBase = row.latitude() > 0 && row.latitude() < 1 && row.longitude() > 0 && row.longitude() < 3;
        boolean inLeg = row.latitude() < 4 && (row.longitude() > 0 && row.longitude() < 1 || row.longitude() > 2);
        assertThat(inBase || inLeg).as("%s", row).isTrue();
    }

    @Test
    void attributesAreTextWithoutExponents() throws IOException {
        assertThat(read("Point", "[1,2]").attributes())
                .isEqualTo(Map.of("name", "001", "people", "420", "share", "0.15", "tons", "12000000"));
        assertThat(layer("Point", "[1,2]").columns()).contains("name", "none");
    }

    @Test
    void linesAndNullShapesAreNoPlaces() {
        assertThatThrownBy(() -> layer("LineString", "[[1,1],[2,2]]"))
                .isInstanceOf(GeoDataException.class)
                .hasMessage("places.geojson: feature 1 is a line; give a point, several points, or an area");
        assertThatThrownBy(() -> layer("", ""))
                .isInstanceOf(GeoDataException.class)
                .hasMessage("places.geojson: feature 1 has no shape; give a point, several points, or an area");
    }
}
