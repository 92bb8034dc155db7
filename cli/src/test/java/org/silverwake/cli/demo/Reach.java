// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

import java.util.List;
import org.silverwake.cli.demo.Plane.Spot;

/**
 * A reach of the demo.
 *
 * @param id L001 at the outlet, counting up
 * @param river name of its river
 * @param area drainage area at its lower end [km2]
 * @param kind what the reach is
 * @param line from its upper to its lower end, as water flows
 * @param heights of the line's points [m], falling
 */
record Reach(String id, String river, double area, String kind, List<Spot> line, List<Double> heights) {
    Reach {
        line = List.copyOf(line);
        heights = List.copyOf(heights);
    }

    double length() {
        return Meander.length(line);
    }
}
