// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.map.OwnLook;
import org.silverwake.geo.map.OwnStyle;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.write.Column;
import org.silverwake.geo.write.ReachLayer;
import org.silverwake.geo.write.ReachLayers;
import org.silverwake.geo.write.ReachStyle;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Recovery;
import org.silverwake.model.screening.ScreeningRow;
import org.silverwake.model.transport.BedAnswer;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SteadyResult.Fraction;

/** Results as a GeoPackage: one layer for each flow state, with a style for each map that can be drawn of it. */
public final class Layers {
    private static final double NANOGRAMS_PER_LITER = 1e9;
    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;

    private static final int LONGEST_NAME = 40;
    private static final String CLASS = "class_";
    private static final String RECOVERY_CLASS = "recovery_class_";

    private final Outcome outcome;
    private final List<Guideline> guidelines;
    private final Optional<Guideline> shown;
    /** How long recovery takes, of all reaches; empty without years. */
    private final Map<Guideline, List<ReachShade>> recovering = new LinkedHashMap<>();

    private Layers(Outcome outcome) {
        this.outcome = outcome;
        this.guidelines = Shown.drawable(outcome);
        this.shown = Shown.guideline(outcome);
        outcome.years().ifPresent(years -> {
            RecoveryClasses classes = new RecoveryClasses(outcome, years);
            Recoveries.guidelines(outcome, years).forEach(g -> recovering.put(g, classes.shades(g)));
        });
    }

