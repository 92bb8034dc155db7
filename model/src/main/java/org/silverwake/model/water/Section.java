// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

/**
 * A channel's cross-section at one discharge.
 *
 * @param width at the surface B [m], above 0
 * @param depth mean depth H = area/B [m], above 0
 * @param velocity section mean U = Q/(B H) [m/s], above 0
 * @param radius hydraulic radius R [m], above 0; the depth where only depth is known
 * @param radiusKnown whether the radius is the section's own
 */
public record Section(double width, double depth, double velocity, double radius, boolean radiusKnown) {}
