// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.io.IOException;
import java.util.BitSet;
import java.util.Optional;
import org.silverwake.cli.report.Words;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.whatif.Contributor;
import org.silverwake.cli.whatif.Contributors;
import org.silverwake.cli.whatif.Correction;
import org.silverwake.cli.whatif.Deviation;
import org.silverwake.cli.whatif.Lever;
import org.silverwake.cli.whatif.Levers;
import org.silverwake.cli.whatif.Linear;
import org.silverwake.cli.whatif.ReachUnits;
import org.silverwake.geo.place.PlacedPoint;

/** Contributors and levers. */
final class LeverColumns {
    private static final double MILLION = 1e6;

    private final DataJson json;
    private final Blocks blocks;
    private final Linear linear;
    private final Outcome outcome;
    private final boolean single;
    private final boolean hidden;

    private LeverColumns(
            DataJson json, Blocks blocks, Linear linear, Audience audience, Contributors.Grouping grouping) {
        this.json = json;
        this.blocks = blocks;
        this.linear = linear;
        this.outcome = linear.outcome();
        this.hidden = audience == Audience.PUBLIC;
        this.single = !hidden && grouping == Contributors.Grouping.NONE;
    }

    static void write(
            DataJson json,
            Blocks blocks,
            Linear linear,
            Levers levers,
            Audience audience,
            Contributors.Grouping grouping)
            throws IOException {
        LeverColumns columns = new LeverColumns(json, blocks, linear, audience, grouping);
        json.raw().writeArrayFieldStart("contributors");
        for (int k = 0; k < linear.contributors().size(); k++) {
            columns.contributor(k);
        }
        json.raw().writeEndArray();
        json.raw().writeArrayFieldStart("levers");
        for (int l = 0; l < levers.levers().size(); l++) {
            columns.lever(l, levers.levers().get(l));
        }
        json.raw().writeEndArray();
    }

    private void contributor(int k) throws IOException {
        Contributor contributor = linear.contributors().get(k);
        ReachUnits units = linear.units();
        json.raw().writeStartObject();
        json.raw().writeStringField("name", contributor.name());
        json.raw().writeStringField("group", contributor.group());
        if (single) {
            int point = contributor.points().get(0);
            Site site = outcome.scenario().sites().get(point);
            json.raw().writeStringField("path", Words.path(site.path()));
            int reach = outcome.result().input().sites().get(point).reach();
            position(site, reach);
            json.raw().writeNumberField("reach", units.of(reach));
        } else {
            json.raw().writeNumberField("sites", contributor.rows().size());
            json.raw().writeBooleanField("isGroup", contributor.isGroupOf(outcome.scenario()));
        }
        json.number("kilograms", Levers.kilograms(linear, contributor.points()));
        json.runs("reaches", units.of(linear.reached(k)));
        json.runs(
                "withinOneWidth",
                hidden ? new BitSet() : units.of(linear.contribution(k).withinOneWidth()));
        json.raw().writeArrayFieldStart("nearBank");
        for (BitSet state : linear.contribution(k).nearBank()) {
            json.runsItem(units.of(state));
        }
        json.raw().writeEndArray();
        json.raw().writeEndObject();
    }

    private void position(Site site, int reach) throws IOException {
        Optional<PlacedPoint> at = outcome.basin().points("site").stream()
                .filter(point -> outcome.basin().reachAt(point) == reach)
                .filter(point -> site.name().startsWith(point.request().name()))
                .findFirst();
        if (at.isPresent()) {
            json.raw().writeNumberField("lon", Math.rint(at.get().longitude() * MILLION) / MILLION);
            json.raw().writeNumberField("lat", Math.rint(at.get().latitude() * MILLION) / MILLION);
        }
    }

    private void lever(int index, Lever lever) throws IOException {
        boolean practice = lever.kind() == Lever.Kind.PRACTICE;
        json.raw().writeStartObject();
        json.raw().writeStringField("id", lever.kind().word().charAt(0) + String.valueOf(index));
        json.raw().writeStringField("label", lever.label());
        json.raw().writeStringField("kind", lever.kind().word());
        json.raw().writeNumberField("from", 0);
        json.raw().writeNumberField("to", 1);
        json.raw().writeNumberField("now", practice ? 0 : 1);
        json.raw().writeArrayFieldStart("of");
        for (Lever.End end : lever.ends()) {
            json.raw().writeStartObject();
            json.raw().writeNumberField("contributor", end.contributor());
            json.raw().writeNumberField("atEnd", end.factor());
            json.raw().writeEndObject();
        }
        json.raw().writeEndArray();
        json.raw().writeBooleanField("exact", lever.exact());
        full(practice ? "error" : "closed", lever.full());
        json.raw().writeNullField(practice ? "closed" : "error");
        json.number("kilogramsNow", lever.kilograms().now());
        json.number("kilogramsAtEnd", lever.kilograms().atEnd());
        json.number("airAtEnd", lever.gain().map(Lever.PracticeGain::air).orElse(Double.NaN));
        json.spread("cost", lever.gain().flatMap(Lever.PracticeGain::cost), 1);
        json.spread("paysBack", lever.gain().flatMap(Lever.PracticeGain::left), 1);
        json.raw().writeStringField("note", lever.note());
        json.raw().writeEndObject();
    }

    /** What full runs say; null where none was made. */
    private void full(String key, Optional<Lever.Full> full) throws IOException {
        if (full.isEmpty()) {
            json.raw().writeNullField(key);
            return;
        }
        Correction correction = full.get().correction();
        json.raw().writeObjectFieldStart(key);
        deviation(json, "uncorrected", Optional.of(full.get().uncorrected()));
        deviation(json, "halfway", full.get().halfway());
        json.runs("reaches", correction.units());
        json.raw().writeArrayFieldStart("measures");
        for (int m = 0; m < correction.measures(); m++) {
            json.raw().writeStartArray();
            for (int s = 0; s < correction.states(m); s++) {
                json.raw().writeStartArray();
                json.raw().writeNumber(blocks.of(correction.ratios(m, s, 0)));
                json.raw().writeNumber(blocks.of(correction.ratios(m, s, 1)));
                json.raw().writeEndArray();
            }
            json.raw().writeEndArray();
        }
        json.raw().writeEndArray();
        json.raw().writeEndObject();
    }

    /** How far levers are off; null where no run was made. */
    static void deviation(DataJson json, String key, Optional<Deviation> deviation) throws IOException {
        if (deviation.isEmpty()) {
            json.raw().writeNullField(key);
            return;
        }
        json.raw().writeObjectFieldStart(key);
        json.number("relative", deviation.get().everywhere());
        json.number("places", deviation.get().places());
        json.number("least", deviation.get().least());
        json.number("most", deviation.get().most());
        json.raw().writeNumberField("reach", deviation.get().unit());
        json.raw().writeNumberField("measure", deviation.get().measure());
        json.raw().writeEndObject();
    }
}
