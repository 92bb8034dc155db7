// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.WKBReader;
import org.silverwake.geo.GeoDataException;

class GeoPackageWriterTest {
    private static final LocalDate DATE = LocalDate.of(2026, 11, 25);
    private static final String SLD = "<StyledLayerDescriptor version=\"1.0.0\" xmlns=\"http://www.opengis.net/sld\"/>";

    @TempDir
    Path folder;

    private static List<Layer> layers() {
        Layer reaches = new Layer(
                "reaches",
                "Reaches: ng/L in the \"dry\" state",
                Layer.Shape.LINESTRING,
                List.of(Column.text("reach"), Column.integer("order"), Column.real("total_ng_per_l")),
                List.of(
                        Row.line(new double[] {-20.5, -30.25, -20.25, -30}, List.of("R\u00edo 1", 3, 1.5)),
                        Row.line(new double[] {-20.25, -30, -20, -29, -19.5, -29.5}, Arrays.asList("2", null, null))),
                List.of(new LayerStyle("answers", SLD), new LayerStyle("recovery", SLD)));
        Layer villages = new Layer(
                "villages",
                "Villages",
                Layer.Shape.POINT,
                List.of(Column.text("name")),
                List.of(Row.point(-20, -30, List.of("A")), new Row(null, List.of("nowhere"))),
                List.of());
        return List.of(reaches, villages);
    }

    private Path written() {
        Path file = folder.resolve("out.gpkg");
        GeoPackageWriter.write(file, layers(), DATE);
        return file;
    }

