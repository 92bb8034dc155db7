// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Arrays;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.model.network.RandomNetworks.Draft;
import org.silverwake.model.network.RiverNetwork;

/** The ways to find discharge, against a water balance by hand. */
class DischargesTest {
    private static final String DRAFTS = "org.silverwake.model.network.RandomNetworks#drafts";
    /** ROUNDING: a few hundred sums; the design asks for 1e-12 (in percent here). */
    private static final double EXACT_PERCENT = 1e-10;

    private static final double EXACT = 1e-12;

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void specificDischargeTimesAreaOnTreesAndTheSumAtForks(Draft draft) {
        ReachTable reaches = Rivers.of(draft, Rivers.localAreas(draft));
        DrainageArea areas = DrainageArea.fromLocalAttribute(reaches);
        double q = 1.7e-8;
        Splits splits = Rivers.splits(reaches.network(), draft.seed());
        RoutedWater water = Rivers.route(reaches, splits, Discharges.fromSpecific(areas, reaches.size(), q));
        double outlets = 0;
        double land = 0;
        RiverNetwork network = reaches.network();
        for (int r = 0; r < reaches.size(); r++) {
            if (draft.kind().equals("tree") || draft.kind().equals("chain")) {
                assertThat(water.end(r)).as("%s", draft).isCloseTo(q * areas.total(r), withinPercentage(EXACT_PERCENT));
            }
            outlets += network.isOutlet(r) ? water.end(r) : 0;
            land += areas.local(r);
        }
        assertThat(outlets).as("%s", draft).isCloseTo(q * land, withinPercentage(EXACT_PERCENT));
        for (int node = 0; node < network.nodeCount(); node++) {
            if (network.isBifurcation(node)) {
                double in = 0;
                double out = 0;
                for (int k = 0; k < network.inCount(node); k++) {
                    in += water.end(network.in(node, k));
                }
                for (int k = 0; k < network.outCount(node); k++) {
                    out += water.head(network.out(node, k));
                }
                assertThat(out).as("%s", draft).isCloseTo(in, withinPercentage(EXACT_PERCENT));
            }
        }
        assertThat(water.left()).as("%s", draft).isCloseTo(water.entered(), withinPercentage(EXACT_PERCENT));
    }

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void everyReachCarriesItsAttribute(Draft draft) {
        double[] q =
                new Random(draft.seed()).doubles(draft.from().size(), 0.1, 5).toArray();
        ReachTable reaches = Rivers.of(draft, Map.of("discharge", Column.of(q)));
        Splits splits = Rivers.splits(reaches.network(), draft.seed());
        RoutedWater water = Rivers.route(reaches, splits, Discharges.fromAttribute(reaches, "wet", splits, null));
        for (int r = 0; r < reaches.size(); r++) {
            assertThat(water.end(r)).as("%s", draft).isCloseTo(q[r], withinPercentage(EXACT_PERCENT));
        }
        assertThat(water.left()).as("%s", draft).isCloseTo(water.entered(), withinPercentage(EXACT_PERCENT));
    }

    /** Found wrong: water of a feature's upper piece ran off into the arm, and a clamped correction was lost. */
    @ParameterizedTest
    @MethodSource(DRAFTS)
    void cutFeaturesCarryTheirAttributeWhateverJoinsOrLeavesWithin(Draft draft) {
        RiverNetwork network = draft.network();
        int n = network.size();
        double[] length = new double[n];
        Arrays.fill(length, 500);
        int[] group = new int[n];
        Random random = new Random(draft.seed());
        for (int r = 0; r < n; r++) {
            boolean goesOn = !network.isHeadwater(r) && random.nextBoolean();
            int up = goesOn ? network.in(network.fromNode(r), 0) : r;
            group[r] = goesOn && network.out(network.fromNode(r), 0) == r ? group[up] : r;
        }
        double[] q = random.doubles(n, 0.1, 5).toArray();
        ReachTable reaches = new ReachTable(network, length, group, Map.of("discharge", Column.of(q)));
        Splits splits = Rivers.splits(network, draft.seed());
        RoutedWater water = Rivers.route(reaches, splits, Discharges.fromAttribute(reaches, "wet", splits, null));
        for (int r = 0; r < n; r++) {
            if (reaches.isLastOfGroup(r)) {
                assertThat(water.end(r)).as("%s, reach %s", draft, r).isCloseTo(q[r], withinPercentage(EXACT_PERCENT));
            }
        }
        assertThat(water.left()).as("%s", draft).isCloseTo(water.entered(), withinPercentage(EXACT_PERCENT));
    }

    @Test
    void piecesOfACutFeatureInterpolate() {
        ReachTable reaches = Rivers.of(
                Map.of("discharge", Column.of(2, 6, 6, 6)), "top 0 1", "p 1 2 50 100", "q 2 3 50 200", "r 3 4 50 100");
        Splits splits = Rivers.equalSplits(reaches);
        RoutedWater water = Rivers.route(reaches, splits, Discharges.fromAttribute(reaches, "wet", splits, null));
        assertThat(water.end(1)).isCloseTo(3, within(EXACT));
        assertThat(water.end(2)).isCloseTo(5, within(EXACT));
        assertThat(water.end(3)).isCloseTo(6, within(EXACT));
    }

