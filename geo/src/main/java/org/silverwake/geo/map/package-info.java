// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

/**
 * Maps as pictures. Read {@link org.silverwake.geo.map.ConcentrationMap} first, then {@link
 * org.silverwake.geo.map.MapPainter}, which walks styles over features onto any Graphics2D. Lengths on paper are points
 * (1/72 inch), y down; places are WGS 84 degrees, longitude first. Nothing here knows mercury: what a color means is said
 * by the {@link org.silverwake.geo.map.MapSheet}. No green and no tick marks, ever: a map that looks like "all is well"
 * would be believed.
 */
package org.silverwake.geo.map;
