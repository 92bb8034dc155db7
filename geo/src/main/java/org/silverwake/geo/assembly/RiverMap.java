// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;

/**
 * The assembled river network with its geometry. Reaches run downstream, indices 0..n-1 in no particular order; the
 * ordered, coordinate-free twin is {@code model.network.RiverNetwork}. Lines are WGS 84, longitude first, degrees; where
 * the layer lies across the antimeridian, longitudes run on beyond 180, so that lines hang together. Lengths are geodesic. Immutable.
 */
public final class RiverMap {
    /** One reach. Numbers are mapped attributes in SI by key, absent where missing; texts likewise. */
    public record Reach(
            String id,
            ReachPart part,
            int fromNode,
            int toNode,
            double lengthMeters,
            LineString line,
            Optional<String> name,
            Map<String, Double> numbers,
            Map<String, String> texts) {
        /** Copies the maps. */
        public Reach {
            numbers = Map.copyOf(numbers);
            texts = Map.copyOf(texts);
        }

        /** A mapped attribute in SI, if the feature has it. */
        public OptionalDouble number(String key) {
            Double value = numbers.get(key);
            return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
        }

        /** Number of points of the line, at least 2. */
        public int pointCount() {
            return line.getNumPoints();
        }

        /** Longitude of a point of the line, from 0 at the upstream end [degrees]; beyond 180 across the antimeridian. */
        public double longitude(int point) {
            return line.getCoordinateN(point).x;
        }

        /** Latitude of a point of the line, from 0 at the upstream end [degrees]. */
        public double latitude(int point) {
            return line.getCoordinateN(point).y;
        }
    }

    private final List<Reach> reaches;
    private final int nodeCount;
    private final List<Defect> defects;

    /** A network of these reaches; node numbers run from 0 to {@code nodeCount} - 1. */
    public RiverMap(List<Reach> reaches, int nodeCount, List<Defect> defects) {
        this.reaches = List.copyOf(reaches);
        this.nodeCount = nodeCount;
        this.defects = List.copyOf(defects);
        Map<String, Integer> seen = new HashMap<>();
        for (Reach reach : this.reaches) {
            if (seen.put(reach.id(), 1) != null) {
                throw new IllegalArgumentException("reach id " + reach.id() + " is used twice");
            }
        }
    }

    /** Number of reaches. */
    public int reachCount() {
        return reaches.size();
    }

    /** Number of nodes. */
    public int nodeCount() {
        return nodeCount;
    }

    /** The reach at an index. */
    public Reach reach(int index) {
        return reaches.get(index);
    }

    /** All reaches. */
    public List<Reach> reaches() {
        return reaches;
    }

    /** Defects found and repairs made, in the order of their kinds. */
    public List<Defect> defects() {
        return defects;
    }

    /** The same network with further defects, for what shows only once water runs. */
    public RiverMap withDefects(List<Defect> further) {
        List<Defect> all = new ArrayList<>(defects);
        all.addAll(further);
        return new RiverMap(reaches, nodeCount, all);
    }

    /** A defect in the middle of a reach, not repaired. */
    public Defect defectAt(int index, Defect.Kind kind, String text, String remedy) {
        Reach reach = reaches.get(index);
        LineString line = reach.line();
        Coordinate middle = line.getCoordinateN(line.getNumPoints() / 2);
        return new Defect(kind, middle.x, middle.y, List.of(reach.part().featureId()), text, remedy, false);
    }

    /** Reach ids in index order. */
    public List<String> ids() {
        List<String> ids = new ArrayList<>(reaches.size());
        for (Reach reach : reaches) {
            ids.add(reach.id());
        }
        return ids;
    }
}
