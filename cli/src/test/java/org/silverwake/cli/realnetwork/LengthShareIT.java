// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.Column;
import org.silverwake.model.water.DrainageArea;

/** Drainage area by length share, from the outlet's basin alone, against the area the layer states. */
class LengthShareIT {
    /** PINNED: what this version finds, as docs/validation/length-share.md prints it. */
    private static final double PINNED = 0.005;

    private static final double SQUARE_KILOMETER = 1e6;

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

    private static void requireBand(Ratios ratios, int count, double median, double tenth, double ninetieth) {
        assertThat(ratios.count()).isEqualTo(count);
        assertThat(ratios.median()).isCloseTo(median, within(PINNED));
        assertThat(ratios.tenth()).isCloseTo(tenth, within(PINNED));
        assertThat(ratios.ninetieth()).isCloseTo(ninetieth, within(PINNED));
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
        requireBand(ratios(by, specific, column, r -> true), 720, 0.743, 0.204, 1.106);
        requireBand(ratios(by, specific, column, sound), 488, 0.842, 0.403, 1.167);
        IntPredicate large = r -> by.attribute(r, column).orElseThrow() > 100;
        requireBand(ratios(by, specific, column, sound.and(large)), 130, 1.006, 0.865, 1.086);
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
        requireBand(ratios(by, areas, 0), 744, 0.983, 0.763, 1.421);
        requireBand(ratios(by, areas, 20), 347, 0.960, 0.866, 1.048);
    }

    private static Ratios ratios(Reaches by, DrainageArea areas, double above) {
        return Ratios.of(by.lasts()
                .filter(r -> by.attribute(r, "TotDASqKM").orElseThrow() > above)
                .mapToDouble(r -> areas.total(r)
                        / SQUARE_KILOMETER
                        / by.attribute(r, "TotDASqKM").orElseThrow())
                .toArray());
    }
}
