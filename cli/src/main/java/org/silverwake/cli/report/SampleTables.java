// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.silverwake.cli.laboratory.LabRow;
import org.silverwake.cli.run.ComparedSample;
import org.silverwake.cli.run.LocatedSample;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.text.Numbers;
import org.silverwake.cli.text.TableForm;
import org.silverwake.geo.place.LocatedPoint.OnReach;
import org.silverwake.model.sample.Agreement;
import org.silverwake.model.sample.Finding;
import org.silverwake.model.sample.Substitution;
import org.silverwake.model.screening.Guideline;

/** Tables of field samples: what was understood row by row, samples beside the model, counts, means. */
public final class SampleTables {
    private static final List<String> UNDERSTOOD = List.of(
            "row",
            "sample",
            "station",
            "date",
            "time",
            "standing",
            "reason",
            "as written",
            "measured",
            "qualifier",
            "value or limit",
            "unit",
            "how it was understood",
            "fish",
            "method",
            "note",
            "longitude [deg]",
            "latitude [deg]",
            "distance to river [m]",
            "feature",
            "chainage [m]",
            "not placed because");

    private static final List<String> COMPARED = List.of(
            "row",
            "sample",
            "station",
            "date",
            "measured",
            "qualifier",
            "value or limit",
            "unit",
            "reach",
            "feature",
            "chainage [m]",
            "flow states",
            "flow states found",
            "model low",
            "model high",
            "sample over nearest bound [-]",
            "within 2",
            "within 5",
            "within 10",
            "answer",
            "guidelines",
            "not compared because");

    private SampleTables() {}

    static void write(Outcome outcome, Path folder) {
        if (outcome.samples().isEmpty()) {
            return;
        }
        understood(
                outcome.samples(),
                folder.resolve("samples.csv"),
                outcome.scenario().outputs().tables());
        compared(outcome, folder.resolve("samples-compared.csv"));
        summary(outcome, folder.resolve("samples-summary.csv"));
        if (!SampleSummary.groups(outcome).isEmpty()) {
            means(outcome, folder.resolve("samples-means.csv"));
        }
    }

    /** Writes what was understood of each row. */
    public static void understood(List<LocatedSample> samples, Path file, TableForm form) {
        try (CsvTableWriter csv = new CsvTableWriter(file, UNDERSTOOD, form)) {
            for (LocatedSample each : samples) {
                LabRow row = each.sample().row();
                csv.text(each.sample().where())
                        .text(row.code())
                        .text(row.station())
                        .text(row.date().map(Object::toString).orElse(""))
                        .text(row.time())
                        .text(row.standing().words())
                        .text(String.join("; ", row.reasons()))
                        .text(row.written());
                found(csv, row.finding());
                csv.text(String.join("; ", row.said()))
                        .text(row.fish())
                        .text(row.method())
                        .text(row.note());
                csv.text(each.at().map(a -> Numbers.degrees(a.longitude())).orElse(""))
                        .text(each.at().map(a -> Numbers.degrees(a.latitude())).orElse(""))
                        .number(each.at().map(OnReach::distanceMeters).orElse(Double.NaN))
                        .text(each.at().map(OnReach::featureId).orElse(""))
                        .number(each.at().map(OnReach::chainageMeters).orElse(Double.NaN))
                        .text(each.unplaced())
                        .end();
            }
        }
    }

    private static void found(CsvTableWriter csv, Optional<Finding> finding) {
        csv.text(finding.map(Finding::words).orElse(""))
                .text(finding.map(SampleWords::qualifier).orElse(""))
                .number(finding.map(f -> SampleWords.shown(f, f.reported().value()))
                        .orElse(Double.NaN))
                .text(finding.map(SampleWords::unit).orElse(""));
    }

    private static void compared(Outcome outcome, Path file) {
        try (CsvTableWriter csv =
                new CsvTableWriter(file, COMPARED, outcome.scenario().outputs().tables())) {
            for (ComparedSample each : outcome.compared()) {
                LocatedSample located = each.located();
                LabRow row = located.sample().row();
                Finding finding = row.finding().orElseThrow();
                csv.text(located.sample().where())
                        .text(row.code())
                        .text(row.station())
                        .text(row.date().map(Object::toString).orElse(""));
                found(csv, row.finding());
                csv.text(located.at()
                                .map(a -> outcome.basin().map().reach(a.reach()).id())
                                .orElse(""))
                        .text(located.at().map(OnReach::featureId).orElse(""))
                        .number(located.at().map(OnReach::chainageMeters).orElse(Double.NaN))
                        .text(SampleWords.states(outcome, each))
                        .text(each.stateWords())
                        .number(model(each, finding, true))
                        .number(model(each, finding, false));
                agreement(csv, each.agreement());
                csv.text(SampleWords.answers(outcome, each))
                        .text(each.notCompared())
                        .end();
            }
        }
    }

