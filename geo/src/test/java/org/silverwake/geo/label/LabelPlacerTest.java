// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class LabelPlacerTest {
    /** ROUNDING: a few operations on numbers below 1000. */
    private static final double ROUNDING = 1e-10;

    private static final Box AREA = Box.upright(0, 0, 500, 400);

    @Test
    void uprightBoxesOverlapWhenTheyShareArea() {
        Box box = Box.upright(0, 0, 10, 4);
        assertThat(box.overlaps(Box.upright(9, 3, 5, 5))).isTrue();
        assertThat(box.overlaps(Box.upright(10, 0, 5, 5))).isFalse();
        assertThat(box.overlaps(Box.upright(3, 1, 1, 1))).isTrue();
    }

    /** A square of side 2 turned by 45 degrees reaches sqrt 2 = 1.414 along the axes but only 1 along its sides. */
    @Test
    void turnedBoxesOverlapOnlyWhereTheyLie() {
        Box turned = new Box(0, 0, 1, 1, Math.PI / 4);
        assertThat(turned.overlaps(new Box(2.41, 0, 1, 1, 0))).isTrue();
        assertThat(turned.overlaps(new Box(2.42, 0, 1, 1, 0))).isFalse();
        assertThat(turned.overlaps(new Box(1.8, 1.8, 1, 1, 0))).isFalse();
        assertThat(turned.isWithin(new Box(0, 0, 1.42, 1.42, 0))).isTrue();
        assertThat(turned.isWithin(new Box(0, 0, 1.41, 1.42, 0))).isFalse();
    }

    /** By hand: a line along the diagonal of a 6 by 8 box is 10 long inside; one past its side is 0. */
    @Test
    void lengthInsideIsThatOfTheClippedLine() {
        Box box = Box.upright(0, 0, 6, 8);
        assertThat(box.lengthInside(-6, -8, 12, 16)).isCloseTo(10, within(ROUNDING));
        assertThat(box.lengthInside(1, 2, 1, 5)).isCloseTo(3, within(ROUNDING));
        assertThat(box.lengthInside(7, -1, 7, 9)).isCloseTo(0, within(ROUNDING));
        assertThat(new Box(0, 0, 5, 1, Math.PI / 2).lengthInside(0, -9, 0, 9)).isCloseTo(10, within(ROUNDING));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void noOverlapsOnCrowdedRandomMaps(long seed) {
        Random random = new Random(seed);
        LabelPlacer placer = new LabelPlacer(AREA);
        placer.keepClear(Box.upright(350, 250, 140, 140));
        List<LabelRequest> requests = new ArrayList<>();
        for (int k = 0; k < 150; k++) {
            double x = random.nextDouble() * 500;
            double y = random.nextDouble() * 400;
            placer.keepClear(new Box(x, y, 4, 4, 0));
            requests.add(new LabelRequest(k % 3, Spots.around(x, y, 4, 30 + random.nextDouble() * 60, 12)));
        }
        for (int k = 0; k < 40; k++) {
            requests.add(new LabelRequest(5, alongRandomLine(random, placer)));
        }
        LabelLayout layout = placer.place(requests);
        assertThat(layout.overlaps(placer.obstacles())).as("seed %d", seed).isZero();
        assertThat(layout.spots().stream().flatMap(Optional::stream).map(Spot::box))
                .allMatch(box -> box.isWithin(AREA));
        assertThat(layout.dropped()).as("some cannot fit, seed %d", seed).isPositive();
        assertThat(requests.size() - layout.dropped())
                .as("many can, seed %d", seed)
                .isGreaterThan(40);
        assertThat(placer.place(requests)).isEqualTo(layout);
    }

    private static List<Spot> alongRandomLine(Random random, LabelPlacer placer) {
        double[] xs = new double[30];
        double[] ys = new double[30];
        double heading = random.nextDouble() * 6;
        xs[0] = random.nextDouble() * 500;
        ys[0] = random.nextDouble() * 400;
        for (int k = 1; k < xs.length; k++) {
            heading += 0.1 * random.nextGaussian();
            xs[k] = xs[k - 1] + 8 * Math.cos(heading);
            ys[k] = ys[k - 1] + 8 * Math.sin(heading);
            placer.avoid(xs[k - 1], ys[k - 1], xs[k], ys[k]);
        }
        return Spots.along(xs, ys, 2, 40 + random.nextDouble() * 40, 11);
    }

    /** The check of overlaps itself sees overlaps. */
    @Test
    void overlapsAreCounted() {
        Spot spot = new Spot(Box.upright(0, 0, 10, 10), 0);
        LabelLayout layout = new LabelLayout(List.of(Optional.of(spot), Optional.of(spot), Optional.empty()));
        assertThat(layout.overlaps(List.of(Box.upright(5, 5, 1, 1)))).isEqualTo(3);
        assertThat(layout.dropped()).isEqualTo(1);
    }

    @Test
    void lowPriorityGivesWay() {
        LabelPlacer placer = new LabelPlacer(Box.upright(0, 0, 60, 14));
        List<Spot> only = List.of(new Spot(Box.upright(5, 2, 50, 10), 0));
        LabelLayout layout = placer.place(List.of(new LabelRequest(2, only), new LabelRequest(1, only)));
        assertThat(layout.spots().get(0)).isEmpty();
        assertThat(layout.spots().get(1)).isPresent();
    }

    /** Two names on one line read as two: letters 10 high stand at least 10 apart. */
    @Test
    void namesOnOneLineAreParted() {
        List<Spot> left = List.of(new Spot(Box.upright(5, 5, 50, 10), 0));
        for (double gap : new double[] {3, 9.9, 10.1}) {
            List<Spot> right = List.of(new Spot(Box.upright(55 + gap, 5, 50, 10), 0));
            LabelLayout layout =
                    new LabelPlacer(AREA).place(List.of(new LabelRequest(1, left), new LabelRequest(2, right)));
            assertThat(layout.dropped()).as("gap %s", gap).isEqualTo(gap < 10 ? 1 : 0);
        }
    }

    @Test
    void aFreeSpotIsTakenBeforeOneOverARiver() {
        LabelPlacer placer = new LabelPlacer(AREA);
        placer.avoid(100, 100, 300, 100);
        LabelLayout layout = placer.place(List.of(new LabelRequest(1, Spots.around(100, 100, 4, 60, 12))));
        Box box = layout.spots().get(0).orElseThrow().box();
        assertThat(box.lengthInside(100, 100, 300, 100)).isCloseTo(0, within(ROUNDING));
    }

    /** The first takes the place that is cheapest for it, the only one of the second, and moves to its next best. */
    @Test
    void oneMakesRoomForAnother() {
        Spot best = new Spot(Box.upright(5, 5, 50, 10), 0);
        Spot next = new Spot(Box.upright(5, 50, 50, 10), 20);
        LabelLayout layout = new LabelPlacer(AREA)
                .place(List.of(new LabelRequest(1, List.of(best, next)), new LabelRequest(2, List.of(best))));
        assertThat(layout.spots()).containsExactly(Optional.of(next), Optional.of(best));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void leadersRunThroughNoLabelNoForeignSymbolAndNoLeader(long seed) {
        Random random = new Random(seed);
        LabelPlacer placer = new LabelPlacer(AREA);
        List<LabelRequest> requests = new ArrayList<>();
        for (int k = 0; k < 60; k++) {
            Box symbol = new Box(20 + random.nextDouble() * 460, 20 + random.nextDouble() * 360, 5, 7, 0);
            placer.keepClear(symbol);
            requests.add(new LabelRequest(k % 3, Spots.around(symbol, 30 + random.nextDouble() * 40, 12)));
        }
        List<Spot> spots = placer.place(requests).spots().stream()
                .flatMap(Optional::stream)
                .toList();
        List<Spot> led = spots.stream().filter(s -> s.leader().isPresent()).toList();
        assertThat(led).as("seed %d", seed).hasSizeGreaterThan(5);
        for (Spot one : led) {
            Spot.Leader leader = one.leader().orElseThrow();
            assertThat(placer.obstacles().stream()
                            .filter(box -> !box.equals(one.symbol().orElseThrow())))
                    .as("seed %d", seed)
                    .noneMatch(box -> leader.lengthInside(box) > 0);
            assertThat(spots.stream().filter(s -> !s.equals(one)))
                    .as("seed %d", seed)
                    .noneMatch(s -> leader.lengthInside(s.box()) > 0)
                    .noneMatch(s -> s.leader().filter(leader::crosses).isPresent());
        }
    }

    /** Of two places as good by themselves, the one beside the symbol of another is left. */
    @Test
    void aNameKeepsOffTheSymbolsOfOthers() {
        LabelPlacer placer = new LabelPlacer(AREA);
        Box symbol = new Box(250, 200, 5, 5, 0);
        placer.keepClear(symbol);
        placer.keepClear(new Box(325, 200, 5, 5, 0));
        LabelLayout layout = placer.place(List.of(new LabelRequest(1, Spots.around(symbol, 60, 12))));
        assertThat(layout.spots().get(0).orElseThrow().box().x()).isLessThan(250);
    }

    /** The name of a straight river runs along it and beside it, never upside down. */
    @Test
    void lineNamesRunAlongTheLine() {
        double[] xs = {300, 100};
        double[] ys = {300, 100};
        List<Spot> spots = Spots.along(xs, ys, 2, 60, 10);
        assertThat(spots).isNotEmpty().allSatisfy(spot -> {
            assertThat(spot.box().angle()).isCloseTo(Math.PI / 4, within(ROUNDING));
            assertThat(spot.box().lengthInside(300, 300, 100, 100)).isCloseTo(0, within(ROUNDING));
        });
        assertThat(Spots.along(new double[] {0, 20}, new double[] {0, 0}, 2, 60, 10))
                .isEmpty();
    }
}
