// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model;

import java.util.List;
import java.util.Optional;
import org.silverwake.model.water.DrainageArea;
import org.silverwake.model.water.Hydraulics;
import org.silverwake.model.water.ReachTable;

/**
 * Water of all flow states.
 *
 * @param hydraulics discharge, sections and shear
 * @param areas drainage area, where it is known
 * @param notes what was assumed or corrected, one line each
 * @param listed the same reach by reach, none left out
 */
public record Water(Hydraulics hydraulics, Optional<DrainageArea> areas, List<String> notes, List<Listed> listed) {
    /** Copies the lists. */
    public Water {
        notes = List.copyOf(notes);
        listed = List.copyOf(listed);
    }

    /**
     * What was assumed or corrected at one reach.
     *
     * @param reach the reach
     * @param what in words
     */
    public record Listed(int reach, String what) {}

    /** Routes water and shapes the channel. */
    public static Water of(ReachTable reaches, WaterInput input) {
        return new WaterBuilder(reaches, input).build();
    }

    /** How drainage area was found; "none" where it is not known. */
    public String areaMethod() {
        return areas.map(DrainageArea::method).orElse("none");
    }
}
