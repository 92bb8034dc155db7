// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.Deflater;
import java.util.zip.DeflaterOutputStream;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.map.MapImage;

/**
 * Writes a map's picture as a GeoTIFF: 8-bit RGB, with alpha where the ground is transparent; strips, Deflate with horizontal differences,
 * EPSG:4326, pixel is area. TIFF 6.0 (Adobe, 1992), its technical notes (Adobe, 2002) for Deflate, GeoTIFF 1.1 (OGC 19-008r4). Same picture,
 * same bytes.
 */
public final class MapImageWriter {
    private static final int ROWS = 64;
    private static final int LEVEL = 6;

    private MapImageWriter() {}

    /**
     * Writes a file, replacing one that is there.
     *
     * @throws GeoDataException if it cannot be written
     */
    public static void write(Path file, MapImage image) {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            Files.write(part, bytes(image));
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new GeoDataException(
                    file + ": cannot be written (" + e.getMessage() + "); give a folder that exists and has room", e);
        }
    }

    private static byte[] bytes(MapImage image) throws IOException {
        int samples = image.isOpaque() ? 3 : 4;
        List<TiffTag> tags = new ArrayList<>(
                GeoTags.wgs84(image.west(), image.north(), image.degreesEastPerPixel(), image.degreesNorthPerPixel()));
        tags.add(TiffTag.ofLongs(TiffTag.COLUMNS, image.columns()));
        tags.add(TiffTag.ofLongs(TiffTag.ROWS, image.rows()));
        tags.add(
                image.isOpaque()
                        ? TiffTag.ofShorts(258, 8, 8, 8)
                        : TiffTag.ofShorts(258, 8, 8, 8, 8)); // bits per sample
        tags.add(TiffTag.ofShorts(259, 8)); // Deflate
        tags.add(TiffTag.ofShorts(262, 2)); // RGB
        tags.add(TiffTag.ofText(270, image.description()));
        tags.add(TiffTag.ofShorts(277, samples)); // samples per pixel
        tags.add(TiffTag.ofRational(282, image.dotsPerInch())); // resolution across
        tags.add(TiffTag.ofRational(283, image.dotsPerInch())); // resolution down
        tags.add(TiffTag.ofShorts(284, 1)); // planar configuration: chunky
        tags.add(TiffTag.ofShorts(296, 2)); // resolution per inch
        tags.add(TiffTag.ofShorts(317, 2)); // horizontal differences
        if (!image.isOpaque()) {
            tags.add(TiffTag.ofShorts(338, 2)); // the fourth sample is opacity, which colors are not multiplied with
        }
        List<byte[]> strips = new ArrayList<>();
        for (int top = 0; top < image.rows(); top += ROWS) {
            strips.add(strip(image, top, Math.min(image.rows(), top + ROWS), samples));
        }
        return TiffFile.bytes(tags, ROWS, strips);
    }

    private static byte[] strip(MapImage image, int top, int bottom, int samples) throws IOException {
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        Deflater deflater = new Deflater(LEVEL);
        byte[] row = new byte[samples * image.columns()];
        try (DeflaterOutputStream out = new DeflaterOutputStream(packed, deflater)) {
            for (int y = top; y < bottom; y++) {
                int left = 0;
                for (int x = 0; x < image.columns(); x++) {
                    int pixel = image.argb(x, y);
                    for (int k = 0; k < samples; k++) {
                        int shift = shift(k);
                        row[samples * x + k] = (byte) ((pixel >> shift) - (left >> shift));
                    }
                    left = pixel;
                }
                out.write(row);
            }
        } finally {
            deflater.end();
        }
        return packed.toByteArray();
    }

    /** Of red, green, blue, opacity in a pixel. */
    private static int shift(int sample) {
        return sample == 3 ? 24 : 16 - 8 * sample;
    }
}
