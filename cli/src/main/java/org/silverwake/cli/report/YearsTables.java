// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.fish.FishContent;
import org.silverwake.model.fish.FishYears;
import org.silverwake.model.fish.TrophicLevel;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.ReachValues.Measure;
import org.silverwake.model.screening.Recovery;
import org.silverwake.model.transport.YearBand;
import org.silverwake.model.transport.YearsResult;
import org.silverwake.model.transport.YearsResult.Whereabouts;

/** Tables of the years: values at places, when each reach comes below each value, where all released mercury is. */
final class YearsTables {
    private static final double NANOGRAMS_PER_LITER = 1e9;
    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;
    private static final double CENTIMETERS = 100;
    private static final double MICROGRAMS_PER_KILOGRAM = 1e9;

    private final Outcome outcome;
    private final YearsRun run;
    private final YearsResult years;

    private YearsTables(Outcome outcome, YearsRun run) {
        this.outcome = outcome;
        this.run = run;
        this.years = run.result();
    }

    static void write(Outcome outcome, Path folder) {
        outcome.years().ifPresent(run -> {
            YearsTables tables = new YearsTables(outcome, run);
            tables.places(folder.resolve("years.csv"));
            tables.recovery(folder.resolve("recovery.csv"));
            tables.whereabouts(folder.resolve("whereabouts.csv"));
            tables.layers(folder.resolve("buried-layers.csv"));
        });
    }

    private CsvTableWriter table(Path file, List<String> header) {
        return new CsvTableWriter(file, header, outcome.scenario().outputs().tables());
    }

    private void places(Path file) {
        List<String> header = new ArrayList<>(List.of("place", "reach", "year"));
        both(header, "bed content", "[mg/kg dry]");
        years.bedMethyl().ifPresent(band -> both(header, "MeHg in the bed", "[ug/kg dry]"));
        for (Measure measure : run.measures()) {
            String what =
                    measure.substance().word() + (measure.fraction() == Fraction.FILTERED ? ", filtered" : ", whole");
            both(header, what + ", mean of the year", "[ng/L]");
            both(header, what + ", highest in the year", "[ng/L]");
        }
        if (run.fish().isPresent()) {
            for (TrophicLevel level : TrophicLevel.values()) {
                for (String at : List.of("low", "middle", "high")) {
                    header.add("fish of trophic level " + level.number() + ", " + at + " [mg/kg wet]");
                }
            }
        }
        List<PlacedPoint> places = outcome.basin().points("place");
        try (CsvTableWriter csv = table(file, header)) {
            for (PlacedPoint place : places) {
                int r = outcome.basin().reachAt(place);
                for (int year = 0; year < years.years(); year++) {
                    csv.text(place.request().name())
                            .text(outcome.basin().reach(r).id())
                            .text(String.valueOf(run.firstYear() + year));
                    band(csv, years.bed(), year, r, MILLIGRAMS_PER_KILOGRAM);
                    if (years.bedMethyl().isPresent()) {
                        band(csv, years.bedMethyl().get(), year, r, MICROGRAMS_PER_KILOGRAM);
                    }
                    for (int part = 0; part < run.measures().size(); part++) {
                        band(csv, years.mean(part), year, r, NANOGRAMS_PER_LITER);
                        band(csv, years.worst(part), year, r, NANOGRAMS_PER_LITER);
                    }
                    if (run.fish().isPresent()) {
                        fish(csv, run.fish().get(), year, r);
                    }
                    csv.end();
                }
            }
        }
    }

    private static void fish(CsvTableWriter csv, FishYears fish, int year, int reach) {
        for (TrophicLevel level : TrophicLevel.values()) {
            Optional<FishContent> content = fish.find(year, reach, level);
            for (ToDoubleFunction<FishContent> of :
                    List.<ToDoubleFunction<FishContent>>of(FishContent::low, FishContent::middle, FishContent::high)) {
                csv.number(content.map(of::applyAsDouble).orElse(Double.NaN) * MILLIGRAMS_PER_KILOGRAM);
            }
        }
    }

    private static void both(List<String> header, String what, String unit) {
        header.add(what + ", low " + unit);
        header.add(what + ", high " + unit);
    }

