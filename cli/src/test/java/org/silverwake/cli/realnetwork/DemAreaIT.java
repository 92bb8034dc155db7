// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.Column;
import org.silverwake.model.water.DrainageArea;

/** Drainage area from the elevation raster, as docs/validation/dem-area.md prints it. */
class DemAreaIT {
    /** ROUNDING: sums of some thousand areas [km2]. */
    private static final double ROUNDING = 1e-6;

    /** DISCRETIZATION: square of the scale of the raster's projection there. */
    private static final double SCALE_PERCENT = 0.04;

    private static final double SQUARE_KILOMETER = 1e6;

    private final PrintedBands page = PrintedBands.of("dem-area.md");

    @TempDir
    private Path folder;

    private static double total(Reaches by, int reach) {
        return by.outcome().water().areas().orElseThrow().total(reach) / SQUARE_KILOMETER;
    }

    private static Ratios ratios(Reaches by, String column, IntPredicate which) {
        double[] ratios = by.lasts()
                .filter(which)
                .mapToDouble(r -> total(by, r) / by.attribute(r, column).orElseThrow())
                .toArray();
        return Ratios.of(ratios);
    }

    private static double inflow(Reaches by, String column, int node) {
        RiverNetwork network = by.basin().network();
        double sum = 0;
        for (int k = 0; k < network.inCount(node); k++) {
            sum += by.attribute(network.in(node, k), column).orElseThrow();
        }
        return sum;
    }

    /** Whether the layer's areas grow downstream at both ends of a reach. */
    private static boolean grows(Reaches by, String column, int reach) {
        RiverNetwork network = by.basin().network();
        double own = by.attribute(reach, column).orElseThrow();
        boolean above = inflow(by, column, network.fromNode(reach)) <= own * 1.001;
        int node = network.toNode(reach);
        return above
                && (network.outCount(node) != 1
                        || inflow(by, column, node)
                                <= by.attribute(network.out(node, 0), column).orElseThrow() * 1.001);
    }

    private static void requireFromTerrain(Reaches by) {
        assertThat(by.outcome().water().areaMethod()).isEqualTo("elevation raster");
        DrainageArea areas = by.outcome().water().areas().orElseThrow();
        RiverNetwork network = by.basin().network();
        double drained = 0;
        double out = 0;
        for (int r = 0; r < by.size(); r++) {
            assertThat(areas.local(r)).isNotNegative();
            assertThat(areas.outside(r)).isNotNegative();
            drained += (areas.local(r) + areas.outside(r)) / SQUARE_KILOMETER;
            out += network.isOutlet(r) ? total(by, r) : 0;
            int node = network.fromNode(r);
            for (int k = 0; k < network.inCount(node); k++) {
                assertThat(total(by, r)).isGreaterThanOrEqualTo(total(by, network.in(node, k)) - ROUNDING);
            }
        }
        // where arms end in different outlets, what lies above counts to each of them
        assertThat(out).isGreaterThanOrEqualTo(drained - ROUNDING);
    }

    private static String told(Reaches by, String start) {
        return by.outcome().warnings().stream()
                .filter(w -> w.startsWith(start))
                .findFirst()
                .orElseThrow();
    }

    /** Of features whose attribute lies above some area and at most at another [km2]. */
    private static IntPredicate between(Reaches by, double above, double most) {
        return r -> by.attribute(r, "da_km2").orElseThrow() > above
                && by.attribute(r, "da_km2").orElseThrow() <= most;
    }

    /** Length share, the raster's areas of the outlets given, over the raster's areas, where these are larger than some [km2]. */
    private static Ratios lengthShare(Reaches by, double above) {
        DrainageArea areas = by.outcome().water().areas().orElseThrow();
        Column basins = new Column(by.size());
        for (int r = 0; r < by.size(); r++) {
            if (by.basin().network().isOutlet(r)) {
                basins.put(r, areas.total(r));
            }
        }
        DrainageArea shared = DrainageArea.byLength(by.basin().table(), basins, 0);
        return Ratios.of(by.lasts()
                .filter(r -> total(by, r) > above)
                .mapToDouble(r -> shared.total(r) / areas.total(r))
                .toArray());
    }

    /** A check of code, not of nature: the layer's areas were taken from the same raster by another program. */
    @Test
    void kamp() {
        Reaches by = new Reaches(RealScenario.of("kamp", folder)
                .with("  columns:\n    drainage-area: {column: da_km2, unit: km2}\n", "  orient-by: [drawn]\n")
                .with("tif\", unit: m}", "tif\", unit: m, drainage-area: true}")
                .run());
        requireFromTerrain(by);
        String column = "da_km2";
        double most = Double.POSITIVE_INFINITY;
        IntPredicate sound = r -> grows(by, column, r);
        page.require("all", ratios(by, column, r -> true));
        page.require("where the layer's areas grow", ratios(by, column, sound));
        page.require("of these, up to 1 km2", ratios(by, column, sound.and(between(by, 0, 1))));
        page.require("1 to 10 km2", ratios(by, column, sound.and(between(by, 1, 10))));
        page.require("10 to 100 km2", ratios(by, column, sound.and(between(by, 10, 100))));
        page.require("above 100 km2", ratios(by, column, sound.and(between(by, 100, most))));
        // 392 x 405 cells of 1 ha in an equal-area projection: 1587.6 km2
        assertThat(told(by, "drainage area: of 1266 of 1266 reaches"))
                .contains("1562 km2 drain to the rivers", "26.05 km2 of its land run off");
        assertThat(told(by, "drainage area: land at the raster's edge")).contains("134 of 1266");
        page.require("Kamp, all", lengthShare(by, 0));
        page.require("Kamp, above 10 km2", lengthShare(by, 10));
    }

    /** No areas to check against: sums, and growth downstream through loops and repaired gaps. */
    @Test
    void northCarolina() {
        Reaches by = new Reaches(RealScenario.of("north-carolina", folder)
                .with("tif\", unit: m}", "tif\", unit: m, drainage-area: true}")
                .discharge("discharge: {method: specific-discharge, specific-discharge: {mean: 10 L/s/km2}}")
                .run());
        requireFromTerrain(by);
        // 500 x 450 cells of 30 m; the projection's scale there is 1 within 2e-4
        assertThat(told(by, "drainage area: of "))
                .contains("195 km2 drain to the rivers", "7.509 km2 of its land run off");
        double drained = 0;
        for (int r = 0; r < by.size(); r++) {
            DrainageArea areas = by.outcome().water().areas().orElseThrow();
            drained += (areas.local(r) + areas.outside(r)) / SQUARE_KILOMETER;
        }
        assertThat(drained + 7.509).isCloseTo(500 * 450 * 9e-4, withinPercentage(SCALE_PERCENT));
        page.require("North Carolina, above 1 km2", lengthShare(by, 1));
        page.require("North Carolina, above 5 km2", lengthShare(by, 5));
    }
}
