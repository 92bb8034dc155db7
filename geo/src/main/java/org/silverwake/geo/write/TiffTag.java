// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;

/** One field of a TIFF file (TIFF 6.0, Adobe, 1992, section 2), in little endian. */
final class TiffTag {
    static final int COLUMNS = 256;
    static final int ROWS = 257;

    private static final int ASCII = 2;
    private static final int SHORT = 3;
    private static final int LONG = 4;
    private static final int RATIONAL = 5;
    private static final int DOUBLE = 12;

    private final int number;
    private final int type;
    private final int count;
    private final byte[] content;

    private TiffTag(int number, int type, int count, byte[] content) {
        this.number = number;
        this.type = type;
        this.count = count;
        this.content = content;
    }

    static TiffTag ofShorts(int number, int... values) {
        ByteBuffer bytes = buffer(Short.BYTES * values.length);
        for (int value : values) {
            bytes.putShort((short) value);
        }
        return new TiffTag(number, SHORT, values.length, bytes.array());
    }

    static TiffTag ofLongs(int number, int... values) {
        ByteBuffer bytes = buffer(Integer.BYTES * values.length);
        for (int value : values) {
            bytes.putInt(value);
        }
        return new TiffTag(number, LONG, values.length, bytes.array());
    }

    /** A whole number, as a fraction. */
    static TiffTag ofRational(int number, int value) {
        return new TiffTag(
                number,
                RATIONAL,
                1,
                buffer(2 * Integer.BYTES).putInt(value).putInt(1).array());
    }

    static TiffTag ofDoubles(int number, double... values) {
        ByteBuffer bytes = buffer(Double.BYTES * values.length);
        for (double value : values) {
            bytes.putDouble(value);
        }
        return new TiffTag(number, DOUBLE, values.length, bytes.array());
    }

    /** In UTF-8, of which the standard's ASCII is a part: names of rivers have letters beyond it, and readers of today take them. */
    static TiffTag ofText(int number, String text) {
        byte[] bytes = (text + '\0').getBytes(StandardCharsets.UTF_8);
        return new TiffTag(number, ASCII, bytes.length, bytes);
    }

    int number() {
        return number;
    }

    int type() {
        return type;
    }

    int count() {
        return count;
    }

    byte[] content() {
        return content.clone();
    }

    static ByteBuffer buffer(int size) {
        return ByteBuffer.allocate(size).order(ByteOrder.LITTLE_ENDIAN);
    }
}
