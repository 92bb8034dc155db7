// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
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
        List<TiffTag> tags = new ArrayList<>(GeoTags.wgs84(grid.west(), grid.north(), grid.cell(), grid.cell()));
        tags.add(TiffTag.ofLongs(TiffTag.COLUMNS, grid.columns()));
        tags.add(TiffTag.ofLongs(TiffTag.ROWS, grid.rows()));
        tags.add(TiffTag.ofShorts(258, 32)); // bits per sample
        tags.add(TiffTag.ofShorts(259, 8)); // Deflate
        tags.add(TiffTag.ofShorts(262, 1)); // black is zero
        tags.add(TiffTag.ofShorts(277, 1)); // samples per pixel
        tags.add(TiffTag.ofShorts(284, 1)); // planar configuration: chunky
        tags.add(TiffTag.ofShorts(339, 3)); // IEEE floats
        tags.add(TiffTag.ofText(42113, "-9999")); // no value, as GDAL reads it
        return TiffFile.bytes(tags, grid.rows(), List.of(deflate(grid)));
    }

    private static byte[] deflate(Grid grid) throws IOException {
        ByteBuffer raw = TiffTag.buffer(Float.BYTES * grid.rows() * grid.columns());
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
}
