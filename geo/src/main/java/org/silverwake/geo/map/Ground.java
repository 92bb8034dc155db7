// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a map lies upon, and how people get about there.
 *
 * @param relief shaded slopes
 * @param layers that people know the land by, the lowest first
 * @param locator the small map of where the basin lies
 * @param walking speed of people on foot [m/s], above 0
 * @param boat speed of a boat [m/s], above 0
 */
public record Ground(
        Optional<Relief> relief,
        List<BackdropLayer> layers,
        Locator locator,
        OptionalDouble walking,
        OptionalDouble boat) {
    /** Copies the list. */
    public Ground {
        layers = List.copyOf(layers);
    }

    /** White paper. */
    public static Ground bare() {
        return new Ground(Optional.empty(), List.of(), Locator.globe(), OptionalDouble.empty(), OptionalDouble.empty());
    }

    /** Whether something lies under the rivers. */
    boolean isDrawn() {
        return relief.isPresent()
                || layers.stream().anyMatch(layer -> !layer.items().isEmpty());
    }
}
