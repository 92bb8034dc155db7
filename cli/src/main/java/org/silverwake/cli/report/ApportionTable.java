// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.List;
import org.silverwake.cli.run.Apportioned;
import org.silverwake.cli.run.SharedValue;
import org.silverwake.cli.run.SharedValue.What;
import org.silverwake.cli.scenario.ScenarioInput;

/** A row per place, flow state, bound and contributor: what it brings of what arrives, and what closing it would change. */
public final class ApportionTable {
    private static final double NANOGRAMS_PER_LITER = 1e9;
    private static final double MILLIGRAMS_PER_KILOGRAM = 1e6;
    private static final double PERCENT = 100;
    private static final List<String> HEADER = List.of(
            "place",
            "reach",
            "flow state",
            "medium",
            "fraction",
            "bound",
            "unknown split as",
            "estimate",
            "unit",
            "value [unit]",
            "source",
            "name",
            "group",
            "contribution [unit]",
            "share [%]",
            "value if closed [unit]",
            "change if closed [unit]",
            "change if closed [%]");

    private final Apportioned apportioned;

    private ApportionTable(Apportioned apportioned) {
        this.apportioned = apportioned;
    }

    /** Writes it. */
    public static void write(Apportioned apportioned, Path file) {
        ApportionTable table = new ApportionTable(apportioned);
        try (CsvTableWriter csv = new CsvTableWriter(
                file, HEADER, apportioned.outcome().scenario().outputs().tables())) {
            for (SharedValue value : apportioned.values()) {
                List<ScenarioInput.Site> sites =
                        apportioned.outcome().scenario().sites();
                for (int i = 0; i < sites.size(); i++) {
                    table.begin(csv, value);
                    table.site(csv, value, sites.get(i), i);
                }
                table.begin(csv, value);
                table.background(csv, value);
            }
        }
    }

    private void begin(CsvTableWriter csv, SharedValue value) {
        csv.text(SharedWords.place(apportioned, value.place()))
                .text(SharedWords.reach(apportioned, value.place()))
                .text(SharedWords.state(apportioned, value))
                .text(value.what() == What.BED ? "bed sediment" : "surface water")
                .text(value.what() == What.BED ? "" : Words.plain(value.what().name()))
                .text(Words.bound(value.bound()))
                .text(Words.variant(apportioned.outcome().result().input(), value.variant()))
                .text(estimate(value))
                .text(unit(value))
                .number(value.parts().value() * factor(value));
    }

    private String estimate(SharedValue value) {
        boolean highest = apportioned
                .highest(value.place(), value.what(), value.state())
                .orElseThrow()
                .equals(value);
        boolean lowest = apportioned
                .lowest(value.place(), value.what(), value.state())
                .orElseThrow()
                .equals(value);
        return highest && lowest ? "highest and lowest" : highest ? "highest" : lowest ? "lowest" : "";
    }

    private void site(CsvTableWriter csv, SharedValue value, ScenarioInput.Site site, int i) {
        double change = value.closed().get(i) - value.parts().value();
        csv.text("site").text(site.name()).text(site.group());
        share(csv, value, value.parts().sites().get(i));
        csv.number(value.closed().get(i) * factor(value))
                .number(change * factor(value))
                .number(PERCENT * change / value.parts().value())
                .end();
    }

    private void background(CsvTableWriter csv, SharedValue value) {
        csv.text("background").text("").text("");
        share(csv, value, value.parts().background());
        csv.endBlank();
    }

    private static void share(CsvTableWriter csv, SharedValue value, double part) {
        csv.number(part * factor(value))
                .number(
                        value.parts().value() > 0
                                ? PERCENT * part / value.parts().value()
                                : Double.NaN);
    }

    /** Unit of a value in tables and pictures. */
    static String unit(SharedValue value) {
        return value.what() == What.BED ? "mg/kg" : "ng/L";
    }

    /** Number of these units in the SI unit [-]. */
    static double factor(SharedValue value) {
        return value.what() == What.BED ? MILLIGRAMS_PER_KILOGRAM : NANOGRAMS_PER_LITER;
    }
}
