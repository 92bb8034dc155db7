// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import java.util.List;
import java.util.Optional;

/**
 * Where labels came to stand.
 *
 * @param spots one per request, in their order; empty where there was no room
 */
public record LabelLayout(List<Optional<Spot>> spots) {
    /** Copies the list. */
    public LabelLayout {
        spots = List.copyOf(spots);
    }

    /** How many labels found no room. */
    public int dropped() {
        return (int) spots.stream().filter(Optional::isEmpty).count();
    }

    /** How many pairs of placed labels overlap, and placed labels with obstacles; 0 unless the placer is at fault. */
    public int overlaps(List<Box> obstacles) {
        List<Box> boxes =
                spots.stream().flatMap(Optional::stream).map(Spot::box).toList();
        int count = 0;
        for (int a = 0; a < boxes.size(); a++) {
            for (int b = a + 1; b < boxes.size(); b++) {
                count += boxes.get(a).overlaps(boxes.get(b)) ? 1 : 0;
            }
            for (Box obstacle : obstacles) {
                count += boxes.get(a).overlaps(obstacle) ? 1 : 0;
            }
        }
        return count;
    }
}
