// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.Arrays;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.io.WKBWriter;

/** A GeoPackage made by hand after OGC 12-128r18. */
class GeoPackageReaderTest {
    private static final String WKT2 = "GEOGCRS[\"own\",DATUM[\"own\",ELLIPSOID[\"GRS 1980\",6378137,298.257222101]],"
            + "CS[ellipsoidal,2],AXIS[\"latitude\",north],AXIS[\"longitude\",east],"
            + "ANGLEUNIT[\"degree\",0.0174532925199433]]";

    @TempDir
    private Path folder;

    private Path file;

    @BeforeEach
    void make() throws SQLException {
        file = folder.resolve("a b.gpkg");
        run(
                "PRAGMA application_id=1196444487",
                "CREATE TABLE gpkg_spatial_ref_sys(srs_name TEXT, srs_id INTEGER PRIMARY KEY, organization TEXT,"
                        + " organization_coordsys_id INTEGER, definition TEXT, definition_12_063 TEXT)",
                "INSERT INTO gpkg_spatial_ref_sys VALUES ('own', 100, 'NONE', 100, 'undefined', '" + WKT2 + "'),"
                        + "('none', -1, 'NONE', -1, 'undefined', 'undefined')",
                "CREATE TABLE gpkg_contents(table_name TEXT, data_type TEXT)",
                "CREATE TABLE gpkg_geometry_columns(table_name TEXT, column_name TEXT, geometry_type_name TEXT,"
                        + " srs_id INTEGER)",
                "INSERT INTO gpkg_contents VALUES ('my \"streams\"', 'features')",
                "INSERT INTO gpkg_geometry_columns VALUES ('my \"streams\"', 'Shape', 'LINESTRING', 100)",
                "CREATE TABLE \"my \"\"streams\"\"\"(code TEXT, shape LINESTRING, id INTEGER PRIMARY KEY, wet BOOLEAN,"
                        + " day DATE, at DATETIME, n MEDIUMINT, area DOUBLE, raw BLOB)");
    }

    private void run(String... statements) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                Statement statement = connection.createStatement()) {
            for (String sql : statements) {
                statement.execute(sql);
            }
        }
    }

    private void insert(String code, byte[] shape) throws SQLException {
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                PreparedStatement row = connection.prepareStatement("INSERT INTO \"my \"\"streams\"\"\" VALUES"
                        + " (?, ?, NULL, 1, '2025-07-01', '2025-07-01T10:00:00Z', 3, 12, x'00')")) {
            row.setString(1, code);
            row.setBytes(2, shape);
            row.execute();
        }
    }

    /** A geometry's blob, with an envelope of as many bytes as its indicator says. */
    private static byte[] blob(Geometry geometry, int flags, int envelopeBytes) {
        byte[] wkb = new WKBWriter().write(geometry);
        ByteBuffer out = ByteBuffer.allocate(8 + envelopeBytes + wkb.length).order(ByteOrder.LITTLE_ENDIAN);
        out.put((byte) 'G').put((byte) 'P').put((byte) 0).put((byte) flags).putInt(100);
        out.position(8 + envelopeBytes).put(wkb);
        return out.array();
    }

    private static Geometry line() {
        return new GeometryFactory()
                .createLineString(new Coordinate[] {new Coordinate(-20, -30), new Coordinate(-20.1, -30)});
    }

    @Test
    void columnsKeepTheirDeclaredTypes() throws SQLException {
        insert("001", blob(line(), 1, 0));
        VectorLayer layer = Layers.read(OpenData.source(file));
        assertThat(layer.columns()).containsExactly("code", "id", "wet", "day", "at", "n", "area", "raw");
        assertThat(layer.crs().isDegrees()).isTrue();
        assertThat(layer.features().get(0).attributes())
                .containsEntry("code", "001")
                .containsEntry("id", 1L)
                .containsEntry("wet", true)
                .containsEntry("day", LocalDate.of(2025, 7, 1))
                .containsEntry("at", "2025-07-01T10:00:00Z")
                .containsEntry("n", 3L)
                .containsEntry("area", 12.0)
                .doesNotContainKey("raw");
    }

    @Test
    void envelopesOfEverySizeAndEmptyGeometries() throws SQLException {
        int[] sizes = {0, 32, 48, 48, 64};
        for (int i = 0; i < sizes.length; i++) {
            insert("e" + i, blob(line(), 1 | i << 1, sizes[i]));
        }
        insert("empty", blob(new GeometryFactory().createLineString(), 0x11, 0));
        insert("null", null);
        VectorLayer layer = Layers.read(OpenData.source(file));
        assertThat(layer.warnings()).isEmpty();
        for (int i = 0; i < sizes.length; i++) {
            assertThat(layer.features().get(i).geometry().equalsExact(line())).isTrue();
        }
        assertThat(layer.features().get(5).geometry().isEmpty()).isTrue();
        assertThat((Object) layer.features().get(6).geometry()).isNull();
    }

    @Test
    void whatIsNoPlainGeometryIsWarnedOf() throws SQLException {
        insert("extended", blob(line(), 0x21, 0));
        insert("other", new byte[] {1, 2, 3});
        insert("cut", Arrays.copyOf(blob(line(), 1, 0), 30));
        byte[] curve = blob(line(), 1, 0);
        curve[8] = 1;
        curve[9] = 8;
        Arrays.fill(curve, 10, 13, (byte) 0);
        insert("curve", curve);
        VectorLayer layer = Layers.read(OpenData.source(file));
        assertThat(layer.features()).hasSize(4).allMatch(f -> f.geometry() == null);
        assertThat(layer.warnings()).hasSize(4);
        assertThat(layer.warnings().get(0))
                .isEqualTo("row 1: its geometry is of an extended kind; taken as a null shape");
        assertThat(layer.warnings().get(3)).contains("row 4: ").contains("WKB type");
    }

    @Test
    void anUndefinedSystemIsNone() throws SQLException {
        insert("a", blob(line(), 1, 0));
        run("UPDATE gpkg_geometry_columns SET srs_id = -1");
        assertThatThrownBy(() -> Layers.read(OpenData.source(file)))
                .hasMessageContaining("states no coordinate system; give rivers.crs");
        assertThat(Layers.read(OpenData.with(OpenData.source(file), null, "EPSG:4326", null, null))
                        .features())
                .hasSize(1);
    }

    @Test
    void theFileIsNotWrittenTo() throws Exception {
        insert("a", blob(line(), 1, 0));
        byte[] before = Files.readAllBytes(file);
        Layers.read(OpenData.source(file));
        assertThat(Files.readAllBytes(file)).isEqualTo(before);
        try (var inFolder = Files.list(folder)) {
            assertThat(inFolder).containsExactly(file);
        }
    }
}
