// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.NotAssessed;
import org.silverwake.model.screening.Receptor;
import org.silverwake.model.screening.Screening;
import org.silverwake.model.screening.ScreeningRule.Verdict;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SteadyResult.Fraction;

/** A row per place, flow state and guideline: who depends on it, what the water holds there, the answers. */
final class PlacesTable {
    private static final double NANOGRAMS_PER_LITER = 1e9;
    private static final List<String> HEADER = List.of(
            "place",
            "use",
            "people [-]",
            "people_source",
            "longitude [deg]",
            "latitude [deg]",
            "distance to river [m]",
            "reach",
            "classes",
            "flow state",
            "no water",
            "total Hg, whole, low [ng/L]",
            "total Hg, whole, high [ng/L]",
            "background [ng/L]",
            "guideline",
            "answer",
            "reason",
            "answer in this flow state alone");

    private final Outcome outcome;
    private final Screening screening;

    private PlacesTable(Outcome outcome) {
        this.outcome = outcome;
        this.screening = outcome.screening();
    }

    static void write(Outcome outcome, Path file) {
        PlacesTable table = new PlacesTable(outcome);
        CyanideReport cyanide = new CyanideReport(outcome);
        List<String> header = new ArrayList<>(HEADER);
        header.addAll(cyanide.columns());
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header, outcome.scenario().outputs().tables())) {
            for (int i = 0; i < outcome.scenario().places().size(); i++) {
                for (int s = 0; s < outcome.scenario().states().size(); s++) {
                    for (Guideline guideline : outcome.screening().compared()) {
                        table.place(csv, i, s);
                        table.answer(csv, i, s, guideline);
                        cyanide.values(
                                csv,
                                outcome.basin()
                                        .reachAt(outcome.basin().points("place").get(i)),
                                s);
                        csv.end();
                    }
                }
            }
        }
    }

    private void place(CsvTableWriter csv, int i, int s) {
        ScenarioInput.Place place = outcome.scenario().places().get(i);
        PlacedPoint at = outcome.basin().points("place").get(i);
        int r = outcome.basin().reachAt(at);
        SteadyResult result = outcome.result();
        boolean wet = result.isWet(s, r);
        csv.text(place.name())
                .text(Words.uses(place.uses()))
                .text(place.people().isPresent() ? String.valueOf(place.people().getAsInt()) : "not known")
                .text(place.peopleSource())
                .degrees(at.longitude())
                .degrees(at.latitude())
                .number(at.distanceMeters())
                .text(outcome.basin().reach(r).id())
                .text(String.join("; ", screening.classes(r)))
                .text(outcome.scenario().states().get(s).name())
                .yes(!wet)
                .number(wet ? result.low(s, r, Fraction.WHOLE) * NANOGRAMS_PER_LITER : Double.NaN)
                .number(wet ? result.high(s, r, Fraction.WHOLE) * NANOGRAMS_PER_LITER : Double.NaN)
                .number(wet ? result.background(s, r, Fraction.WHOLE) * NANOGRAMS_PER_LITER : Double.NaN);
    }

    private void answer(CsvTableWriter csv, int i, int s, Guideline guideline) {
        Receptor receptor = screening.receptors().get(i);
        Optional<Verdict> asked = screening.verdict(guideline, receptor);
        csv.text(guideline.displayName())
                .text(words(asked))
                .text(
                        asked.isPresent()
                                ? asked.get().reason().map(NotAssessed::words).orElse("")
                                : screening.isLeftOut(
                                                guideline, receptor.reach().orElseThrow())
                                        ? "not chosen by the classes of its reach"
                                        : guideline.scope().words())
                .text(words(screening.verdict(guideline, receptor, s)));
    }

    private static String words(Optional<Verdict> verdict) {
        return verdict.map(v -> v.answer().words()).orElse(SummaryLines.DOES_NOT_APPLY);
    }
}
