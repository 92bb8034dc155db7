// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.transport.BedAnswer;

/** A row per reach and split: what its bed holds, how long mercury stays there, and where its year did not close as stated. */
final class BedTable {
    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;
    private static final double MICROGRAMS_PER_KILOGRAM = 1e9;

    private final Outcome outcome;
    private final BedAnswer bed;
    private final OptionalInt methyl;

    private BedTable(Outcome outcome, BedAnswer bed) {
        this.outcome = outcome;
        this.bed = bed;
        this.methyl = outcome.result().input().layout().find(Form.METHYL);
    }

    static void write(Outcome outcome, Path file) {
        if (outcome.result().bedAnswer().isEmpty()) {
            return;
        }
        BedTable table = new BedTable(outcome, outcome.result().bedAnswer().get());
        try (CsvTableWriter csv = new CsvTableWriter(
                file, table.header(), outcome.scenario().outputs().tables())) {
            for (int r = 0; r < outcome.basin().network().size(); r++) {
                for (int v = 0; v < outcome.result().variants(); v++) {
                    table.row(csv, r, v);
                }
            }
        }
    }

    private List<String> header() {
        List<String> header = new ArrayList<>(List.of(
                "reach",
                "feature",
                "river",
                "unknown split taken as",
                "after years at this rate",
                "bed content [mg/kg dry]",
                "background bed content [mg/kg dry]"));
        if (methyl.isPresent()) {
            header.add("MeHg in the bed [ug/kg dry]");
        }
        header.addAll(List.of(
                "released mercury in the bed [kg]",
                "buried [kg/yr]",
                "mean time in the bed [yr]",
                "loses more solids than it gains",
                "gains less solids than the stated burial",
                "no flow state erodes it"));
        return header;
    }

    private void row(CsvTableWriter csv, int r, int v) {
        var reach = outcome.basin().reach(r);
        boolean there = bed.hasBed(r);
        csv.text(reach.id())
                .text(reach.part().featureId())
                .text(reach.name().orElse(""))
                .text(Words.variant(outcome.result().input(), v))
                .text(
                        bed.afterYears().isPresent()
                                ? String.valueOf(bed.afterYears().getAsInt())
                                : "in balance")
                .number(there ? bed.content(r, v) * MILLIGRAMS_PER_KILOGRAM : Double.NaN)
                .number(there ? bed.backgroundContent(r) * MILLIGRAMS_PER_KILOGRAM : Double.NaN);
        methyl.ifPresent(form -> csv.number(there ? bed.content(r, form, v) * MICROGRAMS_PER_KILOGRAM : Double.NaN));
        double years = bed.residence(r) / Quantity.SECONDS_PER_YEAR;
        csv.number(bed.stockOf(r, v)).number(bed.buriedOf(r, v) * Quantity.SECONDS_PER_YEAR);
        if (Double.isInfinite(years)) {
            csv.text("never leaves");
        } else {
            csv.number(years > 0 ? years : Double.NaN);
        }
        csv.yes(bed.isEaten(r)).yes(bed.isShortOfSolids(r)).yes(bed.isQuiet(r)).end();
    }
}
