// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.compare;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.silverwake.cli.report.CsvTableWriter;
import org.silverwake.cli.report.SummaryLines;
import org.silverwake.cli.report.Words;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioInput.Place;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Receptor;
import org.silverwake.model.screening.ScreeningRow;
import org.silverwake.model.screening.ScreeningSummary.Line;

/** Tables of a comparison: mercury by path, people and river by answer, places, reaches. */
public final class CompareTables {
    private static final double KILOMETER = 1000;

    private final Comparison comparison;

    private CompareTables(Comparison comparison) {
        this.comparison = comparison;
    }

    /** Writes all into a folder. */
    public static void write(Comparison comparison, Path folder) {
        CompareTables tables = new CompareTables(comparison);
        tables.mercury(folder.resolve("mercury.csv"));
        tables.answers(folder.resolve("answers.csv"));
        tables.places(folder.resolve("places.csv"));
        tables.reaches(folder.resolve("reaches.csv"));
    }

    private CsvTableWriter table(Path file, List<String> header) {
        return new CsvTableWriter(
                file, header, comparison.first().scenario().outputs().tables());
    }

    private List<String> header(List<String> before, String... each) {
        List<String> header = new ArrayList<>(before);
        for (NamedOutcome scenario : comparison.scenarios()) {
            for (String what : each) {
                header.add(scenario.name() + ": " + what);
            }
        }
        return header;
    }

    private void mercury(Path file) {
        List<MercuryByPath.Row> rows = MercuryByPath.rows(comparison);
        try (CsvTableWriter csv =
                table(file, header(List.of("path or process", "bound"), "low [kg/yr]", "high [kg/yr]"))) {
            for (MercuryByPath.Row row : rows) {
                csv.text(row.what()).text(row.bound().map(Words::bound).orElse(""));
                row.amounts().forEach(a -> csv.number(a.low()).number(a.high()));
                csv.end();
            }
        }
    }

    private void answers(Path file) {
        try (CsvTableWriter csv = table(
                file,
                header(
                        List.of("guideline", "medium", "answer"),
                        "people [-]",
                        "places without a number of people [-]",
                        "places [-]",
                        "intakes [-]",
                        "river [km]"))) {
            for (Guideline guideline : comparison.guidelines()) {
                List<List<Line>> lines = comparison.scenarios().stream()
                        .map(s -> SummaryLines.of(s.outcome()).summary().lines(List.of(guideline), OptionalInt.empty()))
                        .toList();
                for (int k = 0; k < lines.get(0).size(); k++) {
                    csv.text(guideline.displayName())
                            .text(guideline.observable().words())
                            .text(SummaryLines.answer(lines.get(0).get(k)));
                    for (int s = 0; s < lines.size(); s++) {
                        Line line = lines.get(s).get(k);
                        csv.text(String.valueOf(line.people()))
                                .text(String.valueOf(line.withoutNumber()))
                                .text(String.valueOf(placesWith(s, guideline, line)))
                                .text(String.valueOf(line.intakes()))
                                .number(line.riverLength() / KILOMETER);
                    }
                    csv.end();
                }
            }
        }
    }

    private long placesWith(int scenario, Guideline guideline, Line line) {
        var screening = comparison.scenarios().get(scenario).outcome().screening();
        return screening.receptors().stream()
                .map(r -> screening.verdict(guideline, r).map(v -> v.answer()))
                .filter(line.answer()::equals)
                .count();
    }

    private void places(Path file) {
        try (CsvTableWriter csv =
                table(file, header(List.of("place", "uses", "people", "guideline", "medium"), "answer"))) {
            List<Place> places = comparison.first().scenario().places();
            for (Place place : places) {
                for (Guideline guideline : comparison.guidelines()) {
                    csv.text(place.name())
                            .text(Words.uses(place.uses()))
                            .text(
                                    place.people().isPresent()
                                            ? String.valueOf(place.people().getAsInt())
                                            : "not known")
                            .text(guideline.displayName())
                            .text(guideline.observable().words());
                    comparison.scenarios().forEach(s -> csv.text(answer(s.outcome(), place.name(), guideline)));
                    csv.end();
                }
            }
        }
    }

    private static String answer(Outcome outcome, String place, Guideline guideline) {
        Optional<Receptor> receptor = outcome.screening().receptors().stream()
                .filter(r -> r.name().equals(place))
                .findFirst();
        return receptor.map(r -> outcome.screening()
                        .verdict(guideline, r)
                        .map(v -> v.answer().words())
                        .orElse(SummaryLines.DOES_NOT_APPLY))
                .orElse("not in this scenario");
    }

    private void reaches(Path file) {
        List<String> before = List.of("reach", "feature", "river", "length [m]", "guideline", "unit", "value");
        try (CsvTableWriter csv =
                table(file, header(before, "low", "high", "answer", "high over that of the first [-]"))) {
            for (Guideline guideline : comparison.guidelines()) {
                for (int r = 0; r < comparison.first().basin().network().size(); r++) {
                    if (comparison.first().screening().isOfReaches(guideline)
                            && comparison.first().screening().applies(guideline, r)) {
                        reach(csv, guideline, r);
                    }
                }
            }
        }
    }

    private void reach(CsvTableWriter csv, Guideline guideline, int r) {
        var reach = comparison.first().basin().reach(r);
        csv.text(reach.id())
                .text(reach.part().featureId())
                .text(reach.name().orElse(""))
                .number(reach.lengthMeters())
                .text(guideline.displayName())
                .text(guideline.unit())
                .number(guideline.value() * guideline.fromSi());
        for (int k = 0; k < comparison.scenarios().size(); k++) {
            Optional<Comparison.Estimate> estimate = comparison.estimate(k, guideline, r);
            Optional<ScreeningRow> row = comparison.worst(k, guideline, r);
            csv.number(estimate.map(e -> e.low() * guideline.fromSi()).orElse(Double.NaN))
                    .number(estimate.map(e -> e.high() * guideline.fromSi()).orElse(Double.NaN))
                    .text(row.map(a -> a.answer().words()).orElse("not in this scenario, or does not apply there"))
                    .number(comparison.change(k, guideline, r).orElse(Double.NaN));
        }
        csv.end();
    }
}
