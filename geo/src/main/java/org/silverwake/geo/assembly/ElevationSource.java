// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.OptionalDouble;

/** Ground heights. */
@FunctionalInterface
public interface ElevationSource {
    /** Height [m] at a place in WGS 84 degrees, longitude first; empty where there is none. */
    OptionalDouble elevation(double longitude, double latitude);
}
