// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

/**
 * How one reach is shown.
 *
 * @param lineClass index into the sheet's classes
 * @param hatched whether the two bounds are far apart
 * @param nearBank whether water is not yet mixed across the river
 * @param aboveFromBackground whether it is above from background alone, without any site
 */
public record ReachMark(int lineClass, boolean hatched, boolean nearBank, boolean aboveFromBackground) {}
