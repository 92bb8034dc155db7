// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;

/** Lines between nodes, not yet directed: start and end are as drawn. */
final class Net {
    private final List<Line> lines;
    private final List<Coordinate> nodes;
    private final List<EndSnapper.Join> joins;
    private final List<List<Integer>> at = new ArrayList<>();
    private final Map<List<Integer>, Double> partLengths = new HashMap<>();

    private Net(List<Line> lines, List<Coordinate> nodes, List<EndSnapper.Join> joins) {
        this.lines = lines;
        this.nodes = nodes;
        this.joins = joins;
        nodes.forEach(node -> at.add(new ArrayList<>()));
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            at.get(line.startNode).add(i);
            if (line.endNode != line.startNode) {
                at.get(line.endNode).add(i);
            }
            partLengths.merge(List.of(line.feature, line.part), line.to, Math::max);
        }
    }

    static Net of(List<Line> raw, double tolerance, Set<Set<Coordinate>> refused, DefectLog log) {
        List<Line> lines = new ArrayList<>();
        for (Line line : raw) {
            Coordinate[] points = Arrays.copyOf(line.points, line.points.length);
            lines.add(new Line(line.feature, line.part, line.featureId, points, line.from, line.to));
        }
        Map<Coordinate, List<Line>> byEnd = EndSnapper.byEnd(lines);
        List<EndSnapper.Join> joins = new ArrayList<>();
        List<Coordinate> nodes = EndSnapper.snap(lines, tolerance, refused, joins, log);
        for (EndSnapper.Join join : joins) {
            List<String> ids = EndSnapper.features(byEnd, join);
            log.repaired(Defect.Kind.GAP, join.first(), ids, EndSnapper.text(join.distance(), ids), "joined");
        }
        lines = LineSplitter.split(lines, nodes, tolerance, log);
        return compact(withoutRings(lines, log), nodes, joins);
    }

    /** A closed line that others touch at one place at most carries no water anywhere. */
    private static List<Line> withoutRings(List<Line> lines, DefectLog log) {
        Map<List<Integer>, List<Line>> byPart = new LinkedHashMap<>();
        Map<Integer, Set<List<Integer>>> touching = new HashMap<>();
        for (Line line : lines) {
            List<Integer> part = List.of(line.feature, line.part);
            byPart.computeIfAbsent(part, key -> new ArrayList<>()).add(line);
            touching.computeIfAbsent(line.startNode, key -> new HashSet<>()).add(part);
            touching.computeIfAbsent(line.endNode, key -> new HashSet<>()).add(part);
        }
        Set<Line> rings = new HashSet<>();
        byPart.forEach((part, pieces) -> {
            long touched = pieces.stream()
                    .filter(piece -> touching.get(piece.startNode).size() > 1)
                    .map(piece -> piece.startNode)
                    .distinct()
                    .count();
            if (pieces.get(0).startNode == pieces.get(pieces.size() - 1).endNode && touched <= 1) {
                rings.addAll(pieces);
                ring(pieces, log);
            }
        });
        return lines.stream().filter(line -> !rings.contains(line)).toList();
    }

    private static void ring(List<Line> pieces, DefectLog log) {
        Line first = pieces.get(0);
        log.repaired(
                Defect.Kind.CYCLE,
                first.start(),
                List.of(first.featureId),
                "feature " + first.featureId + " ends where it begins, "
                        + DefectLog.meters(pieces.get(pieces.size() - 1).to) + " round",
                "left out: water cannot flow round");
    }

    private static Net compact(List<Line> lines, List<Coordinate> nodes, List<EndSnapper.Join> joins) {
        int[] number = new int[nodes.size()];
        Arrays.fill(number, -1);
        List<Coordinate> used = new ArrayList<>();
        for (Line line : lines) {
            line.startNode = number(number, nodes, used, line.startNode);
            line.endNode = number(number, nodes, used, line.endNode);
        }
        return new Net(lines, used, joins);
    }

    private static int number(int[] number, List<Coordinate> nodes, List<Coordinate> used, int node) {
        if (number[node] < 0) {
            number[node] = used.size();
            used.add(nodes.get(node));
        }
        return number[node];
    }

    int size() {
        return lines.size();
    }

    int nodeCount() {
        return nodes.size();
    }

    Line line(int i) {
        return lines.get(i);
    }

    List<Line> lines() {
        return lines;
    }

    Coordinate node(int k) {
        return nodes.get(k);
    }

    /** Lines that touch a node. */
    List<Integer> at(int node) {
        return at.get(node);
    }

    int degree(int node) {
        return at.get(node).size();
    }

    double partLength(Line line) {
        return partLengths.get(List.of(line.feature, line.part));
    }

    List<String> featureIds(List<Integer> numbers) {
        return numbers.stream().map(i -> lines.get(i).featureId).distinct().toList();
    }

    /** Component of each node, numbered from 0 by first line. */
    int[] components() {
        int[] component = new int[nodes.size()];
        Arrays.fill(component, -1);
        int next = 0;
        List<Integer> open = new ArrayList<>();
        for (int k = 0; k < nodes.size(); k++) {
            if (component[k] >= 0) {
                continue;
            }
            component[k] = next;
            open.add(k);
            while (!open.isEmpty()) {
                int node = open.remove(open.size() - 1);
                for (int i : at.get(node)) {
                    int other = lines.get(i).other(node);
                    if (component[other] < 0) {
                        component[other] = next;
                        open.add(other);
                    }
                }
            }
            next++;
        }
        return component;
    }

    /** Joins over a gap at the nodes of these knots of lines. */
    Set<Set<Coordinate>> joinsIn(List<List<Integer>> knots) {
        Set<Integer> inKnot = new HashSet<>();
        for (List<Integer> knot : knots) {
            for (int i : knot) {
                inKnot.add(lines.get(i).startNode);
                inKnot.add(lines.get(i).endNode);
            }
        }
        Set<Set<Coordinate>> guilty = new HashSet<>();
        Set<Coordinate> places = new HashSet<>();
        inKnot.forEach(k -> places.add(nodes.get(k)));
        for (EndSnapper.Join join : joins) {
            if (places.contains(join.first()) || places.contains(join.second())) {
                guilty.add(Set.of(join.first(), join.second()));
            }
        }
        return guilty;
    }
}
