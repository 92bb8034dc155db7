// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.model.network.RandomNetworks.Draft;
import org.silverwake.model.water.Gauging.Gauge;

/** Gauges are met, increments add up, water closes. Areas in these hand cases are plain numbers of m2. */
class GaugingTest {
    private static final String DRAFTS = "org.silverwake.model.network.RandomNetworks#drafts";
    /** ROUNDING: a few hundred sums, relative to the largest gauge. */
    private static final double EXACT = 1e-12;

    private static final double EXACT_PERCENT = 1e-10;

    /** upper - (gauge mid) mid - (gauge low) low, a brook into mid's end, a brook into low's end. */
    private static ReachTable river() {
        return Rivers.of(
                Map.of("local-area", Column.of(10, 20, 5, 15, 8, 30)),
                "upper 0 1",
                "mid 1 2",
                "brook 5 2",
                "low 2 3",
                "late 6 3",
                "end 3 4");
    }

    private static RoutedWater route(ReachTable reaches, Splits splits, List<Gauge> gauges) {
        DrainageArea areas = DrainageArea.fromLocalAttribute(reaches);
        return Rivers.route(reaches, splits, Gauging.supply(reaches, areas, splits, gauges));
    }

    @Test
    void oneGaugeGivesOneSpecificDischarge() {
        ReachTable reaches = river();
        RoutedWater water = route(reaches, Rivers.equalSplits(reaches), List.of(new Gauge("low", 3, 7)));
        // 35 m2 above carry 7 m3/s: 0.2 m/s everywhere, below and beside too
        DrainageArea areas = DrainageArea.fromLocalAttribute(reaches);
        for (int r = 0; r < reaches.size(); r++) {
            assertThat(water.end(r)).isCloseTo(0.2 * areas.total(r), within(EXACT));
        }
    }

    @Test
    void theIncrementIsSharedByLocalAreaBetweenTwoGauges() {
        ReachTable reaches = river();
        RoutedWater water =
                route(reaches, Rivers.equalSplits(reaches), List.of(new Gauge("low", 3, 6), new Gauge("mid", 1, 1)));
        // above mid: 1 over 10 m2; between: 5 m3/s over mid 20 and brook 5, that is 0.2 m/s
        assertThat(water.head(1)).isCloseTo(1, within(EXACT));
        assertThat(water.end(1)).isCloseTo(5, within(EXACT));
        assertThat(water.end(2)).isCloseTo(1, within(EXACT));
        assertThat(water.head(3)).isCloseTo(6, within(EXACT));
        // below: the gauge's own 6 m3/s over its 35 m2, on the branch that joins, too
        assertThat(water.end(3)).isCloseTo(6 + 15 * 6.0 / 35, within(EXACT));
        assertThat(water.end(4)).isCloseTo(8 * 6.0 / 35, within(EXACT));
        assertThat(water.end(5)).isCloseTo(58 * 6.0 / 35 - 35 * 6.0 / 35 + 6 + 30 * 6.0 / 35, within(EXACT));
    }

    /** Found wrong: the brook was dried, and what it could not lose was missing from the loss: the gauge was not met. */
    @Test
    void aLosingStretchTakesFromTheGaugedWaterOnly() {
        ReachTable reaches = river();
        DrainageArea areas = DrainageArea.fromLocalAttribute(reaches);
        Splits splits = Rivers.equalSplits(reaches);
        WaterSupply supply =
                Gauging.supply(reaches, areas, splits, List.of(new Gauge("mid", 1, 9), new Gauge("low", 3, 7)));
        RoutedWater water = Rivers.route(reaches, splits, supply);
        assertThat(water.head(1)).isCloseTo(9, within(EXACT));
        assertThat(water.head(3)).isCloseTo(7, within(EXACT));
        assertThat(water.end(2)).as("the brook: 5 m2 at the lower gauge's 7/35").isCloseTo(1, within(EXACT));
        assertThat(water.end(1)).isCloseTo(6, within(EXACT));
        assertThat(water.corrected()).containsExactly(1);
        assertThat(supply.notes()).hasSize(1);
        assertThat(supply.notes().get(0))
                .contains("gauge low")
                .contains("losing stretch")
                .contains("mercury stays");
        assertThat(water.left()).isCloseTo(water.entered(), within(EXACT));
    }

    @Test
    void aGaugeThatReadsNothingDriesTheRiver() {
        ReachTable reaches = Rivers.of(Map.of("local-area", Column.of(10, 20, 15)), "a 0 1", "b 1 2", "c 2 3");
        RoutedWater water =
                route(reaches, Rivers.equalSplits(reaches), List.of(new Gauge("up", 1, 3), new Gauge("down", 2, 0)));
        assertThat(water.end(0)).isCloseTo(3, within(EXACT));
        assertThat(water.head(2)).isCloseTo(0, within(EXACT));
        assertThat(water.left()).isCloseTo(water.entered(), within(EXACT));
    }

