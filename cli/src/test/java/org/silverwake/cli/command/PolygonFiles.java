// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Locale;

/** One box with a name and a depth in the formats that people send, byte by byte after their standards. */
final class PolygonFiles {
    private static final String WGS_84 = "GEOGCS[\"GCS_WGS_1984\",DATUM[\"D_WGS_1984\",SPHEROID[\"WGS_1984\",6378137,"
            + "298.257223563]],PRIMEM[\"Greenwich\",0],UNIT[\"Degree\",0.017453292519943295]]";

    private PolygonFiles() {}

    /** Corners of a box in turn, as shapefiles want an outer ring: clockwise. */
    private static double[] ring(double west, double south, double east, double north) {
        return new double[] {west, south, west, north, east, north, east, south, west, south};
    }

    static String geoJson(String name, String depth, double west, double south, double east, double north) {
        double[] ring = ring(west, south, east, north);
        StringBuilder points = new StringBuilder();
        for (int k = 0; k < ring.length; k += 2) {
            points.append(k == 0 ? "" : ",").append("[" + ring[k] + "," + ring[k + 1] + "]");
        }
        return ThreeReaches.feature("\"name\":\"" + name + "\",\"depth\":" + depth, "Polygon", "[" + points + "]");
    }

    /** ESRI Shapefile Technical Description, July 1998; the table as dBASE III. */
    static void shapefile(Path folder, String name, double depth, double... box) {
        double[] ring = ring(box[0], box[1], box[2], box[3]);
        ByteBuffer shape = ByteBuffer.allocate(48 + 8 * ring.length).order(ByteOrder.LITTLE_ENDIAN);
        shape.putInt(5).putDouble(box[0]).putDouble(box[1]).putDouble(box[2]).putDouble(box[3]);
        shape.putInt(1).putInt(ring.length / 2).putInt(0);
        for (double each : ring) {
            shape.putDouble(each);
        }
        ByteBuffer file = ByteBuffer.allocate(108 + shape.capacity());
        file.putInt(0, 9994).putInt(24, file.capacity() / 2);
        file.order(ByteOrder.LITTLE_ENDIAN).putInt(28, 1000).putInt(32, 5);
        file.order(ByteOrder.BIG_ENDIAN).position(100);
        file.putInt(1).putInt(shape.capacity() / 2).put(shape.array());
        write(folder.resolve("lakes.shp"), file.array());
        write(folder.resolve("lakes.prj"), WGS_84.getBytes(StandardCharsets.US_ASCII));
        write(folder.resolve("lakes.dbf"), dbf(name, depth));
    }

    private static byte[] dbf(String name, double depth) {
        ByteBuffer table =
                ByteBuffer.allocate(32 + 2 * 32 + 1 + 1 + 20 + 10 + 1).order(ByteOrder.LITTLE_ENDIAN);
        table.put((byte) 3).position(4);
        table.putInt(1).putShort((short) 97).putShort((short) 31).position(32);
        table.put("name".getBytes(StandardCharsets.US_ASCII))
                .put(43, (byte) 'C')
                .put(48, (byte) 20);
        table.position(64);
        table.put("depth".getBytes(StandardCharsets.US_ASCII))
                .put(75, (byte) 'N')
                .put(80, (byte) 10)
                .put(81, (byte) 2);
        table.position(96);
        table.put((byte) 13).put((byte) ' ');
        table.put(String.format(Locale.ROOT, "%-20s%10.2f", name, depth).getBytes(StandardCharsets.US_ASCII));
        table.put((byte) 26);
        return table.array();
    }

    /** OGC 12-128r18, the tables that a feature layer needs; geometry as a header without box, and WKB. */
    static void geoPackage(Path folder, String name, double depth, double... box) {
        double[] ring = ring(box[0], box[1], box[2], box[3]);
        ByteBuffer shape = ByteBuffer.allocate(8 + 13 + 8 * ring.length).order(ByteOrder.LITTLE_ENDIAN);
        shape.put((byte) 'G').put((byte) 'P').put((byte) 0).put((byte) 1).putInt(4326);
        shape.put((byte) 1).putInt(3).putInt(1).putInt(ring.length / 2);
        for (double each : ring) {
            shape.putDouble(each);
        }
        String url = "jdbc:sqlite:" + folder.resolve("lakes.gpkg");
        try (Connection connection = DriverManager.getConnection(url);
                Statement sql = connection.createStatement()) {
            sql.execute("PRAGMA application_id = 1196444487");
            sql.execute(
                    "CREATE TABLE gpkg_spatial_ref_sys (srs_name TEXT, srs_id INTEGER PRIMARY KEY, organization TEXT,"
                            + " organization_coordsys_id INTEGER, definition TEXT, description TEXT)");
            sql.execute("INSERT INTO gpkg_spatial_ref_sys VALUES ('WGS 84', 4326, 'EPSG', 4326, '" + WGS_84 + "', '')");
            sql.execute(
                    "CREATE TABLE gpkg_contents (table_name TEXT PRIMARY KEY, data_type TEXT, identifier TEXT,"
                            + " description TEXT, last_change TEXT, min_x REAL, min_y REAL, max_x REAL, max_y REAL, srs_id INTEGER)");
            sql.execute("INSERT INTO gpkg_contents VALUES ('lakes', 'features', 'lakes', '', '', 0, 0, 0, 0, 4326)");
            sql.execute(
                    "CREATE TABLE gpkg_geometry_columns (table_name TEXT, column_name TEXT, geometry_type_name TEXT,"
                            + " srs_id INTEGER, z INTEGER, m INTEGER)");
            sql.execute("INSERT INTO gpkg_geometry_columns VALUES ('lakes', 'geom', 'POLYGON', 4326, 0, 0)");
            sql.execute("CREATE TABLE lakes (fid INTEGER PRIMARY KEY, geom BLOB, name TEXT, depth REAL)");
            try (PreparedStatement row = connection.prepareStatement("INSERT INTO lakes VALUES (1, ?, ?, ?)")) {
                row.setBytes(1, shape.array());
                row.setString(2, name);
                row.setDouble(3, depth);
                row.execute();
            }
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    private static void write(Path file, byte[] bytes) {
        try {
            Files.write(file, bytes);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
