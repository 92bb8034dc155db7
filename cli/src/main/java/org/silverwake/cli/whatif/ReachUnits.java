// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.screening.ReachValues;

/**
 * What the page shows as a reach. On a public page cuts that a site alone made are taken out, so that no reach begins where a
 * single site is; such a stretch has the largest value of its parts. A place in it keeps the answer of its own part, which for that
 * is a unit more, without a line, behind those that are drawn. Parts are reaches of the network; drawn units are in downstream order.
 */
public final class ReachUnits {
    private final boolean hidden;
    private final int[] unitOf;
    private final int drawn;
    private final List<int[]> parts;
    private final Map<Integer, Integer> ofPlaces = new HashMap<>();

    private ReachUnits(boolean hidden, int[] unitOf, List<int[]> parts, List<Integer> places) {
        this.hidden = hidden;
        this.unitOf = unitOf;
        this.drawn = parts.size();
        this.parts = new ArrayList<>(parts);
        for (int reach : places) {
            boolean alone = parts.get(unitOf[reach]).length == 1;
            if (!alone && !ofPlaces.containsKey(reach)) {
                ofPlaces.put(reach, this.parts.size());
                this.parts.add(new int[] {reach});
            }
        }
    }

    /** The units of a run for an audience. */
    public static ReachUnits of(Outcome outcome, Audience audience) {
        RiverNetwork network = outcome.basin().network();
        BitSet hidden = audience == Audience.PUBLIC ? cutBySitesAlone(outcome) : new BitSet();
        int[] unitOf = new int[network.size()];
        List<List<Integer>> found = new ArrayList<>();
        for (int r = 0; r < unitOf.length; r++) {
            int node = network.fromNode(r);
            int above = hidden.get(r) ? network.in(node, 0) : -1;
            if (above >= 0 && isAlike(outcome, above, r)) {
                unitOf[r] = unitOf[above];
            } else {
                unitOf[r] = found.size();
                found.add(new ArrayList<>());
            }
            found.get(unitOf[r]).add(r);
        }
        return new ReachUnits(
                audience == Audience.PUBLIC,
                unitOf,
                found.stream()
                        .map(own -> own.stream().mapToInt(r -> r).toArray())
                        .toList(),
                outcome.basin().points("place").stream()
                        .map(outcome.basin()::reachAt)
                        .toList());
    }

    /** Reaches whose heads are a cut of a line at a site and at nothing else. */
    private static BitSet cutBySitesAlone(Outcome outcome) {
        Basin basin = outcome.basin();
        RiverNetwork network = basin.network();
        BitSet cut = new BitSet();
        basin.points("site").forEach(point -> cut.set(basin.reachAt(point)));
        Stream.of("place", "gauge", "abstraction")
                .flatMap(kind -> basin.points(kind).stream())
                .map((PlacedPoint point) -> basin.reachAt(point))
                .forEach(cut::clear);
        for (int r : cut.stream().toArray()) {
            int node = network.fromNode(r);
            if (network.inCount(node) != 1 || network.outCount(node) != 1) {
                cut.clear(r);
            }
        }
        return cut;
    }

    /** Whether two reaches are one in the layer and answer to the same values. */
    private static boolean isAlike(Outcome outcome, int above, int below) {
        RiverMap.Reach one = outcome.basin().reach(above);
        RiverMap.Reach other = outcome.basin().reach(below);
        ReachValues values = outcome.screening().values();
        boolean sameLine = one.part().feature() == other.part().feature()
                && one.part().part() == other.part().part();
        boolean sameValues = outcome.screening().compared().stream()
                .allMatch(g -> outcome.screening().isLeftOut(g, above)
                        == outcome.screening().isLeftOut(g, below));
        return sameLine
                && sameValues
                && outcome.screening().classes(above).equals(outcome.screening().classes(below))
                && outcome.basin().table().kind(above)
                        == outcome.basin().table().kind(below)
                && values.doubt(above).equals(values.doubt(below));
    }

    /**
     * Names of all units; in public that of the feature with a number of its own where there are several, since those of the network count
     * cuts at sites.
     */
    public List<String> ids(Outcome outcome) {
        List<String> ids = new ArrayList<>();
        Map<String, Integer> pieces = new HashMap<>();
        Map<String, Integer> of = new HashMap<>();
        for (int u = 0; u < drawn; u++) {
            of.merge(outcome.basin().reach(first(u)).part().featureId(), 1, Integer::sum);
        }
        for (int u = 0; u < drawn; u++) {
            RiverMap.Reach reach = outcome.basin().reach(first(u));
            String feature = reach.part().featureId();
            int piece = pieces.merge(feature, 1, Integer::sum);
            ids.add(!hidden ? reach.id() : of.get(feature) == 1 ? feature : feature + "." + piece);
        }
        for (int u = drawn; u < count(); u++) {
            ids.add(ids.get(of(first(u))));
        }
        return ids;
    }

    /** Number of units [-]. */
    public int count() {
        return parts.size();
    }

    /** Number of those that are drawn, which come first [-]. */
    public int drawn() {
        return drawn;
    }

    /** The unit whose answers are those of a place on a reach. */
    public int ofPlace(int reach) {
        return ofPlaces.getOrDefault(reach, unitOf[reach]);
    }

    /** Reaches of a unit, downstream. */
    public int[] parts(int unit) {
        return parts.get(unit).clone();
    }

    /** Its first reach. */
    public int first(int unit) {
        return parts.get(unit)[0];
    }

    /** Its last reach. */
    public int last(int unit) {
        int[] own = parts.get(unit);
        return own[own.length - 1];
    }

    /** The drawn unit of a reach. */
    public int of(int reach) {
        return unitOf[reach];
    }

    /** Units of reaches. */
    public BitSet of(BitSet reaches) {
        BitSet units = new BitSet();
        for (int u = 0; u < count(); u++) {
            units.set(u, Arrays.stream(parts.get(u)).anyMatch(reaches::get));
        }
        return units;
    }

    /** Units all of whose parts are among these reaches. */
    public BitSet whole(BitSet reaches) {
        BitSet units = new BitSet();
        for (int u = 0; u < count(); u++) {
            if (Arrays.stream(parts.get(u)).allMatch(reaches::get)) {
                units.set(u);
            }
        }
        return units;
    }

    /** The parts that are assessed; all where none is. */
    int[] assessed(int unit, ReachValues values) {
        int[] own = parts.get(unit);
        int[] some =
                Arrays.stream(own).filter(r -> values.notAssessed(r).isEmpty()).toArray();
        return some.length == 0 ? own : some;
    }
}