    @Test
    void aStateHasItsOwnColumnBeforeTheCommonOne() {
        ReachTable reaches =
                Rivers.of(Map.of("discharge", Column.of(2.0), "discharge.dry", Column.of(0.5)), "only 0 1");
        Splits splits = Rivers.equalSplits(reaches);
        assertThat(Discharges.fromAttribute(reaches, "dry", splits, null).along(0))
                .isEqualTo(0.5);
        assertThat(Discharges.fromAttribute(reaches, "wet", splits, null).along(0))
                .isEqualTo(2);
        ReachTable bare = Rivers.of(Map.of(), "only 0 1");
        assertThatThrownBy(() -> Discharges.fromAttribute(bare, "wet", splits, null))
                .hasMessageContaining("no discharge column for state wet");
    }

    @Test
    void aReachWithoutDischargeCarriesWhatFlowsIn() {
        Column gaps = new Column(3);
        gaps.put(0, 2);
        gaps.put(2, 5);
        ReachTable reaches = Rivers.of(Map.of("discharge", gaps), "a 0 1", "b 1 2", "c 2 3");
        Splits splits = Rivers.equalSplits(reaches);
        WaterSupply supply = Discharges.fromAttribute(reaches, "wet", splits, null);
        assertThat(Rivers.ends(Rivers.route(reaches, splits, supply), 3)).containsExactly(2, 2, 5);
        assertThat(supply.notes()).containsExactly("wet: 1 reaches have no discharge; they carry what flows in");
    }

    @Test
    void landBeyondTheLayerBringsItsPartAtTheHead() {
        // 50 drain to the headwater's end, 40 of them beyond the layer: 4/5 of 10 m3/s; a brook joins the same feature
        // below
        ReachTable reaches = Rivers.of(
                Map.of(
                        "drainage-area", Column.of(70, 20, 70),
                        "local-area", Column.of(4, 20, 6),
                        "discharge", Column.of(14, 4, 14)),
                "up 0 1 7 400",
                "brook 5 1 8 900",
                "low 1 2 7 600");
        Splits splits = Rivers.equalSplits(reaches);
        WaterSupply supply = Discharges.fromAttribute(reaches, "wet", splits, DrainageArea.fromAttribute(reaches));
        assertThat(supply.head(0)).isCloseTo(8, within(EXACT));
        RoutedWater water = Rivers.route(reaches, splits, supply);
        assertThat(water.end(0)).isCloseTo(8.8, within(EXACT));
        assertThat(water.end(2)).isCloseTo(14, within(EXACT));
        assertThat(water.corrected()).isEmpty();
    }

    @Test
    void headwatersAndLateralInflow() {
        Column own = new Column(3);
        own.put(1, 0.7);
        ReachTable reaches = Rivers.of(Map.of("headwater-discharge", own), "a 0 2 0 2000", "b 1 2", "c 2 3 9 3000");
        WaterSupply supply = Discharges.fromHeadwaters(reaches, "wet", 0.2, 1e-4);
        RoutedWater water = Rivers.route(reaches, Rivers.equalSplits(reaches), supply);
        assertThat(water.head(0)).isCloseTo(0.2, within(EXACT));
        assertThat(water.end(0)).isCloseTo(0.4, within(EXACT));
        assertThat(water.end(1)).isCloseTo(0.8, within(EXACT));
        assertThat(water.end(2)).isCloseTo(1.5, within(EXACT));
    }

    @Test
    void splitsFollowAColumnWhereAllArmsHaveItElseAreEqualAndListed() {
        Column weight = new Column(6);
        weight.put(1, 3);
        weight.put(2, 1);
        weight.put(4, 1);
        ReachTable reaches = Rivers.of(Map.of(), "t 0 1", "m 1 2", "s 1 2", "e 2 3", "x 3 4", "y 3 5");
        Splits splits = Splits.of(reaches.network(), java.util.Optional.of(weight));
        assertThat(splits.share(0)).isEqualTo(1);
        assertThat(splits.share(1)).isEqualTo(0.75);
        assertThat(splits.share(2)).isEqualTo(0.25);
        assertThat(splits.share(4)).isEqualTo(0.5);
        assertThat(splits.assumedEqual()).containsExactly(3);
        weight.put(4, 0);
        weight.put(5, 0);
        assertThat(Splits.of(reaches.network(), java.util.Optional.of(weight)).assumedEqual())
                .as("all weights 0")
                .containsExactly(3);
        weight.put(5, -1);
        assertThat(Splits.of(reaches.network(), java.util.Optional.of(weight)).share(5))
                .as("a negative weight")
                .isEqualTo(0.5);
    }
}
