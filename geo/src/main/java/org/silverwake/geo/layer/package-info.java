// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * One reader per open format behind {@link org.silverwake.geo.layer.VectorLayer}: GeoPackage, Shapefile, GeoJSON,
 * FlatGeobuf. Read {@link org.silverwake.geo.layer.Layers} first. Coordinates leave in WGS 84 degrees, longitude first.
 */
package org.silverwake.geo.layer;
