// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.silverwake.geo.GeoDataException;

/**
 * Writes a {@link Grid} as a GeoTIFF: 32-bit floats, one strip, Deflate, EPSG:4326, pixel is area. TIFF 6.0 (Adobe, 1992), GeoTIFF
 * 1.1 (OGC 19-008r4). Own code, since the tags are few and the library's writer opens its database of coordinate systems.
 * Same grid, same bytes.
 */
public final class GridWriter {
    /** What stands for "no value" in the file. */
    public static final float NO_VALUE = -9999f;

    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int ASCII = 2;
    private static final int DOUBLE = 12;
    private static final int ENTRY = 12;
    private static final int HEADER = 8;

    private static final class Tag {
        private final int number;
        private final int type;
        private final int count;
        private final byte[] content;

        Tag(int number, int type, int count, byte[] content) {
            this.number = number;
            this.type = type;
            this.count = count;
            this.content = content;
        }

        static Tag ofShorts(int number, int... values) {
            ByteBuffer bytes = buffer(2 * values.length);
            for (int value : values) {
                bytes.putShort((short) value);
            }
            return new Tag(number, SHORT, values.length, bytes.array());
        }

        static Tag ofLong(int number, int value) {
            return new Tag(number, LONG, 1, buffer(4).putInt(value).array());
        }

        static Tag ofDoubles(int number, double... values) {
            ByteBuffer bytes = buffer(8 * values.length);
            for (double value : values) {
                bytes.putDouble(value);
            }
            return new Tag(number, DOUBLE, values.length, bytes.array());
        }

        static Tag ofText(int number, String text) {
            byte[] bytes = (text + '\0').getBytes(StandardCharsets.US_ASCII);
            return new Tag(number, ASCII, bytes.length, bytes);
        }
    }

    private GridWriter() {}

    /**
     * Writes a file, replacing one that is there.
     *
     * @throws GeoDataException if it cannot be written
     */
    public static void write(Path file, Grid grid) {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            Files.write(part, bytes(grid));
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new GeoDataException(
                    file + ": cannot be written (" + e.getMessage() + "); give a folder that exists and has room", e);
        }
    }

    private static byte[] bytes(Grid grid) throws IOException {
        byte[] strip = deflate(grid);
        List<Tag> tags = tags(grid, strip.length);
        int directory = HEADER + strip.length + strip.length % 2;
        int spill = directory + 2 + ENTRY * tags.size() + 4;
        ByteArrayOutputStream overflow = new ByteArrayOutputStream();
        ByteBuffer entries = buffer(2 + ENTRY * tags.size() + 4);
        entries.putShort((short) tags.size());
        for (Tag tag : tags) {
            entries.putShort((short) tag.number).putShort((short) tag.type).putInt(tag.count);
            if (tag.content.length <= 4) {
                entries.put(tag.content).put(new byte[4 - tag.content.length]);
            } else {
                entries.putInt(spill + overflow.size());
                overflow.write(tag.content);
                overflow.write(new byte[tag.content.length % 2]);
            }
        }
        ByteBuffer file = buffer(spill + overflow.size());
        file.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(directory);
        file.put(strip).position(directory);
        return file.put(entries.array()).put(overflow.toByteArray()).array();
    }

    /** In rising order of their numbers, as TIFF 6.0 asks. */
    private static List<Tag> tags(Grid grid, int stripBytes) {
        List<Tag> tags = new ArrayList<>();
        tags.add(Tag.ofLong(256, grid.columns()));
        tags.add(Tag.ofLong(257, grid.rows()));
        tags.add(Tag.ofShorts(258, 32)); // bits per sample
        tags.add(Tag.ofShorts(259, 8)); // Deflate
        tags.add(Tag.ofShorts(262, 1)); // black is zero
        tags.add(Tag.ofLong(273, HEADER)); // where the strip begins
        tags.add(Tag.ofShorts(277, 1)); // samples per pixel
        tags.add(Tag.ofLong(278, grid.rows())); // rows per strip
        tags.add(Tag.ofLong(279, stripBytes));
        tags.add(Tag.ofShorts(284, 1)); // planar configuration: chunky
        tags.add(Tag.ofShorts(339, 3)); // IEEE floats
        tags.add(Tag.ofDoubles(33550, grid.cell(), grid.cell(), 0)); // pixel scale
        tags.add(Tag.ofDoubles(33922, 0, 0, 0, grid.west(), grid.north(), 0)); // tie point
        tags.add(Tag.ofShorts(
                34735, 1, 1, 0, 4, 1024, 0, 1, 2, 1025, 0, 1, 1, 2048, 0, 1, 4326, 2054, 0, 1, 9102)); // geokeys
        tags.add(Tag.ofText(42113, "-9999")); // no value, as GDAL reads it
        return tags;
    }

    private static byte[] deflate(Grid grid) throws IOException {
        ByteBuffer raw = buffer(Float.BYTES * grid.rows() * grid.columns());
        for (int row = 0; row < grid.rows(); row++) {
            for (int column = 0; column < grid.columns(); column++) {
                float value = grid.value(row, column);
                raw.putFloat(Float.isNaN(value) ? NO_VALUE : value);
            }
        }
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        Deflater deflater = new Deflater(Deflater.BEST_COMPRESSION);
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater)) {
            out.write(raw.array());
        } finally {
            deflater.end();
        }
        return packed.toByteArray();
    }

    private static ByteBuffer buffer(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
