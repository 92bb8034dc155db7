// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import java.util.List;

/**
 * A label that wants a place.
 *
 * @param priority who goes first: low before high
 * @param spots where it could go, any order
 */
public record LabelRequest(double priority, List<Spot> spots) {
    /** Copies the list. */
    public LabelRequest {
        spots = List.copyOf(spots);
    }
}
