// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Ground heights from elevation rasters. Read {@link org.silverwake.geo.terrain.ElevationModel} first. Places are WGS 84
 * degrees, longitude first; heights meters.
 */
package org.silverwake.geo.terrain;
