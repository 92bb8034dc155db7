// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

/**
 * The stretch of one user's feature that a reach covers, so that results join back to the user's ids.
 *
 * @param featureId the user's feature id
 * @param feature index of the feature in its layer, from 0
 * @param part part of a multi-part feature, from 0
 * @param fromMeters where the reach starts along the part as drawn, geodesic [m]
 * @param toMeters where the reach ends along the part as drawn, geodesic [m]; below {@code fromMeters} never
 * @param flipped whether water runs against the drawn direction
 */
public record ReachPart(String featureId, int feature, int part, double fromMeters, double toMeters, boolean flipped) {}
