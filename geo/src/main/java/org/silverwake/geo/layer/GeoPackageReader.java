// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.io.ParseException;
import org.locationtech.jts.io.WKBReader;
import org.silverwake.geo.GeoDataException;
import org.sqlite.SQLiteConfig;

/** Reads GeoPackage feature tables (OGC 12-128r18), opened read-only; needs no spatial index. */
final class GeoPackageReader {
    private static final String HEADER = "SQLite format 3";
    private static final int FIXED_BYTES = 8;
    private static final int EXTENDED_FLAG = 0x20;
    /** Bytes of the envelope by its indicator, OGC 12-128r18, 2.1.3. */
    private static final List<Integer> ENVELOPE_BYTES = List.of(0, 32, 48, 48, 64);

    /** A feature table with its geometry column. */
    private record Table(String name, String geometryColumn, String type, long srsId) {
        boolean holdsLines() {
            return type.contains("LINESTRING") || type.contains("CURVE");
        }
    }

    /** A column as declared. */
    private record Column(String name, String type, boolean key) {}

    private final WKBReader wkb = new WKBReader();
    private final List<String> warnings = new ArrayList<>();

    private GeoPackageReader() {}

    static RawLayer read(Path file, Optional<String> layer) throws IOException {
        try (InputStream in = Files.newInputStream(file)) {
            String head = new String(in.readNBytes(HEADER.length()), StandardCharsets.US_ASCII);
            if (!head.equals(HEADER)) {
                throw new GeoDataException("is not a GeoPackage, nor any SQLite database; give another file");
            }
        }
        SQLiteConfig config = new SQLiteConfig();
        config.setReadOnly(true);
        try (Connection connection = config.createConnection("jdbc:sqlite:" + file.toAbsolutePath());
                Statement statement = connection.createStatement()) {
            return new GeoPackageReader().layer(statement, layer);
        } catch (SQLException e) {
            throw new GeoDataException(
                    "the database cannot be read (" + e.getMessage() + "); check that it is whole", e);
        }
    }

    private RawLayer layer(Statement statement, Optional<String> wanted) throws SQLException {
        Table table = choose(tables(statement), wanted);
        List<Column> columns = columns(statement, table);
        List<RawLayer.Feature> features = new ArrayList<>();
        try (ResultSet rows = statement.executeQuery("SELECT * FROM " + quoted(table.name()))) {
            while (rows.next()) {
                features.add(feature(rows, table, columns, features.size() + 1));
            }
        }
        List<String> names = columns.stream()
                .map(Column::name)
                .filter(name -> !name.equalsIgnoreCase(table.geometryColumn()))
                .toList();
        return new RawLayer(table.name(), names, system(statement, table), Optional.empty(), features, warnings);
    }

    private static List<Table> tables(Statement statement) throws SQLException {
        try (ResultSet found = statement.executeQuery("SELECT count(*) FROM sqlite_master WHERE lower(name) IN"
                + " ('gpkg_contents', 'gpkg_geometry_columns', 'gpkg_spatial_ref_sys')")) {
            if (found.getInt(1) < 3) {
                throw new GeoDataException("is a SQLite database but no GeoPackage with features (the tables"
                        + " gpkg_contents and gpkg_geometry_columns are missing); export the layer as GeoPackage");
            }
        }
        List<Table> tables = new ArrayList<>();
        try (ResultSet row = statement.executeQuery("SELECT g.table_name, g.column_name, g.geometry_type_name, g.srs_id"
                + " FROM gpkg_geometry_columns g JOIN gpkg_contents c ON c.table_name = g.table_name"
                + " WHERE c.data_type = 'features' ORDER BY g.rowid")) {
            while (row.next()) {
                String type = row.getString(3).toUpperCase(Locale.ROOT);
                tables.add(new Table(row.getString(1), row.getString(2), type, row.getLong(4)));
            }
        }
        return tables;
    }

    private static Table choose(List<Table> tables, Optional<String> wanted) {
        if (tables.isEmpty()) {
            throw new GeoDataException("the GeoPackage has no layer with geometries; give one that has");
        }
        if (wanted.isPresent()) {
            return tables.stream()
                    .filter(table -> table.name().equals(wanted.get()))
                    .findFirst()
                    .orElseThrow(() -> new GeoDataException(
                            "there is no layer \"" + wanted.get() + "\"; the layers are " + listed(tables)));
        }
        List<Table> lines = tables.stream().filter(Table::holdsLines).toList();
        List<Table> candidates = lines.isEmpty() ? tables : lines;
        if (candidates.size() > 1) {
            throw new GeoDataException("holds several layers: " + listed(candidates) + "; name one as layer");
        }
        return candidates.get(0);
    }

