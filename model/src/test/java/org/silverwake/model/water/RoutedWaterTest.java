// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.model.network.RandomNetworks.Draft;
import org.silverwake.model.validation.Reference;

class RoutedWaterTest {
    private static final String DRAFTS = "org.silverwake.model.network.RandomNetworks#drafts";
    private static final double EXACT = 1e-12;
    /** ROUNDING: a few hundred sums, relative, in percent. */
    private static final double EXACT_PERCENT = 1e-10;

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void waterClosesWithSitesAbstractionsAndCorrections(Draft draft) {
        ReachTable reaches = Rivers.of(draft, Map.of());
        int n = reaches.size();
        Random random = new Random(draft.seed());
        WaterSupply supply = WaterSupply.of(
                random.doubles(n, 0, 1).toArray(), random.doubles(n, -1, 1.5).toArray());
        double[] site = random.doubles(n, 0, 0.1).toArray();
        double[] taken = random.doubles(n, 0, 0.8).toArray();
        Splits splits = Rivers.splits(reaches.network(), draft.seed());
        RoutedWater water = RoutedWater.route(reaches.network(), splits, supply, site, taken);
        assertThat(water.left()).as("%s", draft).isCloseTo(water.entered(), withinPercentage(EXACT_PERCENT));
        for (int r = 0; r < n; r++) {
            assertThat(water.head(r)).as("%s", draft).isGreaterThanOrEqualTo(0);
            assertThat(water.end(r)).as("%s", draft).isGreaterThanOrEqualTo(0);
            assertThat(water.abstractedShare(r)).isBetween(0.0, 1.0);
            assertThat(water.corrected().contains(r)).isEqualTo(supply.along(r) < 0);
        }
    }

    /** Two streams of 10 and 2 m3/s at 5 and 50 mix to 12.5 (shares by discharge). */
    @Test
    @Reference(key = "vanderperk2013", locator = "mixing of two streams")
    void mixingOfTwoStreams() {
        ReachTable reaches = Rivers.of(Map.of(), "a 0 2", "b 1 2", "c 2 3");
        RoutedWater water = Rivers.route(
                reaches, Rivers.equalSplits(reaches), WaterSupply.of(new double[] {10, 2, 0}, new double[3]));
        assertThat(water.head(2)).isCloseTo(12, within(EXACT));
        assertThat((water.end(0) * 5 + water.end(1) * 50) / water.head(2)).isCloseTo(12.5, within(EXACT));
    }

    @Test
    void anAbstractionTakesItsShareAfterSiteWater() {
        ReachTable reaches = Rivers.of(Map.of(), "a 0 1", "b 1 2", "c 2 3");
        RoutedWater water = RoutedWater.route(
                reaches.network(),
                Rivers.equalSplits(reaches),
                WaterSupply.of(new double[] {3, 0, 0}, new double[] {0, 0, 1}),
                new double[] {0, 1, 0},
                new double[] {0, 1, 99});
        assertThat(water.abstractedShare(1)).isCloseTo(0.25, within(EXACT));
        assertThat(water.head(1)).isCloseTo(3, within(EXACT));
        assertThat(water.siteWater(1)).isEqualTo(1);
        assertThat(water.abstractedShare(2)).isEqualTo(1);
        assertThat(water.head(2)).isZero();
        assertThat(water.mean(2)).isEqualTo(0.5);
        assertThat(water.isWet(2)).isTrue();
        assertThat(water.emptied()).containsExactly(2);
        assertThat(water.left()).isCloseTo(water.entered(), within(EXACT));
    }

    @Test
    void aReachWithoutWaterIsDry() {
        ReachTable reaches = Rivers.of(Map.of(), "a 0 1", "b 1 2");
        RoutedWater water =
                Rivers.route(reaches, Rivers.equalSplits(reaches), WaterSupply.of(new double[2], new double[] {0, -5}));
        assertThat(water.isWet(0)).isFalse();
        assertThat(water.isWet(1)).isFalse();
        assertThat(water.end(1)).isZero();
        assertThat(water.abstractedShare(0)).isZero();
        assertThat(water.entered()).isZero();
        assertThat(water.left()).isZero();
    }

    /** The same river with one feature cut at a third of its length: discharges at the old ends stay, by every method. */
    @Test
    void cuttingAFeatureChangesNoDischarge() {
        Map<String, Column> whole = Map.of(
                "drainage-area", Column.of(30, 90, 100),
                "local-area", Column.of(10, 60, 10),
                "discharge", Column.of(3, 8, 11));
        Map<String, Column> cut = Map.of(
                "drainage-area", Column.of(30, 90, 90, 100),
                "local-area", Column.of(10, 20, 40, 10),
                "discharge", Column.of(3, 8, 8, 11));
        ReachTable one = Rivers.of(whole, "a 0 1 0 500", "b 1 2 1 900", "c 2 3 2 700");
        ReachTable two = Rivers.of(cut, "a 0 1 0 500", "b1 1 9 1 300", "b2 9 2 1 600", "c 2 3 2 700");
        for (int method = 0; method < 5; method++) {
            RoutedWater before = Rivers.route(one, Rivers.equalSplits(one), supply(one, method, 2));
            RoutedWater after = Rivers.route(two, Rivers.equalSplits(two), supply(two, method, 3));
            assertThat(after.end(0)).as("method %s", method).isCloseTo(before.end(0), within(EXACT));
            assertThat(after.end(2)).as("method %s", method).isCloseTo(before.end(1), within(EXACT));
            assertThat(after.end(3)).as("method %s", method).isCloseTo(before.end(2), within(EXACT));
            assertThat(after.end(1))
                    .as("method %s", method)
                    .isCloseTo(before.head(1) + (before.end(1) - before.head(1)) / 3, within(EXACT));
        }
    }

    private static WaterSupply supply(ReachTable reaches, int method, int gauge) {
        Splits splits = Rivers.equalSplits(reaches);
        DrainageArea areas = DrainageArea.fromAttribute(reaches);
        return switch (method) {
            case 0 -> Discharges.fromAttribute(reaches, "wet", splits, areas);
            case 1 -> Discharges.fromSpecific(areas, reaches.size(), 0.1);
            case 2 -> Discharges.fromSpecific(DrainageArea.fromLocalAttribute(reaches), reaches.size(), 0.1);
            case 3 -> Discharges.fromHeadwaters(reaches, "wet", 1, 1e-3);
            default -> Gauging.supply(reaches, areas, splits, java.util.List.of(new Gauging.Gauge("g", gauge, 4)));
        };
    }
}