    private static double model(ComparedSample each, Finding finding, boolean low) {
        return each.model()
                .map(m -> SampleWords.shown(finding, low ? m.low() : m.high()))
                .orElse(Double.NaN);
    }

    private static void agreement(CsvTableWriter csv, Optional<Agreement> agreement) {
        Optional<Agreement> detected = agreement.filter(Agreement::isDetected);
        csv.number(agreement.map(Agreement::ratio).orElse(Double.NaN));
        for (double factor : SampleWords.FACTORS) {
            csv.text(detected.map(a -> a.isWithin(factor) ? "yes" : "no").orElse(""));
        }
        csv.text(agreement.map(Agreement::words).orElse(""));
    }

    private static void summary(Outcome outcome, Path file) {
        List<String> header = List.of(
                "measured",
                "with a number [-]",
                "inside the model's range [-]",
                "within a factor of 2 [-]",
                "within 5 [-]",
                "within 10 [-]",
                "sample above the range [-]",
                "sample below the range [-]",
                "limits [-]",
                "limits consistent with the model [-]",
                "not compared [-]",
                "above a value [-]",
                "above a value where the estimate says below [-]");
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header, outcome.scenario().outputs().tables())) {
            for (SampleSummary.Line line : SampleSummary.of(outcome)) {
                csv.text(line.words())
                        .number(line.counts().detected())
                        .number(line.counts().inside())
                        .number(line.counts().within2())
                        .number(line.counts().within5())
                        .number(line.counts().within10())
                        .number(line.counts().sampleAbove())
                        .number(line.counts().sampleBelow())
                        .number(line.counts().limits())
                        .number(line.counts().consistent())
                        .number(line.notCompared())
                        .number(line.above())
                        .number(line.againstEstimate())
                        .end();
            }
        }
    }

    /** Means of a station where there are several values: with nothing, half the limit, the limit in place of "below". */
    private static void means(Outcome outcome, Path file) {
        List<String> header = List.of(
                "station",
                "measured",
                "samples [-]",
                "of those limits [-]",
                "unit",
                "mean, 0 for a limit",
                "mean, half the limit",
                "mean, the limit itself",
                "guideline",
                "guideline value",
                "above with 0",
                "above with half",
                "above with the limit",
                "answer depends on the choice");
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header, outcome.scenario().outputs().tables())) {
            for (SampleSummary.Group group : SampleSummary.groups(outcome)) {
                Substitution mean = Substitution.of(group.values());
                List<Optional<Guideline>> guidelines = new ArrayList<>();
                Shown.drawable(outcome).stream()
                        .filter(group.finding()::matches)
                        .forEach(g -> guidelines.add(Optional.of(g)));
                if (guidelines.isEmpty()) {
                    guidelines.add(Optional.empty());
                }
                guidelines.forEach(guideline -> mean(csv, group, mean, guideline));
            }
        }
    }

    private static void mean(
            CsvTableWriter csv, SampleSummary.Group group, Substitution mean, Optional<Guideline> guideline) {
        Finding finding = group.finding();
        csv.text(group.station())
                .text(finding.words())
                .number(group.values().size())
                .number(group.limits())
                .text(SampleWords.unit(finding));
        for (double value : List.of(mean.zero(), mean.half(), mean.limit())) {
            csv.number(SampleWords.shown(finding, value));
        }
        csv.text(guideline.map(Guideline::displayName).orElse(""))
                .number(guideline
                        .map(g -> SampleWords.shown(finding, g.value()))
                        .orElse(Double.NaN));
        for (double value : List.of(mean.zero(), mean.half(), mean.limit())) {
            csv.text(guideline.map(g -> value > g.value() ? "yes" : "no").orElse(""));
        }
        csv.yes(guideline.filter(g -> mean.dependsOnChoice(g.value())).isPresent())
                .end();
    }
}
