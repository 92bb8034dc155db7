// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.assembly.Stretches;

/**
 * Tells where a position is not good enough to say on which river a point lies. Of the same river are reaches of the same
 * feature or the same name, and those that follow each other with nothing else joining; all others are other rivers.
 */
final class OtherRivers {
    private final RiverMap map;
    private final Stretches stretches;
    private final List<List<Integer>> atNode = new ArrayList<>();

    OtherRivers(RiverMap map, Stretches stretches) {
        this.map = map;
        this.stretches = stretches;
    }

    /**
     * A warning where another river lies within the stated accuracy of the point as given; none where the row names the
     * river and the point lies on it.
     */
    Optional<String> check(PointRequest request, Coordinate at, Stretches.Hit hit) {
        if (request.accuracyMeters().isEmpty() || isNamed(request, hit)) {
            return Optional.empty();
        }
        double accuracy = request.accuracyMeters().getAsDouble();
        Set<Integer> following = following(hit.line());
        return stretches.within(at, accuracy).stream()
                .filter(other -> !isSame(hit.line(), other.line()) && !following.contains(other.line()))
                .min(Comparator.comparingDouble(Stretches.Hit::distance).thenComparingInt(Stretches.Hit::line))
                .map(other -> Positions.name(request) + ": its position is good to " + FarPoint.distance(accuracy)
                        + ", but another river, " + RiverNames.of(map.reach(other.line())) + ", lies "
                        + FarPoint.distance(other.distance()) + " away; it was put on "
                        + RiverNames.of(map.reach(hit.line())) + ", " + FarPoint.distance(hit.distance())
                        + " away: make sure that this is its river, and name it in the column river");
    }

    private boolean isNamed(PointRequest request, Stretches.Hit hit) {
        return request.riverName().isPresent()
                && map.reach(hit.line())
                        .name()
                        .map(RiverNames::plain)
                        .filter(RiverNames.plain(request.riverName().get())::equals)
                        .isPresent();
    }

    private boolean isSame(int a, int b) {
        RiverMap.Reach one = map.reach(a);
        RiverMap.Reach other = map.reach(b);
        return one.part().featureId().equals(other.part().featureId())
                || one.name().isPresent()
                        && one.name().map(RiverNames::plain).equals(other.name().map(RiverNames::plain));
    }

    /** The reaches that follow a reach, up and down, as far as nothing else joins. */
    private Set<Integer> following(int start) {
        if (atNode.isEmpty()) {
            index();
        }
        Set<Integer> found = new HashSet<>(Set.of(start));
        Deque<Integer> open = new ArrayDeque<>(found);
        while (!open.isEmpty()) {
            RiverMap.Reach reach = map.reach(open.remove());
            for (int node : List.of(reach.fromNode(), reach.toNode())) {
                if (atNode.get(node).size() == 2) {
                    atNode.get(node).stream().filter(found::add).forEach(open::add);
                }
            }
        }
        return found;
    }

    private void index() {
        for (int node = 0; node < map.nodeCount(); node++) {
            atNode.add(new ArrayList<>());
        }
        for (int i = 0; i < map.reachCount(); i++) {
            atNode.get(map.reach(i).fromNode()).add(i);
            atNode.get(map.reach(i).toNode()).add(i);
        }
    }
}
