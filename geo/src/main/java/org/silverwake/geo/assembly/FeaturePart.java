// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.NetworkCorrections.At;
import org.silverwake.geo.assembly.NetworkCorrections.Turn;

/** One line of a feature as drawn, from its pieces in the net. */
final class FeaturePart {
    /**
     * A direction over a stretch of the part.
     *
     * @param direction +1 as drawn, -1 against
     * @param from chainage along the part [m]
     * @param to chainage along the part [m], above {@code from}
     * @param distance how far off the positions lie together [m]
     */
    record Way(int direction, double from, double to, double distance) {
        boolean holds(Line line) {
            double middle = (line.from + line.to) / 2;
            return middle >= from && middle <= to;
        }
    }

    private final List<Line> pieces = new ArrayList<>();
    private final Stretches stretches;

    FeaturePart(Net net, List<Integer> lines) {
        lines.forEach(i -> pieces.add(net.line(i)));
        pieces.sort(Comparator.comparingDouble(line -> line.from));
        stretches = new Stretches(pieces.stream().map(line -> line.points).toList());
    }

    /** What a turn says about this part; empty where its positions do not lie on it. */
    Optional<Way> way(Turn turn) {
        return turn.to().isPresent() ? between(turn.from(), turn.to().get()) : whole(turn.from());
    }

    private Optional<Way> between(At enters, At leaves) {
        Optional<Stretches.Hit> first = on(enters);
        Optional<Stretches.Hit> last = on(leaves);
        if (first.isEmpty() || last.isEmpty()) {
            return Optional.empty();
        }
        double begin = chainage(first.get());
        double end = chainage(last.get());
        double distance = first.get().distance() + last.get().distance();
        Way way = new Way(begin < end ? 1 : -1, Math.min(begin, end), Math.max(begin, end), distance);
        return pieces.stream().anyMatch(way::holds) ? Optional.of(way) : Optional.empty();
    }

    private Optional<Way> whole(At enters) {
        double start = Rulings.distance(enters, pieces.get(0).start());
        double end = Rulings.distance(enters, pieces.get(pieces.size() - 1).end());
        double distance = Math.min(start, end);
        return distance > Forced.ON_IT
                ? Optional.empty()
                : Optional.of(new Way(start <= end ? 1 : -1, 0, Double.POSITIVE_INFINITY, distance));
    }

    private Optional<Stretches.Hit> on(At at) {
        return stretches.within(new Coordinate(at.longitude(), at.latitude()), Forced.ON_IT).stream()
                .min(Comparator.comparingDouble(Stretches.Hit::distance).thenComparingInt(Stretches.Hit::line));
    }

    private double chainage(Stretches.Hit hit) {
        return pieces.get(hit.line()).from + stretches.chainage(hit);
    }
}
