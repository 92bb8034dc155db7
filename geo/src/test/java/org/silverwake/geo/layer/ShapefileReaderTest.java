// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Small Shapefiles made byte by byte after the ESRI description of July 1998. */
class ShapefileReaderTest {
    private static final String PRJ = "GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\",SPHEROID[\"WGS_1984\",6378137,"
            + "298.257223563]],PRIMEM[\"Greenwich\",0],UNIT[\"Degree\",0.017453292519943295]]";

    @TempDir
    private Path folder;

    private VectorLayer read(byte[]... records) throws IOException {
        Files.write(folder.resolve("r.shp"), shp(records));
        Files.writeString(folder.resolve("r.prj"), PRJ);
        return Layers.read(OpenData.source(folder.resolve("r.shp")));
    }

    private static byte[] shp(byte[]... records) {
        ByteBuffer out = ByteBuffer.allocate(10_000);
        out.putInt(0, 9994).putInt(28, Integer.reverseBytes(1000)).position(100);
        for (int i = 0; i < records.length; i++) {
            out.putInt(i + 1).putInt(records[i].length / 2).put(records[i]);
        }
        out.putInt(24, out.position() / 2);
        byte[] bytes = new byte[out.position()];
        out.flip().get(bytes);
        return bytes;
    }

    /** A record of lines or rings, each given as x, y, x, y ... */
    private static byte[] shape(int type, double[]... parts) {
        ByteBuffer out = ByteBuffer.allocate(2000).order(ByteOrder.LITTLE_ENDIAN);
        int points = 0;
        out.putInt(0, type).putInt(36, parts.length).position(44);
        for (double[] part : parts) {
            out.putInt(points);
            points += part.length / 2;
        }
        out.putInt(40, points);
        for (double[] part : parts) {
            for (double value : part) {
                out.putDouble(value);
            }
        }
        byte[] bytes = new byte[out.position()];
        out.flip().get(bytes);
        return bytes;
    }

