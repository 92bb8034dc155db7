// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.whatif.Linear;
import org.silverwake.cli.whatif.ReachUnits;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.screening.NotAssessed;
import org.silverwake.model.screening.ReachValues;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.water.ReachKind;

/** What is known of reaches, as one list per thing. */
final class ReachColumns {
    private static final double HUNDRED_THOUSAND = 1e5;
    private static final double UNIT = 1e-5;

    private final DataJson json;
    private final Linear linear;
    private final Outcome outcome;
    private final ReachUnits units;
    private final boolean hidden;

    private ReachColumns(DataJson json, Linear linear, Audience audience) {
        this.json = json;
        this.linear = linear;
        this.outcome = linear.outcome();
        this.units = linear.units();
        this.hidden = audience == Audience.PUBLIC;
    }

    static void write(DataJson json, Linear linear, Audience audience) throws IOException {
        new ReachColumns(json, linear, audience).write();
    }

    private void write() throws IOException {
        int n = units.count();
        json.raw().writeObjectFieldStart("reaches");
        json.raw().writeNumberField("count", n);
        json.raw().writeNumberField("drawn", units.drawn());
        json.texts("id", units.ids(outcome));
        Map<String, Integer> names = new LinkedHashMap<>();
        json.numbers(
                "name",
                n,
                u -> first(u).name()
                        .map(name -> names.computeIfAbsent(name, k -> names.size()))
                        .orElse(-1));
        json.texts("names", names.keySet());
        json.numbers(
                "meters",
                n,
                u -> u >= units.drawn()
                        ? 0
                        : (int) Math.round(Arrays.stream(units.parts(u))
                                .mapToDouble(outcome.basin().table()::length)
                                .sum()));
        json.numbers("below", n, this::below);
        json.numbers(
                "kind", n, u -> outcome.basin().table().kind(units.first(u)).ordinal());
        json.texts(
                "kinds", Arrays.stream(ReachKind.values()).map(ReachKind::word).toList());
        classes();
        lines();
        json.numbers("unassessed", n, this::unassessed);
        ReachValues values = outcome.screening().values();
        json.numbers(
                "doubt",
                n,
                u -> values.doubt(units.first(u)).map(NotAssessed::ordinal).orElse(-1));
        BitSet cyanide = new BitSet();
        for (int u = 0; u < n; u++) {
            cyanide.set(
                    u,
                    values.neverBelow(units.last(u), Substance.WAD_CYANIDE).isPresent()
                            && values.doubt(units.last(u)).isEmpty());
        }
        json.runs("cyanideDoubt", cyanide);
        json.raw().writeNumberField("cyanideDoubtReason", NotAssessed.CYANIDE_NOT_GIVEN.ordinal());
        json.raw().writeEndObject();
    }

    private RiverMap.Reach first(int unit) {
        return outcome.basin().reach(units.first(unit));
    }

    /** Of several reaches the one that takes most. */
    private int below(int unit) {
        if (unit >= units.drawn()) {
            return -1;
        }
        RiverNetwork network = outcome.basin().network();
        int node = network.toNode(units.last(unit));
        int below = -1;
        double most = -1;
        for (int k = 0; k < network.outCount(node); k++) {
            int reach = network.out(node, k);
            double share =
                    outcome.result().input().hydraulics().water(0).splits().share(reach);
            if (share > most) {
                most = share;
                below = units.of(reach);
            }
        }
        return below;
    }

    private void classes() throws IOException {
        json.raw().writeArrayFieldStart("classes");
        for (var group : outcome.classes().groups()) {
            BitSet own = new BitSet();
            group.reaches().forEach(own::set);
            json.raw().writeStartObject();
            json.raw().writeStringField("name", group.name());
            json.runs("reaches", units.of(own));
            json.raw().writeEndObject();
        }
        json.raw().writeEndArray();
    }

    private void lines() throws IOException {
        List<List<RiverMap.Reach>> of = new ArrayList<>();
        for (int u = 0; u < units.drawn(); u++) {
            of.add(Arrays.stream(units.parts(u))
                    .mapToObj(outcome.basin()::reach)
                    .toList());
        }
        List<Lines.Line> lines = Lines.of(of);
        json.raw().writeNumberField("degree", UNIT);
        json.numbers(
                "size",
                units.count(),
                u -> u < lines.size() ? lines.get(u).points().size() : 0);
        json.raw().writeArrayFieldStart("points");
        long x = 0;
        long y = 0;
        for (Lines.Line line : lines) {
            for (double[] point : line.points()) {
                long east = Math.round(point[0] * HUNDRED_THOUSAND);
                long north = Math.round(point[1] * HUNDRED_THOUSAND);
                json.raw().writeNumber(east - x);
                json.raw().writeNumber(north - y);
                x = east;
                y = north;
            }
        }
        json.raw().writeEndArray();
    }

    /** Why a reach is not assessed; -1 where it is, or where that hangs on a lever. */
    private int unassessed(int unit) {
        ReachValues values = outcome.screening().values();
        if (Arrays.stream(units.parts(unit)).anyMatch(r -> values.notAssessed(r).isEmpty())) {
            return -1;
        }
        int last = units.last(unit);
        NotAssessed reason = values.notAssessed(last).orElseThrow();
        return reason == NotAssessed.NEAR_BANK_OUTFALL && !hidden && hangsOnLever(last) ? -1 : reason.ordinal();
    }

    private boolean hangsOnLever(int reach) {
        boolean ofCyanide = outcome.cyanide()
                .filter(cyanide -> java.util.stream.IntStream.range(
                                0, outcome.scenario().states().size())
                        .anyMatch(s ->
                                cyanide.result().solution(Bound.LAID_DOWN, s).isWithinOneWidth(reach)))
                .isPresent();
        return !ofCyanide
                && java.util.stream.IntStream.range(0, linear.contributors().size())
                        .anyMatch(k -> linear.contribution(k).withinOneWidth().get(reach));
    }
}