    private static List<String> query(Path file, String text) throws Exception {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery(text)) {
            List<String> found = new ArrayList<>();
            while (rows.next()) {
                List<String> cells = new ArrayList<>();
                for (int k = 1; k <= rows.getMetaData().getColumnCount(); k++) {
                    cells.add(rows.getString(k));
                }
                found.add(String.join("|", cells.stream().map(String::valueOf).toList()));
            }
            return found;
        }
    }

    /** OGC 12-128r17, requirements 1 and 2: SQLite header; application id "GPKG" at byte 68, version at byte 60. */
    @Test
    void headerIsThatOfAGeoPackage() throws Exception {
        ByteBuffer bytes = ByteBuffer.wrap(Files.readAllBytes(written())).order(ByteOrder.BIG_ENDIAN);
        assertThat(new String(bytes.array(), 0, 16, StandardCharsets.US_ASCII)).isEqualTo("SQLite format 3\0");
        assertThat(bytes.getInt(68)).isEqualTo(0x47504B47);
        assertThat(bytes.getInt(60)).isEqualTo(10300);
    }

    /** Requirement 11: records -1, 0 and 4326; requirements 13 to 15: contents. */
    @Test
    void fixedTablesHoldWhatTheStandardAsks() throws Exception {
        Path file = written();
        assertThat(query(file, "SELECT srs_id, organization FROM gpkg_spatial_ref_sys ORDER BY srs_id"))
                .containsExactly("-1|NONE", "0|NONE", "4326|EPSG");
        assertThat(
                        query(
                                file,
                                "SELECT table_name, data_type, last_change, min_x, min_y, max_x, max_y, srs_id FROM gpkg_contents"))
                .containsExactlyInAnyOrder(
                        "reaches|features|2026-11-25T00:00:00.000Z|-20.5|-30.25|-19.5|-29.0|4326",
                        "villages|features|2026-11-25T00:00:00.000Z|-20.0|-30.0|-20.0|-30.0|4326",
                        "layer_styles|attributes|2026-11-25T00:00:00.000Z|null|null|null|null|null");
        assertThat(query(file, "SELECT * FROM gpkg_geometry_columns"))
                .containsExactlyInAnyOrder("reaches|geom|LINESTRING|4326|0|0", "villages|geom|POINT|4326|0|0");
        assertThat(query(file, "PRAGMA integrity_check")).containsExactly("ok");
        assertThat(query(file, "PRAGMA foreign_key_check")).isEmpty();
    }

    @Test
    void valuesAndGeometriesComeBack() throws Exception {
        Path file = written();
        assertThat(query(file, "SELECT fid, reach, \"order\", total_ng_per_l, typeof(total_ng_per_l) FROM reaches"))
                .containsExactly("1|R\u00edo 1|3|1.5|real", "2|2|null|null|null");
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement();
                ResultSet rows = statement.executeQuery("SELECT geom FROM reaches WHERE fid = 2")) {
            byte[] blob = rows.getBytes(1);
            Geometry geometry = new WKBReader().read(Arrays.copyOfRange(blob, 40, blob.length));
            assertThat(geometry.toText()).isEqualTo("LINESTRING (-20.25 -30, -20 -29, -19.5 -29.5)");
            ByteBuffer header = ByteBuffer.wrap(blob).order(ByteOrder.LITTLE_ENDIAN);
            assertThat(header.getInt(4)).isEqualTo(4326);
            assertThat(List.of(header.getDouble(8), header.getDouble(16), header.getDouble(24), header.getDouble(32)))
                    .containsExactly(-20.25, -19.5, -30.0, -29.0);
        }
    }

    @Test
    void indexFindsFeaturesByPlace() throws Exception {
        assertThat(query(written(), "SELECT id FROM rtree_reaches_geom WHERE minx < -20.4 AND maxx > -20.6"))
                .containsExactly("1");
        assertThat(query(written(), "SELECT count(*) FROM rtree_villages_geom")).containsExactly("1");
        assertThat(query(written(), "SELECT count(*) FROM sqlite_master WHERE type = 'trigger'"))
                .containsExactly("14");
    }

    @Test
    void theFirstStyleIsTheDefaultOfItsLayer() throws Exception {
        assertThat(query(
                        written(),
                        "SELECT f_table_name, f_geometry_column, styleName, useAsDefault, styleSLD FROM layer_styles"))
                .containsExactly("reaches|geom|answers|1|" + SLD, "reaches|geom|recovery|0|" + SLD);
    }

    @Test
    void sameInputGivesSameBytes() throws Exception {
        byte[] first = Files.readAllBytes(written());
        Path second = folder.resolve("again.gpkg");
        GeoPackageWriter.write(second, layers(), DATE);
        assertThat(Files.readAllBytes(second)).isEqualTo(first);
        GeoPackageWriter.write(second, layers(), DATE.plusDays(1));
        assertThat(Files.readAllBytes(second)).isNotEqualTo(first);
    }

    @Test
    void nothingButTheFileIsLeft() throws Exception {
        written();
        written();
        try (var files = Files.list(folder)) {
            assertThat(files.map(file -> file.getFileName().toString())).containsExactly("out.gpkg");
        }
    }

    @Test
    void refusesWhatDoesNotFit() {
        assertThatThrownBy(() -> new Layer(
                        "a",
                        "a",
                        Layer.Shape.POINT,
                        List.of(Column.real("x")),
                        List.of(Row.point(0, 0, List.of("text"))),
                        List.of()))
                .hasMessageContaining("layer a, row 1: column x: text is not allowed");
        assertThatThrownBy(() -> new Layer(
                        "a", "a", Layer.Shape.LINESTRING, List.of(), List.of(Row.point(0, 0, List.of())), List.of()))
                .hasMessageContaining("give a LINESTRING");
        assertThatThrownBy(() -> Column.text("a\"b")).hasMessageContaining("is not allowed as a name");
        assertThatThrownBy(() -> GeoPackageWriter.write(folder.resolve("no/such/out.gpkg"), layers(), DATE))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("cannot be written");
    }

    /** An independent reader, where the machine has one: ogrinfo of GDAL. */
    @Test
    void ogrinfoReadsIt() throws Exception {
        assumeTrue(
                runs("ogrinfo", "--version") != null,
                "no ogrinfo on the path: not compared with an independent reader");
        String text = runs("ogrinfo", "-al", written().toString());
        assertThat(text)
                .contains(
                        "Layer name: reaches",
                        "Geometry: Line String",
                        "Feature Count: 2",
                        "order: Integer64",
                        "total_ng_per_l: Real")
                .contains("Extent: (-20.500000, -30.250000) - (-19.500000, -29.000000)")
                .contains("LINESTRING (-20.25 -30,-20 -29,-19.5 -29.5)")
                .contains("Layer name: villages", "POINT (-20 -30)")
                .doesNotContain("Warning", "ERROR");
    }

    private static String runs(String... command) throws Exception {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0 ? text : null;
        } catch (java.io.IOException e) {
            return null;
        }
    }
}
