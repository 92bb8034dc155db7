// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.util.List;

/** Where an image lies: fields of GeoTIFF 1.1 (OGC 19-008r4). */
final class GeoTags {
    private GeoTags() {}

    /**
     * WGS 84, longitude and latitude in degrees (EPSG:4326), a pixel being an area.
     *
     * @param west longitude of the western edge of the first column [degrees]
     * @param north latitude of the northern edge of the first row [degrees]
     * @param width of a pixel [degrees of longitude], > 0
     * @param height of a pixel [degrees of latitude], > 0
     */
    static List<TiffTag> wgs84(double west, double north, double width, double height) {
        return List.of(
                TiffTag.ofDoubles(33550, width, height, 0), // pixel scale
                TiffTag.ofDoubles(33922, 0, 0, 0, west, north, 0), // tie point
                TiffTag.ofShorts(
                        34735, 1, 1, 0, 4, 1024, 0, 1, 2, 1025, 0, 1, 1, 2048, 0, 1, 4326, 2054, 0, 1, 9102)); // keys
    }
}
