// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Coordinate systems, axis order, geodesic length. The only package that names a coordinate system. Read
 * {@link org.silverwake.geo.crs.LayerCrs} first: a layer's system and the way to WGS 84 degrees, longitude first.
 * {@link org.silverwake.geo.crs.PointReader} brings single points of any system and datum there.
 * {@link org.silverwake.geo.crs.Geodesy} measures on the ellipsoid, in meters; {@link
 * org.silverwake.geo.crs.MetricPlane} is the private plane for nearest search.
 */
package org.silverwake.geo.crs;
