// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.zip.CRC32;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;

/**
 * Writes an image as PNG (ISO/IEC 15948:2004) with its resolution: 8-bit RGB, pHYs. Own code of a page: the JDK's writer searches its
 * plug-ins first, and packs flat maps slower. Same image, same bytes.
 */
final class PngFile {
    private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1a, '\n'};
    private static final int LEVEL = 4;
    private static final int CHUNK = 1 << 16;

    private PngFile() {}

    /** Writes a TYPE_INT_RGB image to a temporary name and moves it into place. */
    static void write(Path file, BufferedImage image, int dotsPerInch) {
        WholeFile.write(file, to -> {
            DataOutputStream out = new DataOutputStream(to);
            out.write(SIGNATURE);
            chunk(out, "IHDR", header(image));
            chunk(out, "pHYs", resolution(dotsPerInch));
            try (OutputStream pixels = new Chunks(out)) {
                pack(image, pixels);
            }
            chunk(out, "IEND", new byte[0]);
        });
    }

    private static byte[] header(BufferedImage image) {
        return java.nio.ByteBuffer.allocate(13)
                .putInt(image.getWidth())
                .putInt(image.getHeight())
                .put((byte) 8)
                .put((byte) 2) // true color
                .array();
    }

    private static byte[] resolution(int dotsPerInch) {
        int perMeter = (int) Math.round(dotsPerInch / 0.0254);
        return java.nio.ByteBuffer.allocate(9)
                .putInt(perMeter)
                .putInt(perMeter)
                .put((byte) 1)
                .array();
    }

    /** Each row with filter 2 ("up"): flat maps become zeros. */
    private static void pack(BufferedImage image, OutputStream out) throws IOException {
        int width = image.getWidth();
        int[] pixels = ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
        Deflater deflater = new Deflater(LEVEL);
        byte[] row = new byte[1 + 3 * width];
        row[0] = 2;
        try (DeflaterOutputStream packed = new DeflaterOutputStream(out, deflater, CHUNK)) {
            for (int y = 0; y < image.getHeight(); y++) {
                for (int x = 0; x < width; x++) {
                    int now = pixels[y * width + x];
                    int above = y == 0 ? 0 : pixels[(y - 1) * width + x];
                    row[1 + 3 * x] = (byte) ((now >> 16) - (above >> 16));
                    row[2 + 3 * x] = (byte) ((now >> 8) - (above >> 8));
                    row[3 + 3 * x] = (byte) (now - above);
                }
                packed.write(row);
            }
        } finally {
            deflater.end();
        }
    }

    private static void chunk(DataOutputStream out, String name, byte[] content) throws IOException {
        byte[] label = name.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(label);
        check.update(content);
        out.writeInt(content.length);
        out.write(label);
        out.write(content);
        out.writeInt((int) check.getValue());
    }

    /** Splits what is written into IDAT chunks. */
    private static final class Chunks extends OutputStream {
        private final DataOutputStream out;

        Chunks(DataOutputStream out) {
            this.out = out;
        }

        @Override
        public void write(int b) throws IOException {
            chunk(out, "IDAT", new byte[] {(byte) b});
        }

        @Override
        public void write(byte[] bytes, int offset, int length) throws IOException {
            chunk(out, "IDAT", java.util.Arrays.copyOfRange(bytes, offset, offset + length));
        }
    }
}
