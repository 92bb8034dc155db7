// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.sf.geographiclib.Geodesic;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.assembly.ReachPart;
import org.silverwake.geo.assembly.RiverMap;

/** A tree of invented rivers that wander, for pictures. Seeded. */
final class InventedRivers {
    private static final double STEP = 0.004;
    private static final List<String> NAMES = List.of(
            "Lantern River",
            "Wick Creek",
            "Tallow Brook",
            "Ember River",
            "Sconce Creek",
            "Beeswax Brook",
            "Snuffer Creek");

    private final Random random;
    private final List<RiverMap.Reach> reaches = new ArrayList<>();
    private int nodes;
    private int rivers;

    private InventedRivers(long seed) {
        random = new Random(seed);
    }

    /** About 4/3 of 3 to the power of depth reaches, upstream of an outlet at longitude -20, latitude -30. */
    static RiverMap tree(long seed, int depth) {
        InventedRivers rivers = new InventedRivers(seed);
        int outlet = rivers.nodes++;
        rivers.grow(new Coordinate(-20, -30), outlet, Math.PI * 0.75, depth, rivers.rivers++);
        return new RiverMap(rivers.reaches, rivers.nodes, List.of());
    }

    /** From downstream upwards: this reach, then the same river and a tributary above it. */
    private void grow(Coordinate mouth, int node, double heading, int depth, int river) {
        int points = 20 + random.nextInt(24) + 5 * depth;
        Coordinate[] line = new Coordinate[points];
        line[points - 1] = mouth;
        double direction = heading;
        for (int k = points - 2; k >= 0; k--) {
            direction += 0.32 * random.nextGaussian() + 0.15 * (heading - direction);
            line[k] = new Coordinate(
                    line[k + 1].x + STEP * Math.cos(direction), line[k + 1].y + STEP * Math.sin(direction));
        }
        int above = nodes++;
        add(new GeometryFactory().createLineString(line), above, node, river);
        if (depth > 0) {
            double side = (random.nextBoolean() ? 1 : -1) * (0.7 + 0.5 * random.nextDouble());
            grow(line[0], above, heading - side * 0.3, depth - 1, river);
            grow(line[0], above, heading + side, depth - 1 - random.nextInt(2), rivers++);
        }
    }

    private void add(LineString line, int from, int to, int river) {
        double length = 0;
        for (int k = 1; k < line.getNumPoints(); k++) {
            Coordinate a = line.getCoordinateN(k - 1);
            Coordinate b = line.getCoordinateN(k);
            length += Geodesic.WGS84.Inverse(a.y, a.x, b.y, b.x).s12;
        }
        String id = "L" + (1000 + reaches.size());
        Optional<String> name = river < NAMES.size() ? Optional.of(NAMES.get(river)) : Optional.empty();
        reaches.add(new RiverMap.Reach(
                id,
                new ReachPart(id, reaches.size(), 0, 0, length, false),
                from,
                to,
                length,
                line,
                name,
                Map.of(),
                Map.of()));
    }
}