    private static String listed(List<Table> tables) {
        return tables.stream()
                .map(table -> table.name() + " (" + table.type().toLowerCase(Locale.ROOT) + ")")
                .collect(Collectors.joining(", "));
    }

    private static List<Column> columns(Statement statement, Table table) throws SQLException {
        List<Column> columns = new ArrayList<>();
        try (ResultSet row = statement.executeQuery("PRAGMA table_info(" + quoted(table.name()) + ")")) {
            while (row.next()) {
                String type = String.valueOf(row.getString("type")).toUpperCase(Locale.ROOT);
                columns.add(new Column(row.getString("name"), type, row.getInt("pk") > 0));
            }
        }
        return columns;
    }

    private static Optional<String> system(Statement statement, Table table) throws SQLException {
        try (ResultSet row =
                statement.executeQuery("SELECT * FROM gpkg_spatial_ref_sys WHERE srs_id = " + table.srsId())) {
            if (!row.next() || table.srsId() == 0 || table.srsId() == -1) {
                return Optional.empty();
            }
            String code = row.getString("organization") + ":" + row.getInt("organization_coordsys_id");
            String definition = String.valueOf(row.getString("definition"));
            if (!definition.contains("[") && hasColumn(row, "definition_12_063")) {
                definition = String.valueOf(row.getString("definition_12_063"));
            }
            boolean stated = definition.contains("[") && !code.equalsIgnoreCase("EPSG:4326");
            return Optional.of(stated ? definition : code);
        }
    }

    private static boolean hasColumn(ResultSet rows, String name) throws SQLException {
        for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
            if (rows.getMetaData().getColumnName(i).equalsIgnoreCase(name)) {
                return true;
            }
        }
        return false;
    }

    private RawLayer.Feature feature(ResultSet row, Table table, List<Column> columns, int place) throws SQLException {
        Map<String, Object> attributes = new LinkedHashMap<>();
        String id = null;
        Geometry geometry = null;
        for (int i = 0; i < columns.size(); i++) {
            Column column = columns.get(i);
            if (column.name().equalsIgnoreCase(table.geometryColumn())) {
                geometry = geometry(row.getBytes(i + 1), place);
                continue;
            }
            Object value = value(row.getObject(i + 1), column.type());
            if (value != null) {
                attributes.put(column.name(), value);
                id = column.key() ? Ids.text(value) : id;
            }
        }
        return new RawLayer.Feature(Optional.ofNullable(id), attributes, geometry);
    }

    private static Object value(Object stored, String type) {
        if (stored instanceof Number number && !(stored instanceof Double)) {
            return type.startsWith("BOOL") ? (Object) (number.longValue() != 0) : (Object) number.longValue();
        }
        if (stored instanceof String text && type.equals("DATE")) {
            try {
                return LocalDate.parse(text);
            } catch (DateTimeParseException notADate) {
                return text;
            }
        }
        return stored instanceof byte[] ? null : stored;
    }

    /** The geometry in a blob, or null with a warning where it is of a kind that is not read. */
    private Geometry geometry(byte[] blob, int place) {
        if (blob == null || blob.length == 0) {
            return null;
        }
        String problem;
        try {
            if (blob.length < FIXED_BYTES || blob[0] != 'G' || blob[1] != 'P') {
                problem = "is no GeoPackage geometry";
            } else if ((blob[3] & EXTENDED_FLAG) != 0) {
                problem = "is of an extended kind";
            } else {
                int indicator = Math.min((blob[3] >> 1) & 7, ENVELOPE_BYTES.size() - 1);
                int start = FIXED_BYTES + ENVELOPE_BYTES.get(indicator);
                byte[] body = new byte[Math.max(0, blob.length - start)];
                ByteBuffer.wrap(blob, blob.length - body.length, body.length).get(body);
                return wkb.read(body);
            }
        } catch (ParseException | IllegalArgumentException e) {
            problem = "cannot be read (" + e.getMessage() + ")";
        }
        warnings.add("row " + place + ": its geometry " + problem + "; taken as a null shape");
        return null;
    }

    private static String quoted(String name) {
        return '"' + name.replace("\"", "\"\"") + '"';
    }
}
