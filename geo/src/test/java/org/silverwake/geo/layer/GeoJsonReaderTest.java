// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.geo.GeoDataException;

class GeoJsonReaderTest {
    @TempDir
    private Path folder;

    private VectorLayer read(String text) throws IOException {
        return Layers.read(OpenData.source(Files.writeString(folder.resolve("l.json"), text)));
    }

    @Test
    void membersMayComeInAnyOrder() throws IOException {
        VectorLayer layer = read("""
                {"features": [{"geometry": {"coordinates": [[1, 2], [3, 4]], "type": "LineString"},
                  "bbox": [1, 2, 3, 4], "properties": {"n": 1}, "id": 9007199254740993, "type": "Feature"}],
                 "crs": {"properties": {"name": "urn:ogc:def:crs:OGC:1.3:CRS84"}, "type": "name"},
                 "name": "streams", "type": "FeatureCollection"}""");
        assertThat(layer.name()).isEqualTo("streams");
        assertThat(layer.features().get(0).id()).isEqualTo("9007199254740993");
        assertThat(layer.features().get(0).geometry().toText()).isEqualTo("LINESTRING (1 2, 3 4)");
        assertThat(layer.crs().name()).contains("CRS84");
    }

    @Test
    void valuesKeepTheirKind() throws IOException {
        VectorLayer layer = read("""
                {"type": "Feature", "geometry": {"type": "Point", "coordinates": [1, 2, 3]},
                 "properties": {"whole": 12, "real": 1.0, "text": "012", "yes": true, "none": null,
                 "list": [1, {"a": 2}], "large": 123456789012345678901234567890}}""");
        Map<String, Object> values = layer.features().get(0).attributes();
        assertThat(values)
                .containsEntry("whole", 12L)
                .containsEntry("real", 1.0)
                .containsEntry("text", "012")
                .containsEntry("yes", true)
                .containsEntry("list", "[1,{\"a\":2}]")
                .containsEntry("large", "123456789012345678901234567890")
                .doesNotContainKey("none");
        assertThat(layer.columns()).containsExactly("whole", "real", "text", "yes", "none", "list", "large");
    }

    @Test
    void columnsAreThoseOfAllFeatures() throws IOException {
        assertThat(read("""
                {"type": "FeatureCollection", "features": [
                 {"type": "Feature", "geometry": null, "properties": null},
                 {"type": "Feature", "geometry": null, "properties": {"a": 1}},
                 {"type": "Feature", "geometry": null, "properties": {"b": 1}}]}""").columns()).containsExactly("a", "b");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{\"type\":\"Point\",\"coordinates\":[]} | POINT EMPTY",
                "{\"type\":\"MultiPoint\",\"coordinates\":[[1,2],[3,4]]} | MULTIPOINT ((1 2), (3 4))",
                "{\"type\":\"LineString\",\"coordinates\":[[1,2]]} | LINESTRING (1 2, 1 2)",
                "{\"type\":\"LineString\",\"coordinates\":[]} | LINESTRING EMPTY",
                "{\"type\":\"MultiPolygon\",\"coordinates\":[[[[0,0],[1,0],[1,1],[0,0]]]]} | MULTIPOLYGON (((0 0, 1 0, 1 1, 0 0)))",
                "{\"type\":\"GeometryCollection\",\"geometries\":[{\"type\":\"Point\",\"coordinates\":[1,2]}]} | GEOMETRYCOLLECTION (POINT (1 2))",
            })
    void everyTypeIsRead(String geometry, String text) throws IOException {
        assertThat(read(geometry).features().get(0).geometry().toText()).isEqualTo(text);
    }

    @Test
    void errorsSayTheLineAndTheColumn() {
        fails(
                "{\"type\":\"FeatureCollection\",\n\"features\":[\n{\"type\":\"Feature\",,}]}",
                "line 3, column 19",
                "is not JSON");
        fails("{\"type\":\"Point\",\n\"coordinates\":[1,\"a\"]}", "line 2, column 18", "must be numbers");
        fails("{\"type\":\"Point\",\n\"coordinates\":[1]}", "line 2", "two numbers, longitude and latitude, found 1");
        fails(
                "{\"type\":\"Feature\",\n\"geometry\":{\"type\":\"Linestring\",\"coordinates\":[[1,2],[3,4]]}}",
                "line 2, column 12",
                "\"Linestring\" is no type");
        fails("{\"type\":\"Polygon\",\"coordinates\":[[[0,0],[1,0],[0,1]]]}", "line 1", "not those of a Polygon");
        fails("{\"type\":\"LineString\",\"coordinates\":[[[0,0],[1,0]]]}", "line 1", "nested otherwise");
        fails("[1,2]", "one object in braces");
        fails("{\"a\":1}", "has no \"type\"");
        fails("{\"type\":\"FeatureCollection\",\"crs\":{\"type\":\"link\"},\"features\":[]}", "names no system");
    }

    private void fails(String text, String... parts) {
        assertThatThrownBy(() -> read(text))
                .isInstanceOf(GeoDataException.class)
                .satisfies(e -> assertThat(e.getMessage())
                        .contains(parts)
                        .contains("l.json")
                        .doesNotContain("\n"));
    }
}
