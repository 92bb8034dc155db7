// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import org.silverwake.geo.crs.Ground;

/**
 * Finds the lines near a point. Lines are numbered from 0, points are WGS 84 degrees, distances geodesic [m]. A point's
 * longitude may be a whole turn away from how the lines count theirs, as near the antimeridian.
 */
public final class Stretches {
    private static final int CHUNK = 12;
    /** Up to here a plane tangent at the point serves [m]; its relative error is about 1e-4 at 60 degrees. */
    private static final double FLAT = 2000;

    private final List<Coordinate[]> lines = new ArrayList<>();
    private final STRtree tree = new STRtree();
    private final Envelope all = new Envelope();

    /**
     * The place on a line nearest to a point.
     *
     * @param line number of the line
     * @param segment number of the segment, from 0
     * @param fraction along the segment [-], 0 to 1
     * @param place WGS 84 degrees
     * @param distance from the point [m]
     */
    public record Hit(int line, int segment, double fraction, Coordinate place, double distance) {}

    private record Chunk(int line, int first, int last) {}

    /** An index of these lines. */
    public Stretches(List<Coordinate[]> lines) {
        this.lines.addAll(lines);
        for (int i = 0; i < lines.size(); i++) {
            Coordinate[] points = lines.get(i);
            for (int first = 0; first < points.length - 1; first += CHUNK) {
                int last = Math.min(points.length - 1, first + CHUNK);
                Envelope box = new Envelope();
                for (int k = first; k <= last; k++) {
                    box.expandToInclude(points[k]);
                }
                all.expandToInclude(box);
                tree.insert(box, new Chunk(i, first, last));
            }
        }
    }

    /** The nearest place on each line within a distance [m], by line number. */
    public Collection<Hit> within(Coordinate point, double meters) {
        Coordinate at = Antimeridian.toward(all, point);
        Map<Integer, Hit> best = new HashMap<>();
        double kx = Ground.metersPerDegreeEast(at.y);
        double ky = Ground.metersPerDegreeNorth(at.y);
        boolean flat = meters <= FLAT;
        for (Object item : tree.query(EndSnapper.around(at, meters))) {
            Chunk chunk = (Chunk) item;
            Coordinate[] points = lines.get(chunk.line);
            for (int k = chunk.first; k < chunk.last; k++) {
                double fraction = Ground.nearestFraction(at, points[k], points[k + 1], kx, ky);
                Coordinate place = Ground.between(points[k], points[k + 1], fraction);
                double distance =
                        flat ? Math.hypot((place.x - at.x) * kx, (place.y - at.y) * ky) : Ground.distance(at, place);
                Hit known = best.get(chunk.line);
                if (distance <= meters && (known == null || distance < known.distance)) {
                    best.put(chunk.line, new Hit(chunk.line, k, fraction, place, distance));
                }
            }
        }
        return best.values();
    }

    /** The nearest place of all lines, however far; empty where there is no line. */
    public Optional<Hit> nearest(Coordinate at) {
        return nearest(at, line -> true);
    }

    /** The nearest place of the chosen lines, however far; empty where none is chosen. */
    public Optional<Hit> nearest(Coordinate at, IntPredicate chosen) {
        if (IntStream.range(0, lines.size()).noneMatch(chosen)) {
            return Optional.empty();
        }
        for (double meters = 1000; meters < 4e7; meters *= 4) {
            Optional<Hit> hit = within(at, meters).stream()
                    .filter(near -> chosen.test(near.line))
                    .min(Comparator.comparingDouble(Hit::distance).thenComparingInt(Hit::line));
            if (hit.isPresent()) {
                return hit;
            }
        }
        return Optional.empty();
    }

    /** Length of a line from its first point to a place on it [m]. */
    public double chainage(Hit hit) {
        Coordinate[] points = lines.get(hit.line);
        double sum = 0;
        for (int k = 0; k < hit.segment; k++) {
            sum += Ground.distance(points[k], points[k + 1]);
        }
        return sum + hit.fraction * Ground.distance(points[hit.segment], points[hit.segment + 1]);
    }
}
