// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.StateSolution;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.transport.SteadyResult.Fraction;
import org.silverwake.model.transport.SuspendedValues;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.Hydraulics;
import org.silverwake.model.water.Mixing;
import org.silverwake.model.water.ReachKind;
import org.silverwake.model.water.ReachTable;
import org.silverwake.model.water.StateHydraulics;
import org.silverwake.model.water.WaterBodies;

/** A row per reach and flow state: parent feature and chainage, water, and every form and phase of mercury in both bounds. */
final class ReachesTable {
    private static final double NANOGRAMS_PER_LITER = 1e9;
    private static final double MILLIGRAMS_PER_LITER = 1e3;
    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;
    private static final double PER_HOUR = 3600;
    private static final double SQUARE_KILOMETER = 1e6;

    private final Outcome outcome;
    private final SteadyResult result;
    private final StateLayout layout;
    private final SuspendedValues solids;
    private final boolean hasKinds;
    private final CyanideReport cyanide;

    private ReachesTable(Outcome outcome) {
        this.outcome = outcome;
        this.result = outcome.result();
        this.layout = result.input().layout();
        this.solids = new SuspendedValues(result);
        this.hasKinds = outcome.basin().waters().kinds().stream().anyMatch(k -> k != ReachKind.CHANNEL);
        this.cyanide = new CyanideReport(outcome);
    }

    static void write(Outcome outcome, Path file) {
        ReachesTable table = new ReachesTable(outcome);
        try (CsvTableWriter csv = new CsvTableWriter(
                file, table.header(), outcome.scenario().outputs().tables())) {
            for (int r = 0; r < outcome.basin().network().size(); r++) {
                for (int s = 0; s < outcome.scenario().states().size(); s++) {
                    table.row(csv, r, s);
                }
            }
        }
    }

    private List<String> header() {
        List<String> header = new ArrayList<>(List.of(
                "reach",
                "feature",
                "chainage from [m]",
                "chainage to [m]",
                "flipped",
                "river",
                "classes",
                "values that do not apply here",
                "flow state",
                "no water",
                "length [m]",
                "drainage area [km2]",
                "drainage area found by",
                "slope [-]",
                "discharge at head [m3/s]",
                "discharge at end [m3/s]",
                "velocity [m/s]",
                "depth [m]",
                "width [m]",
                "bed shear stress [Pa]",
                "skin shear [Pa]",
                "travel time [h]",
                "longitudinal dispersion coefficient [m2/s]",
                "cells",
                "total Hg, whole, low [ng/L]",
                "total Hg, whole, high [ng/L]",
                "total Hg, filtered, low [ng/L]",
                "total Hg, filtered, high [ng/L]",
                "background total Hg, whole [ng/L]",
                "background total Hg, filtered [ng/L]",
                "bed content, low [mg/kg dry]",
                "bed content, high [mg/kg dry]",
                "background bed content [mg/kg dry]",
                "near the bank",
                "slurry"));
        if (hasKinds) {
            header.add("kind");
            header.add("water body");
        }
        for (Bound bound : result.bounds()) {
            for (int v = 0; v < result.variants(); v++) {
                String of = label(bound, v);
                header.add(of + ": suspended sediment [mg/L]");
                header.add(of + ": total Hg at head, mixed [ng/L]");
                header.add(of + ": total Hg at end, mixed [ng/L]");
                header.add(of + ": Hg(II) filtered, mean [ng/L]");
                header.add(of + ": Hg(II) sorbed, mean [ng/L]");
                for (int j = 0; j < layout.classCount(); j++) {
                    header.add(of + ": " + layout.name(layout.grainBound(j)) + ", mean [ng/L]");
                }
                header.add(of + ": bed content [mg/kg dry]");
            }
        }
        header.addAll(cyanide.columns());
        return header;
    }

    private String label(Bound bound, int variant) {
        String name = Words.bound(bound);
        if (result.variants() == 1) {
            return name;
        }
        return name + ", unknown split " + Words.variant(result.input(), variant);
    }

