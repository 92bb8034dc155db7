// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.Arrays;
import java.util.Base64;

/** A growing list of 32-bit floats. */
public final class Floats {
    private static final int FIRST = 64;

    private float[] values = new float[FIRST];
    private int size;

    /** A list of these values. */
    public static Floats of(float[] values) {
        Floats floats = new Floats();
        floats.values = values.clone();
        floats.size = values.length;
        return floats;
    }

    void add(float value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, 2 * size + 1);
        }
        values[size++] = value;
    }

    int size() {
        return size;
    }

    float at(int i) {
        return values[i];
    }

    /** Whether all are zero, also where there is none. */
    public boolean isZero() {
        for (int i = 0; i < size; i++) {
            if (values[i] != 0) {
                return false;
            }
        }
        return true;
    }

    /** In base64, little-endian. */
    public String text() {
        ByteBuffer bytes = ByteBuffer.allocate(Float.BYTES * size).order(ByteOrder.LITTLE_ENDIAN);
        bytes.asFloatBuffer().put(values, 0, size);
        return Base64.getEncoder().encodeToString(bytes.array());
    }
}
