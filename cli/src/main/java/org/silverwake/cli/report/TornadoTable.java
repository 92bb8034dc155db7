// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.List;
import org.silverwake.cli.run.Apportioned;
import org.silverwake.cli.run.Swing;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.Spread;

/** A row per place, flow state and site or group: the value at the low and at the high of its release. */
public final class TornadoTable {
    private static final List<String> HEADER = List.of(
            "place",
            "flow state",
            "medium",
            "fraction",
            "estimate",
            "site or group",
            "release low [kg/yr]",
            "release middle [kg/yr]",
            "release high [kg/yr]",
            "value at its low [ng/L]",
            "value with all at the middle [ng/L]",
            "value at its high [ng/L]",
            "width [ng/L]");

    private TornadoTable() {}

    /** Writes it. */
    public static void write(Apportioned apportioned, List<Swing> swings, Path file) {
        try (CsvTableWriter csv = new CsvTableWriter(
                file, HEADER, apportioned.outcome().scenario().outputs().tables())) {
            for (Swing swing : swings) {
                for (Swing.Bar bar : swing.bars()) {
                    Spread release = bar.release().map(value -> value * Quantity.SECONDS_PER_YEAR);
                    csv.text(SharedWords.place(apportioned, swing.place()))
                            .text(Tornadoes.state(apportioned, swing).name())
                            .text("surface water")
                            .text("whole")
                            .text("highest")
                            .text(bar.name())
                            .number(release.low())
                            .number(release.middle())
                            .number(release.high())
                            .number(bar.low() * Tornadoes.NANOGRAMS_PER_LITER)
                            .number(swing.middle() * Tornadoes.NANOGRAMS_PER_LITER)
                            .number(bar.high() * Tornadoes.NANOGRAMS_PER_LITER)
                            .number(bar.width() * Tornadoes.NANOGRAMS_PER_LITER)
                            .end();
                }
            }
        }
    }
}