    private static void band(CsvTableWriter csv, YearBand band, int year, int reach, double unit) {
        csv.number(band.low(year, reach) * unit).number(band.high(year, reach) * unit);
    }

    private void recovery(Path file) {
        List<String> header = List.of(
                "guideline",
                "unit",
                "value",
                "medium",
                "reach",
                "feature",
                "river",
                "low estimate",
                "low estimate below from",
                "high estimate",
                "high estimate below from",
                "years from the work's date, low [yr]",
                "years from the work's date, high [yr]",
                "above from background alone");
        try (CsvTableWriter csv = table(file, header)) {
            for (Guideline guideline : Recoveries.guidelines(outcome, run)) {
                for (int r = 0; r < outcome.basin().network().size(); r++) {
                    if (outcome.screening().applies(guideline, r)) {
                        recovery(csv, guideline, r);
                    }
                }
            }
        }
    }

    private void recovery(CsvTableWriter csv, Guideline guideline, int r) {
        var reach = outcome.basin().reach(r);
        csv.text(guideline.displayName())
                .text(guideline.unit())
                .number(guideline.value() * guideline.fromSi())
                .text(guideline.observable().words())
                .text(reach.id())
                .text(reach.part().featureId())
                .text(reach.name().orElse(""));
        Recoveries.Range range = Recoveries.of(outcome, run, guideline, r).orElse(null);
        if (range == null) {
            csv.text("not assessed").text("").text("not assessed").endBlank();
            return;
        }
        csv.text(range.low().words())
                .text(range.low().firstYearBelow().isPresent() ? year(range.low()) : "")
                .text(range.high().words())
                .text(range.high().firstYearBelow().isPresent() ? year(range.high()) : "")
                .number(from(range.low()))
                .number(from(range.high()))
                .yes(range.fromBackground())
                .end();
    }

    private String year(Recovery recovery) {
        return String.valueOf(run.firstYear() + recovery.firstYearBelow().getAsInt());
    }

    private double from(Recovery recovery) {
        int now = outcome.scenario().project().date().getYear();
        return recovery.firstYearBelow().isPresent()
                ? Math.max(0, run.firstYear() + recovery.firstYearBelow().getAsInt() - now)
                : Double.NaN;
    }

    /** The layers below the active one at the end of the last year, youngest first: what a dated core there would show. */
    private void layers(Path file) {
        List<String> header = new ArrayList<>(List.of(
                "place",
                "reach",
                "buried in",
                "depth below the active layer from [cm]",
                "depth below the active layer to [cm]"));
        both(header, "content", "[mg/kg dry]");
        try (CsvTableWriter csv = table(file, header)) {
            for (PlacedPoint place : outcome.basin().points("place")) {
                int r = outcome.basin().reachAt(place);
                double depth = 0;
                for (int year = years.years() - 1; year >= 0 && years.buried(year, r) > 0; year--) {
                    double to = depth + years.buried(year, r);
                    csv.text(place.request().name())
                            .text(outcome.basin().reach(r).id())
                            .text(String.valueOf(run.firstYear() + year))
                            .number(depth * CENTIMETERS)
                            .number(to * CENTIMETERS);
                    band(csv, years.bed(), year, r, MILLIGRAMS_PER_KILOGRAM);
                    csv.end();
                    depth = to;
                }
            }
        }
    }

    private void whereabouts(Path file) {
        List<String> header = new ArrayList<>(List.of("year", "unknown split taken as"));
        for (Whereabouts where : Whereabouts.values()) {
            header.add(Words.whereabouts(where) + " [kg]");
        }
        header.add("relative closure, worst of all years [-]");
        int variants = outcome.result().variants();
        try (CsvTableWriter csv = table(file, header)) {
            for (int year = 0; year < years.years(); year++) {
                for (int v = 0; v < variants; v++) {
                    csv.text(String.valueOf(run.firstYear() + year))
                            .text(Words.variant(outcome.result().input(), v));
                    for (Whereabouts where : Whereabouts.values()) {
                        csv.number(years.amount(where, year, v));
                    }
                    csv.number(years.worstClosure()).end();
                }
            }
        }
    }
}
