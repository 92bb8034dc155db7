// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import java.util.Optional;

/**
 * A place where a label could go.
 *
 * @param box what it would cover
 * @param cost how much worse than the best place [page units], >= 0
 * @param leader the point it belongs to, where it stands so far off that a line must join them
 */
public record Spot(Box box, double cost, Optional<Anchor> leader) {
    /** A point on the page. */
    public record Anchor(double x, double y) {}
}
