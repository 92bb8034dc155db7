// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import com.google.flatbuffers.FlatBufferBuilder;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.Channels;
import java.nio.channels.WritableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.GeoDataException;
import org.wololo.flatgeobuf.ColumnMeta;
import org.wololo.flatgeobuf.Constants;
import org.wololo.flatgeobuf.GeometryConversions;
import org.wololo.flatgeobuf.HeaderMeta;
import org.wololo.flatgeobuf.generated.ColumnType;
import org.wololo.flatgeobuf.generated.Feature;
import org.wololo.flatgeobuf.generated.GeometryType;

/** Files made with the format library's writer. */
class FlatGeobufReaderTest {
    private static final GeometryFactory FACTORY = new GeometryFactory();
    private static final LineString LINE = FACTORY.createLineString(
            new Coordinate[] {new Coordinate(400_000, 120_000), new Coordinate(400_100, 120_050)});

    @TempDir
    private Path folder;

    private Path write(int type, int srid, List<Geometry> geometries) throws IOException {
        Path file = folder.resolve("rivers.fgb");
        HeaderMeta header = new HeaderMeta();
        header.name = "streams";
        header.geometryType = (byte) type;
        header.srid = srid;
        header.featuresCount = geometries.size();
        header.columns = List.of(
                column("name", ColumnType.String),
                column("area", ColumnType.Double),
                column("order", ColumnType.Int),
                column("wet", ColumnType.Bool));
        try (OutputStream out = Files.newOutputStream(file);
                WritableByteChannel channel = Channels.newChannel(out)) {
            out.write(Constants.MAGIC_BYTES);
            HeaderMeta.write(header, out, new FlatBufferBuilder());
            for (Geometry geometry : geometries) {
                FlatBufferBuilder builder = new FlatBufferBuilder();
                int properties = Feature.createPropertiesVector(builder, properties());
                int shape = geometry == null ? 0 : GeometryConversions.serialize(builder, geometry, (byte) type);
                Feature.finishSizePrefixedFeatureBuffer(builder, Feature.createFeature(builder, shape, properties, 0));
                channel.write(builder.dataBuffer());
            }
        }
        return file;
    }

    private static ColumnMeta column(String name, int type) {
        ColumnMeta column = new ColumnMeta();
        column.name = name;
        column.type = (byte) type;
        return column;
    }

    private static byte[] properties() {
        byte[] name = "R\u00edo".getBytes(StandardCharsets.UTF_8);
        ByteBuffer out = ByteBuffer.allocate(100).order(ByteOrder.LITTLE_ENDIAN);
        out.putShort((short) 0).putInt(name.length).put(name);
        out.putShort((short) 1).putDouble(12.5);
        out.putShort((short) 2).putInt(-3);
        out.putShort((short) 3).put((byte) 1);
        return Arrays.copyOf(out.array(), out.position());
    }

    @Test
    void linesWithTheirValuesAndSystem() throws IOException {
        VectorLayer layer = Layers.read(OpenData.source(write(GeometryType.LineString, 32650, List.of(LINE, LINE))));
        assertThat(layer.name()).isEqualTo("streams");
        assertThat(layer.columns()).containsExactly("name", "area", "order", "wet");
        assertThat(layer.crs().name()).contains("EPSG:32650");
        assertThat(layer.features()).hasSize(2);
        LayerFeature first = layer.features().get(0);
        assertThat(first.id()).isEqualTo("1");
        assertThat(first.attributes())
                .containsEntry("name", "R\u00edo")
                .containsEntry("area", 12.5)
                .containsEntry("order", -3L)
                .containsEntry("wet", true);
        // PROJ 9.1.1, cs2cs EPSG:32650 OGC:CRS84; PRINTED
        assertThat(first.geometry().getCoordinate().x).isCloseTo(116.101202094, within(2e-8));
    }

    @Test
    void aFileOfUnknownTypeNamesItPerFeature() throws IOException {
        Geometry point = FACTORY.createPoint(new Coordinate(400_000, 120_000));
        Geometry multi = FACTORY.createMultiLineString(new LineString[] {LINE, LINE});
        List<Geometry> mixed = Arrays.asList(point, LINE, multi, null);
        VectorLayer layer = Layers.read(OpenData.source(write(GeometryType.Unknown, 32650, mixed)));
        assertThat(layer.features().stream()
                        .map(f -> f.geometry() == null ? "none" : f.geometry().getGeometryType()))
                .containsExactly("Point", "LineString", "MultiLineString", "none");
    }

    @Test
    void withoutASystemTheUserMustGiveOne() throws IOException {
        Path file = write(GeometryType.LineString, 0, List.of(LINE));
        assertThatThrownBy(() -> Layers.read(OpenData.source(file)))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("layer \"streams\" states no coordinate system; give rivers.crs");
        assertThat(Layers.read(OpenData.with(OpenData.source(file), null, "EPSG:32650", null, null))
                        .features())
                .hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 9, 100})
    void aFileThatEndsTooEarlyIsDamaged(int missing) throws IOException {
        Path file = write(GeometryType.LineString, 32650, List.of(LINE, LINE));
        byte[] whole = Files.readAllBytes(file);
        ByteArrayOutputStream cut = new ByteArrayOutputStream();
        cut.write(whole, 0, whole.length - missing);
        Files.write(file, cut.toByteArray());
        assertThatThrownBy(() -> Layers.read(OpenData.source(file)))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("ends too early");
    }
}