    private void row(CsvTableWriter csv, int r, int s) {
        Cells cells = result.cells();
        Hydraulics hydraulics = result.input().hydraulics();
        StateHydraulics water = result.solution(Bound.LAID_DOWN, s).water();
        boolean wet = result.isWet(s, r);
        RiverMap.Reach reach = outcome.basin().reach(r);
        csv.text(reach.id())
                .text(reach.part().featureId())
                .number(reach.part().fromMeters())
                .number(reach.part().toMeters())
                .yes(reach.part().flipped())
                .text(reach.name().orElse(""))
                .text(String.join("; ", outcome.screening().classes(r)))
                .text(outcome.screening().compared().stream()
                        .filter(g -> outcome.screening().isLeftOut(g, r))
                        .map(Guideline::id)
                        .collect(Collectors.joining("; ")))
                .text(outcome.scenario().states().get(s).name())
                .yes(!wet)
                .number(reach.lengthMeters())
                .number(outcome.water()
                        .areas()
                        .map(a -> a.total(r) / SQUARE_KILOMETER)
                        .orElse(Double.NaN))
                .text(outcome.water().areaMethod())
                .number(hydraulics.slope(r) > 0 ? hydraulics.slope(r) : Double.NaN)
                .number(hydraulics.water(s).head(r))
                .number(hydraulics.water(s).end(r));
        double length = reach.lengthMeters();
        double time = sum(cells, r, water::travelTime);
        boolean flows = wet && !hydraulics.isStill(r);
        csv.number(flows ? length / time : Double.NaN)
                .number(mean(wet, cells, r, water::depth))
                .number(mean(flows, cells, r, water::width))
                .number(mean(flows, cells, r, water::shear))
                .number(mean(flows, cells, r, water::skinShear))
                .number(flows || wet && hydraulics.isMixed(r) ? time / PER_HOUR : Double.NaN)
                .number(mean(
                        flows,
                        cells,
                        r,
                        c -> Mixing.longitudinal(
                                water.velocity(c), water.width(c), water.depth(c), water.shearVelocity(c))))
                .number(cells.start(r + 1) - cells.start(r));
        concentrations(csv, r, s, wet);
        for (Bound bound : result.bounds()) {
            for (int v = 0; v < result.variants(); v++) {
                forms(csv, bound, v, r, s, wet);
            }
        }
        cyanide.values(csv, r, s);
        csv.end();
    }

    private void concentrations(CsvTableWriter csv, int r, int s, boolean wet) {
        for (Fraction fraction : Fraction.values()) {
            csv.number(wet ? result.low(s, r, fraction) * NANOGRAMS_PER_LITER : Double.NaN)
                    .number(wet ? result.high(s, r, fraction) * NANOGRAMS_PER_LITER : Double.NaN);
        }
        for (Fraction fraction : Fraction.values()) {
            csv.number(wet ? result.background(s, r, fraction) * NANOGRAMS_PER_LITER : Double.NaN);
        }
        boolean bed = result.isBedAssessed(r);
        csv.number(bed ? result.bedLow(r) * MILLIGRAMS_PER_KILOGRAM : Double.NaN)
                .number(bed ? result.bedHigh(r) * MILLIGRAMS_PER_KILOGRAM : Double.NaN)
                .number(bed ? result.backgroundBed(r) * MILLIGRAMS_PER_KILOGRAM : Double.NaN)
                .yes(result.solution(Bound.CARRIED_THROUGH, s).isNearBank(r))
                .yes(result.solution(Bound.CARRIED_THROUGH, s).slurry().contains(r));
        if (hasKinds) {
            ReachTable reaches = outcome.basin().table();
            csv.text(reaches.kind(r).word())
                    .text(reaches.bodies().of(r).map(WaterBodies.Body::name).orElse(""));
        }
    }

    private void forms(CsvTableWriter csv, Bound bound, int v, int r, int s, boolean wet) {
        StateSolution solution = result.solution(bound, s);
        Cells cells = result.cells();
        int first = cells.start(r);
        int last = cells.start(r + 1) - 1;
        csv.number(wet ? solids.sediment(bound, s, r) * MILLIGRAMS_PER_LITER : Double.NaN);
        csv.number(
                solution.hasWater(first, Place.HEAD)
                        ? solution.whole(first, Place.HEAD, v, false) * NANOGRAMS_PER_LITER
                        : Double.NaN);
        csv.number(
                solution.hasWater(last, Place.END)
                        ? solution.whole(last, Place.END, v, false) * NANOGRAMS_PER_LITER
                        : Double.NaN);
        int exchangeable = layout.exchangeable();
        csv.number(NANOGRAMS_PER_LITER
                * mean(wet, cells, r, c -> solution.mean(c, exchangeable, v) * solution.filteredShare(c)));
        csv.number(NANOGRAMS_PER_LITER
                * mean(wet, cells, r, c -> solution.mean(c, exchangeable, v) * (1 - solution.filteredShare(c))));
        for (int j = 0; j < layout.classCount(); j++) {
            int form = layout.grainBound(j);
            csv.number(NANOGRAMS_PER_LITER * mean(wet, cells, r, c -> solution.mean(c, form, v)));
        }
        csv.number(result.isBedAssessed(r) ? result.bed(bound, v, r) * MILLIGRAMS_PER_KILOGRAM : Double.NaN);
    }

    private interface CellValue {
        double of(int cell);
    }

    private static double sum(Cells cells, int r, CellValue value) {
        double sum = 0;
        for (int c = cells.start(r); c < cells.start(r + 1); c++) {
            sum += value.of(c);
        }
        return sum;
    }

    private static double mean(boolean wet, Cells cells, int r, CellValue value) {
        if (!wet) {
            return Double.NaN;
        }
        double length = sum(cells, r, cells::length);
        return sum(cells, r, c -> value.of(c) * cells.length(c)) / length;
    }
}
