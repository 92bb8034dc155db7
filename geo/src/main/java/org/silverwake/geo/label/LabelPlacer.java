// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Finds room for labels: no label over another, over an obstacle or beyond the area, and two on one line never closer than their
 * letters are high; what finds no room is dropped. Lines are kept free where that is possible. One label after the other by priority, each in its cheapest free spot, ties in the order given:
 * same input, same layout. O(labels x spots x (labels + obstacles + stretches of line near by)).
 */
public final class LabelPlacer {
    private static final double MARGIN = 1;
    private static final double LINE_COST = 1.5;

    private final Box area;
    private final List<Box> obstacles = new ArrayList<>();
    private final Stretches stretches;

    /** For labels within an upright area. */
    public LabelPlacer(Box area) {
        this.area = area;
        this.stretches = new Stretches(area);
    }

    /** Something no label may cover. */
    public void keepClear(Box obstacle) {
        obstacles.add(obstacle);
    }

    /** A stretch of line that labels had better not cover. */
    public void avoid(double fromX, double fromY, double toX, double toY) {
        avoid(fromX, fromY, toX, toY, 1);
    }

    /** The same, as bad as so many [-] of it. */
    public void avoid(double fromX, double fromY, double toX, double toY, int times) {
        stretches.add(fromX, fromY, toX, toY, times);
    }

    /** What no label may cover, so far. */
    public List<Box> obstacles() {
        return Collections.unmodifiableList(obstacles);
    }

    /** Places all it can. */
    public LabelLayout place(List<LabelRequest> requests) {
        List<Optional<Spot>> spots = new ArrayList<>(Collections.nCopies(requests.size(), Optional.empty()));
        List<Box> labels = new ArrayList<>();
        List<double[]> leaders = new ArrayList<>();
        List<Integer> order = IntStream.range(0, requests.size())
                .boxed()
                .sorted(Comparator.comparingDouble(k -> requests.get(k).priority()))
                .toList();
        for (int k : order) {
            Optional<Spot> best = cheapest(requests.get(k).spots(), labels, leaders);
            spots.set(k, best);
            best.ifPresent(spot -> {
                labels.add(spot.box());
                spot.leader().ifPresent(from -> leaders.add(leader(spot.box(), from)));
            });
        }
        return new LabelLayout(spots);
    }

    private Optional<Spot> cheapest(List<Spot> spots, List<Box> labels, List<double[]> leaders) {
        Spot best = null;
        double least = Double.POSITIVE_INFINITY;
        for (Spot spot : spots) {
            if (spot.cost() < least && isFree(spot.box(), labels) && isClear(spot, labels, leaders)) {
                double cost = spot.cost() + lineCost(spot.box(), least - spot.cost());
                if (cost < least) {
                    least = cost;
                    best = spot;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    private boolean isFree(Box box, List<Box> labels) {
        if (!box.isWithin(area)) {
            return false;
        }
        Box wide = box.grown(MARGIN);
        for (Box obstacle : obstacles) {
            if (wide.overlaps(obstacle)) {
                return false;
            }
        }
        Box spaced = spaced(box);
        for (Box label : labels) {
            if (spaced.overlaps(label) || spaced(label).overlaps(box)) {
                return false;
            }
        }
        return true;
    }

    /** With the room that parts words: as much as the letters are high (1 em) on the line, next to nothing above and below. */
    private static Box spaced(Box label) {
        return label.grown(2 * label.halfHeight(), MARGIN);
    }

    /** No leader runs through the label, and the label's own leader runs through nothing but its own symbol. */
    private boolean isClear(Spot spot, List<Box> labels, List<double[]> leaders) {
        for (double[] s : leaders) {
            if (spot.box().lengthInside(s[0], s[1], s[2], s[3]) > 0) {
                return false;
            }
        }
        if (spot.leader().isEmpty()) {
            return true;
        }
        Spot.Anchor from = spot.leader().get();
        double[] own = leader(spot.box(), from);
        for (Box obstacle : obstacles) {
            boolean isSymbol = Math.hypot(obstacle.x() - from.x(), obstacle.y() - from.y()) < 1;
            if (!isSymbol && obstacle.lengthInside(own[0], own[1], own[2], own[3]) > 0) {
                return false;
            }
        }
        return labels.stream().noneMatch(label -> label.lengthInside(own[0], own[1], own[2], own[3]) > 0);
    }

    private static double[] leader(Box box, Spot.Anchor from) {
        Spot.Anchor to = box.nearest(from);
        return new double[] {from.x(), from.y(), to.x(), to.y()};
    }

    private double lineCost(Box box, double enough) {
        return LINE_COST * stretches.lengthInside(box, enough / LINE_COST);
    }
}
