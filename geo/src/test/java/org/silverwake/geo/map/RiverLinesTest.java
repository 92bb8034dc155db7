// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.assembly.RiverMap;

class RiverLinesTest {
    /** ROUNDING: a sum of some hundred lengths. */
    private static final double ROUNDING_PERCENT = 1e-9;

    private static final RiverMap MAP = InventedRivers.tree(4, 7);

    /** In a tree one stem begins at each headwater, and each reach is in one stem. */
    @Test
    void eachReachIsInOneStem() {
        List<LineString> stems = RiverLines.stems(MAP);
        long headwaters = MAP.reaches().stream()
                .filter(reach -> MAP.reaches().stream().noneMatch(other -> other.toNode() == reach.fromNode()))
                .count();
        assertThat(stems).hasSize((int) headwaters);
        assertThat(stems.stream().mapToDouble(LineString::getLength).sum())
                .isCloseTo(
                        MAP.reaches().stream()
                                .mapToDouble(reach -> reach.line().getLength())
                                .sum(),
                        withinPercentage(ROUNDING_PERCENT));
    }

    /** In a tree with one outlet, the longest way down the rivers is a stem. */
    @Test
    void aStemFollowsTheLongestWay() {
        double longest = MAP.reaches().stream()
                .mapToDouble(reach -> {
                    double way = 0;
                    for (var at = java.util.Optional.of(reach); at.isPresent(); ) {
                        way += at.get().line().getLength();
                        int node = at.get().toNode();
                        at = MAP.reaches().stream()
                                .filter(next -> next.fromNode() == node)
                                .findFirst();
                    }
                    return way;
                })
                .max()
                .orElseThrow();
        assertThat(RiverLines.stems(MAP))
                .anySatisfy(stem -> assertThat(stem.getLength()).isCloseTo(longest, withinPercentage(LONGEST_PERCENT)));
    }

    /** DISCRETIZATION: stems compare meters, this test degrees of longitude and latitude alike. */
    private static final double LONGEST_PERCENT = 5;

    /** A map of a basin has some 15 arrows of flow or more, by the spacing along its stems. */
    @Test
    void flowIsShownOften() {
        MapFrame frame =
                MapFrame.fitted(ConcentrationMap.places(MAP, List.of()), new Rectangle2D.Double(30, 80, 520, 440), 30);
        double step = ConcentrationMap.arrowGap(MAP, frame) + 13;
        long arrows = RiverLines.stems(MAP).stream()
                .mapToDouble(
                        stem -> PageLine.of((LineString) frame.toPage(stem)).length())
                .filter(length -> length >= 37)
                .mapToLong(length -> Math.max(1, (long) (length / step)))
                .sum();
        assertThat(arrows).isGreaterThanOrEqualTo(15);
    }
}
