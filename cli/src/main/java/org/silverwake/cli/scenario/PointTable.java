// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;

/**
 * Reads a point layer (GeoJSON, GeoPackage ...) as a table, for sites and places kept as a layer: one row per feature, its
 * attributes as columns, and its point as longitude and latitude, or x and y in the river layer's system.
 */
@FunctionalInterface
public interface PointTable {
    /**
     * The layer's rows.
     *
     * @throws IllegalArgumentException in words for the user, where the file holds no such layer
     */
    Table read(Path file);
}
