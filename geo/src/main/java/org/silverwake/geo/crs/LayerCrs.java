// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

/**
 * The coordinate system of a layer, and the way between it and WGS 84 degrees, longitude first. This package is the
 * only place that names a coordinate system.
 */
public final class LayerCrs {
    private final String name;

    LayerCrs(String name) {
        this.name = name;
    }

    /** Name for people, with its code where it has one. */
    public String name() {
        return name;
    }
}
