// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import org.silverwake.cli.scenario.Corrections;
import org.silverwake.cli.scenario.Corrections.Action;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Names;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.assembly.OpenGap;
import org.silverwake.geo.crs.Ground;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.screening.NotAssessed;
import org.silverwake.model.transport.SteadyResult;

/**
 * Where mercury leaves the network though water may go on: at open gaps, where lines run head-on, at ends that nobody
 * named an outlet. Reaches that it would reach beyond cannot be said to be below a value. Immutable.
 */
public final class Breaks {
    private static final double NEAR = 50;
    private static final double FARTHEST = 1000;
    private static final int NAMED = 5;

    private final Basin basin;
    private final RiverNetwork network;
    private final SteadyResult result;
    private final List<WaterEnd> ends;
    private final Set<Integer> declared;
    private final int[] component;
    private final List<OpenGap> open;
    private final List<OpenGap> lossy = new ArrayList<>();
    private final NotAssessed[] doubts;

    private Breaks(ScenarioInput scenario, Basin basin, SteadyResult result) {
        this.basin = basin;
        this.network = basin.network();
        this.result = result;
        this.ends = WaterEnd.of(network, result);
        this.declared = declared(scenario);
        this.component = network.components();
        this.open = OpenGap.of(basin.map());
        this.doubts = new NotAssessed[network.size()];
        wrongWay();
        gaps();
    }

    /** Of a run. */
    public static Breaks of(ScenarioInput scenario, Basin basin, SteadyResult result) {
        return new Breaks(scenario, basin, result);
    }

    /** Why a reach cannot be said to be below a value; empty where it can. */
    public Optional<NotAssessed> doubt(int reach) {
        return Optional.ofNullable(doubts[reach]);
    }

    /** One line for every map and the end of a run, where any reach is in doubt; else none. */
    public List<String> cautions() {
        return Arrays.stream(doubts).anyMatch(Objects::nonNull)
                ? List.of("The river has an open break above some reaches: mercury may come over it that is not"
                        + " reckoned, so none of them is called below.")
                : List.of();
    }

    /** What leaves at each end, where mercury leaves at several; else none. */
    public List<String> lines() {
        List<WaterEnd> laden = laden();
        if (laden.size() < 2) {
            return List.of();
        }
        return List.of("released mercury leaves the network at " + laden.size() + " ends: "
                + Names.first(
                        laden.stream()
                                .sorted(Comparator.comparingDouble(WaterEnd::high)
                                        .reversed())
                                .map(end -> end.load() + " at " + end.place(basin))
                                .toList(),
                        NAMED));
    }

    private List<WaterEnd> laden() {
        return ends.stream().filter(end -> end.high() > 0).toList();
    }

    /** A line for each end where mercury leaves unasked, and for each open gap that it may come over. */
    List<String> warnings() {
        List<String> warnings = new ArrayList<>();
        for (WaterEnd end : laden()) {
            why(end).ifPresent(why ->
                    warnings.add("mercury of " + Names.first(end.sites(network, result), NAMED) + " (" + end.load()
                            + ") leaves the network at " + end.place(basin) + ": " + why
                            + "; join or turn the line on the check page or in the layer, or declare an outlet there"));
        }
        for (OpenGap gap : lossy) {
            warnings.add("open gap in the river layer: " + gap.defect().text() + ": mercury may come over it to "
                    + basin.reach(network.reachOfInput(gap.lower())).id()
                    + " and all below, which is not assessed where it would be below; close the gap, or say on the"
                    + " check page that it stays open");
        }
        return warnings;
    }

    private Optional<String> why(WaterEnd end) {
        if (declared.contains(end.node())) {
            return Optional.empty();
        }
        Optional<OpenGap> gap = open.stream()
                .filter(g -> end.reaches().contains(network.reachOfInput(g.upper())))
                .findFirst();
        if (gap.isPresent()) {
            return Optional.of(gap.get().defect().text());
        }
        String row = turned(end)
                .map(t -> "; " + t.row().where() + " turns "
                        + String.join("|", t.row().features()))
                .orElse("");
        if (isHeadOn(end)) {
            return Optional.of(
                    end.features(basin).size() > 1
                            ? String.join(" and ", end.features(basin)) + " meet head-on there" + row
                            : "water meets head-on there" + row);
        }
        if (!row.isEmpty() || !declared.isEmpty()) {
            return Optional.of("nobody named an outlet there" + row);
        }
        return isInLargestPart(end)
                ? Optional.empty()
                : Optional.of("this part of the layer does not hang together with the largest part");
    }

