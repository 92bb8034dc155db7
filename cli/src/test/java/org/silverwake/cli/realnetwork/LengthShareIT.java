// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.Column;
import org.silverwake.model.water.DrainageArea;

/** Drainage area by length share, from the outlet's basin alone, against the area the layer states. */
class LengthShareIT {
    private static final double SQUARE_KILOMETER = 1e6;

    private final PrintedBands page = PrintedBands.of("length-share.md");

    @TempDir
    private Path folder;

    private static Ratios ratios(Reaches by, double specific, String column, IntPredicate which) {
        return Ratios.of(by.lasts()
                .filter(r -> by.attribute(r, column).orElseThrow() > 0)
                .filter(which)
                .mapToDouble(r -> by.water().end(r)
                        / specific
                        / SQUARE_KILOMETER
                        / by.attribute(r, column).orElseThrow())
                .toArray());
    }

    /** Whether the areas that the layer states at the head of the reach below add up to no more than that reach's own. */
    private static boolean addsUp(Reaches by, String column, int reach) {
        RiverNetwork network = by.basin().network();
        int node = network.toNode(reach);
        if (network.outCount(node) == 0) {
            return true;
        }
        double in = 0;
        for (int k = 0; k < network.inCount(node); k++) {
            in += by.attribute(network.in(node, k), column).orElseThrow();
        }
        return in <= by.attribute(network.out(node, 0), column).orElseThrow() * 1.001;
    }

    @Test
    void methow() {
        Reaches by = new Reaches(RealScenario.of("methow", folder)
                .with("    drainage-area: {column: usarea_km2, unit: km2}\n", "")
                .with("  crs:", "  outlets: [{feature: \"10\", basin-area: 4650.8 km2}]\n  crs:")
                .run());
        assertThat(by.outcome().water().areaMethod()).isEqualTo("length share");
        double specific = 8e-9;
        String column = "usarea_km2";
        IntPredicate sound = r -> addsUp(by, column, r);
        page.require("Methow, all", ratios(by, specific, column, r -> true));
        page.require("Methow, where areas add up at the confluence below", ratios(by, specific, column, sound));
        double[] classes = {0, 10, 100, 1e9};
        String[] names = {"Methow, of these up to 10 km2", "Methow, 10 to 100 km2", "Methow, above 100 km2"};
        for (int k = 0; k < names.length; k++) {
            page.require(
                    names[k], ratios(by, specific, column, sound.and(between(by, column, classes[k], classes[k + 1]))));
        }
    }

    private static IntPredicate between(Reaches by, String column, double above, double most) {
        return r -> by.attribute(r, column).orElseThrow() > above
                && by.attribute(r, column).orElseThrow() <= most;
    }

    /** On braids an arm carries a share of what drains to it, so that drainage areas are compared, not discharges. */
    @Test
    void newHope() {
        Reaches by = new Reaches(RealScenario.of("new-hope", folder)
                .with("    drainage-area: {column: TotDASqKM, unit: km2}\n", "")
                .with("  columns:\n", "  outlets: [{feature: \"8897784\", basin-area: 595.3383 km2}]\n")
                .run());
        assertThat(by.outcome().water().areaMethod()).isEqualTo("length share");
        Column basin = new Column(by.size());
        basin.put(by.last("8897784"), 595.3383 * SQUARE_KILOMETER);
        DrainageArea areas = DrainageArea.byLength(by.basin().table(), basin, 0);
        page.require("New Hope, all with an area", ratios(by, areas, r -> true));
        page.require("New Hope, up to 1 km2", ratios(by, areas, between(by, "TotDASqKM", 0, 1)));
        page.require("New Hope, 1 to 20 km2", ratios(by, areas, between(by, "TotDASqKM", 1, 20)));
        page.require("New Hope, above 20 km2", ratios(by, areas, between(by, "TotDASqKM", 20, 1e9)));
    }

    private static Ratios ratios(Reaches by, DrainageArea areas, IntPredicate which) {
        return Ratios.of(by.lasts()
                .filter(r -> by.attribute(r, "TotDASqKM").orElseThrow() > 0)
                .filter(which)
                .mapToDouble(r -> areas.total(r)
                        / SQUARE_KILOMETER
                        / by.attribute(r, "TotDASqKM").orElseThrow())
                .toArray());
    }
}
