// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;
import org.silverwake.geo.crs.Ground;

/**
 * Joins line ends into nodes: ends at the very same place first, then the nearest pairs within the tolerance, one after
 * another. A join is refused where it would bring together the two ends of one line, or make a node wider than twice
 * the tolerance.
 */
final class EndSnapper {
    /** Two different end places that were joined, [m] apart. */
    record Join(Coordinate first, Coordinate second, double distance) {}

    private record Pair(int first, int second, double distance) {}

    private static final double WIDEST = 2;

    private final List<Line> lines;
    private final double tolerance;
    private final Set<Set<Coordinate>> refused;
    private final DefectLog log;
    private final List<Coordinate> places = new ArrayList<>();
    private final List<List<Integer>> linesAt = new ArrayList<>();
    private final List<List<Integer>> members = new ArrayList<>();
    private final List<Join> joins = new ArrayList<>();
    private int[] start;
    private int[] end;
    private int[] group;

    private EndSnapper(List<Line> lines, double tolerance, Set<Set<Coordinate>> refused, DefectLog log) {
        this.lines = lines;
        this.tolerance = tolerance;
        this.refused = new HashSet<>(refused);
        this.log = log;
    }

    /**
     * Numbers the nodes, moves the ends onto them and returns their places; {@code joined} receives the joins made, the
     * log those that the user refused.
     */
    static List<Coordinate> snap(
            List<Line> lines, double tolerance, Set<Set<Coordinate>> refused, List<Join> joined, DefectLog log) {
        EndSnapper snapper = new EndSnapper(lines, tolerance, refused, log);
        snapper.exact();
        if (tolerance > 0) {
            snapper.near();
        }
        joined.addAll(snapper.joins);
        return snapper.nodes();
    }

    private void exact() {
        Map<Coordinate, Integer> index = new HashMap<>();
        start = new int[lines.size()];
        end = new int[lines.size()];
        for (int i = 0; i < lines.size(); i++) {
            start[i] = place(index, lines.get(i).start(), i);
            end[i] = place(index, lines.get(i).end(), i);
        }
        group = new int[places.size()];
        for (int k = 0; k < group.length; k++) {
            group[k] = k;
            members.add(new ArrayList<>(List.of(k)));
        }
    }

    private int place(Map<Coordinate, Integer> index, Coordinate at, int line) {
        Integer known = index.putIfAbsent(at, places.size());
        if (known == null) {
            known = places.size();
            places.add(at);
            linesAt.add(new ArrayList<>());
        }
        linesAt.get(known).add(line);
        return known;
    }

    private void near() {
        STRtree tree = new STRtree();
        for (int k = 0; k < places.size(); k++) {
            tree.insert(new Envelope(places.get(k)), k);
        }
        List<Pair> pairs = new ArrayList<>();
        for (int k = 0; k < places.size(); k++) {
            for (Object item : tree.query(around(places.get(k), tolerance))) {
                int other = (Integer) item;
                if (other > k) {
                    double distance = Ground.distance(places.get(k), places.get(other));
                    if (distance <= tolerance) {
                        pairs.add(new Pair(k, other, distance));
                    }
                }
            }
        }
        refuse(pairs);
        pairs.sort(Comparator.comparingDouble(Pair::distance)
                .thenComparingInt(Pair::first)
                .thenComparingInt(Pair::second));
        for (Pair pair : pairs) {
            if (group[pair.first] != group[pair.second] && mayJoin(group[pair.first], group[pair.second])) {
                join(pair);
            }
        }
    }

    /** Pairs whose join the user refused are kept apart, whatever else is joined to them. */
    private void refuse(List<Pair> pairs) {
        if (log.rulings().isEmpty()) {
            return;
        }
        for (Pair pair : pairs) {
            Coordinate one = places.get(pair.first);
            Coordinate two = places.get(pair.second);
            Set<String> ids = new LinkedHashSet<>();
            linesAt.get(pair.first).forEach(i -> ids.add(lines.get(i).featureId));
            linesAt.get(pair.second).forEach(i -> ids.add(lines.get(i).featureId));
            if (log.refused(Defect.Kind.GAP, List.of(one, two), List.copyOf(ids), text(pair.distance, ids))) {
                refused.add(Set.of(one, two));
            }
        }
    }

    /** "a gap of 0.35 m between features A, B". */
    static String text(double distance, Collection<String> ids) {
        return "a gap of " + DefectLog.meters(distance) + " between features " + DefectLog.names(List.copyOf(ids));
    }

    /** A box in degrees that holds everything within a distance [m] of a point. */
    static Envelope around(Coordinate at, double meters) {
        double margin = meters * 1.001;
        double dy = margin / Ground.metersPerDegreeNorth(at.y);
        double dx = margin / Math.max(1, Ground.metersPerDegreeEast(at.y));
        return new Envelope(at.x - dx, at.x + dx, at.y - dy, at.y + dy);
    }

    private boolean mayJoin(int one, int two) {
        for (int a : members.get(one)) {
            for (int line : linesAt.get(a)) {
                if (start[line] != end[line] && (group[start[line]] == two || group[end[line]] == two)) {
                    return false;
                }
            }
            for (int b : members.get(two)) {
                if (Ground.distance(places.get(a), places.get(b)) > WIDEST * tolerance
                        || refused.contains(Set.of(places.get(a), places.get(b)))) {
                    return false;
                }
            }
        }
        return true;
    }

    private void join(Pair pair) {
        int keep = group[pair.first];
        int drop = group[pair.second];
        for (int k : members.get(drop)) {
            group[k] = keep;
        }
        members.get(keep).addAll(members.get(drop));
        members.set(drop, List.of());
        joins.add(new Join(places.get(pair.first), places.get(pair.second), pair.distance));
    }

    private List<Coordinate> nodes() {
        int[] node = new int[places.size()];
        List<Coordinate> at = new ArrayList<>();
        for (List<Integer> group : members) {
            if (group.isEmpty()) {
                continue;
            }
            int best = group.get(0);
            for (int k : group) {
                node[k] = at.size();
                if (linesAt.get(k).size() > linesAt.get(best).size()) {
                    best = k;
                }
            }
            at.add(places.get(best));
        }
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            line.startNode = node[start[i]];
            line.endNode = node[end[i]];
            line.points[0] = at.get(line.startNode);
            line.points[line.points.length - 1] = at.get(line.endNode);
        }
        return at;
    }

    /** Features with a line end at one of two places. */
    static List<String> features(Map<Coordinate, List<Line>> byEnd, Join join) {
        Set<String> ids = new LinkedHashSet<>();
        for (Coordinate at : List.of(join.first, join.second)) {
            for (Line line : byEnd.getOrDefault(at, List.of())) {
                ids.add(line.featureId);
            }
        }
        return List.copyOf(ids);
    }

    /** Lines by the places of their ends. */
    static Map<Coordinate, List<Line>> byEnd(List<Line> lines) {
        Map<Coordinate, List<Line>> map = new HashMap<>();
        for (Line line : lines) {
            for (Coordinate at : new HashSet<>(List.of(line.start(), line.end()))) {
                map.computeIfAbsent(at, k -> new ArrayList<>()).add(line);
            }
        }
        return map;
    }
}
