// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.model.network.RandomNetworks.Draft;
import org.silverwake.model.network.UpstreamSums;

class DrainageAreaTest {
    private static final String DRAFTS = "org.silverwake.model.network.RandomNetworks#drafts";
    /** ROUNDING: sums of up to a few hundred terms, relative, in percent. */
    private static final double EXACT_PERCENT = 1e-10;
    /** ROUNDING of a few operations on areas of some hundred. */
    private static final double EXACT = 1e-10;

    private static final String[] FORK = {"a 0 2", "b 1 2", "c 2 3"};
    private static final String[] LOOP = {"trunk 0 1", "main 1 2", "side 1 2", "end 2 3"};

    @Test
    void attributesOnATree() {
        DrainageArea areas =
                DrainageArea.fromAttribute(Rivers.of(Map.of("drainage-area", Column.of(30, 50, 100)), FORK));
        assertThat(areas.local(0)).isCloseTo(30, within(EXACT));
        assertThat(areas.local(2)).isCloseTo(20, within(EXACT));
        assertThat(areas.total(2)).isCloseTo(100, within(EXACT));
        assertThat(areas.method()).isEqualTo("attribute");
    }

    /** National networks give both arms of a loop the whole area above them (common practice, no source). */
    @Test
    void bothArmsOfALoopRepeatTheTotal() {
        DrainageArea areas =
                DrainageArea.fromAttribute(Rivers.of(Map.of("drainage-area", Column.of(100, 103, 101, 110)), LOOP));
        assertThat(areas.local(0)).isCloseTo(100, within(EXACT));
        assertThat(areas.local(1)).isCloseTo(3, within(EXACT));
        assertThat(areas.local(2)).isCloseTo(1, within(EXACT));
        // 100 + 3 + 1 flow in once each
        assertThat(areas.local(3)).isCloseTo(6, within(EXACT));
        assertThat(areas.total(3)).isCloseTo(110, within(EXACT));
    }

    @Test
    void aMissingValueIsListedAndTheNextReachTakesItsLand() {
        Column gaps = new Column(3);
        gaps.put(0, 30);
        gaps.put(2, 100);
        DrainageArea areas = DrainageArea.fromAttribute(Rivers.of(Map.of("drainage-area", gaps), FORK));
        assertThat(areas.missing()).containsExactly(1);
        assertThat(areas.local(1)).isZero();
        assertThat(areas.local(2)).isCloseTo(70, within(EXACT));
    }

    @Test
    void anAreaThatFallsDownstreamIsKeptAsANegativeOne() {
        DrainageArea areas =
                DrainageArea.fromAttribute(Rivers.of(Map.of("drainage-area", Column.of(30, 50, 70)), FORK));
        assertThat(areas.local(2)).isCloseTo(-10, within(EXACT));
        assertThat(areas.total(2)).isCloseTo(70, within(EXACT));
    }

    @Test
    void theRasterGivesEachReachItsOwnLandAndHeadwatersThatAboveThem() {
        Column heads = new Column(3);
        heads.put(1, 5);
        ReachTable reaches = Rivers.of(Map.of("dem-local-area", Column.of(30, 50, 20), "dem-head-area", heads), FORK);
        DrainageArea areas = DrainageArea.fromTerrain(reaches);
        assertThat(areas.method()).isEqualTo("elevation raster");
        assertThat(areas.isFromTerrain()).isTrue();
        assertThat(areas.local(1)).isCloseTo(50, within(EXACT));
        assertThat(areas.outside(1)).isCloseTo(5, within(EXACT));
        assertThat(areas.total(1)).isCloseTo(55, within(EXACT));
        assertThat(areas.total(2)).isCloseTo(105, within(EXACT));
    }

    @Test
    void reachesOutsideOfTheRasterAreListed() {
        Column land = new Column(3);
        land.put(0, 30);
        land.put(2, 20);
        DrainageArea areas = DrainageArea.fromTerrain(Rivers.of(Map.of("dem-local-area", land), FORK));
        assertThat(areas.missing()).containsExactly(1);
        assertThat(areas.total(2)).isCloseTo(50, within(EXACT));
    }

    @Test
    void aMissingValueIsFilledFromTheRaster() {
        Column gaps = new Column(3);
        gaps.put(0, 30);
        gaps.put(2, 100);
        Column heads = new Column(3);
        heads.put(1, 5);
        DrainageArea areas = DrainageArea.fromAttribute(Rivers.of(
                Map.of("drainage-area", gaps, "dem-local-area", Column.of(99, 40, 99), "dem-head-area", heads), FORK));
        assertThat(areas.missing()).isEmpty();
        assertThat(areas.filled()).containsExactly(1);
        assertThat(areas.isFromTerrain()).isFalse();
        assertThat(areas.method()).isEqualTo("attribute, elevation raster where missing");
        assertThat(areas.local(0)).isCloseTo(30, within(EXACT));
        assertThat(areas.local(1)).isCloseTo(45, within(EXACT));
        // what is known stays: 100 less 30 and 45
        assertThat(areas.local(2)).isCloseTo(25, within(EXACT));
        assertThat(areas.total(2)).isCloseTo(100, within(EXACT));
        Column locals = new Column(3);
        locals.put(0, 30);
        DrainageArea own = DrainageArea.fromLocalAttribute(
                Rivers.of(Map.of("local-area", locals, "dem-local-area", Column.of(99, 40, 20)), FORK));
        assertThat(own.filled()).containsExactly(1, 2);
        assertThat(own.total(2)).isCloseTo(90, within(EXACT));
    }

