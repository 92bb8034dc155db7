// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.nio.file.Path;
import java.util.Optional;

/**
 * What to read.
 *
 * @param file GeoPackage, Shapefile (.shp, or a .zip holding one), GeoJSON or FlatGeobuf
 * @param layer layer name, needed where a file has several line layers
 * @param crs code (EPSG:32726) or WKT, used only where the file has none, refused where it contradicts the file's
 * @param filter ECQL text that chooses features
 * @param idColumn column that names features
 */
public record LayerSource(
        Path file, Optional<String> layer, Optional<String> crs, Optional<String> filter, Optional<String> idColumn) {}
