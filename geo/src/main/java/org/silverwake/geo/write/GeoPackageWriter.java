// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ByteOrderValues;
import org.locationtech.jts.io.WKBWriter;
import org.silverwake.geo.GeoDataException;

/**
 * Writes layers as a GeoPackage 1.3 (OGC 12-128r17): features in WGS 84 (EPSG:4326, longitude first), each layer with an
 * R-tree and its styles, the first as default. The same layers and date give the same bytes. Written to a temporary name beside
 * the file and moved into place when complete.
 */
public final class GeoPackageWriter {
    private static final int BLOB_HEADER = 8 + 4 * Double.BYTES;

    private GeoPackageWriter() {}

    /**
     * Writes a file, replacing one that is there.
     *
     * @param file where; its folder must exist
     * @param layers one or more, names and titles all different
     * @param date stands as the date of change in the file
     * @throws GeoDataException if the file cannot be written
     * @throws IllegalArgumentException if two layers share a name or title
     */
    public static void write(Path file, List<Layer> layers, LocalDate date) {
        requireDistinct(layers);
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            Files.deleteIfExists(part);
            try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + part.toAbsolutePath())) {
                fill(connection, layers, date + "T00:00:00.000Z");
            }
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (SQLException | IOException e) {
            throw new GeoDataException(
                    file + ": cannot be written (" + e.getMessage() + "); give a folder that exists and has room", e);
        }
    }

    private static void requireDistinct(List<Layer> layers) {
        long names = layers.stream()
                .map(layer -> layer.name().toLowerCase(java.util.Locale.ROOT))
                .distinct()
                .count();
        long titles = layers.stream().map(Layer::title).distinct().count();
        if (layers.isEmpty() || names != layers.size() || titles != layers.size()) {
            throw new IllegalArgumentException("layers of one file need different names and titles, and one at least");
        }
    }

    private static void fill(Connection connection, List<Layer> layers, String date) throws SQLException {
        try (Statement sql = connection.createStatement()) {
            // The file is new and moved into place when complete, so a crash leaves nothing half-written to recover.
            sql.execute("PRAGMA journal_mode = OFF");
            sql.execute("PRAGMA synchronous = OFF");
            sql.execute("PRAGMA application_id = " + GeoPackageTables.APPLICATION_ID);
            sql.execute("PRAGMA user_version = " + GeoPackageTables.USER_VERSION);
            connection.setAutoCommit(false);
            for (String text : GeoPackageTables.STATEMENTS) {
                sql.execute(text);
            }
            for (Layer layer : layers) {
                createTable(connection, sql, layer, date);
                insertRows(connection, layer);
                // After the rows: the functions these triggers call are those of a GIS, unknown here.
                for (String trigger : GeoPackageTables.triggers(layer.name())) {
                    sql.execute(trigger);
                }
            }
            insertStyles(connection, sql, layers, date);
            connection.commit();
        }
    }

    private static void createTable(Connection connection, Statement sql, Layer layer, String date)
            throws SQLException {
        String table = layer.name();
        String columns = layer.columns().stream()
                .map(column -> ", \"" + column.name() + "\" " + column.kind())
                .collect(Collectors.joining());
        sql.execute("CREATE TABLE \"" + table + "\" (fid INTEGER PRIMARY KEY NOT NULL, geom " + layer.shape() + columns
                + ")");
        Envelope extent = new Envelope();
        layer.rows().stream()
                .filter(row -> row.geometry() != null)
                .forEach(row -> extent.expandToInclude(row.geometry().getEnvelopeInternal()));
        try (PreparedStatement contents = connection.prepareStatement(
                "INSERT INTO gpkg_contents (table_name, data_type, identifier, description, last_change,"
                        + " min_x, min_y, max_x, max_y, srs_id) VALUES (?, 'features', ?, '', ?, ?, ?, ?, ?, ?)")) {
            contents.setString(1, table);
            contents.setString(2, layer.title());
            contents.setString(3, date);
            if (!extent.isNull()) {
                contents.setDouble(4, extent.getMinX());
                contents.setDouble(5, extent.getMinY());
                contents.setDouble(6, extent.getMaxX());
                contents.setDouble(7, extent.getMaxY());
            }
            contents.setInt(8, GeoPackageTables.WGS_84);
            contents.executeUpdate();
        }
        sql.execute("INSERT INTO gpkg_geometry_columns VALUES ('" + table + "', 'geom', '" + layer.shape() + "', "
                + GeoPackageTables.WGS_84 + ", 0, 0)");
        sql.execute("CREATE VIRTUAL TABLE \"rtree_" + table + "_geom\" USING rtree(id, minx, maxx, miny, maxy)");
        sql.execute("INSERT INTO gpkg_extensions VALUES ('" + table + "', 'geom', 'gpkg_rtree_index',"
                + " 'http://www.geopackage.org/spec130/#extension_rtree', 'write-only')");
    }

    private static void insertRows(Connection connection, Layer layer) throws SQLException {
        String marks = ", ?".repeat(layer.columns().size());
        WKBWriter wkb = new WKBWriter(2, ByteOrderValues.LITTLE_ENDIAN);
        try (PreparedStatement feature =
                        connection.prepareStatement("INSERT INTO \"" + layer.name() + "\" VALUES (?, ?" + marks + ")");
                PreparedStatement box = connection.prepareStatement(
                        "INSERT INTO \"rtree_" + layer.name() + "_geom\" VALUES (?, ?, ?, ?, ?)")) {
            long fid = 0;
            for (Row row : layer.rows()) {
                fid++;
                feature.setLong(1, fid);
                feature.setBytes(2, row.geometry() == null ? null : blob(row.geometry(), wkb));
                for (int c = 0; c < row.values().size(); c++) {
                    feature.setObject(3 + c, row.values().get(c));
                }
                feature.executeUpdate();
                if (row.geometry() != null) {
                    insertBox(box, fid, row.geometry().getEnvelopeInternal());
                }
            }
        }
    }

    private static void insertBox(PreparedStatement box, long fid, Envelope extent) throws SQLException {
        box.setLong(1, fid);
        box.setDouble(2, extent.getMinX());
        box.setDouble(3, extent.getMaxX());
        box.setDouble(4, extent.getMinY());
        box.setDouble(5, extent.getMaxY());
        box.executeUpdate();
    }

    /** Clause 2.1.3: "GP", version 0, flags (little endian, envelope of 4 numbers), SRS, envelope, WKB. */
    private static byte[] blob(Geometry geometry, WKBWriter writer) {
        if (geometry.isEmpty()) {
            throw new IllegalArgumentException(
                    "an empty geometry is not allowed; give null for a feature without place");
        }
        byte[] wkb = writer.write(geometry);
        Envelope extent = geometry.getEnvelopeInternal();
        ByteBuffer bytes = ByteBuffer.allocate(BLOB_HEADER + wkb.length).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put((byte) 'G').put((byte) 'P').put((byte) 0).put((byte) 0b011).putInt(GeoPackageTables.WGS_84);
        bytes.putDouble(extent.getMinX()).putDouble(extent.getMaxX());
        bytes.putDouble(extent.getMinY()).putDouble(extent.getMaxY());
        return bytes.put(wkb).array();
    }

    private static void insertStyles(Connection connection, Statement sql, List<Layer> layers, String date)
            throws SQLException {
        if (layers.stream().allMatch(layer -> layer.styles().isEmpty())) {
            return;
        }
        sql.execute(GeoPackageTables.STYLES);
        sql.execute("INSERT INTO gpkg_contents (table_name, data_type, identifier, description, last_change) VALUES"
                + " ('layer_styles', 'attributes', 'layer_styles', '', '" + date + "')");
        try (PreparedStatement style = connection.prepareStatement(
                "INSERT INTO layer_styles (f_table_catalog, f_table_schema, f_table_name, f_geometry_column, styleName,"
                        + " styleQML, styleSLD, useAsDefault, description, owner, ui, update_time)"
                        + " VALUES ('', '', ?, 'geom', ?, '', ?, ?, '', '', NULL, ?)")) {
            for (Layer layer : layers) {
                for (LayerStyle each : layer.styles()) {
                    style.setString(1, layer.name());
                    style.setString(2, each.name());
                    style.setString(3, each.sld());
                    style.setInt(4, each.equals(layer.styles().get(0)) ? 1 : 0);
                    style.setString(5, date);
                    style.executeUpdate();
                }
            }
        }
    }
}
