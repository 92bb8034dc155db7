// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

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
        for (int ty = 0; ty < image.getNumYTiles(); ty++) {
            for (int tx = 0; tx < image.getNumXTiles(); tx++) {
                Raster tile = image.getTile(image.getMinTileX() + tx, image.getMinTileY() + ty);
                copy(tile, image, heights, (float) noData, toMeters);
            }
        }
        return heights;
    }

    /** Tiles at the border may reach beyond the image. */
    private static void copy(Raster tile, RenderedImage image, CellNumbers heights, float noData, double toMeters) {
        int left = Math.max(tile.getMinX(), image.getMinX());
        int right = Math.min(tile.getMinX() + tile.getWidth(), image.getMinX() + image.getWidth());
        int top = Math.max(tile.getMinY(), image.getMinY());
        int bottom = Math.min(tile.getMinY() + tile.getHeight(), image.getMinY() + image.getHeight());
        float[] row = new float[right - left];
        for (int y = top; y < bottom; y++) {
            tile.getSamples(left, y, row.length, 1, 0, row);
            int cell = (y - image.getMinY()) * image.getWidth() + left - image.getMinX();
            for (int k = 0; k < row.length; k++) {
                double meters = row[k] * toMeters;
                boolean known = row[k] != noData && meters >= LOWEST && meters <= HIGHEST;
                heights.putHeight(cell + k, known ? row[k] : Float.NaN);
            }
        }
    }
}
