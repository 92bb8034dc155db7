// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.cli.scenario.ReachClass;
import org.silverwake.geo.assembly.ReachPart;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.network.RiverNetwork;

/**
 * Reaches from one point of the river down to another: every reach that lies on a way from the first to the second, so both
 * arms of an island. Where a chainage cuts a reach, it belongs to the stretch if more than half of it does.
 */
final class Stretch {
    private static final double HALF = 0.5;

    private final Basin basin;
    private final RiverNetwork network;
    /** Downstream ends of features' parts: chainage [m] in flow direction, which begins at 0. */
    private final Map<String, Double> partLengths = new HashMap<>();

    Stretch(Basin basin) {
        this.basin = basin;
        this.network = basin.network();
        for (int r = 0; r < network.size(); r++) {
            ReachPart part = basin.reach(r).part();
            partLengths.merge(key(part), part.toMeters(), Math::max);
        }
    }

    /** What a range names is not there, or does not hang together; the message ends the sentence "where: ...". */
    static final class NotFound extends Exception {
        private static final long serialVersionUID = 1;

        NotFound(String message) {
            super(message);
        }
    }

    /** The reaches of a range, in downstream order; never empty. */
    List<Integer> reaches(ReachClass.Range range) throws NotFound {
        List<Integer> from = from(range);
        Optional<List<Integer>> to = range.to().isPresent() ? Optional.of(to(range)) : Optional.empty();
        BitSet along = network.below(bits(from));
        if (to.isPresent()) {
            along.and(network.above(bits(to.get())));
        }
        if (along.isEmpty()) {
            String end = range.to().orElseThrow();
            boolean turned = network.below(bits(feet(end))).intersects(bits(from));
            throw new NotFound(end + " does not lie downstream of " + range.from()
                    + (turned ? ", but upstream of it; turn from and to round" : "; give two points of one river"));
        }
        cutEnds(range, from, to.orElse(List.of()), along);
        if (along.isEmpty()) {
            throw new NotFound("more than half of no reach lies between " + range.from() + " and "
                    + range.to().orElse("the outlet") + " as given; give a longer stretch");
        }
        return along.stream().boxed().toList();
    }

    private List<Integer> from(ReachClass.Range range) throws NotFound {
        List<Integer> feature = feature(range.from());
        if (feature.isEmpty()) {
            return List.of(point(range.from(), range.fromChainage()));
        }
        return range.fromChainage().isPresent()
                ? List.of(at(range.from(), feature, range.fromChainage().getAsDouble()))
                : feature.stream()
                        .filter(r -> chainage(r) == 0 || !follows(feature, r))
                        .toList();
    }

    private List<Integer> to(ReachClass.Range range) throws NotFound {
        String name = range.to().orElseThrow();
        List<Integer> feature = feature(name);
        if (!feature.isEmpty()) {
            return range.toChainage().isPresent()
                    ? List.of(at(name, feature, range.toChainage().getAsDouble()))
                    : feature;
        }
        int head = point(name, range.toChainage());
        List<Integer> arriving = new ArrayList<>();
        int node = network.fromNode(head);
        for (int k = 0; k < network.inCount(node); k++) {
            arriving.add(network.in(node, k));
        }
        return arriving;
    }

    /** Where a name stands, for telling which way round two names lie. */
    private List<Integer> feet(String name) throws NotFound {
        List<Integer> feature = feature(name);
        return feature.isEmpty() ? List.of(point(name, OptionalDouble.empty())) : feature;
    }

    private List<Integer> feature(String id) {
        List<Integer> reaches = new ArrayList<>();
        for (int r = 0; r < network.size(); r++) {
            if (basin.reach(r).part().featureId().equals(id)) {
                reaches.add(r);
            }
        }
        return reaches;
    }

    private int point(String name, OptionalDouble chainage) throws NotFound {
        Optional<PlacedPoint> point = basin.points().stream()
                .filter(p -> p.request().name().equals(name))
                .findFirst();
        if (point.isEmpty()) {
            throw new NotFound(name + " is neither a feature of the river layer nor a site or place; "
                    + ProfileEnds.hint(basin, name));
        }
        if (chainage.isPresent()) {
            throw new NotFound(
                    name + " is a point, which takes no chainage; leave the chainage out, or name the feature");
        }
        return basin.reachAt(point.get());
    }

    private boolean follows(List<Integer> feature, int reach) {
        int node = network.fromNode(reach);
        for (int k = 0; k < network.inCount(node); k++) {
            if (feature.contains(network.in(node, k))) {
                return true;
            }
        }
        return false;
    }

    /** The reach of a feature of one part that holds a chainage [m]. */
    private int at(String name, List<Integer> feature, double chainage) throws NotFound {
        long parts =
                feature.stream().map(r -> key(basin.reach(r).part())).distinct().count();
        if (parts > 1) {
            throw new NotFound(
                    name + " has " + parts + " parts, so a chainage along it is not clear; leave the chainage out");
        }
        for (int r : feature) {
            if (chainage >= chainage(r) && chainage <= chainage(r) + length(r)) {
                return r;
            }
        }
        double end = partLengths.get(key(basin.reach(feature.get(0)).part()));
        throw new NotFound(String.format(
                java.util.Locale.ROOT,
                "chainage %.0f m lies beyond %s, which is %.0f m long; give 0 to %.3f km",
                chainage,
                name,
                end,
                end / 1000));
    }

    private void cutEnds(ReachClass.Range range, List<Integer> from, List<Integer> to, BitSet along) {
        for (int r : along.stream().toArray()) {
            double begin = 0;
            double end = length(r);
            if (range.fromChainage().isPresent() && from.contains(r)) {
                begin = range.fromChainage().getAsDouble() - chainage(r);
            }
            if (range.toChainage().isPresent() && to.contains(r)) {
                end = range.toChainage().getAsDouble() - chainage(r);
            }
            if (!(end - begin > HALF * length(r))) {
                along.clear(r);
            }
        }
    }

    private double length(int reach) {
        ReachPart part = basin.reach(reach).part();
        return part.toMeters() - part.fromMeters();
    }

    /** Of a reach's head, along its feature's part in flow direction [m]. */
    private double chainage(int reach) {
        ReachPart part = basin.reach(reach).part();
        return part.flipped() ? partLengths.get(key(part)) - part.toMeters() : part.fromMeters();
    }

    private static String key(ReachPart part) {
        return part.feature() + "/" + part.part();
    }

    private static BitSet bits(List<Integer> reaches) {
        BitSet bits = new BitSet();
        reaches.forEach(bits::set);
        return bits;
    }
}
