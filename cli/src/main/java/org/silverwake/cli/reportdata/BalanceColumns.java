// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.silverwake.cli.report.Words;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.NotedSites;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.whatif.Contributor;
import org.silverwake.cli.whatif.Contributors;
import org.silverwake.cli.whatif.Linear;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.SiteBalance;
import org.silverwake.model.release.SitePath;
import org.silverwake.model.release.Spread;
import org.silverwake.model.transport.Bound;

/** Where mercury goes: at the sites by field notes, and in the river. */
final class BalanceColumns {
    private final DataJson json;
    private final Linear linear;
    private final Outcome outcome;

    private BalanceColumns(DataJson json, Linear linear) {
        this.json = json;
        this.linear = linear;
        this.outcome = linear.outcome();
    }

    /** Writes it; null where no contributor may be told. */
    static void write(DataJson json, Linear linear, Audience audience, Contributors.Grouping grouping)
            throws IOException {
        if (linear.contributors().isEmpty()
                && !linear.outcome().scenario().sites().isEmpty()) {
            json.raw().writeNullField("balance");
            return;
        }
        BalanceColumns columns = new BalanceColumns(json, linear);
        json.raw().writeObjectFieldStart("balance");
        columns.flows();
        columns.sites(audience == Audience.OFFICE && grouping == Contributors.Grouping.NONE);
        json.raw().writeEndObject();
    }

    private void flows() throws IOException {
        json.raw().writeArrayFieldStart("columns");
        int column = 0;
        for (Bound bound : outcome.result().bounds()) {
            for (int v = 0; v < outcome.result().variants(); v++) {
                json.raw().writeStartObject();
                json.raw().writeNumberField("bound", bound.ordinal());
                json.raw().writeNumberField("variant", v);
                json.raw().writeFieldName("background");
                flow(linear.background().flows().get(column));
                json.raw().writeArrayFieldStart("contributors");
                for (int k = 0; k < linear.contributors().size(); k++) {
                    flow(linear.contribution(k).flows().get(column));
                }
                json.raw().writeEndArray();
                json.raw().writeEndObject();
                column++;
            }
        }
        json.raw().writeEndArray();
    }

    private void flow(Map<Process, Double> rates) throws IOException {
        json.raw().writeStartObject();
        for (Map.Entry<Process, Double> rate : rates.entrySet()) {
            json.raw().writeNumberField(Words.process(rate.getKey()), rate.getValue() * Quantity.SECONDS_PER_YEAR);
        }
        json.raw().writeEndObject();
    }

    private void sites(boolean single) throws IOException {
        var plan = outcome.scenario().fieldNotes();
        Map<String, String> names = names(single);
        Map<String, List<SiteBalance>> of = new LinkedHashMap<>();
        for (Site site : plan.sites()) {
            Optional<SiteBalance> balance = NotedSites.balance(plan, site);
            Optional<String> name = Optional.ofNullable(names.get(site.where()));
            if (balance.isPresent() && name.isPresent()) {
                of.computeIfAbsent(name.get(), key -> new ArrayList<>()).add(balance.get());
            }
        }
        if (!single) {
            // what field notes tell of fewer than three sites tells of single ones
            of.values().removeIf(own -> own.size() < Contributors.A_GROUP);
        }
        json.raw().writeArrayFieldStart("sites");
        for (Map.Entry<String, List<SiteBalance>> each : of.entrySet()) {
            json.raw().writeStartObject();
            json.raw().writeStringField("name", each.getKey());
            spread("used", each.getValue(), b -> b.range(y -> y.used()));
            spread("air", each.getValue(), b -> b.range(y -> y.air()));
            spread("kept", each.getValue(), b -> b.range(SitePath.KEPT));
            spread("river", each.getValue(), b -> b.range(y -> y.river()));
            json.raw().writeEndObject();
        }
        json.raw().writeEndArray();
        json.raw()
                .writeStringField(
                        "sitesNote",
                        of.isEmpty()
                                ? ""
                                : "the river is run with the "
                                        + plan.level().name().toLowerCase(Locale.ROOT) + " one of the three");
    }

    /** Name of the contributor of each row. */
    private Map<String, String> names(boolean single) {
        Map<String, String> names = new LinkedHashMap<>();
        for (Contributor contributor : linear.contributors()) {
            contributor.rows().forEach(row -> names.putIfAbsent(row, contributor.name()));
        }
        if (single) {
            outcome.scenario().fieldNotes().sites().forEach(site -> names.put(site.where(), site.name()));
        }
        return names;
    }

    private void spread(String key, List<SiteBalance> of, Function<SiteBalance, Spread> range) throws IOException {
        Spread sum = of.stream().map(range).reduce(Spread.exact(0), BalanceColumns::plus);
        json.spread(key, Optional.of(sum), Quantity.SECONDS_PER_YEAR);
    }

    private static Spread plus(Spread one, Spread other) {
        return new Spread(one.low() + other.low(), one.middle() + other.middle(), one.high() + other.high());
    }
}
