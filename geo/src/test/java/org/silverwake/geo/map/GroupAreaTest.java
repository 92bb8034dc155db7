// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.silverwake.geo.map.GroupArea.Corner;

class GroupAreaTest {
    /** The grid is that of the nearest whole degree: cos(60.5)/cos(60) = 0.985. */
    private static final double OF_THE_STEP = 0.98;

    private static List<Corner> scattered(Random random, double latitude, double longitude, int count) {
        List<Corner> sites = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            sites.add(new Corner(longitude + 0.2 * (random.nextDouble() - 0.5), latitude + 0.2 * random.nextDouble()));
        }
        return sites;
    }

    private static double meters(Corner a, double longitude, double latitude) {
        return Geodesic.WGS84.Inverse(a.latitude(), a.longitude(), latitude, longitude).s12;
    }

    @ParameterizedTest
    @ValueSource(doubles = {-30.1, 0.2, 59.4, -45.7})
    void everySiteIsInsideAndNoneNearTheOutline(double latitude) {
        for (int seed = 0; seed < 50; seed++) {
            List<Corner> sites = scattered(new Random(seed), latitude, 20, 3 + seed % 5);
            GroupArea area = GroupArea.around(sites, 40_000).orElseThrow();
            Geometry shape = area.shape();
            assertThat(shape.isValid()).as("seed " + seed).isTrue();
            for (Corner site : sites) {
                assertThat(shape.contains(
                                new GeometryFactory().createPoint(new Coordinate(site.longitude(), site.latitude()))))
                        .as("seed " + seed)
                        .isTrue();
                for (int k = 1; k < area.outline().size(); k++) {
                    Corner from = area.outline().get(k - 1);
                    Corner to = area.outline().get(k);
                    for (double share = 0; share < 1; share += 0.02) {
                        double nearest = meters(
                                site,
                                from.longitude() + share * (to.longitude() - from.longitude()),
                                from.latitude() + share * (to.latitude() - from.latitude()));
                        assertThat(nearest).as("seed " + seed).isGreaterThan(OF_THE_STEP * GroupArea.step(40_000));
                    }
                }
            }
        }
    }

    @Test
    void stepIsTwoKilometersOrAShareOfTheMap() {
        assertThat(GroupArea.step(10_000)).isEqualTo(2000);
        assertThat(GroupArea.step(400_000)).isEqualTo(10_000);
    }

    /** A degree of latitude is 110.6 to 111.7 km, so steps of 2 km are 0.018 degrees: fields from 0.018 to 0.036 and so on. */
    @Test
    void whereASiteLiesWithinItsFieldChangesNothing() {
        List<Corner> one = List.of(new Corner(0.020, 0.020), new Corner(0.060, 0.060), new Corner(0.030, 0.100));
        List<Corner> moved = List.of(new Corner(0.034, 0.033), new Corner(0.070, 0.055), new Corner(0.023, 0.095));
        assertThat(GroupArea.around(moved, 20_000)).isEqualTo(GroupArea.around(one, 20_000));
        List<Corner> otherOrder = new ArrayList<>(one);
        Collections.reverse(otherOrder);
        assertThat(GroupArea.around(otherOrder, 20_000)).isEqualTo(GroupArea.around(one, 20_000));
    }

    @Test
    void fewerThanThreePlacesHaveNoArea() {
        Corner a = new Corner(20, -30);
        Corner b = new Corner(20.1, -30.1);
        // 0.001 degrees of latitude are 111 m
        Corner besideB = new Corner(20.1, -30.101);
        assertThat(GroupArea.around(List.of(), 1e5)).isEmpty();
        assertThat(GroupArea.around(List.of(a, b), 1e5)).isEmpty();
        assertThat(GroupArea.around(List.of(a, b, besideB, b), 1e5)).isEmpty();
        assertThat(GroupArea.around(List.of(a, b, new Corner(20.1, -30.0)), 1e5))
                .isPresent();
    }

    @Test
    void anAreaMayLieAcrossTheAntimeridian() {
        List<Corner> sites = List.of(new Corner(179.95, 10), new Corner(-179.95, 10.05), new Corner(180, 10.1));
        GroupArea area = GroupArea.around(sites, 1e4).orElseThrow();
        assertThat(area.outline()).allMatch(corner -> corner.longitude() > 179.8 && corner.longitude() < 180.2);
    }
}
