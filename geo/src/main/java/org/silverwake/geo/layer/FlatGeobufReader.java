// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.io.BufferedInputStream;
import java.io.EOFException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.silverwake.geo.GeoDataException;
import org.wololo.flatgeobuf.Constants;
import org.wololo.flatgeobuf.GeometryConversions;
import org.wololo.flatgeobuf.PackedRTree;
import org.wololo.flatgeobuf.generated.ColumnType;
import org.wololo.flatgeobuf.generated.Crs;
import org.wololo.flatgeobuf.generated.Feature;
import org.wololo.flatgeobuf.generated.GeometryType;
import org.wololo.flatgeobuf.generated.Header;

/** Reads FlatGeobuf, with and without its spatial index; features come in the file's order. */
final class FlatGeobufReader {
    private static final int VERSION_BYTES = 3;
    private static final int BUFFER = 1 << 16;

    /** A column of the property table. */
    private record Column(String name, int type) {}

    private final InputStream in;
    private final List<String> warnings = new ArrayList<>();

    private FlatGeobufReader(InputStream in) {
        this.in = in;
    }

    static RawLayer read(Path file) throws IOException {
        try (InputStream in = new BufferedInputStream(Files.newInputStream(file), BUFFER)) {
            String name = String.valueOf(file.getFileName()).replaceFirst("\\.[^.]*$", "");
            return new FlatGeobufReader(in).layer(name);
        } catch (EOFException e) {
            throw new GeoDataException("the FlatGeobuf file ends too early; it is damaged, write it anew", e);
        }
    }

    private RawLayer layer(String fileName) throws IOException {
        byte[] magic = in.readNBytes(Constants.MAGIC_BYTES.length);
        if (!Arrays.equals(magic, 0, VERSION_BYTES, Constants.MAGIC_BYTES, 0, VERSION_BYTES)) {
            throw new GeoDataException("is not a FlatGeobuf file (its first bytes are not those of one)");
        }
        Header header = Header.getRootAsHeader(block().orElseThrow(EOFException::new));
        if (header.indexNodeSize() > 0 && header.featuresCount() > 0) {
            in.skipNBytes(PackedRTree.calcSize((int) header.featuresCount(), header.indexNodeSize()));
        }
        List<Column> columns = new ArrayList<>();
        for (int i = 0; i < header.columnsLength(); i++) {
            columns.add(new Column(header.columns(i).name(), header.columns(i).type()));
        }
        List<RawLayer.Feature> features = new ArrayList<>();
        for (Optional<ByteBuffer> block = block(); block.isPresent(); block = block()) {
            Feature feature = Feature.getRootAsFeature(block.get());
            Geometry geometry = geometry(feature, header.geometryType(), features.size() + 1);
            features.add(new RawLayer.Feature(Optional.empty(), values(feature, columns), geometry));
        }
        String name = header.name() == null || header.name().isBlank() ? fileName : header.name();
        List<String> names = columns.stream().map(Column::name).toList();
        return new RawLayer(name, names, system(header.crs()), Optional.empty(), features, warnings);
    }

    /** The next length-prefixed block; nothing at the end of the file. */
    private Optional<ByteBuffer> block() throws IOException {
        byte[] size = in.readNBytes(Integer.BYTES);
        if (size.length == 0) {
            return Optional.empty();
        }
        int length = size.length < Integer.BYTES
                ? -1
                : ByteBuffer.wrap(size).order(ByteOrder.LITTLE_ENDIAN).getInt();
        byte[] body = length < 0 ? new byte[0] : in.readNBytes(length);
        if (length < 0 || body.length < length) {
            throw new EOFException();
        }
        return Optional.of(ByteBuffer.wrap(body).order(ByteOrder.LITTLE_ENDIAN));
    }

    private static Optional<String> system(Crs crs) {
        if (crs == null) {
            return Optional.empty();
        }
        boolean coded = crs.code() > 0;
        String organization = crs.org() == null ? "EPSG" : crs.org();
        if (coded && (organization.equalsIgnoreCase("EPSG") || crs.wkt() == null)) {
            return Optional.of(organization + ":" + crs.code());
        }
        return Optional.ofNullable(crs.wkt()).filter(text -> !text.isBlank());
    }

    private Geometry geometry(Feature feature, int headerType, int place) {
        org.wololo.flatgeobuf.generated.Geometry geometry = feature.geometry();
        if (geometry == null) {
            return null;
        }
        int type = headerType == GeometryType.Unknown ? geometry.type() : headerType;
        try {
            return GeometryConversions.deserialize(geometry, type);
        } catch (RuntimeException e) {
            warnings.add("feature " + place + ": its geometry of type " + GeometryType.name(type)
                    + " cannot be read; taken as a null shape");
            return null;
        }
    }

    private static Map<String, Object> values(Feature feature, List<Column> shared) {
        List<Column> columns = shared;
        if (feature.columnsLength() > 0) {
            columns = new ArrayList<>();
            for (int i = 0; i < feature.columnsLength(); i++) {
                columns.add(
                        new Column(feature.columns(i).name(), feature.columns(i).type()));
            }
        }
        Map<String, Object> values = new LinkedHashMap<>();
        ByteBuffer bytes = feature.propertiesAsByteBuffer();
        if (bytes != null) {
            bytes.order(ByteOrder.LITTLE_ENDIAN);
            while (bytes.remaining() >= Short.BYTES) {
                Column column = columns.get(Short.toUnsignedInt(bytes.getShort()));
                Object value = value(bytes, column.type());
                if (value != null) {
                    values.put(column.name(), value);
                }
            }
        }
        return values;
    }

    private static Object value(ByteBuffer bytes, int type) {
        return switch (type) {
            case ColumnType.Byte -> (long) bytes.get();
            case ColumnType.UByte -> (long) Byte.toUnsignedInt(bytes.get());
            case ColumnType.Bool -> bytes.get() != 0;
            case ColumnType.Short -> (long) bytes.getShort();
            case ColumnType.UShort -> (long) Short.toUnsignedInt(bytes.getShort());
            case ColumnType.Int -> (long) bytes.getInt();
            case ColumnType.UInt -> Integer.toUnsignedLong(bytes.getInt());
            case ColumnType.Long, ColumnType.ULong -> bytes.getLong();
            case ColumnType.Float -> (double) bytes.getFloat();
            case ColumnType.Double -> bytes.getDouble();
            case ColumnType.String, ColumnType.Json, ColumnType.DateTime -> text(bytes);
            case ColumnType.Binary -> {
                text(bytes);
                yield null;
            }
            default -> throw new GeoDataException("columns of FlatGeobuf type " + type + " are not read");
        };
    }

    private static String text(ByteBuffer bytes) {
        byte[] text = new byte[bytes.getInt()];
        bytes.get(text);
        return new String(text, StandardCharsets.UTF_8);
    }
}
