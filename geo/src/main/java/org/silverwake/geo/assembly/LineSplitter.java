// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Coordinate;

/** Splits lines where a node lies on, or within the tolerance of, their inside. */
final class LineSplitter {
    private record Cut(int node, double at, int segment, double fraction, double distance) {}

    private static final double ON_THE_LINE = 0.001;

    private final List<Line> lines;
    private final List<Coordinate> nodes;
    private final double tolerance;
    private final List<List<Cut>> cuts = new ArrayList<>();
    private final List<List<Line>> ending = new ArrayList<>();

    private LineSplitter(List<Line> lines, List<Coordinate> nodes, double tolerance) {
        this.lines = lines;
        this.nodes = nodes;
        this.tolerance = tolerance;
        nodes.forEach(node -> ending.add(new ArrayList<>()));
        for (Line line : lines) {
            ending.get(line.startNode).add(line);
            ending.get(line.endNode).add(line);
        }
    }

    static List<Line> split(List<Line> lines, List<Coordinate> nodes, double tolerance, DefectLog log) {
        LineSplitter splitter = new LineSplitter(lines, nodes, tolerance);
        splitter.find(log);
        return splitter.pieces(log);
    }

    private void find(DefectLog log) {
        List<Coordinate[]> shapes = new ArrayList<>();
        for (Line line : lines) {
            shapes.add(line.points);
            cuts.add(new ArrayList<>());
        }
        Stretches stretches = new Stretches(shapes);
        for (int node = 0; node < nodes.size(); node++) {
            for (Stretches.Hit hit : stretches.within(nodes.get(node), Math.max(tolerance, ON_THE_LINE))) {
                Line line = lines.get(hit.line());
                if (line.startNode == node || line.endNode == node) {
                    continue;
                }
                double at = stretches.chainage(hit);
                double room = hit.distance() <= ON_THE_LINE ? ON_THE_LINE : tolerance;
                Cut cut = new Cut(node, at, hit.segment(), hit.fraction(), hit.distance());
                if (at > room && line.length() - at > room && !isRefused(hit.line(), cut, log)) {
                    cuts.get(hit.line()).add(cut);
                }
            }
        }
    }

    private boolean isRefused(int line, Cut cut, DefectLog log) {
        return !log.rulings().isEmpty()
                && log.refused(
                        Defect.Kind.SPLIT_AT_JUNCTION, List.of(nodes.get(cut.node)), ids(line, cut), text(line, cut));
    }

    private List<String> ids(int line, Cut cut) {
        return List.of(lines.get(line).featureId, ending.get(cut.node).get(0).featureId);
    }

    private String text(int line, Cut cut) {
        List<String> ids = ids(line, cut);
        return "feature " + ids.get(1) + " ends on the inside of feature " + ids.get(0) + ", "
                + DefectLog.meters(cut.distance) + " off, at chainage " + DefectLog.meters(cut.at);
    }

    private List<Line> pieces(DefectLog log) {
        List<Line> pieces = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            List<Cut> here = cuts.get(i);
            if (here.isEmpty()) {
                pieces.add(lines.get(i));
                continue;
            }
            here.sort(Comparator.comparingDouble(Cut::at).thenComparingInt(Cut::node));
            for (Cut cut : here) {
                log.repaired(
                        Defect.Kind.SPLIT_AT_JUNCTION,
                        nodes.get(cut.node),
                        ids(i, cut),
                        text(i, cut),
                        lines.get(i).featureId + " split there");
            }
            cut(lines.get(i), here, pieces);
        }
        return pieces;
    }

    private void cut(Line line, List<Cut> here, List<Line> pieces) {
        List<Coordinate> points = new ArrayList<>(List.of(line.start()));
        int node = line.startNode;
        double from = line.from;
        int next = 1;
        for (Cut cut : here) {
            while (next <= cut.segment) {
                points.add(line.points[next++]);
            }
            if (cut.fraction == 0 && points.size() > 1) {
                points.remove(points.size() - 1);
            }
            points.add(nodes.get(cut.node));
            pieces.add(piece(line, points, node, cut.node, from, line.from + cut.at));
            points = new ArrayList<>(List.of(nodes.get(cut.node)));
            if (cut.fraction == 1 && next == cut.segment + 1 && next < line.points.length - 1) {
                next++;
            }
            node = cut.node;
            from = line.from + cut.at;
        }
        while (next < line.points.length) {
            points.add(line.points[next++]);
        }
        pieces.add(piece(line, points, node, line.endNode, from, line.to));
    }

    private static Line piece(Line line, List<Coordinate> points, int start, int end, double from, double to) {
        List<Coordinate> kept = new ArrayList<>();
        for (Coordinate point : points) {
            if (kept.isEmpty() || !kept.get(kept.size() - 1).equals2D(point)) {
                kept.add(point);
            }
        }
        Line piece = new Line(line.feature, line.part, line.featureId, kept.toArray(new Coordinate[0]), from, to);
        piece.startNode = start;
        piece.endNode = end;
        return piece;
    }
}
