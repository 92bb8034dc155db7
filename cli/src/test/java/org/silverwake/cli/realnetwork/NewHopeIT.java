// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.DrainageArea;

/** New Hope Creek: 84 braids, drainage area as attribute that both arms of a braid repeat, one specific discharge. */
class NewHopeIT {
    /** ROUNDING: a sum of some hundred terms. */
    private static final double ROUNDING_PERCENT = 1e-9;

    /** PRINTED: the README gives the outlet's area to 0.1 km2. */
    private static final double PRINTED = 0.05;

    /** ROUNDING: areas of up to 595 km2 are subtracted. */
    private static final double SQUARE_METER = 1;

    private static final double SQUARE_KILOMETER = 1e6;

    /** 10 L/s/km2 [m/s]. */
    private static final double SPECIFIC = 1e-8;

    @TempDir
    private static Path folder;

    private static Reaches reaches;
    private static DrainageArea areas;

    @BeforeAll
    static void run() {
        reaches = new Reaches(RealScenario.of("new-hope", folder).run());
        areas = DrainageArea.fromAttribute(reaches.basin().table());
    }

    @Test
    void outletCarriesAllTheLandsWater() {
        int outlet = reaches.last("8897784");
        assertThat(reaches.basin().network().isOutlet(outlet)).isTrue();
        assertThat(reaches.water().end(outlet) / SPECIFIC / SQUARE_KILOMETER).isCloseTo(595.3, within(PRINTED));
        assertThat(reaches.water().left()).isCloseTo(reaches.water().entered(), withinPercentage(ROUNDING_PERCENT));
    }

    @Test
    void armsOfABraidShareWhatFlowsIn() {
        RiverNetwork network = reaches.basin().network();
        int bifurcations = 0;
        for (int node = 0; node < network.nodeCount(); node++) {
            if (network.isBifurcation(node)) {
                bifurcations++;
                double in = 0;
                for (int k = 0; k < network.inCount(node); k++) {
                    in += reaches.water().end(network.in(node, k));
                }
                double out = 0;
                for (int k = 0; k < network.outCount(node); k++) {
                    out += reaches.water().head(network.out(node, k));
                }
                assertThat(out).isCloseTo(in, withinPercentage(ROUNDING_PERCENT));
            }
        }
        // README: 83 divergences
        assertThat(bifurcations).isEqualTo(83);
    }

    @Test
    void offTheBraidsDischargeIsAreaTimesSpecificDischarge() {
        Set<Integer> braided = braided();
        assertThat(reaches.lasts().filter(r -> !braided.contains(r)).count())
                .as("features past which no arm runs")
                .isEqualTo(492);
        reaches.lasts()
                .filter(r -> !braided.contains(r))
                .forEach(r -> assertThat(reaches.water().end(r))
                        .as(reaches.feature(r))
                        .isCloseTo(
                                SPECIFIC
                                        * SQUARE_KILOMETER
                                        * reaches.attribute(r, "TotDASqKM").orElseThrow(),
                                withinPercentage(ROUNDING_PERCENT)));
    }

    /** Reaches that do not get all the water of their drainage area, since some of it runs past them in another arm. */
    private static Set<Integer> braided() {
        RiverNetwork network = reaches.basin().network();
        Set<Integer> braided = new HashSet<>();
        for (int r = 0; r < network.size(); r++) {
            // a braid is open at r where removing r still leaves a way from what lies above it to the outlet
            if (passedBy(network, r)) {
                braided.add(r);
            }
        }
        return braided;
    }

    private static boolean passedBy(RiverNetwork network, int reach) {
        boolean[] above = new boolean[network.size()];
        above[reach] = true;
        for (int r = reach; r >= 0; r--) {
            for (int k = 0; above[r] && k < network.inCount(network.fromNode(r)); k++) {
                above[network.in(network.fromNode(r), k)] = true;
            }
        }
        for (int r = 0; r < reach; r++) {
            for (int k = 0; above[r] && k < network.outCount(network.toNode(r)); k++) {
                int below = network.out(network.toNode(r), k);
                if (!above[below]) {
                    return true;
                }
            }
        }
        return false;
    }

    /** The file repeats TotDASqKM on both arms; what each arm adds of its own must still come out. */
    @Test
    void localAreasFromTotalsAreTheFilesOwn() {
        double[] own = new double[reaches.size()];
        for (int r = 0; r < reaches.size(); r++) {
            own[reaches.basin().table().lastOfGroup(r)] += areas.local(r);
        }
        assertThat(reaches.lasts().count()).isEqualTo(746);
        reaches.lasts()
                .forEach(r -> assertThat(own[r])
                        .as(reaches.feature(r))
                        .isCloseTo(
                                reaches.attribute(r, "AreaSqKM").orElseThrow() * SQUARE_KILOMETER,
                                within(SQUARE_METER)));
    }
}