    /** Found wrong: a gauge at the very head of a headwater was overwritten by the gauge below. */
    @Test
    void aGaugeAtTheHeadOfAHeadwaterIsMetToo() {
        ReachTable reaches = Rivers.of(
                Map.of("drainage-area", Column.of(50, 80, 90), "local-area", Column.of(10, 30, 10)),
                "a 0 1",
                "b 1 2",
                "c 2 3");
        DrainageArea areas = DrainageArea.fromAttribute(reaches);
        Splits splits = Rivers.equalSplits(reaches);
        RoutedWater water = Rivers.route(
                reaches,
                splits,
                Gauging.supply(reaches, areas, splits, List.of(new Gauge("spring", 0, 2), new Gauge("low", 2, 10))));
        assertThat(water.head(0)).isCloseTo(2, within(EXACT));
        assertThat(water.end(0)).as("8 m3/s over 40 m2").isCloseTo(4, within(EXACT));
        assertThat(water.head(2)).isCloseTo(10, within(EXACT));
        ReachTable bare = river();
        WaterSupply put = Gauging.supply(
                bare,
                DrainageArea.fromLocalAttribute(bare),
                Rivers.equalSplits(bare),
                List.of(new Gauge("spring", 0, 2), new Gauge("low", 3, 12)));
        RoutedWater bareWater = Rivers.route(bare, Rivers.equalSplits(bare), put);
        assertThat(bareWater.head(0)).isCloseTo(2, within(EXACT));
        assertThat(bareWater.head(3)).isCloseTo(12, within(EXACT));
        assertThat(put.notes().get(0)).contains("put in at the gauge");
    }

    /** Found wrong: a gauge on the smaller arm was met before the trunk's water reached it. */
    @Test
    void aGaugeOnASmallerArmIsMet() {
        ReachTable reaches =
                Rivers.of(Map.of("local-area", Column.of(10, 1, 2, 3)), "trunk 0 1", "main 1 2", "side 1 2", "end 2 3");
        Splits splits = Splits.of(reaches.network(), java.util.Optional.of(Column.of(1.0, 3, 1, 1)));
        RoutedWater water = route(reaches, splits, List.of(new Gauge("side", 2, 0.5)));
        assertThat(water.head(2)).isCloseTo(0.5, within(EXACT));
        assertThat(water.end(0)).as("the side takes a quarter").isCloseTo(2, within(EXACT));
        assertThat(water.end(1)).as("0.2 m/s as above").isCloseTo(1.7, within(EXACT));
    }

    @Test
    void aGaugeThatContradictsTheSplitIsNamed() {
        ReachTable reaches =
                Rivers.of(Map.of("local-area", Column.of(10, 1, 2, 3)), "trunk 0 1", "main 1 2", "side 1 2", "end 2 3");
        Splits splits = Splits.of(reaches.network(), java.util.Optional.of(Column.of(1.0, 3, 1, 1)));
        WaterSupply supply = Gauging.supply(
                reaches,
                DrainageArea.fromLocalAttribute(reaches),
                splits,
                List.of(new Gauge("main", 1, 6), new Gauge("side", 2, 0.5)));
        assertThat(supply.notes()).anyMatch(n -> n.contains("gauge side: 0.5 m3/s cannot be met"));
        assertThat(Rivers.route(reaches, splits, supply).head(1)).isCloseTo(6, within(EXACT));
    }

    @Test
    void otherRiversTakeTheMeanAndAreCounted() {
        ReachTable reaches = Rivers.of(Map.of("local-area", Column.of(10, 20, 4)), "a 0 1", "b 1 2", "elsewhere 7 8");
        WaterSupply supply = Gauging.supply(
                reaches,
                DrainageArea.fromLocalAttribute(reaches),
                Rivers.equalSplits(reaches),
                List.of(new Gauge("g", 1, 5)));
        assertThat(supply.along(2)).isCloseTo(2, within(EXACT));
        assertThat(supply.notes())
                .containsExactly(
                        "1 reaches lie in parts without a gauge; they take the mean specific discharge of all gauges");
    }

    @Test
    void belowTwoGaugedRiversTheNearerGaugeHolds() {
        // gauge a lies 1000 m above the confluence, gauge b 3000 m
        ReachTable reaches = Rivers.of(
                Map.of("local-area", Column.of(10, 10, 1, 1, 5)),
                "a0 0 1",
                "b0 5 6",
                "b 6 2 1 3000",
                "a 1 2 2 1000",
                "c 2 3");
        WaterSupply supply = Gauging.supply(
                reaches,
                DrainageArea.fromLocalAttribute(reaches),
                Rivers.equalSplits(reaches),
                List.of(new Gauge("b", 2, 1), new Gauge("a", 3, 4)));
        assertThat(supply.along(4)).as("5 m2 at gauge a's 0.4 m/s").isCloseTo(2, within(EXACT));
    }

