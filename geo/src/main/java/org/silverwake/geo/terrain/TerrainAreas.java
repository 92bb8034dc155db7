// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.geo.assembly.RiverMap;

/**
 * The land that drains to each reach, from an elevation raster: each cell goes to the first reach its water meets
 * ({@link PriorityFlood}). Cells give each reach's own land alone; the network sums them up, by its own directions and splits, so that areas never
 * fall downstream, however short reaches are and however many lie in one cell.
 */
public final class TerrainAreas {
    /** Key of a reach's own land, head apart [m2]. */
    public static final String LOCAL = "dem-local-area";

    /** Key of the land that drains to the head of a headwater [m2]; only headwaters have it. */
    public static final String HEAD = "dem-head-area";

    private final RiverMap map;
    private final double[] sums;
    private final BitSet open = new BitSet();
    private double drained;
    private double edge;
    private double unknown;

    private TerrainAreas(RiverMap map) {
        this.map = map;
        this.sums = new double[2 * map.reachCount()];
    }

    /**
     * The areas.
     *
     * @throws org.silverwake.geo.GeoDataException if there is no room for temporary files (8 bytes a cell)
     */
    public static TerrainAreas of(RiverMap map, ElevationModel model) {
        TerrainAreas areas = new TerrainAreas(map);
        CellGround ground = CellGround.of(model);
        BurnedRivers rivers = BurnedRivers.of(map, model);
        PriorityFlood flood = new PriorityFlood(model, ground, rivers);
        flood.run((column, row, label, atRim, known) -> areas.take(ground.area(column, row), label, atRim, known));
        for (int r = 0; r < map.reachCount(); r++) {
            if (rivers.isBeyond(r) || flood.isBeyond(r)) {
                areas.open.set(r);
            }
            if (!flood.isInside(r) && areas.sums[2 * r] + areas.sums[2 * r + 1] == 0) {
                areas.sums[2 * r] = Double.NaN;
            }
        }
        return areas;
    }

    private void take(double area, int label, boolean atRim, boolean known) {
        unknown += known ? 0 : area;
        if (label == PriorityFlood.EDGE) {
            edge += area;
            return;
        }
        drained += area;
        sums[label] += area;
        if (atRim) {
            open.set(label / 2);
        }
    }

    /**
     * The same network with each reach's areas among its numbers; reaches outside of the raster, or where it has no heights
     * at its border, have none.
     */
    public RiverMap map() {
        List<RiverMap.Reach> reaches = new ArrayList<>();
        for (int r = 0; r < map.reachCount(); r++) {
            RiverMap.Reach reach = map.reach(r);
            Map<String, Double> numbers = new HashMap<>(reach.numbers());
            numbers.remove(LOCAL);
            numbers.remove(HEAD);
            if (!Double.isNaN(sums[2 * r])) {
                numbers.put(LOCAL, sums[2 * r]);
                if (sums[2 * r + 1] > 0) {
                    numbers.put(HEAD, sums[2 * r + 1]);
                }
            }
            reaches.add(new RiverMap.Reach(
                    reach.id(),
                    reach.part(),
                    reach.fromNode(),
                    reach.toNode(),
                    reach.lengthMeters(),
                    reach.line(),
                    reach.name(),
                    numbers,
                    reach.texts()));
        }
        return new RiverMap(reaches, map.nodeCount(), map.defects());
    }

    /** Whether more land than the raster shows may drain to a reach itself: land at the raster's rim does, or some of the reach lies outside. */
    public boolean isOpen(int reach) {
        return open.get(reach);
    }

    /** Land that drains to a reach [m2]. */
    public double drained() {
        return drained;
    }

    /** Land that drains over the raster's edge, or to places without heights there, and to no reach [m2]. */
    public double edge() {
        return edge;
    }

    /** Land without heights amid land with heights, taken as filled pits [m2]; part of the others. */
    public double unknown() {
        return unknown;
    }
}
