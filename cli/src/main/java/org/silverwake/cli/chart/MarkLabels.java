// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Puts names in rows above a chart so that none covers another, or the line that leads from another down to its mark. A name
 * stands to the right of its line or to the left; of all ways to change from right to left along the chart, the one that drops
 * the fewest names and then needs the fewest rows is taken, and bettered name by name as long as turning one to its other side helps. Rows are counted from the chart upward. Names that find no room
 * are left out, the highest ranks first.
 */
final class MarkLabels {
    private static final double SAME = 1e-6;

    private final double left;
    private final double right;
    private final double gap;
    private final int rows;

    /** Names stay between left and right, with a gap between neighbors; all in one unit. */
    MarkLabels(double left, double right, double gap, int rows) {
        this.left = left;
        this.right = right;
        this.gap = gap;
        this.rows = rows;
    }

    /** A name of a width that belongs to a mark at x; where not all find room, low ranks go before high ones. */
    record Wanted(double x, double width, int rank) {}

    /** A name placed: its left end and row, and the x of its mark. */
    record Placed(double x, double from, double to, int row) {
        /** Whether the line of another mark would run through this name or close by; a mark at the same place does not. */
        boolean covers(double otherX, double gap) {
            return Math.abs(otherX - x) > SAME && otherX > from - gap && otherX < to + gap;
        }

        boolean overlaps(Placed other, double gap) {
            return row == other.row && from < other.to + gap && other.from < to + gap;
        }

        Placed inRow(int other) {
            return new Placed(x, from, to, other);
        }
    }

    /** A place for each name, or none, in the order given. */
    List<Optional<Placed>> place(List<Wanted> names) {
        List<Optional<Placed>> all = arrange(names);
        return all.stream().allMatch(Optional::isPresent) ? all : placeByRank(names);
    }

    /** Name after name by rank, each kept only if all those kept before still find room. */
    private List<Optional<Placed>> placeByRank(List<Wanted> names) {
        List<Integer> order = IntStream.range(0, names.size())
                .boxed()
                .sorted(Comparator.comparingInt(k -> names.get(k).rank()))
                .toList();
        List<Integer> kept = new ArrayList<>();
        List<Optional<Placed>> layout = List.of();
        for (int k : order) {
            List<Integer> more = new ArrayList<>(kept);
            more.add(k);
            List<Optional<Placed>> tried = arrange(more.stream().map(names::get).toList());
            if (tried.stream().allMatch(Optional::isPresent)) {
                kept = more;
                layout = tried;
            }
        }
        List<Optional<Placed>> result = new ArrayList<>(Collections.nCopies(names.size(), Optional.empty()));
        for (int k = 0; k < kept.size(); k++) {
            result.set(kept.get(k), layout.get(k));
        }
        return result;
    }

    private List<Optional<Placed>> arrange(List<Wanted> names) {
        List<Integer> order = IntStream.range(0, names.size())
                .boxed()
                .sorted(Comparator.comparingDouble(k -> names.get(k).x()))
                .toList();
        boolean[] best = new boolean[names.size()];
        double least = Double.POSITIVE_INFINITY;
        for (int turn = names.size(); turn >= 0; turn--) {
            boolean[] rightward = new boolean[names.size()];
            for (int k = 0; k < rightward.length; k++) {
                rightward[order.get(k)] = k < turn;
            }
            double cost = cost(stack(names, rightward));
            if (cost < least) {
                least = cost;
                best = rightward;
            }
        }
        List<Optional<Placed>> layout = bettered(names, best, least);
        for (int odd = 0; odd < 2; odd++) {
            boolean[] alternating = new boolean[names.size()];
            for (int k = 0; k < alternating.length; k++) {
                alternating[order.get(k)] = k % 2 == odd;
            }
            List<Optional<Placed>> other = bettered(names, alternating, cost(stack(names, alternating)));
            layout = cost(other) < cost(layout) ? other : layout;
        }
        return layout;
    }

    private List<Optional<Placed>> bettered(List<Wanted> names, boolean[] start, double cost) {
        boolean[] sides = start;
        double least = cost;
        boolean better = true;
        while (better) {
            better = false;
            for (int k = 0; k < sides.length; k++) {
                boolean[] turned = sides.clone();
                turned[k] = !turned[k];
                double other = cost(stack(names, turned));
                if (other < least) {
                    least = other;
                    sides = turned;
                    better = true;
                }
            }
        }
        return stack(names, sides);
    }

    private List<Optional<Placed>> stack(List<Wanted> names, boolean[] rightward) {
        Placed[] wishes = new Placed[names.size()];
        for (int k = 0; k < wishes.length; k++) {
            wishes[k] = wish(names.get(k), rightward[k]);
        }
        return stack(wishes);
    }

    private double cost(List<Optional<Placed>> layout) {
        double cost = 0;
        for (Optional<Placed> place : layout) {
            cost += place.map(p -> 1.0 + p.row()).orElse(1.0 + rows * layout.size());
        }
        return cost;
    }

    private Placed wish(Wanted name, boolean rightward) {
        boolean fitsRight = name.x() + gap + name.width() <= right;
        boolean fitsLeft = name.x() - gap - name.width() >= left;
        double from = fitsRight && (rightward || !fitsLeft) ? name.x() + gap : name.x() - gap - name.width();
        return new Placed(name.x(), from, from + name.width(), 0);
    }

    /** Rows for names: each above all whose lines it covers, as low as that goes. */
    private List<Optional<Placed>> stack(Placed[] wishes) {
        List<Optional<Placed>> result = new ArrayList<>(Collections.nCopies(wishes.length, Optional.empty()));
        List<Placed> waiting = new ArrayList<>(List.of(wishes));
        waiting.removeIf(w -> w.from() < left || w.to() > right);
        List<Placed> taken = new ArrayList<>();
        while (!waiting.isEmpty()) {
            Optional<Placed> ready = waiting.stream()
                    .filter(w -> waiting.stream().noneMatch(other -> w.covers(other.x(), gap)))
                    .findFirst();
            Placed next = ready.orElseGet(() -> waiting.get(0));
            waiting.remove(next);
            Optional<Placed> place = ready.flatMap(w -> lowest(w, taken));
            place.ifPresent(taken::add);
            place.ifPresent(p -> result.set(freeIndex(wishes, next, result), place));
        }
        return result;
    }

    private static int freeIndex(Placed[] wishes, Placed wish, List<Optional<Placed>> result) {
        int k = 0;
        while (!wishes[k].equals(wish) || result.get(k).isPresent()) {
            k++;
        }
        return k;
    }

    private Optional<Placed> lowest(Placed wish, List<Placed> taken) {
        int first = taken.stream()
                .filter(t -> wish.covers(t.x(), gap))
                .mapToInt(t -> t.row() + 1)
                .max()
                .orElse(0);
        for (int row = first; row < rows; row++) {
            Placed place = wish.inRow(row);
            if (taken.stream().noneMatch(t -> place.overlaps(t, gap))) {
                return Optional.of(place);
            }
        }
        return Optional.empty();
    }
}
