// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.awt.Rectangle;
import java.awt.image.Raster;
import java.awt.image.RenderedImage;

/** Copies the heights of an image tile by tile, so that no more than a tile is held twice. */
final class HeightTiles {
    private static final double LOWEST = -12_000;
    private static final double HIGHEST = 9_000;

    private HeightTiles() {}

    /**
     * The first band, row by row; NaN where there is no height.
     *
     * @param noData what stands for "no height" in the file, NaN for nothing
     * @param toMeters factor from its unit to meters [-]
     */
    static CellNumbers read(RenderedImage image, double noData, double toMeters) {
        CellNumbers heights = CellNumbers.of(image.getWidth() * image.getHeight());
        Rectangle whole = new Rectangle(image.getMinX(), image.getMinY(), image.getWidth(), image.getHeight());
        for (int ty = 0; ty < image.getNumYTiles(); ty++) {
            for (int tx = 0; tx < image.getNumXTiles(); tx++) {
                Raster tile = image.getTile(image.getMinTileX() + tx, image.getMinTileY() + ty);
                copy(tile, tile.getBounds().intersection(whole), whole, heights, (float) noData, toMeters);
            }
        }
        return heights;
    }

    private static void copy(
            Raster tile, Rectangle part, Rectangle whole, CellNumbers heights, float noData, double toMeters) {
        float[] row = new float[part.width];
        for (int y = part.y; y < part.y + part.height; y++) {
            tile.getSamples(part.x, y, part.width, 1, 0, row);
            int cell = (y - whole.y) * whole.width + part.x - whole.x;
            for (int k = 0; k < row.length; k++) {
                double meters = row[k] * toMeters;
                boolean known = row[k] != noData && meters >= LOWEST && meters <= HIGHEST;
                heights.putHeight(cell + k, known ? row[k] : Float.NaN);
            }
        }
    }
}
