// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Color;
import java.awt.Rectangle;
import java.awt.Shape;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;
import java.util.Optional;

/**
 * How much of each pixel in a part of a page the lines of one color cover together, until the color is laid through. Of what covers a pixel several times
 * the most counts, so lines that touch show no seam.
 */
final class LineMask {
    private static final int FULL = 255;

    private final int[] pixels;
    private final int stride;
    private final Rectangle part;
    private final byte[] cover;
    private final int[] from;
    private final int[] to;

    private LineMask(int[] pixels, int stride, Rectangle part) {
        this.pixels = pixels;
        this.stride = stride;
        this.part = part;
        cover = new byte[part.width * part.height];
        from = new int[part.height];
        to = new int[part.height];
        Arrays.fill(from, part.width);
    }

    /** For the part of an image of TYPE_INT_RGB within a clip; empty where that is no rectangle. */
    static Optional<LineMask> of(BufferedImage image, Shape clip) {
        if (!(clip instanceof Rectangle2D room) || !(image.getRaster().getDataBuffer() instanceof DataBufferInt data)) {
            return Optional.empty();
        }
        // a pixel is in where its middle is, as in Java2D
        int left = (int) Math.max(0, Math.ceil(room.getMinX() - 0.5));
        int top = (int) Math.max(0, Math.ceil(room.getMinY() - 0.5));
        int right = (int) Math.min(image.getWidth(), Math.ceil(room.getMaxX() - 0.5));
        int bottom = (int) Math.min(image.getHeight(), Math.ceil(room.getMaxY() - 0.5));
        Rectangle part = new Rectangle(left, top, Math.max(0, right - left), Math.max(0, bottom - top));
        return Optional.of(new LineMask(data.getData(), image.getWidth(), part));
    }

    int top() {
        return part.y;
    }

    int bottom() {
        return part.y + part.height;
    }

    int left() {
        return part.x;
    }

    int right() {
        return part.x + part.width;
    }

    /** Covers pixels of a row: wholly where their middles lie between two inner ends, less and less on to the outer ends. */
    void span(int row, double west, double innerWest, double innerEast, double east) {
        int first = Math.max(0, (int) Math.floor(west + 0.5) - part.x);
        int last = Math.min(part.width - 1, (int) Math.ceil(east - 0.5) - 1 - part.x);
        if (first > last) {
            return;
        }
        int fullFrom = Math.max(first, (int) Math.ceil(innerWest - 0.5) - part.x);
        int fullTo = Math.min(last, (int) Math.floor(innerEast - 0.5) - part.x);
        int at = (row - part.y) * part.width;
        for (int c = first; c <= last; c++) {
            if (c == fullFrom && fullFrom <= fullTo) {
                Arrays.fill(cover, at + fullFrom, at + fullTo + 1, (byte) FULL);
                c = fullTo;
            } else {
                double middle = c + part.x + 0.5;
                double rise = (middle - west) / Math.max(1, innerWest - west);
                double fall = (east - middle) / Math.max(1, east - innerEast);
                raise(at + c, Math.min(rise, fall));
            }
        }
        from[row - part.y] = Math.min(from[row - part.y], first);
        to[row - part.y] = Math.max(to[row - part.y], last + 1);
    }

    /** Covers a share of one pixel, which lies in the part. */
    void pixel(int row, int column, double share) {
        int c = column - part.x;
        raise((row - part.y) * part.width + c, share);
        from[row - part.y] = Math.min(from[row - part.y], c);
        to[row - part.y] = Math.max(to[row - part.y], c + 1);
    }

    private void raise(int at, double share) {
        int level = (int) (FULL * Math.min(1, share) + 0.5);
        if (level > (cover[at] & FULL)) {
            cover[at] = (byte) level;
        }
    }

    /** Lays a color, and covers nothing from then on. */
    void lay(Color color) {
        int rgb = color.getRGB();
        for (int r = 0; r < part.height; r++) {
            int row = r * part.width;
            int onPage = (part.y + r) * stride + part.x;
            for (int c = from[r]; c < to[r]; c++) {
                int share = cover[row + c] & FULL;
                if (share != 0) {
                    pixels[onPage + c] = share == FULL ? rgb & 0xffffff : mix(pixels[onPage + c], rgb, share);
                    cover[row + c] = 0;
                }
            }
            from[r] = part.width;
            to[r] = 0;
        }
    }

    private static int mix(int below, int above, int share) {
        int mixed = 0;
        for (int shift = 0; shift < 24; shift += 8) {
            int a = below >> shift & FULL;
            int b = above >> shift & FULL;
            mixed |= (a * (FULL - share) + b * share + FULL / 2) / FULL << shift;
        }
        return mixed;
    }
}
