// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/** Coordinate systems, axis order, geodesic length. The only package that names a coordinate system. */
package org.silverwake.geo.crs;
