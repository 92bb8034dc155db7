// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Layers and grids out: GeoPackage with default styles, GeoTIFF. Read {@link org.silverwake.geo.write.GeoPackageWriter}
 * first; {@link org.silverwake.geo.write.ReachLayers} is the way in for callers without geometry. Coordinates are WGS 84
 * (EPSG:4326), longitude first, degrees. Same input, same bytes: no clock, no random names. Nothing here knows what the
 * values mean.
 */
package org.silverwake.geo.write;