    @Test
    void landBeyondTheLayerEntersAtTheHeadOfAHeadwater() {
        ReachTable reaches =
                Rivers.of(Map.of("drainage-area", Column.of(30, 50, 100), "local-area", Column.of(30, 10, 20)), FORK);
        DrainageArea areas = DrainageArea.fromAttribute(reaches);
        assertThat(areas.outside(0)).isZero();
        assertThat(areas.outside(1)).isCloseTo(40, within(EXACT));
        assertThat(areas.local(1)).isCloseTo(10, within(EXACT));
        assertThat(areas.total(1)).isCloseTo(50, within(EXACT));
        assertThat(areas.total(2)).isCloseTo(100, within(EXACT));
    }

    /** Found wrong: features numbered beyond the number of reaches, and local areas of pieces, which add up to the feature's. */
    @Test
    void aCutHeadwaterFeatureKeepsItsLandBeyondTheLayer() {
        // feature 70: 50 drain to its end, 10 of them along it (pieces 400 and 600 m), 40 beyond; a brook of 20 joins
        // at the cut
        ReachTable reaches = Rivers.of(
                Map.of("drainage-area", Column.of(70, 20, 70, 75), "local-area", Column.of(4, 20, 6, 5)),
                "up 0 1 70 400",
                "brook 5 1 71 900",
                "low 1 2 70 600",
                "end 2 3 72 500");
        DrainageArea areas = DrainageArea.fromAttribute(reaches);
        assertThat(areas.outside(0)).isCloseTo(40, within(EXACT));
        assertThat(areas.outside(1)).isZero();
        assertThat(areas.local(0)).isCloseTo(4, within(EXACT));
        assertThat(areas.local(2)).isCloseTo(6, within(EXACT));
        assertThat(areas.total(0)).isCloseTo(44, within(EXACT));
        assertThat(areas.total(2)).isCloseTo(70, within(EXACT));
        assertThat(areas.total(3)).isCloseTo(75, within(EXACT));
    }

    @Test
    void localAreasOfPiecesAreTheirOwn() {
        ReachTable reaches = Rivers.of(Map.of("local-area", Column.of(4, 6)), "up 0 1 0 400", "low 1 2 0 600");
        DrainageArea areas = DrainageArea.fromLocalAttribute(reaches);
        assertThat(areas.total(1)).isCloseTo(10, within(EXACT));
        assertThat(areas.method()).isEqualTo("local-area attribute");
        assertThat(areas.missing()).isEmpty();
    }

    @Test
    void lengthShareByHand() {
        // 3 x 1000 m drain to one outlet of 90; a stretch of 1000 m elsewhere takes the rest
        ReachTable reaches = Rivers.of(Map.of(), "a 0 2", "b 1 2", "c 2 3", "alone 7 8");
        Column basin = new Column(4);
        basin.put(2, 90);
        DrainageArea areas = DrainageArea.byLength(reaches, basin, 25);
        assertThat(areas.total(0)).isCloseTo(30, within(EXACT));
        assertThat(areas.total(2)).isCloseTo(90, within(EXACT));
        assertThat(areas.total(3)).isCloseTo(25, within(EXACT));
        assertThat(areas.method()).isEqualTo("length share");
    }

    @Test
    void withoutTheColumnItIsRefused() {
        ReachTable bare = Rivers.of(Map.of(), FORK);
        assertThatThrownBy(() -> DrainageArea.fromAttribute(bare)).hasMessageContaining("drainage-area");
        assertThatThrownBy(() -> DrainageArea.fromLocalAttribute(bare)).hasMessageContaining("local-area");
    }

    @ParameterizedTest
    @MethodSource(DRAFTS)
    void totalsAndLocalsSayTheSame(Draft draft) {
        ReachTable byLocal = Rivers.of(draft, Rivers.localAreas(draft));
        DrainageArea one = DrainageArea.fromLocalAttribute(byLocal);
        double[] local = new double[byLocal.size()];
        java.util.Arrays.setAll(local, one::local);
        double[] total = new UpstreamSums(byLocal.network()).total(local);
        DrainageArea two = DrainageArea.fromAttribute(Rivers.of(draft, Map.of("drainage-area", Column.of(total))));
        for (int r = 0; r < byLocal.size(); r++) {
            assertThat(two.total(r)).as("%s", draft).isCloseTo(one.total(r), withinPercentage(EXACT_PERCENT));
            assertThat(two.local(r)).as("%s", draft).isCloseTo(one.local(r), within(1e-12 * total[r]));
        }
    }
}
