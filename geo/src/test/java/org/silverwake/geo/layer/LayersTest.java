// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.geo.GeoDataException;

/** What a user may ask of a layer, and each refusal in one line. */
class LayersTest {
    private static final String LINE =
            "\"geometry\":{\"type\":\"LineString\",\"coordinates\":[[-20,-30],[-20.01,-30.02]]}";
    private static final String LAYER = "{\"type\":\"FeatureCollection\",\"features\":["
            + "{\"type\":\"Feature\",\"id\":\"a\",\"properties\":{\"code\":\"001\",\"area\":12.5,\"kind of water\":\"stream\","
            + "\"ns:on\":true,\"when\":\"2025-07-01\"}," + LINE + "},"
            + "{\"type\":\"Feature\",\"id\":7,\"properties\":{\"code\":\"1\",\"area\":3,\"kind of water\":\"river\","
            + "\"ns:on\":false,\"when\":\"2024-07-01\"}," + LINE + "},"
            + "{\"type\":\"Feature\",\"properties\":{\"code\":1,\"area\":null,\"kind of water\":\"canal\"}," + LINE
            + "}]}";

    @TempDir
    private Path folder;

    private LayerSource layer(String text) throws IOException {
        return OpenData.source(Files.writeString(folder.resolve("rivers.geojson"), text));
    }

    private static void refused(ThrowingCallable reading, String... parts) {
        assertThatThrownBy(reading)
                .isInstanceOf(GeoDataException.class)
                .satisfies(e -> assertThat(e.getMessage()).contains(parts).doesNotContain("\n"));
    }

    @Test
    void idsComeFromTheColumnElseTheFileElseThePlace() throws IOException {
        LayerSource source = layer(LAYER);
        assertThat(Layers.read(source).features().stream().map(LayerFeature::id))
                .containsExactly("a", "7", "3");
        assertThat(Layers.read(OpenData.with(source, null, null, null, "code")).features().stream()
                        .map(LayerFeature::id))
                .containsExactly("001", "1", "1");
    }

    @Test
    void numbersAsIdsHaveNoDecimals() {
        assertThat(Ids.text(8_585_800.0)).isEqualTo("8585800");
        assertThat(Ids.text(1.5)).isEqualTo("1.5");
        assertThat(Ids.text(12L)).isEqualTo("12");
    }

    @Test
    void aMissingIdColumnNamesTheNearest() throws IOException {
        LayerSource source = OpenData.with(layer(LAYER), null, null, null, "cod");
        refused(() -> Layers.read(source), "rivers.geojson", "no id column \"cod\"", "nearest is \"code\"", "area");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "area > 3 | a",
                "area >= 3 | a,7",
                "area IS NULL | 3",
                "\"kind of water\" IN ('stream', 'canal') | a,3",
                "\"kind of water\" LIKE 'r%' AND NOT area > 5 | 7",
                "\"ns:on\" = true | a",
                "when > '2025-01-01' | a",
                // a text compares with a number as the number it reads as, and with a text letter by letter
                "code = '001' | a,3",
                "INCLUDE | a,7,3",
                "IN ('7') | 7",
                "area * 2 BETWEEN 5 AND 7 | 7",
            })
    void filtersChooseByAttributes(String filter, String ids) throws IOException {
        LayerSource source = OpenData.with(layer(LAYER), null, null, filter, null);
        assertThat(String.join(
                        ",",
                        Layers.read(source).features().stream()
                                .map(LayerFeature::id)
                                .toList()))
                .isEqualTo(ids);
    }

    @Test
    void wrongFiltersSayWhy() throws IOException {
        LayerSource source = layer(LAYER);
        refused(
                () -> Layers.read(OpenData.with(source, null, null, "area >", null)),
                "filter \"area >\" is not understood",
                "write it as ECQL");
        refused(
                () -> Layers.read(OpenData.with(source, null, null, "aera > 3", null)),
                "there is no column \"aera\"",
                "nearest is \"area\"",
                "code, area, kind of water, ns:on, when");
        refused(
                () -> Layers.read(OpenData.with(source, null, null, "area > 1000", null)),
                "chooses none of the 3 features");
    }

    @Test
    void filesThatAreNotThereOrNotRead() throws IOException {
        Path text = Files.writeString(folder.resolve("rivers.txt"), "x");
        refused(() -> Layers.read(OpenData.source(folder.resolve("absent.gpkg"))), "absent.gpkg", "no such file");
        refused(() -> Layers.read(OpenData.source(text)), "rivers.txt", "files ending in \"txt\"", ".gpkg", ".fgb");
        for (String ending : List.of("gpkg", "shp", "fgb")) {
            Path wrong = Files.writeString(folder.resolve("wrong." + ending), "not what it says");
            refused(() -> Layers.read(OpenData.source(wrong)), "wrong." + ending, "is not a ");
        }
        Path zip = Files.writeString(folder.resolve("wrong.zip"), "not what it says");
        refused(() -> Layers.read(OpenData.source(zip)), "wrong.zip", "cannot be read");
        refused(
                () -> Layers.read(layer("{\"type\":\"FeatureCollection\",\"features\":[]}")),
                "layer \"rivers\" has no features");
    }

    @Test
    void aSystemThatContradictsTheFilesIsRefused() throws IOException {
        String crs = "\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"EPSG:4326\"}},";
        LayerSource source = layer(LAYER.replace("\"features\"", crs + "\"features\""));
        assertThat(Layers.read(OpenData.with(source, null, "OGC:CRS84", null, null))
                        .warnings())
                .isEmpty();
        refused(
                () -> Layers.read(OpenData.with(source, null, "EPSG:32726", null, null)),
                "the file states WGS 84 (EPSG:4326), but rivers.crs says WGS 84 / UTM zone 26S (EPSG:32726)");
        refused(() -> Layers.read(OpenData.with(source, null, "EPSG:", null, null)), "rivers.crs: ", "neither a code");
    }

    @Test
    void aFileWhoseSystemCannotBeUsedNeedsTheUsers() throws IOException {
        String crs = "\"crs\":{\"type\":\"name\",\"properties\":{\"name\":\"my own\"}},";
        LayerSource source = layer(LAYER.replace("\"features\"", crs + "\"features\""));
        refused(() -> Layers.read(source), "the file's coordinate system: ", "\"my own\"");
        VectorLayer read = Layers.read(OpenData.with(source, null, "EPSG:4326", null, null));
        assertThat(read.warnings()).anyMatch(w -> w.contains("my own"));
    }

    @Test
    void geoJsonWithoutASystemIsReadAsTheUserSays() throws IOException {
        String projected = LAYER.replace("[-20,-30],[-20.01,-30.02]", "[500000,6680000],[500100,6680000]");
        VectorLayer read = Layers.read(OpenData.with(layer(projected), null, "EPSG:32726", null, null));
        assertThat(read.features().get(0).geometry().getCoordinate().x).isCloseTo(-27, within(1e-9));
        assertThat(read.warnings()).anyMatch(w -> w.contains("by its format means WGS 84"));
        refused(
                () -> Layers.read(layer(projected)),
                "rivers.geojson: feature a: x = 500000.0, y = 6680000.0",
                "longitude comes first");
    }
}
