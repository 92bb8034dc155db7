// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.silverwake.geo.GeoDataException;

/**
 * Reads Shapefiles (ESRI Shapefile Technical Description, July 1998). The index (.shx) tells where records lie; without
 * it they are read one after the other. Records marked as deleted in the table are dropped with their shapes.
 */
final class ShapefileReader {
    private static final int HEADER = 100;
    private static final int RECORD_HEADER = 8;
    private static final int FILE_CODE = 9994;

    private final ShapefileParts parts;
    private final ByteBuffer shp;
    private final List<String> warnings = new ArrayList<>();

    private ShapefileReader(ShapefileParts parts) {
        this.parts = parts;
        this.shp = parts.bytes("shp").orElseThrow(() -> new GeoDataException("the .shp file is missing"));
    }

    static RawLayer read(ShapefileParts parts) {
        return new ShapefileReader(parts).layer();
    }

    private RawLayer layer() {
        checkHeader();
        List<Integer> starts = parts.bytes("shx").flatMap(this::indexed).orElseGet(this::inSequence);
        Optional<DbfTable> table = parts.bytes("dbf").map(bytes -> new DbfTable(bytes, parts.text("cpg"), warnings));
        if (table.isEmpty()) {
            warnings.add("the .dbf file is missing: features have no attributes");
        }
        int rows = table.map(DbfTable::rowCount).orElse(starts.size());
        if (rows != starts.size()) {
            warnings.add("has " + starts.size() + " shapes but " + rows
                    + " table rows; they are matched from the first on, what is left over has no shape or no values");
        }
        List<RawLayer.Feature> features = new ArrayList<>();
        for (int i = 0; i < Math.max(rows, starts.size()); i++) {
            boolean hasRow = table.isPresent() && i < rows;
            if (hasRow && table.get().deleted(i)) {
                continue;
            }
            Map<String, Object> values = hasRow ? table.get().row(i) : Map.of();
            Geometry shape = i < starts.size() ? shape(starts.get(i), i + 1) : null;
            features.add(new RawLayer.Feature(Optional.of(String.valueOf(i + 1)), values, shape));
        }
        Optional<String> crs = parts.text("prj").filter(text -> !text.isEmpty());
        List<String> columns = table.map(DbfTable::columns).orElse(List.of());
        return new RawLayer(parts.name(), columns, crs, Optional.empty(), features, warnings);
    }

    private void checkHeader() {
        if (shp.limit() < HEADER || shp.order(ByteOrder.BIG_ENDIAN).getInt(0) != FILE_CODE) {
            throw new GeoDataException("is not a Shapefile (its first bytes are not those of one); give another file");
        }
        long stated = 2L * shp.getInt(24);
        if (stated != shp.limit()) {
            warnings.add("the .shp file has " + shp.limit() + " bytes, but its header says " + stated
                    + ": it may be damaged; read as far as it goes");
        }
    }

    /** Record starts by the index; nothing where the index cannot belong to the file. */
    private Optional<List<Integer>> indexed(ByteBuffer shx) {
        List<Integer> starts = new ArrayList<>();
        shx.order(ByteOrder.BIG_ENDIAN);
        for (int at = HEADER; at + RECORD_HEADER <= shx.limit(); at += RECORD_HEADER) {
            long start = 2L * shx.getInt(at);
            if (start < HEADER || start + RECORD_HEADER > shp.limit()) {
                warnings.add("the .shx index points outside of the .shp file; passed over, shapes read in sequence");
                return Optional.empty();
            }
            starts.add((int) start);
        }
        return Optional.of(starts);
    }

    private List<Integer> inSequence() {
        List<Integer> starts = new ArrayList<>();
        int at = HEADER;
        while (at + RECORD_HEADER + Integer.BYTES <= shp.limit()) {
            long length = 2L * shp.order(ByteOrder.BIG_ENDIAN).getInt(at + 4);
            if (length < Integer.BYTES || at + RECORD_HEADER + length > shp.limit()) {
                warnings.add("shape " + (starts.size() + 1) + " runs past the end of the .shp file: it and what"
                        + " follows cannot be read");
                break;
            }
            starts.add(at);
            at += (int) (RECORD_HEADER + length);
        }
        return starts;
    }

    private Geometry shape(int start, int place) {
        long length = 2L * shp.order(ByteOrder.BIG_ENDIAN).getInt(start + 4);
        String problem;
        try {
            if (length >= Integer.BYTES && start + RECORD_HEADER + length <= shp.limit()) {
                ByteBuffer content =
                        shp.slice(start + RECORD_HEADER, (int) length).order(ByteOrder.LITTLE_ENDIAN);
                return new ShapeRecord(content).geometry();
            }
            problem = "runs past the end of the file";
        } catch (IndexOutOfBoundsException | NegativeArraySizeException e) {
            problem = "is cut off";
        } catch (IllegalArgumentException e) {
            problem = "cannot be read (" + e.getMessage() + ")";
        }
        warnings.add("shape " + place + " " + problem + "; taken as a null shape");
        return null;
    }
}
