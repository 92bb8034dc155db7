// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.CorrectionOutcome.Status;
import org.silverwake.geo.assembly.NetworkCorrections.Turn;

/** Directions that corrections force on lines, stronger than any criterion. */
final class Forced {
    /** A position this far from the line still belongs to it [m]. */
    static final double ON_IT = 50;

    private final Net net;
    private final int[] direction;
    private final String[] by;
    private final boolean[] changes;
    private final List<String> problems = new ArrayList<>();

    private Forced(Net net) {
        this.net = net;
        this.direction = new int[net.size()];
        this.by = new String[net.size()];
        this.changes = new boolean[net.size()];
    }

    /** Nothing is forced. */
    static Forced none(Net net) {
        return new Forced(net);
    }

    /**
     * What corrections force, against the directions found without them; the log hears what became of each.
     *
     * @throws GeoDataException where two corrections contradict each other
     */
    static Forced of(Net net, Orientation without, NetworkCorrections corrections, DefectLog log) {
        Forced forced = new Forced(net);
        for (Turn turn : corrections.turns()) {
            forced.turn(turn, without, log);
        }
        if (!log.rulings().isEmpty()) {
            forced.refusals(without, log);
        }
        if (!forced.problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", forced.problems));
        }
        return forced;
    }

    private void turn(Turn turn, Orientation without, DefectLog log) {
        Map<Integer, Integer> stretch = stretch(turn);
        if (stretch.isEmpty()) {
            log.rulings()
                    .note(
                            turn.where(),
                            Status.DOES_NOT_FIT,
                            "feature " + turn.featureId() + " no longer has such a stretch within "
                                    + DefectLog.meters(ON_IT) + " of the positions given");
            return;
        }
        int turned = 0;
        for (Map.Entry<Integer, Integer> line : stretch.entrySet()) {
            force(line.getKey(), line.getValue(), turn.where(), without);
            turned += changes[line.getKey()] ? 1 : 0;
        }
        boolean needed = turned > 0;
        log.rulings()
                .note(
                        turn.where(),
                        needed ? Status.APPLIED : Status.NO_LONGER_NEEDED,
                        needed
                                ? turned + " of " + stretch.size() + (stretch.size() == 1 ? " line" : " lines")
                                        + " turned"
                                : "water runs that way anyway");
    }

    private void force(int line, int way, String where, Orientation without) {
        if (direction[line] != 0 && direction[line] != way) {
            problems.add(where + ": feature " + net.line(line).featureId + " is to run the other way by " + by[line]
                    + "; keep one of them");
        }
        direction[line] = way;
        by[line] = where;
        changes[line] = without.isFlipped(line) != way < 0;
    }

    /** Lines of the stretch with their direction: +1 as drawn, -1 against. */
    private Map<Integer, Integer> stretch(Turn turn) {
        Map<Integer, Integer> best = Map.of();
        double least = Double.POSITIVE_INFINITY;
        for (List<Integer> part : parts(turn.featureId())) {
            FeaturePart drawn = new FeaturePart(net, part);
            Optional<FeaturePart.Way> way = drawn.way(turn);
            if (way.isPresent() && way.get().distance() < least) {
                least = way.get().distance();
                best = new LinkedHashMap<>();
                for (int i : part) {
                    if (way.get().holds(net.line(i))) {
                        best.put(i, way.get().direction());
                    }
                }
            }
        }
        return best;
    }

    private Iterable<List<Integer>> parts(String feature) {
        Map<List<Integer>, List<Integer>> parts = new LinkedHashMap<>();
        for (int i = 0; i < net.size(); i++) {
            Line line = net.line(i);
            if (line.featureId.equals(feature)) {
                parts.computeIfAbsent(List.of(line.feature, line.part), k -> new ArrayList<>())
                        .add(i);
            }
        }
        return parts.values();
    }

    private void refusals(Orientation without, DefectLog log) {
        boolean whole = without.isReversed();
        Optional<String> asDrawn = whole
                ? refused(
                        Defect.Kind.LAYER_REVERSED, net.line(0), List.of(), FinalChecks.reversedText(net, without), log)
                : Optional.empty();
        for (int i = 0; i < net.size(); i++) {
            Line line = net.line(i);
            if (asDrawn.isPresent()) {
                if (direction[i] == 0) {
                    force(i, 1, asDrawn.get(), without);
                }
            } else if (without.isFlipped(i) != whole) {
                String text = "feature " + line.featureId
                        + (whole ? " would run as drawn, unlike nearly all others" : " would be turned");
                int way = without.isFlipped(i) ? 1 : -1;
                Optional<String> by = refused(Defect.Kind.FLIPPED_LINE, line, List.of(line.featureId), text, log);
                if (by.isPresent()) {
                    force(i, way, by.get(), without);
                }
            }
        }
    }

    /** The row that refuses a direction, which is listed then. */
    private static Optional<String> refused(Defect.Kind kind, Line line, List<String> ids, String text, DefectLog log) {
        List<Coordinate> at = List.of(line.middle());
        Optional<String> by = log.rulings().find(false, kind, ids, at).map(NetworkCorrections.Ruling::where);
        by.ifPresent(where -> log.refused(kind, at, ids, text));
        return by;
    }

    /** +1 as drawn, -1 against, 0 where nothing is forced. */
    int direction(int line) {
        return direction[line];
    }

    boolean isForced(int line) {
        return direction[line] != 0;
    }

    boolean isEmpty() {
        return Arrays.stream(direction).allMatch(way -> way == 0);
    }

    /** The correction that forces a line. */
    String by(int line) {
        return by[line];
    }

    /** Corrections that turned one of these lines from the way it would run without them. */
    Set<String> culprits(List<List<Integer>> knots) {
        Set<String> found = new TreeSet<>();
        for (List<Integer> knot : knots) {
            for (int i : knot) {
                if (changes[i]) {
                    found.add(by[i]);
                }
            }
        }
        return Collections.unmodifiableSet(found);
    }
}
