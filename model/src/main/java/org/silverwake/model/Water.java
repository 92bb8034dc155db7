// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model;

import java.util.List;
import org.silverwake.model.water.Hydraulics;

/**
 * Water of all flow states.
 *
 * @param hydraulics discharge, sections and shear
 * @param areaMethod how drainage area was found; "none" where discharge does not need it
 * @param notes what was assumed or corrected, one line each
 */
public record Water(Hydraulics hydraulics, String areaMethod, List<String> notes) {
    /** Copies the notes. */
    public Water {
        notes = List.copyOf(notes);
    }

    /** Routes water and shapes the channel. */
    public static Water of(org.silverwake.model.water.ReachTable reaches, WaterInput input) {
        return new WaterBuilder(reaches, input).build();
    }
}