    /** Writes reaches.gpkg into a folder, and samples.gpkg where there are samples. */
    public static void write(Outcome outcome, Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        SampleLayer.write(outcome, folder.resolve("samples.gpkg"));
        Layers layers = new Layers(outcome);
        List<ReachLayer> all = new ArrayList<>();
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            all.add(layers.layer(s));
        }
        ReachLayers.write(
                folder.resolve("reaches.gpkg"),
                outcome.basin().map(),
                all,
                outcome.scenario().project().date());
    }

    /** Columns of the layers of reaches, which styles may ask for. */
    public static List<String> columns(Outcome outcome) {
        return new Layers(outcome).columns().stream().map(Column::name).toList();
    }

    /** The reaches of a state as a style shows them. */
    static OwnLook look(Outcome outcome, int state, OwnStyle style) {
        ReachLayer layer = new Layers(outcome).layer(state);
        List<List<Object>> rows =
                new ArrayList<>(Collections.nCopies(layer.rows().size(), List.of()));
        for (int k = 0; k < layer.rows().size(); k++) {
            rows.set(layer.reaches().get(k), layer.rows().get(k));
        }
        return new OwnLook(
                style,
                layer.columns().stream().map(Column::name).toList(),
                rows,
                "Drawn by the style file " + style.name() + ", not by this program's colors");
    }

    private ReachLayer layer(int state) {
        RiverNetwork network = outcome.basin().network();
        List<Integer> reaches = new ArrayList<>();
        List<List<Object>> rows = new ArrayList<>();
        for (int r = 0; r < network.size(); r++) {
            reaches.add(network.inputIndex(r));
            rows.add(row(r, state));
        }
        String name = outcome.scenario().states().get(state).name();
        return new ReachLayer(
                "reaches_" + plain(name),
                outcome.scenario().project().title() + ", " + name,
                columns(),
                reaches,
                rows,
                styles());
    }

    /** One for each guideline that maps may show, that of the default map first, and one for each that recovery is counted for. */
    private List<ReachStyle> styles() {
        List<ReachStyle> styles = new ArrayList<>();
        shown.ifPresent(g -> styles.add(answers(g, "class")));
        guidelines.stream()
                .filter(g -> shown.filter(g::equals).isEmpty())
                .forEach(g -> styles.add(answers(g, CLASS + plain(g.id()))));
        outcome.years()
                .ifPresent(years -> recovering
                        .keySet()
                        .forEach(g -> styles.add(new ReachStyle(
                                "recovery " + g.id(),
                                RECOVERY_CLASS + plain(g.id()),
                                new RecoveryClasses(outcome, years).classes(true)))));
        return styles;
    }

    private ReachStyle answers(Guideline guideline, String column) {
        double factor = outcome.screening().rule().factor(guideline.observable().medium());
        return new ReachStyle(guideline.id(), column, Shading.classes(factor, true));
    }

    private List<Column> columns() {
        List<Column> columns = new ArrayList<>(List.of(
                Column.text("reach"),
                Column.text("feature"),
                Column.text("river"),
                Column.text("flow_state"),
                Column.text("class"),
                Column.text("reach_classes"),
                Column.real("length_m"),
                Column.real("discharge_head_m3_per_s"),
                Column.real("discharge_end_m3_per_s"),
                Column.real("hg_whole_low_ng_per_l"),
                Column.real("hg_whole_high_ng_per_l"),
                Column.real("hg_filtered_low_ng_per_l"),
                Column.real("hg_filtered_high_ng_per_l"),
                Column.real("hg_whole_background_ng_per_l"),
                Column.real("bed_low_mg_per_kg_dry"),
                Column.real("bed_high_mg_per_kg_dry")));
        if (outcome.result().bedAnswer().isPresent()) {
            columns.add(Column.real("with_bed_low_mg_per_kg_dry"));
            columns.add(Column.real("with_bed_high_mg_per_kg_dry"));
            columns.add(Column.real("mean_time_in_bed_yr"));
        }
        outcome.years()
                .ifPresent(years -> Recoveries.guidelines(outcome, years).forEach(guideline -> {
                    columns.add(Column.text("recovery_" + plain(guideline.id())));
                    columns.add(Column.text(RECOVERY_CLASS + plain(guideline.id())));
                    columns.add(Column.real("below_from_year_" + plain(guideline.id())));
                }));
        for (Guideline guideline : guidelines) {
            columns.add(Column.text("answer_" + plain(guideline.id())));
            columns.add(Column.real("ratio_low_" + plain(guideline.id())));
            columns.add(Column.real("ratio_high_" + plain(guideline.id())));
            columns.add(Column.text(CLASS + plain(guideline.id())));
        }
        return columns;
    }

    private List<Object> row(int r, int s) {
        SteadyResult result = outcome.result();
        RiverMap.Reach reach = outcome.basin().reach(r);
        boolean wet = result.isWet(s, r);
        boolean bed = result.isBedAssessed(r);
        List<Object> row = new ArrayList<>(Arrays.asList(
                reach.id(),
                reach.part().featureId(),
                reach.name().orElse(null),
                outcome.scenario().states().get(s).name(),
                shown.map(g -> shade(g, r, s).key()).orElse(null),
                String.join("; ", outcome.screening().classes(r)),
                reach.lengthMeters(),
                result.input().hydraulics().water(s).head(r),
                result.input().hydraulics().water(s).end(r),
                wet ? result.low(s, r, Fraction.WHOLE) * NANOGRAMS_PER_LITER : null,
                wet ? result.high(s, r, Fraction.WHOLE) * NANOGRAMS_PER_LITER : null,
                wet ? result.low(s, r, Fraction.FILTERED) * NANOGRAMS_PER_LITER : null,
                wet ? result.high(s, r, Fraction.FILTERED) * NANOGRAMS_PER_LITER : null,
                wet ? result.background(s, r, Fraction.WHOLE) * NANOGRAMS_PER_LITER : null,
                bed ? result.bedLow(r) * MILLIGRAMS_PER_KILOGRAM : null,
                bed ? result.bedHigh(r) * MILLIGRAMS_PER_KILOGRAM : null));
        result.bedAnswer().ifPresent(answer -> row.addAll(bed(answer, r)));
        outcome.years()
                .ifPresent(years -> Recoveries.guidelines(outcome, years)
                        .forEach(guideline -> row.addAll(recovery(years, guideline, r))));
        for (Guideline guideline : guidelines) {
            if (outcome.screening().isLeftOut(guideline, r)) {
                row.addAll(Arrays.asList(SummaryLines.DOES_NOT_APPLY, null, null, ReachShade.DOES_NOT_APPLY.key()));
                continue;
            }
            ScreeningRow answer = answer(guideline, r, s);
            row.add(answer.answer().words());
            row.add(answer.ratioLow().orElse(null));
            row.add(answer.ratioHigh().orElse(null));
            row.add(Shading.of(
                            answer,
                            outcome.screening()
                                    .rule()
                                    .factor(guideline.observable().medium()))
                    .key());
        }
        return row;
    }

    private List<Object> bed(BedAnswer bed, int r) {
        double low = Double.POSITIVE_INFINITY;
        double high = 0;
        for (int v = 0; v < outcome.result().variants() && bed.hasBed(r); v++) {
            low = Math.min(low, bed.content(r, v));
            high = Math.max(high, bed.content(r, v));
        }
        double years = bed.residence(r) / Quantity.SECONDS_PER_YEAR;
        return Arrays.asList(
                bed.hasBed(r) ? low * MILLIGRAMS_PER_KILOGRAM : null,
                bed.hasBed(r) ? high * MILLIGRAMS_PER_KILOGRAM : null,
                years > 0 && Double.isFinite(years) ? years : null);
    }

    /** By the high estimate. */
    private List<Object> recovery(YearsRun years, Guideline guideline, int r) {
        Optional<Recovery> high = Recoveries.of(outcome, years, guideline, r).map(Recoveries.Range::high);
        return Arrays.asList(
                high.map(Recovery::words).orElse(null),
                recovering.get(guideline).get(r).key(),
                high.filter(h -> h.firstYearBelow().isPresent())
                        .map(h ->
                                (double) (years.firstYear() + h.firstYearBelow().getAsInt()))
                        .orElse(null));
    }

    private ReachShade shade(Guideline guideline, int r, int s) {
        double factor = outcome.screening().rule().factor(guideline.observable().medium());
        return outcome.screening().isLeftOut(guideline, r)
                ? ReachShade.DOES_NOT_APPLY
                : Shading.of(answer(guideline, r, s), factor);
    }

    private ScreeningRow answer(Guideline guideline, int r, int s) {
        return guideline.observable().averaging().isOneForAllStates()
                ? outcome.screening().row(guideline, r)
                : outcome.screening().inState(guideline, r, s);
    }

    private static String plain(String name) {
        String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "_");
        return plain.substring(0, Math.min(LONGEST_NAME, plain.length()));
    }
}
