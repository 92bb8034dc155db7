// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.CorrectionOutcome.Status;
import org.silverwake.geo.assembly.NetworkCorrections.Ruling;
import org.silverwake.geo.crs.Ground;

/**
 * Joins free ends over gaps wider than the snap tolerance that the user accepted: the line is drawn on to the nearest
 * place of the other feature. Chainages of the line count the piece added.
 */
final class Bridges {
    /** Widest gap that a correction joins [m]. */
    private static final double WIDEST = 1000;

    private record End(int line, boolean start) {}

    private final List<Line> lines;
    private final double tolerance;
    private final DefectLog log;

    private Bridges(List<Line> lines, double tolerance, DefectLog log) {
        this.lines = new ArrayList<>(lines);
        this.tolerance = tolerance;
        this.log = log;
    }

    static List<Line> build(List<Line> lines, List<Ruling> rulings, double tolerance, DefectLog log) {
        Bridges bridges = new Bridges(lines, tolerance, log);
        for (Ruling ruling : rulings) {
            if (ruling.accept()
                    && ruling.kind() == Defect.Kind.GAP
                    && ruling.at().isPresent()) {
                bridges.end(ruling).ifPresent(end -> bridges.join(end, ruling));
            }
        }
        return bridges.lines;
    }

    /** The line end nearest to where the gap was found. */
    private Optional<End> end(Ruling ruling) {
        NetworkCorrections.At at = ruling.at().get();
        End best = null;
        double least = Rulings.NEAR;
        for (int i = 0; i < lines.size(); i++) {
            Line line = lines.get(i);
            if (ruling.featureIds().contains(line.featureId)) {
                for (boolean start : new boolean[] {true, false}) {
                    double distance = Rulings.distance(at, start ? line.start() : line.end());
                    if (distance < least) {
                        least = distance;
                        best = new End(i, start);
                    }
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private void join(End end, Ruling ruling) {
        Line line = lines.get(end.line);
        Coordinate from = end.start ? line.start() : line.end();
        Optional<Stretches.Hit> near = new Stretches(
                        lines.stream().map(each -> each.points).toList())
                .nearest(from, other -> isOther(other, end.line, ruling));
        if (near.isEmpty() || near.get().distance() <= tolerance) {
            return; // joined without being asked
        }
        Line other = lines.get(near.get().line());
        String found = EndSnapper.text(near.get().distance(), List.of(line.featureId, other.featureId));
        if (near.get().distance() > WIDEST) {
            log.rulings()
                    .note(
                            ruling.where(),
                            Status.DOES_NOT_FIT,
                            found + "; at most " + DefectLog.meters(WIDEST)
                                    + " is joined; draw the missing piece in the layer");
            return;
        }
        lines.set(end.line, drawnOn(line, end.start, place(other, near.get())));
        log.rulings().note(ruling.where(), Status.APPLIED, found + ": joined");
        log.corrected(
                Defect.Kind.GAP,
                from,
                List.of(line.featureId, other.featureId),
                found,
                "joined: accepted in " + ruling.where());
    }

    private boolean isOther(int other, int own, Ruling ruling) {
        String id = lines.get(other).featureId;
        boolean sameFeature = id.equals(lines.get(own).featureId);
        return other != own
                && ruling.featureIds().contains(id)
                && (!sameFeature || ruling.featureIds().stream().distinct().count() == 1);
    }

    /** The other line's own end where it is as near as the tolerance, so that no splinter is split off. */
    private Coordinate place(Line other, Stretches.Hit hit) {
        double slack = Math.max(tolerance, 1);
        if (Ground.distance(other.start(), hit.place()) <= slack) {
            return other.start();
        }
        return Ground.distance(other.end(), hit.place()) <= slack ? other.end() : hit.place();
    }

    private static Line drawnOn(Line line, boolean start, Coordinate to) {
        Coordinate[] points = new Coordinate[line.points.length + 1];
        System.arraycopy(line.points, 0, points, start ? 1 : 0, line.points.length);
        points[start ? 0 : line.points.length] = new Coordinate(to.x, to.y);
        return new Line(line.feature, line.part, line.featureId, points, 0);
    }
}
