// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** One search for places: first come, first served, then exchanges that are better for all together. */
final class LabelSearch {
    /** No name is left out to bring others nearer: worse than any place. */
    private static final double LEFT_OUT = 1e6;
    /** Smaller gains are not worth a round. */
    private static final double LEAST_GAIN = 0.5;

    private static final int ROUNDS = 4;

    /** Where each label may stand, the cheapest first. */
    private final List<List<Place>> places;

    private final Place[] taken;
    private final List<Integer> order;

    /** @param cost how bad a spot is by itself, asked by several threads; infinite where it must not be taken */
    LabelSearch(List<LabelRequest> requests, ToDoubleFunction<Spot> cost) {
        places = requests.parallelStream()
                .map(request -> request.spots().stream()
                        .map(spot -> new Place(spot, cost.applyAsDouble(spot)))
                        .filter(place -> place.cost() < LEFT_OUT)
                        .sorted(Comparator.comparingDouble(Place::cost))
                        .toList())
                .toList();
        taken = new Place[requests.size()];
        order = IntStream.range(0, taken.length)
                .boxed()
                .sorted(Comparator.comparingDouble(k -> requests.get(k).priority()))
                .toList();
    }

    LabelLayout found() {
        for (int label : order) {
            taken[label] = places.get(label).stream()
                    .filter(place -> inTheWayOf(place, label).length == 0)
                    .findFirst()
                    .orElse(null);
        }
        boolean better = true;
        for (int round = 0; round < ROUNDS && better; round++) {
            better = false;
            for (int label : order) {
                better |= improve(label);
            }
        }
        return new LabelLayout(Arrays.stream(taken)
                .map(place -> Optional.ofNullable(place).map(Place::spot))
                .toList());
    }

    private double costNow(int label) {
        return taken[label] == null ? LEFT_OUT : taken[label].cost();
    }

    /** Takes the exchange that gains most, if there is one. */
    private boolean improve(int label) {
        double now = costNow(label);
        double most = LEAST_GAIN;
        Place best = null;
        int moved = label;
        Place movedTo = null;
        for (Place place : places.get(label)) {
            double gain = now - place.cost();
            if (gain <= most) {
                break;
            }
            int[] others = inTheWayOf(place, label);
            if (others.length == 0) {
                best = place;
                moved = label;
                most = gain;
            } else if (others.length == 1) {
                Optional<Place> other = besides(others[0], label, place, costNow(others[0]) + gain - most);
                if (other.isPresent()) {
                    best = place;
                    moved = others[0];
                    movedTo = other.get();
                    most = gain - (movedTo.cost() - costNow(moved));
                }
            }
        }
        if (best == null) {
            return false;
        }
        taken[moved] = movedTo;
        taken[label] = best;
        return true;
    }

    /** The cheapest free place of a label below a cost, were another to stand where it wants to. */
    private Optional<Place> besides(int label, int guest, Place wanted, double below) {
        for (Place place : places.get(label)) {
            if (place.cost() >= below) {
                break;
            }
            if (!place.isInTheWayOf(wanted)
                    && Arrays.stream(inTheWayOf(place, label)).allMatch(other -> other == guest)) {
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }

    /** The first two labels that stand in the way of one. */
    private int[] inTheWayOf(Place place, int label) {
        return IntStream.range(0, taken.length)
                .filter(other -> other != label && taken[other] != null && taken[other].isInTheWayOf(place))
                .limit(2)
                .toArray();
    }

    /**
     * A spot that may be taken.
     *
     * @param reach an upright box around the label, the room it needs and its leader
     */
    private record Place(Spot spot, double cost, Box reach) {
        private static final double MARGIN = 1;

        Place(Spot spot, double cost) {
            this(spot, cost, reach(spot));
        }

        private static Box reach(Spot spot) {
            Box label = spaced(spot.box());
            double right = label.halfSpan(0);
            double down = label.halfSpan(Math.PI / 2);
            double[] xs = Stream.concat(
                            Stream.of(label.x() - right, label.x() + right),
                            spot.leader().stream().flatMap(line -> Stream.of(line.fromX(), line.toX())))
                    .mapToDouble(Double::doubleValue)
                    .sorted()
                    .toArray();
            double[] ys = Stream.concat(
                            Stream.of(label.y() - down, label.y() + down),
                            spot.leader().stream().flatMap(line -> Stream.of(line.fromY(), line.toY())))
                    .mapToDouble(Double::doubleValue)
                    .sorted()
                    .toArray();
            int last = xs.length - 1;
            return Box.upright(xs[0], ys[0], xs[last] - xs[0], ys[last] - ys[0]).grown(LabelPlacer.LEADER_ROOM);
        }

        /** Whether the two cannot both be taken. */
        boolean isInTheWayOf(Place other) {
            if (Math.abs(reach.x() - other.reach.x()) > reach.halfWidth() + other.reach.halfWidth()
                    || Math.abs(reach.y() - other.reach.y()) > reach.halfHeight() + other.reach.halfHeight()) {
                return false;
            }
            return spaced(spot.box()).overlaps(other.spot.box())
                    || spaced(other.spot.box()).overlaps(spot.box())
                    || runsThrough(spot, other.spot)
                    || runsThrough(other.spot, spot)
                    || spot.leader()
                            .flatMap(line -> other.spot.leader().filter(line::crosses))
                            .isPresent();
        }

        /** With the room that parts words: as much as the letters are high (1 em) on the line, next to nothing above and below. */
        private static Box spaced(Box label) {
            return label.grown(2 * label.halfHeight(), MARGIN);
        }

        private static boolean runsThrough(Spot a, Spot b) {
            return a.leader().isPresent()
                    && a.leader().get().lengthInside(b.box().grown(LabelPlacer.LEADER_ROOM)) > 0;
        }
    }
}
