// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;
import org.silverwake.cli.text.TableForm;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.Water;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.NotAssessed;
import org.silverwake.model.screening.Screening;
import org.silverwake.model.screening.ScreeningRow;
import org.silverwake.model.screening.Substance;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SteadyResult;

/** All tables of a run. */
public final class Tables {
    private static final double KILOMETER = 1000;

    private Tables() {}

    /** Writes every table into a folder. */
    public static void write(Outcome outcome, Path folder) {
        TableForm form = outcome.scenario().outputs().tables();
        ReachesTable.write(outcome, folder.resolve("reaches.csv"));
        screening(outcome, folder.resolve("screening.csv"));
        SummaryTable.write(outcome, folder.resolve("summary.csv"));
        balance(outcome, folder.resolve("balance.csv"));
        sites(outcome, folder.resolve("sites.csv"));
        PlacesTable.write(outcome, folder.resolve("places.csv"));
        Abstractions.write(outcome, folder.resolve("abstractions.csv"));
        water(outcome, folder.resolve("water.csv"));
        defects(outcome.basin(), folder.resolve("defects.csv"), form);
        CorrectionsReport.write(outcome.basin(), folder.resolve("corrections.csv"), form);
        Overbank.write(outcome, folder.resolve("overbank.csv"));
        BedTable.write(outcome, folder.resolve("bed.csv"));
        YearsTables.write(outcome, folder);
        FormsTable.write(outcome, folder.resolve("forms.csv"));
        FishTable.write(outcome, folder.resolve("fish.csv"));
        BalanceTables.write(outcome, folder);
        SampleTables.write(outcome, folder);
    }

