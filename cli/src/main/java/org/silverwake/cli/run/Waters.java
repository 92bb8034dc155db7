// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.List;
import org.silverwake.geo.map.WaterShape;
import org.silverwake.model.water.ReachKind;
import org.silverwake.model.water.WaterBodies;

/**
 * Kinds of reach, and the still waters and wetlands that rivers run through.
 *
 * @param kinds of each reach, in the network's order
 * @param bodies those of known area and depth
 * @param shapes polygons of bodies, for maps; their reaches are numbered as on the map
 * @param withoutData whether some still water is taken as a channel because nobody gave its area and depth
 * @param notes one line each
 */
public record Waters(
        List<ReachKind> kinds, WaterBodies bodies, List<WaterShape> shapes, boolean withoutData, List<String> notes) {
    /** Copies the lists. */
    public Waters {
        kinds = List.copyOf(kinds);
        shapes = List.copyOf(shapes);
        notes = List.copyOf(notes);
    }
}
