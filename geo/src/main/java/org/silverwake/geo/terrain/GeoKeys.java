// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;

/**
 * The code of the coordinate system in a GeoTIFF, read from its first directory of tags, so that a common code needs no
 * database (TIFF 6.0, section 2; OGC 19-008r4 GeoTIFF, sections 7.1 and 7.5; BigTIFF differs in word sizes only).
 */
final class GeoKeys {
    private static final int GEO_KEY_DIRECTORY = 34735;
    private static final int GEODETIC_CODE = 2048;
    private static final int PROJECTED_CODE = 3072;
    private static final int USER_DEFINED = 32767;
    private static final int BIG = 43;
    private static final int HEADER = 16;

    private final FileChannel channel;
    private ByteOrder order;
    private boolean big;

    private GeoKeys(FileChannel channel) {
        this.channel = channel;
    }

    /** The code as EPSG:n, empty where the file has none of its own. */
    static Optional<String> code(Path file) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ)) {
            return new GeoKeys(channel).read();
        }
    }

    private Optional<String> read() throws IOException {
        order = ByteOrder.LITTLE_ENDIAN;
        ByteBuffer head = at(0, HEADER);
        if (head.get(0) == 'M') {
            order = ByteOrder.BIG_ENDIAN;
            head.order(order);
        }
        big = head.getShort(2) == BIG;
        long directory = big ? head.getLong(8) : Integer.toUnsignedLong(head.getInt(4));
        long count = big
                ? at(directory, 8).getLong(0)
                : Short.toUnsignedInt(at(directory, 2).getShort(0));
        int size = big ? 20 : 12;
        ByteBuffer tags = at(directory + (big ? 8 : 2), Math.toIntExact(count * size));
        for (int k = 0; k < count; k++) {
            int tag = k * size;
            if (Short.toUnsignedInt(tags.getShort(tag)) == GEO_KEY_DIRECTORY) {
                long values = big ? tags.getLong(tag + 4) : tags.getInt(tag + 4);
                long place = big ? tags.getLong(tag + 12) : Integer.toUnsignedLong(tags.getInt(tag + 8));
                return keys(at(place, Math.toIntExact(values * 2)));
            }
        }
        return Optional.empty();
    }

    private static Optional<String> keys(ByteBuffer keys) {
        int geodetic = 0;
        int projected = 0;
        int count = Short.toUnsignedInt(keys.getShort(6));
        for (int k = 1; k <= count; k++) {
            int key = Short.toUnsignedInt(keys.getShort(k * 8));
            int value = Short.toUnsignedInt(keys.getShort(k * 8 + 6));
            geodetic = key == GEODETIC_CODE ? value : geodetic;
            projected = key == PROJECTED_CODE ? value : projected;
        }
        int code = projected > 0 ? projected : geodetic;
        return code == 0 || code == USER_DEFINED ? Optional.empty() : Optional.of("EPSG:" + code);
    }

    private ByteBuffer at(long place, int length) throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(length).order(order);
        while (buffer.hasRemaining()) {
            if (channel.read(buffer, place + buffer.position()) < 0) {
                throw new IOException("the file ends too early");
            }
        }
        return buffer;
    }
}