    private static void screening(Outcome outcome, Path file) {
        List<String> header = List.of(
                "guideline",
                "unit",
                "value",
                "medium",
                "averaging",
                "in print",
                "reach",
                "feature",
                "river",
                "answer",
                "reason",
                "low",
                "high",
                "background",
                "ratio low [-]",
                "ratio high [-]",
                "worst flow state",
                "worst value",
                "low bound above",
                "depends on what the bed gives back",
                "above from background alone",
                "states left out");
        Screening screening = outcome.screening();
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header, outcome.scenario().outputs().tables())) {
            for (Guideline guideline : screening.compared()) {
                for (int r = 0; r < screening.reaches(); r++) {
                    if (screening.applies(guideline, r)) {
                        guideline(csv, outcome, guideline, r);
                        screeningRow(csv, outcome, guideline, screening.row(guideline, r));
                    } else if (screening.isLeftOut(guideline, r)) {
                        guideline(csv, outcome, guideline, r);
                        leftOut(csv);
                    }
                }
            }
        }
    }

    private static void guideline(CsvTableWriter csv, Outcome outcome, Guideline guideline, int r) {
        var reach = outcome.basin().reach(r);
        csv.text(guideline.displayName())
                .text(guideline.unit())
                .number(guideline.value() * guideline.fromSi())
                .text(guideline.observable().words())
                .text(guideline.observable().averaging().words())
                .text(guideline.checked().word())
                .text(reach.id())
                .text(reach.part().featureId())
                .text(reach.name().orElse(""));
    }

    private static void leftOut(CsvTableWriter csv) {
        csv.text(SummaryLines.DOES_NOT_APPLY)
                .text("not chosen by the classes of the reach")
                .endBlank();
    }

    private static void screeningRow(CsvTableWriter csv, Outcome outcome, Guideline guideline, ScreeningRow row) {
        double unit = guideline.fromSi();
        csv.text(row.answer().words())
                .text(row.verdict().reason().map(NotAssessed::words).orElse(""))
                .number(row.values().map(v -> v.band().low() * unit).orElse(Double.NaN))
                .number(row.values().map(v -> v.band().high() * unit).orElse(Double.NaN))
                .number(row.values().map(v -> v.band().background() * unit).orElse(Double.NaN))
                .number(row.ratioLow().orElse(Double.NaN))
                .number(row.ratioHigh().orElse(Double.NaN))
                .text(row.values()
                        .filter(v -> v.worstState() >= 0)
                        .map(v ->
                                outcome.scenario().states().get(v.worstState()).name())
                        .orElse(""))
                .number(row.values().map(v -> v.worst() * unit).orElse(Double.NaN))
                .yes(row.verdict().leansAbove())
                .yes(row.verdict().hatched())
                .yes(row.verdict().aboveFromBackground())
                .text(String.join(
                        "; ",
                        row.statesLeftOut().stream()
                                .map(s -> outcome.scenario().states().get(s).name())
                                .toList()))
                .end();
    }

    private static void balance(Outcome outcome, Path file) {
        SteadyResult result = outcome.result();
        List<String> header = List.of(
                "flow state",
                "bound",
                "unknown split taken as",
                "process",
                "form",
                "mass in the state [kg/yr]",
                "mass over the year [kg]",
                "relative closure [-]");
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header, outcome.scenario().outputs().tables())) {
            for (int s = 0; s < result.input().stateCount(); s++) {
                for (Bound bound : result.bounds()) {
                    for (int v = 0; v < result.variants(); v++) {
                        Balance balance = result.solution(bound, s).balance(v);
                        for (Balance.Row row : balance.rows()) {
                            double year = row.rate() * Quantity.SECONDS_PER_YEAR;
                            csv.text(outcome.scenario().states().get(s).name())
                                    .text(Words.bound(bound))
                                    .text(Words.variant(result.input(), v))
                                    .text(Words.process(row.process()))
                                    .text(row.form())
                                    .number(year)
                                    .number(year * result.input().hydraulics().share(s))
                                    .number(balance.closure())
                                    .end();
                        }
                    }
                }
            }
            new CyanideReport(outcome).balance(csv);
        }
    }

    private static void sites(Outcome outcome, Path file) {
        List<String> header = List.of(
                "site",
                "group",
                "path",
                "longitude [deg]",
                "latitude [deg]",
                "distance to river [m]",
                "feature",
                "chainage [m]",
                "reach",
                "flow state",
                "mercury [kg/yr]",
                "exchangeable share [-]",
                "tailings [t/yr]",
                "water [L/s]",
                "outfall",
                "effluent over effluent values [-]",
                "cyanide",
                "note");
        List<PlacedPoint> points = outcome.basin().points("site");
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header, outcome.scenario().outputs().tables())) {
            for (int i = 0; i < points.size(); i++) {
                ScenarioInput.Site site = outcome.scenario().sites().get(i);
                SiteRelease release = outcome.result().input().sites().get(i);
                PlacedPoint at = points.get(i);
                for (int s = 0; s < outcome.scenario().states().size(); s++) {
                    csv.text(site.name())
                            .text(site.group())
                            .text(Words.path(site.path()))
                            .degrees(at.longitude())
                            .degrees(at.latitude())
                            .number(at.distanceMeters())
                            .text(at.featureId())
                            .number(at.chainageMeters())
                            .text(outcome.basin().reach(release.reach()).id())
                            .text(outcome.scenario().states().get(s).name())
                            .number(release.mercury().get(s) * Quantity.SECONDS_PER_YEAR)
                            .text(
                                    release.exchangeableShare().isPresent()
                                            ? Numbers.text(
                                                    release.exchangeableShare().getAsDouble())
                                            : "not known: both extremes run")
                            .number(release.solids().get(s) * Quantity.SECONDS_PER_YEAR / KILOMETER)
                            .number(release.water().get(s) * KILOMETER)
                            .text(release.atBank() ? "bank" : "mid-channel")
                            .text(effluentRatios(outcome, site))
                            .text(CyanideReport.words(site, s))
                            .text(site.note())
                            .end();
                }
            }
        }
    }

    /** An effluent's own concentration over each chosen effluent value of mercury or cyanide; never compared with a reach. */
    private static String effluentRatios(Outcome outcome, ScenarioInput.Site site) {
        List<String> ratios = new ArrayList<>();
        for (Guideline guideline : outcome.screening().listed()) {
            boolean comparable = guideline.scope() == Medium.Scope.RELEASE
                    && guideline.observable().isModelled()
                    && guideline.observable().substance() != Substance.SUSPENDED_SOLIDS;
            if (comparable && site.effluent().isPresent()) {
                double ratio = site.effluent().get().concentration() / guideline.value();
                ratios.add(guideline.id() + ": " + Numbers.shown(ratio, 3));
            }
            if (guideline.scope() == Medium.Scope.RELEASE) {
                CyanideReport.effluentRatio(outcome.scenario(), site, guideline)
                        .ifPresent(ratio -> ratios.add(guideline.id() + ": " + Numbers.shown(ratio, 3)));
            }
        }
        return String.join("; ", ratios);
    }

    /** Every reach at which water was assumed or corrected; the warnings name only the first ones. */
    private static void water(Outcome outcome, Path file) {
        try (CsvTableWriter csv = new CsvTableWriter(
                file,
                List.of("reach", "feature", "river", "assumed or corrected"),
                outcome.scenario().outputs().tables())) {
            for (Water.Listed listed : outcome.water().listed()) {
                var reach = outcome.basin().reach(listed.reach());
                csv.text(reach.id())
                        .text(reach.part().featureId())
                        .text(reach.name().orElse(""))
                        .text(listed.what())
                        .end();
            }
        }
    }

    /** Writes defects and repairs of the river layer. */
    public static void defects(Basin basin, Path file, TableForm form) {
        List<String> header = List.of(
                "kind", "longitude [deg]", "latitude [deg]", "features", "found", "remedy or repair", "repaired");
        try (CsvTableWriter csv = new CsvTableWriter(file, header, form)) {
            for (Defect defect : basin.map().defects()) {
                csv.text(Words.defect(defect.kind()))
                        .degrees(defect.longitude())
                        .degrees(defect.latitude())
                        .text(String.join(" ", defect.featureIds()))
                        .text(defect.text())
                        .text(defect.remedy())
                        .yes(defect.repaired())
                        .end();
            }
        }
    }

    /** A defect in one line. */
    public static String line(Defect defect) {
        String place = Double.isNaN(defect.longitude())
                ? ""
                : " at " + Numbers.degrees(defect.longitude()) + ", " + Numbers.degrees(defect.latitude());
        return Words.defect(defect.kind()) + place + " (" + String.join(", ", defect.featureIds()) + "): "
                + defect.text() + (defect.repaired() ? "; repaired: " : "; ") + defect.remedy();
    }

    /** A point on the network in one line. */
    public static String line(PlacedPoint point) {
        return point.request().kind() + " " + point.request().name() + ": "
                + Numbers.shown(point.distanceMeters(), 3) + " m from feature " + point.featureId() + ", chainage "
                + Numbers.shown(point.chainageMeters(), 5) + " m";
    }
}
