// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.demo.Plane.Spot;

/**
 * A river from its head to the river it joins, following the larger area at every confluence.
 *
 * @param cells from the mouth up; the first is the cell of the receiving river where it joins (the outlet for the main stem)
 * @param tributaries those kept, from the mouth up
 * @param joins for each tributary, where in {@code cells} it joins
 */
record Stream(List<Integer> cells, List<Stream> tributaries, List<Integer> joins) {
    /** Rivers of a landscape that begin at an area [km2], no tributary shorter than a length [km]. */
    static Stream trace(Landscape land, double headArea, double shortest, double apart) {
        List<Integer> cells = new ArrayList<>(List.of(land.outlet()));
        return trace(land, land.outlet(), cells, headArea, shortest, apart);
    }

    private static Stream trace(
            Landscape land, int start, List<Integer> cells, double headArea, double shortest, double apart) {
        List<Stream> tributaries = new ArrayList<>();
        List<Integer> joins = new ArrayList<>();
        int cell = start;
        double sinceJoin = 0;
        while (true) {
            List<Integer> donors = land.donors(cell, headArea);
            if (donors.isEmpty()) {
                break;
            }
            Stream kept = null;
            for (int donor : donors.subList(1, donors.size())) {
                Stream side = trace(land, donor, new ArrayList<>(List.of(cell, donor)), headArea, shortest, apart);
                if (kept == null && side.length(land) >= shortest) {
                    kept = side;
                }
            }
            if (kept != null && sinceJoin >= apart) {
                tributaries.add(kept);
                joins.add(cells.size() - 1);
                sinceJoin = 0;
            }
            sinceJoin += land.spot(cell).distance(land.spot(donors.get(0)));
            cell = donors.get(0);
            cells.add(cell);
        }
        return new Stream(cells, tributaries, joins);
    }

    private double length(Landscape land) {
        double sum = 0;
        for (int k = 1; k < cells.size(); k++) {
            sum += land.spot(cells.get(k - 1)).distance(land.spot(cells.get(k)));
        }
        return sum;
    }

    List<Spot> spots(Landscape land) {
        return cells.stream().map(land::spot).toList();
    }
}
