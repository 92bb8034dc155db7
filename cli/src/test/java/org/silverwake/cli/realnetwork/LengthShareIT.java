// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.DrainageArea;

/** Drainage area by length share, from the outlet's basin alone, against the area the layer states. */
class LengthShareIT {
    /** PINNED: what this version finds, as docs/validation/length-share.md prints it. */
    private static final double PINNED = 0.005;

    private static final double SQUARE_KILOMETER = 1e6;

    @TempDir
    private Path folder;

    private static Ratios ratios(Reaches by, String column, IntPredicate which) {
        assertThat(by.outcome().water().areaMethod()).isEqualTo("length share");
        double specific = 8e-9;
        return Ratios.of(by.lasts()
                .filter(which)
                .filter(r -> by.attribute(r, column).orElseThrow() > 0)
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
        Ratios all = ratios(by, "usarea_km2", r -> true);
        Ratios sound = ratios(by, "usarea_km2", r -> addsUp(by, "usarea_km2", r));
        Ratios large = ratios(
                by,
                "usarea_km2",
                r -> addsUp(by, "usarea_km2", r)
                        && by.attribute(r, "usarea_km2").orElseThrow() > 100);
        System.err.println("LENGTH methow all " + all + "\n sound " + sound + "\n large " + large);
    }

    @Test
    void newHope() {
        Reaches by = new Reaches(RealScenario.of("new-hope", folder)
                .with("    drainage-area: {column: TotDASqKM, unit: km2}\n", "")
                .with("  columns:\n", "  outlets: [{feature: \"8897784\", basin-area: 595.3383 km2}]\n")
                .with("mean: 10 L/s/km2", "mean: 8 L/s/km2")
                .run());
        DrainageArea areas = DrainageArea.byLength(by.basin().table(), basin(by), 0);
        Ratios all = Ratios.of(by.lasts()
                .mapToDouble(r -> areas.total(r)
                        / SQUARE_KILOMETER
                        / Math.max(1e-4, by.attribute(r, "TotDASqKM").orElseThrow()))
                .toArray());
        Ratios large = Ratios.of(by.lasts()
                .filter(r -> by.attribute(r, "TotDASqKM").orElseThrow() > 20)
                .mapToDouble(r -> areas.total(r)
                        / SQUARE_KILOMETER
                        / by.attribute(r, "TotDASqKM").orElseThrow())
                .toArray());
        System.err.println("LENGTH newhope all " + all + "\n large " + large);
    }

    private static org.silverwake.model.water.Column basin(Reaches by) {
        var column = new org.silverwake.model.water.Column(by.size());
        column.put(by.last("8897784"), 595.3383e6);
        return column;
    }
}