    private boolean isInLargestPart(WaterEnd end) {
        double[] length = new double[network.size()];
        double most = 0;
        for (int r = 0; r < network.size(); r++) {
            length[component[r]] += basin.table().length(r);
            most = Math.max(most, length[component[r]]);
        }
        return length[component[end.reaches().get(0)]] >= most;
    }

    /** Several reaches run to it, and the rest of the water of its part ends elsewhere. */
    private boolean isHeadOn(WaterEnd end) {
        int own = component[end.reaches().get(0)];
        return end.reaches().size() > 1
                && ends.stream()
                        .anyMatch(other -> other.node() != end.node()
                                && component[other.reaches().get(0)] == own);
    }

    private Optional<AppliedCorrection> turned(WaterEnd end) {
        List<String> features = end.features(basin);
        return basin.corrections().stream()
                .filter(c -> c.row().action() == Action.TURN && c.isApplied())
                .filter(c -> features.containsAll(c.row().features()))
                .findFirst();
    }

    /** Water that runs head-on, or along a turned line to no outlet, would go on below the fork it comes from. */
    private void wrongWay() {
        for (WaterEnd end : laden()) {
            if (declared.contains(end.node()) || !isHeadOn(end) && turned(end).isEmpty()) {
                continue;
            }
            for (int reach : end.reaches()) {
                int top = reach;
                while (network.outCount(network.fromNode(top)) == 1 && network.inCount(network.fromNode(top)) == 1) {
                    top = network.in(network.fromNode(top), 0);
                }
                int fork = network.fromNode(top);
                if (network.outCount(fork) > 1) {
                    for (int k = 0; k < network.outCount(fork); k++) {
                        doubt(network.out(fork, k), NotAssessed.LOST_UPSTREAM);
                    }
                }
            }
        }
    }

    private void gaps() {
        List<OpenGap> left = new ArrayList<>(open);
        boolean more = true;
        while (more) {
            more = false;
            for (OpenGap gap : List.copyOf(left)) {
                int upper = network.reachOfInput(gap.upper());
                int lower = network.reachOfInput(gap.lower());
                boolean carries = result.isBelowSite(upper) || doubts[upper] != null;
                if (carries && !declared.contains(network.toNode(upper))) {
                    left.remove(gap);
                    lossy.add(gap);
                    doubt(lower, NotAssessed.GAP_UPSTREAM);
                    more = true;
                }
            }
        }
    }

    /** A reach and all below it. */
    private void doubt(int first, NotAssessed reason) {
        BitSet own = new BitSet();
        own.set(first);
        network.below(own).stream().filter(r -> doubts[r] == null).forEach(r -> doubts[r] = reason);
    }

    private Set<Integer> declared(ScenarioInput scenario) {
        Set<Integer> nodes = new HashSet<>();
        for (ScenarioInput.Outlet outlet : scenario.rivers().outlets()) {
            AssemblyOptions.Outlet at = Basin.outlet(basin.layer(), outlet);
            if (at.featureId().isPresent()) {
                feature(at.featureId().get(), nodes);
            } else {
                nearest(at.longitude().getAsDouble(), at.latitude().getAsDouble(), FARTHEST, nodes);
            }
        }
        for (Corrections.Row row : scenario.corrections().rows(Action.OUTLET)) {
            if (row.at().isPresent()) {
                nearest(row.at().get().x(), row.at().get().y(), NEAR, nodes);
            } else {
                row.features().forEach(id -> feature(id, nodes));
            }
        }
        return nodes;
    }

    private void feature(String id, Set<Integer> nodes) {
        ends.stream().filter(end -> end.features(basin).contains(id)).forEach(end -> nodes.add(end.node()));
    }

    private void nearest(double longitude, double latitude, double limit, Set<Integer> nodes) {
        ends.stream()
                .filter(end -> distance(end, longitude, latitude) <= limit)
                .min(Comparator.comparingDouble(end -> distance(end, longitude, latitude)))
                .ifPresent(end -> nodes.add(end.node()));
    }

    private double distance(WaterEnd end, double longitude, double latitude) {
        return Ground.distance(end.longitude(basin), end.latitude(basin), longitude, latitude);
    }
}
