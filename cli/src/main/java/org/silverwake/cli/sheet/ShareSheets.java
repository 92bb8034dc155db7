// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.run.ApportionRun;
import org.silverwake.cli.run.Apportioned;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.SharedValue;
import org.silverwake.geo.map.Ground;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.geo.map.WallSheet.Bars;
import org.silverwake.geo.map.WallSheet.Block;

/** Sheets of which groups of sites bring what arrives at places, one for each state of flow; in the office too, groups alone. */
final class ShareSheets {
    private static final int PERCENT = 100;
    private static final double NANOGRAMS_PER_LITER = 1e9;

    private final Outcome outcome;
    private final SheetWords words;
    private final Map<String, List<Integer>> groups;

    private ShareSheets(Outcome outcome) {
        this.outcome = outcome;
        this.words = new SheetWords(outcome);
        this.groups = new SheetGround(outcome).told();
    }

    /** By the state's name. */
    static Map<String, WallSheet> of(Outcome outcome) {
        ShareSheets sheets = new ShareSheets(outcome);
        Apportioned shares = ApportionRun.shares(outcome);
        Map<String, WallSheet> all = new LinkedHashMap<>();
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            List<Bars.Row> rows = sheets.rows(shares, s);
            if (!rows.isEmpty()) {
                all.put(outcome.scenario().states().get(s).name(), sheets.sheet(rows, s));
            }
        }
        return all;
    }

    private List<String> sources() {
        List<String> sources = new ArrayList<>(groups.keySet());
        sources.add(words.texts().text("sheet.shares.others"));
        sources.add(words.texts().text("sheet.shares.background"));
        return sources;
    }

    private List<Bars.Row> rows(Apportioned shares, int state) {
        List<Bars.Row> rows = new ArrayList<>();
        for (int place : shares.places()) {
            shares.highest(place, SharedValue.What.WHOLE, state)
                    .filter(value -> value.parts().value() > 0)
                    .ifPresent(value -> rows.add(row(value)));
        }
        return rows;
    }

    private Bars.Row row(SharedValue value) {
        double all = value.parts().value();
        List<Double> sites = value.parts().sites();
        List<Double> shares = new ArrayList<>();
        double rest = sites.stream().mapToDouble(Double::doubleValue).sum();
        for (List<Integer> group : groups.values()) {
            double sum = group.stream().mapToDouble(sites::get).sum();
            shares.add(sum / all);
            rest -= sum;
        }
        shares.add(Math.max(0, rest) / all);
        shares.add(value.parts().background() / all);
        List<String> percents = shares.stream()
                .map(share ->
                        words.texts().text("sheet.shares.percent", words.texts().number(Math.rint(PERCENT * share), 2)))
                .toList();
        return new Bars.Row(
                outcome.scenario().places().get(value.place()).name(),
                words.texts().text("sheet.shares.amount", words.number(all * NANOGRAMS_PER_LITER), "ng/L"),
                shares,
                percents);
    }

    private WallSheet sheet(List<Bars.Row> rows, int state) {
        return new WallSheet(
                words.paper(),
                words.head(
                        words.texts()
                                .text(
                                        "sheet.title.shares",
                                        outcome.scenario().project().title()),
                        words.texts()
                                .text(
                                        "sheet.shares.state",
                                        outcome.scenario().states().get(state).name()),
                        false),
                List.of(),
                new WallSheet.Ground(Ground.bare(), List.of(), List.of()),
                Optional.of(new Bars(sources(), rows)),
                List.of(),
                new WallSheet.Legend(
                        words.texts().text("sheet.shares.heading"),
                        List.of(),
                        words.marks(),
                        "",
                        List.of(words.texts().text("sheet.shares.note"))),
                new WallSheet.Blocks(words.forPeople(), List.<Block>of()),
                words.cautions(),
                words.foot(),
                words.scale());
    }
}
