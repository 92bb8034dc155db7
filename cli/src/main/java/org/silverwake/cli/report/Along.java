// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntPredicate;
import org.silverwake.cli.chart.Profile;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.water.Cells;

/** A way down the network: what is read at its cells' heads and ends, where nothing can be, and what lies along it. */
final class Along {
    private static final double KILOMETER = 1000;

    private final Outcome outcome;
    private final boolean withSites;
    private final List<Integer> path;
    private final Map<Integer, Double> starts = new LinkedHashMap<>();

    /** Reaches in downstream order. */
    Along(Outcome outcome, boolean withSites, List<Integer> path) {
        this.outcome = outcome;
        this.withSites = withSites;
        this.path = List.copyOf(path);
        double at = 0;
        for (int r : path) {
            starts.put(r, at);
            at += outcome.basin().table().length(r);
        }
    }

    /** Reads something at a place of a cell, so many kilometers down the way; empty where there is nothing. */
    interface Reading<T> {
        Optional<T> at(int cell, Place place, double kilometers);
    }

    /** Distance from the beginning to the head of each reach [m]. */
    Map<Integer, Double> starts() {
        return starts;
    }

    /** What is read, in pieces between reaches that have nothing. */
    <T> List<List<T>> stretches(IntPredicate has, Reading<T> reading) {
        List<List<T>> stretches = new ArrayList<>();
        List<T> points = new ArrayList<>();
        Cells cells = outcome.result().cells();
        for (int r : path) {
            if (!has.test(r) && !points.isEmpty()) {
                stretches.add(points);
                points = new ArrayList<>();
            }
            for (int c = cells.start(r); has.test(r) && c < cells.start(r + 1); c++) {
                double at = starts.get(r);
                reading.at(c, Place.HEAD, (at + cells.from(c)) / KILOMETER).ifPresent(points::add);
                reading.at(c, Place.END, (at + cells.to(c)) / KILOMETER).ifPresent(points::add);
            }
        }
        if (!points.isEmpty()) {
            stretches.add(points);
        }
        return stretches;
    }

    /** Reaches that have nothing. */
    List<Profile.Gap> gaps(IntPredicate has, String words) {
        List<Profile.Gap> gaps = new ArrayList<>();
        for (int r : path) {
            if (!has.test(r)) {
                double at = starts.get(r);
                gaps.add(new Profile.Gap(
                        at / KILOMETER, (at + outcome.basin().table().length(r)) / KILOMETER, words));
            }
        }
        return gaps;
    }

    /** Whether the river divides on the way, so that one of its arms is followed. */
    boolean isByOneArm() {
        RiverNetwork network = outcome.basin().network();
        return path.stream().anyMatch(r -> network.outCount(network.toNode(r)) > 1);
    }

    /** Sites, places and tributaries. */
    List<Profile.Mark> marks() {
        Set<Integer> onPath = new HashSet<>(path);
        List<Profile.Mark> marks = new ArrayList<>();
        for (int r : path) {
            marks.addAll(marksAt(r, starts.get(r), onPath));
        }
        return marks;
    }

    private List<Profile.Mark> marksAt(int reach, double at, Set<Integer> onPath) {
        List<Profile.Mark> marks = new ArrayList<>();
        for (PlacedPoint point : outcome.basin().points()) {
            if (outcome.basin().reachAt(point) == reach) {
                boolean site = point.request().kind().equals("site");
                if (site && !withSites) {
                    continue;
                }
                marks.add(new Profile.Mark(
                        at / KILOMETER,
                        point.request().name(),
                        site ? Profile.Mark.Kind.SITE : Profile.Mark.Kind.PLACE));
            }
        }
        RiverNetwork network = outcome.basin().network();
        int node = network.fromNode(reach);
        for (int k = 0; k < network.inCount(node); k++) {
            int up = network.in(node, k);
            Optional<String> river = outcome.basin().reach(up).name();
            boolean tributary = !onPath.contains(up)
                    && river.isPresent()
                    && !river.equals(outcome.basin().reach(reach).name());
            if (tributary && at > 0) {
                marks.add(new Profile.Mark(at / KILOMETER, river.get(), Profile.Mark.Kind.TRIBUTARY));
            }
        }
        return marks;
    }
}