    /** A table of one text column of 8 bytes; a row that starts with * is deleted. */
    private static byte[] dbf(int language, byte[]... rows) {
        ByteBuffer out = ByteBuffer.allocate(65 + 9 * rows.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put(0, (byte) 3).putInt(4, rows.length).putShort(8, (short) 65).putShort(10, (short) 9);
        out.put(29, (byte) language)
                .put(32, (byte) 'n')
                .put(43, (byte) 'C')
                .put(48, (byte) 8)
                .put(64, (byte) 13);
        for (int i = 0; i < rows.length; i++) {
            out.position(65 + 9 * i).put("         ".getBytes(StandardCharsets.US_ASCII));
            out.position(65 + 9 * i).put(rows[i]);
        }
        return out.array();
    }

    private static byte[] row(String text, String charset) {
        return text.getBytes(Charset.forName(charset));
    }

    private static final double[] LINE = {-20, -30, -20.1, -30.1};

    @Test
    void deletedRowsTakeTheirShapesAlong() throws IOException {
        Files.write(
                folder.resolve("r.dbf"), dbf(0, row(" one", "UTF-8"), row("*two", "UTF-8"), row(" three", "UTF-8")));
        VectorLayer layer = read(shape(3, LINE), shape(3, LINE), new byte[] {0, 0, 0, 0});
        assertThat(layer.features().stream().map(f -> f.attributes().get("n"))).containsExactly("one", "three");
        assertThat(layer.features().stream().map(LayerFeature::id)).containsExactly("1", "3");
        assertThat((Object) layer.features().get(1).geometry()).isNull();
    }

    @ParameterizedTest
    @CsvSource({
        "UTF-8, UTF-8, 0",
        "65001, UTF-8, 0",
        "ISO 88591, ISO-8859-1, 87",
        "8859-2, ISO-8859-2, 0",
        "ANSI 1250, windows-1250, 0",
        "1252, windows-1252, 0",
        "852, IBM852, 87",
        ", windows-1250, 200",
        ", windows-1252, 87",
        ", UTF-8, 0",
        ", windows-1252, 0",
        "klingon, windows-1252, 87",
    })
    void textComesInManyEncodings(String cpg, String charset, int language) throws IOException {
        if (cpg != null) {
            Files.writeString(folder.resolve("r.cpg"), cpg + "\n");
        }
        Files.write(folder.resolve("r.dbf"), dbf(language, row(" M\u00fcl\u00e4", charset)));
        VectorLayer layer = read(shape(3, LINE));
        assertThat(layer.features().get(0).attributes()).containsEntry("n", "M\u00fcl\u00e4");
        boolean guessed = cpg == null && language == 0 && !charset.equals("UTF-8");
        assertThat(layer.warnings().stream().filter(w -> w.contains("encoding")))
                .hasSize(guessed || "klingon".equals(cpg) ? 1 : 0);
    }

    @Test
    void linesOfSeveralPartsAndOfOnePoint() throws IOException {
        VectorLayer layer = read(shape(3, LINE, LINE), shape(3, new double[] {-20, -30}), shape(3, LINE));
        assertThat(layer.features().get(0).geometry().getNumGeometries()).isEqualTo(2);
        assertThat(layer.features().get(1).geometry().toText()).isEqualTo("LINESTRING (-20 -30, -20 -30)");
        assertThat(layer.features().get(2).geometry().getGeometryType()).isEqualTo("LineString");
        assertThat(layer.warnings()).hasSize(1).first().asString().contains(".dbf file is missing");
    }

    @Test
    void ringsBecomePolygonsWithHoles() throws IOException {
        double[] outer = {0, 0, 0, 10, 10, 10, 10, 0, 0, 0};
        double[] hole = {1, 1, 2, 1, 2, 2, 1, 2, 1, 1};
        double[] second = {20, 0, 20, 1, 21, 1, 21, 0, 20, 0};
        VectorLayer layer = read(shape(5, outer, hole), shape(5, outer, hole, second));
        assertThat(layer.features().get(0).geometry().getArea()).isEqualTo(99);
        assertThat(layer.features().get(1).geometry().getArea()).isEqualTo(100);
        assertThat(layer.features().get(1).geometry().getGeometryType()).isEqualTo("MultiPolygon");
    }

    @Test
    void damagedRecordsAreNullShapesWithAWarning() throws IOException {
        byte[] lying = shape(3, LINE);
        ByteBuffer.wrap(lying).order(ByteOrder.LITTLE_ENDIAN).putInt(40, 1_000_000);
        VectorLayer layer = read(shape(3, LINE), lying, shape(31, LINE));
        assertThat(layer.features()).hasSize(3);
        assertThat((Object) layer.features().get(1).geometry()).isNull();
        assertThat(layer.warnings())
                .anyMatch(w -> w.startsWith("shape 2 ") && w.contains("null shape"))
                .anyMatch(w -> w.startsWith("shape 3 ") && w.contains("shape type 31"));
    }

    @Test
    void aFileCutOffIsReadAsFarAsItGoes() throws IOException {
        byte[] whole = shp(shape(3, LINE), shape(3, LINE));
        Files.write(folder.resolve("r.shp"), java.util.Arrays.copyOf(whole, whole.length - 20));
        Files.writeString(folder.resolve("r.prj"), PRJ);
        VectorLayer layer = Layers.read(OpenData.source(folder.resolve("r.shp")));
        assertThat(layer.features()).hasSize(1);
        assertThat(layer.warnings())
                .anyMatch(w -> w.contains("its header says"))
                .anyMatch(w -> w.contains("shape 2 runs past the end"));
    }

    @Test
    void aZipWithSeveralNeedsAChoice() throws IOException {
        Path zip = folder.resolve("both.zip");
        try (OutputStream file = Files.newOutputStream(zip);
                ZipOutputStream out = new ZipOutputStream(file)) {
            for (String name : new String[] {"in/a", "in/b"}) {
                out.putNextEntry(new ZipEntry(name + ".shp"));
                out.write(shp(shape(3, LINE)));
                out.putNextEntry(new ZipEntry(name + ".PRJ"));
                out.write(PRJ.getBytes(StandardCharsets.UTF_8));
            }
        }
        assertThatThrownBy(() -> Layers.read(OpenData.source(zip)))
                .hasMessageContaining("several Shapefiles: a, b; name one as layer");
        assertThat(Layers.read(OpenData.with(OpenData.source(zip), "b", null, null, null))
                        .name())
                .isEqualTo("b");
        assertThatThrownBy(() -> Layers.read(OpenData.with(OpenData.source(zip), "c", null, null, null)))
                .hasMessageContaining("holds no Shapefile \"c\"");
    }
}
