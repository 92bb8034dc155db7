// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

/**
 * A way to draw a layer, which a GIS offers.
 *
 * @param name by which it is chosen; all different in one layer
 * @param sld as SLD 1.0 text
 */
public record LayerStyle(String name, String sld) {}