    @Test
    void noGaugeAndTwoAtOnePlaceAreRefused() {
        ReachTable reaches = river();
        DrainageArea areas = DrainageArea.fromLocalAttribute(reaches);
        Splits splits = Rivers.equalSplits(reaches);
        assertThatThrownBy(() -> Gauging.supply(reaches, areas, splits, List.of()))
                .hasMessageContaining("no gauge");
        assertThatThrownBy(() ->
                        Gauging.supply(reaches, areas, splits, List.of(new Gauge("x", 1, 1), new Gauge("y", 1, 2))))
                .hasMessageContaining("x and y stand at one place");
        assertThatThrownBy(() -> Gauging.withExponent(reaches, areas, splits, new Gauge("x", 0, 1), 0.8))
                .hasMessageContaining("no area drains to it");
    }

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void exponentOneIsPlain(Draft draft) {
        ReachTable reaches = Rivers.of(draft, Rivers.localAreas(draft));
        DrainageArea areas = DrainageArea.fromLocalAttribute(reaches);
        Splits splits = Rivers.splits(reaches.network(), draft.seed());
        int at = lowReach(reaches);
        if (at < 0) {
            return;
        }
        Gauge gauge = new Gauge("g", at, 3);
        RoutedWater plain = Rivers.route(reaches, splits, Gauging.supply(reaches, areas, splits, List.of(gauge)));
        RoutedWater power = Rivers.route(reaches, splits, Gauging.withExponent(reaches, areas, splits, gauge, 1));
        for (int r = 0; r < reaches.size(); r++) {
            assertThat(power.end(r))
                    .as("%s, reach %s", draft, r)
                    .isCloseTo(plain.end(r), withinPercentage(EXACT_PERCENT));
        }
        RoutedWater steep = Rivers.route(reaches, splits, Gauging.withExponent(reaches, areas, splits, gauge, 0.8));
        assertThat(steep.head(at)).as("%s", draft).isCloseTo(3, withinPercentage(EXACT_PERCENT));
    }

    @Test
    void exponentByHand() {
        // chain, gauge at the end of two reaches of 4 and 8 m2, n = 2: a A_mid = 4 x 2 + 8 x 8 = 72; 36 m3/s: q0 = 0.5
        ReachTable reaches = Rivers.of(Map.of("local-area", Column.of(4, 8, 2)), "a 0 1", "b 1 2", "c 2 3");
        DrainageArea areas = DrainageArea.fromLocalAttribute(reaches);
        Splits splits = Rivers.equalSplits(reaches);
        WaterSupply supply = Gauging.withExponent(reaches, areas, splits, new Gauge("g", 2, 36), 2);
        assertThat(supply.along(0)).isCloseTo(4, within(EXACT));
        assertThat(supply.along(1)).isCloseTo(32, within(EXACT));
        assertThat(supply.along(2)).isCloseTo(13, within(EXACT));
    }

    private static int lowReach(ReachTable reaches) {
        for (int r = reaches.size() - 1; r >= 0; r--) {
            if (!reaches.network().isHeadwater(r)) {
                return r;
            }
        }
        return -1;
    }

    /** Up to four gauges on random trees, any discharges: all are met, losing stretches included. */
    @ParameterizedTest
    @MethodSource("org.silverwake.model.network.RandomNetworks#seeds")
    void severalGaugesAreAllMetOnTrees(long seed) {
        Draft draft = org.silverwake.model.network.RandomNetworks.tree(seed, 60);
        ReachTable reaches = Rivers.of(draft, Rivers.localAreas(draft));
        Random random = new Random(seed);
        TreeSet<Integer> places = new TreeSet<>();
        for (int tries = 0; tries < 12 && places.size() < 4; tries++) {
            int r = random.nextInt(reaches.size());
            if (!reaches.network().isHeadwater(r)) {
                places.add(r);
            }
        }
        List<Gauge> gauges = new ArrayList<>();
        for (int r : places) {
            gauges.add(new Gauge("g" + r, r, 1 + 9 * random.nextDouble()));
        }
        RoutedWater water = route(reaches, Rivers.equalSplits(reaches), gauges);
        for (Gauge gauge : gauges) {
            assertThat(water.head(gauge.reach()))
                    .as("%s, %s", draft, gauge)
                    .isCloseTo(gauge.discharge(), within(1e-11));
        }
        assertThat(water.left()).as("%s", draft).isCloseTo(water.entered(), withinPercentage(EXACT_PERCENT));
    }
}
