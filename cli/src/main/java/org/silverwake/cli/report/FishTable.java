// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioInput.Place;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.fish.Eaters;
import org.silverwake.model.fish.FishContent;
import org.silverwake.model.fish.FishEstimate;
import org.silverwake.model.fish.FishEstimate.Basis;
import org.silverwake.model.fish.FishRun;
import org.silverwake.model.fish.TrophicLevel;
import org.silverwake.model.input.Settings;

/** Fish by place where people fish and by reach: what they may hold, from low to high, and portions with it. */
final class FishTable {
    static final String AT_BEST = "within a factor of 10 at best without fish samples from here";

    private static final String ADVICE = "advice on eating fish is the health authority's";
    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;
    private static final int DIGITS = 2;

    /** Beyond a portion a day a number tells nothing more, and would read as leave to eat. */
    private static final double MOST_PORTIONS = 7;

    private final Outcome outcome;
    private final FishRun fish;

    private FishTable(Outcome outcome, FishRun fish) {
        this.outcome = outcome;
        this.fish = fish;
    }

    static void write(Outcome outcome, Path file) {
        outcome.fish().ifPresent(fish -> new FishTable(outcome, fish).write(file));
    }

    private void write(Path file) {
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header(), outcome.scenario().outputs().tables())) {
            for (int i = 0; i < outcome.scenario().places().size(); i++) {
                Place place = outcome.scenario().places().get(i);
                if (place.uses().contains(PlaceUse.FISHING)) {
                    rows(csv, place.name(), reachOf(outcome, i));
                }
            }
            for (int r = 0; r < outcome.basin().network().size(); r++) {
                rows(csv, "", r);
            }
        }
    }

    private static int reachOf(Outcome outcome, int place) {
        return outcome.basin().reachAt(outcome.basin().points("place").get(place));
    }

    private static List<String> header() {
        List<String> header = new ArrayList<>(List.of(
                "place",
                "reach",
                "feature",
                "river",
                "trophic level",
                "low [mg/kg wet]",
                "middle [mg/kg wet]",
                "high [mg/kg wet]",
                "rests on",
                "fish measured here [-]",
                "measured in reach"));
        for (Eaters eaters : Eaters.values()) {
            for (String at : List.of("high", "middle", "low")) {
                header.add(eaters.words() + ": portions a week at the " + at + " estimate (7: 7 or more)");
            }
        }
        header.add("read with the portions");
        return header;
    }

    private void rows(CsvTableWriter csv, String place, int r) {
        var reach = outcome.basin().reach(r);
        for (TrophicLevel level : TrophicLevel.values()) {
            csv.text(place)
                    .text(reach.id())
                    .text(reach.part().featureId())
                    .text(reach.name().orElse(""))
                    .text(String.valueOf(level.number()));
            Optional<FishEstimate> found = fish.find(r, level);
            if (found.isPresent()) {
                estimate(csv, found.get());
            } else {
                csv.text("")
                        .text("")
                        .text("")
                        .text("not assessed: "
                                + (fish.isModelled() ? "no water" : "methylmercury is not carried (mercury.forms)"));
                csv.endBlank();
            }
        }
    }

    private void estimate(CsvTableWriter csv, FishEstimate found) {
        FishContent content = found.content();
        csv.number(content.low() * MILLIGRAMS_PER_KILOGRAM)
                .number(content.middle() * MILLIGRAMS_PER_KILOGRAM)
                .number(content.high() * MILLIGRAMS_PER_KILOGRAM)
                .text(
                        content.high() > 0
                                ? found.basis().words()
                                : "no methylmercury released or made within their range")
                .text(String.valueOf(found.measured()))
                .text(found.station().map(at -> outcome.basin().reach(at).id()).orElse(""));
        Settings settings = outcome.scenario().settings();
        for (Eaters eaters : Eaters.values()) {
            for (double at : new double[] {content.high(), content.middle(), content.low()}) {
                boolean known = content.high() > 0;
                csv.number(known ? Math.min(MOST_PORTIONS, eaters.portionsPerWeek(settings, at)) : Double.NaN);
            }
        }
        csv.text((found.basis() == Basis.MEASURED ? "" : AT_BEST + "; ") + ADVICE)
                .end();
    }

    /** A line per place where people fish, for the end of a run. */
    static List<String> lines(Outcome outcome) {
        List<String> lines = new ArrayList<>();
        for (int i = 0;
                outcome.fish().isPresent() && i < outcome.scenario().places().size();
                i++) {
            Place place = outcome.scenario().places().get(i);
            for (TrophicLevel level : TrophicLevel.values()) {
                Optional<FishEstimate> found = outcome.fish().get().find(reachOf(outcome, i), level);
                if (place.uses().contains(PlaceUse.FISHING)
                        && found.filter(f -> f.content().high() > 0).isPresent()) {
                    lines.add(line(place, level, found.get()));
                }
            }
        }
        return lines;
    }

    private static String line(Place place, TrophicLevel level, FishEstimate found) {
        return "fish at " + place.name() + ", trophic level " + level.number() + ": "
                + shown(found.content().low()) + " to " + shown(found.content().high()) + " mg/kg wet, middle "
                + shown(found.content().middle()) + " (" + found.basis().words() + ")";
    }

    private static String shown(double content) {
        return Numbers.shown(content * MILLIGRAMS_PER_KILOGRAM, DIGITS);
    }

    /** What the record of the run says of fish. */
    static void record(Outcome outcome, JsonGenerator json) throws IOException {
        if (outcome.fish().isPresent()) {
            json.writeObjectFieldStart("fish");
            json.writeBooleanField("methylmercuryCarried", outcome.fish().get().isModelled());
            json.writeBooleanField(
                    "rangeStopsAtDams",
                    !outcome.scenario().fish().orElseThrow().dams().isEmpty());
            json.writeNumberField("measured", outcome.fish().get().measured());
            json.writeStringField("within", AT_BEST);
            json.writeEndObject();
        }
    }
}
