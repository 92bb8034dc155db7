// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;

/** Lists free line ends that lie near a line they do not touch. Nothing is changed. */
final class Gaps {
    private static final double TIMES_TOLERANCE = 20;
    private static final double AT_LEAST = 60;

    private final Net net;
    private final DefectLog log;
    private final Set<Set<Integer>> listed = new HashSet<>();

    private Gaps(Net net, DefectLog log) {
        this.net = net;
        this.log = log;
    }

    static void list(Net net, double tolerance, DefectLog log) {
        Gaps gaps = new Gaps(net, log);
        double limit = Math.max(AT_LEAST, TIMES_TOLERANCE * tolerance);
        Stretches stretches =
                new Stretches(net.lines().stream().map(line -> line.points).toList());
        for (int k = 0; k < net.nodeCount(); k++) {
            if (net.degree(k) == 1) {
                gaps.end(k, stretches, limit);
            }
        }
    }

    private void end(int node, Stretches stretches, double limit) {
        Coordinate at = net.node(node);
        Set<Integer> joined = neighbors(node);
        Optional<Stretches.Hit> near = stretches.within(at, limit).stream()
                .filter(hit -> !joined.contains(hit.line()))
                .min(Comparator.comparingDouble(Stretches.Hit::distance).thenComparingInt(Stretches.Hit::line));
        if (near.isEmpty()) {
            return;
        }
        int own = net.at(node).get(0);
        int other = near.get().line();
        if (!listed.add(Set.of(own, other))) {
            return;
        }
        List<String> ids = List.of(net.line(own).featureId, net.line(other).featureId);
        if (log.rulings().isRefused(at, ids)) {
            return;
        }
        log.open(
                Defect.Kind.GAP,
                at,
                ids,
                "feature " + ids.get(0) + " ends " + DefectLog.meters(near.get().distance()) + " from feature "
                        + ids.get(1) + " without touching it",
                "left open; if water flows there, raise the snap tolerance or join them in the layer");
    }

    /** The line at a free end, and those two junctions away: a short tributary is near its own river. */
    private Set<Integer> neighbors(int node) {
        Set<Integer> lines = new HashSet<>(net.at(node));
        for (int hop = 0; hop < 2; hop++) {
            List<Integer> now = new ArrayList<>(lines);
            for (int i : now) {
                lines.addAll(net.at(net.line(i).startNode));
                lines.addAll(net.at(net.line(i).endNode));
            }
        }
        return lines;
    }
}
