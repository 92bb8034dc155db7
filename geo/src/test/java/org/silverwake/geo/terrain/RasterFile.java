// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.SeekableByteChannel;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Writes a GeoTIFF of floats row by row, a strip for each row, so that a large one needs no memory (TIFF 6.0; OGC 19-008r4).
 *
 * @param code EPSG code, of degrees or of meters
 * @param west western edge, in the system's unit
 * @param north northern edge
 * @param cell side of a cell
 */
record RasterFile(int columns, int rows, int code, double west, double north, double cell) {
    /** What stands for no height. */
    static final float NO_VALUE = -9999;

    /** Height of a cell; NaN for none. */
    interface Heights {
        double at(int column, int row);
    }

    private static final int HEADER = 8;

    boolean isDegrees() {
        return code == 4326;
    }

    Path write(Path file, Heights heights) {
        return write(file, heights, rows);
    }

    /** The same cells as one strip. */
    Path writeAsOneStrip(Path file, Heights heights) {
        return write(file, heights, 1);
    }

    private Path write(Path file, Heights heights, int strips) {
        try (SeekableByteChannel out = Files.newByteChannel(
                file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, StandardOpenOption.TRUNCATE_EXISTING)) {
            long data = HEADER;
            long directory = data + 4L * columns * rows;
            out.write(buffer(HEADER)
                    .put((byte) 'I')
                    .put((byte) 'I')
                    .putShort((short) 42)
                    .putInt((int) directory)
                    .flip());
            ByteBuffer line = buffer(4 * columns);
            for (int row = 0; row < rows; row++) {
                line.clear();
                for (int column = 0; column < columns; column++) {
                    double height = heights.at(column, row);
                    line.putFloat(Double.isNaN(height) ? NO_VALUE : (float) height);
                }
                out.write(line.flip());
            }
            out.write(tags((int) directory, strips));
            return file;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private ByteBuffer tags(int directory, int strips) {
        int count = 14;
        int after = directory + 2 + 12 * count + 4;
        ByteBuffer more = buffer(8 * rows + 512);
        ByteBuffer tags = buffer(2 + 12 * count + 4 + 8 * rows + 512);
        tags.putShort((short) count);
        tag(tags, 256, 4, 1).putInt(columns);
        tag(tags, 257, 4, 1).putInt(rows);
        tag(tags, 258, 3, 1).putInt(32);
        tag(tags, 259, 3, 1).putInt(1);
        tag(tags, 262, 3, 1).putInt(1);
        tag(tags, 273, 4, strips);
        offsets(tags, more, after, strips, true);
        tag(tags, 277, 3, 1).putInt(1);
        tag(tags, 278, 4, 1).putInt(rows / strips);
        tag(tags, 279, 4, strips);
        offsets(tags, more, after, strips, false);
        tag(tags, 339, 3, 1).putInt(3);
        tag(tags, 33550, 12, 3).putInt(after + more.position());
        more.putDouble(cell).putDouble(cell).putDouble(0);
        tag(tags, 33922, 12, 6).putInt(after + more.position());
        more.putDouble(0)
                .putDouble(0)
                .putDouble(0)
                .putDouble(west)
                .putDouble(north)
                .putDouble(0);
        int[] keys = isDegrees()
                ? new int[] {1, 1, 0, 3, 1024, 0, 1, 2, 1025, 0, 1, 1, 2048, 0, 1, code}
                : new int[] {1, 1, 0, 3, 1024, 0, 1, 1, 1025, 0, 1, 1, 3072, 0, 1, code};
        tag(tags, 34735, 3, keys.length).putInt(after + more.position());
        for (int key : keys) {
            more.putShort((short) key);
        }
        byte[] none = "-9999\0".getBytes(StandardCharsets.US_ASCII);
        tag(tags, 42113, 2, none.length).putInt(after + more.position());
        more.put(none);
        return tags.putInt(0).put(more.flip()).flip();
    }

    /** Where strips begin, or how long they are; one alone stands in the tag itself. */
    private void offsets(ByteBuffer tags, ByteBuffer more, int after, int strips, boolean begin) {
        if (strips > 1) {
            tags.putInt(after + more.position());
        }
        int length = 4 * columns * (rows / strips);
        for (int strip = 0; strip < strips; strip++) {
            (strips > 1 ? more : tags).putInt(begin ? HEADER + length * strip : length);
        }
    }

    private static ByteBuffer tag(ByteBuffer tags, int number, int type, int count) {
        return tags.putShort((short) number).putShort((short) type).putInt(count);
    }

    private static ByteBuffer buffer(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
