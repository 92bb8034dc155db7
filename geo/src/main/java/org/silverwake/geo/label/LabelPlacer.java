// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * Finds room for labels: no label over another, over an obstacle or beyond the area, two on one line never closer than their letters
 * are high, no leader through a label, through the symbol of another or across another leader; what finds no room is dropped. Lines
 * are kept free where that is possible. One label after the other by priority, each in its cheapest free spot, ties in the order
 * given; then each is given a better one where at most one other must make room for that and all together are better off. Same input,
 * same layout. O(labels x spots x (labels + obstacles + stretches of line near by)) and a few times that.
 */
public final class LabelPlacer {
    private static final double MARGIN = 1;
    /** Of each point of line under a label: a name across a river is about as bad as a leader 30 long. Chosen by looking at maps. */
    private static final double LINE_COST = 1.5;
    /** So near a symbol a name seems to be its own. */
    private static final double NEAR = 6;

    private static final double NEAR_COST = 8;
    /** Kept free on both sides of a leader. */
    static final double LEADER_ROOM = 1.2;

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
        stretches.add(fromX, fromY, toX, toY);
    }

    /** What no label may cover, so far. */
    public List<Box> obstacles() {
        return Collections.unmodifiableList(obstacles);
    }

    /** Places all it can. */
    public LabelLayout place(List<LabelRequest> requests) {
        stretches.ready();
        return new LabelSearch(requests, this::cost).found();
    }

    /** How bad a spot is by itself; infinite where it must not be taken. */
    private double cost(Spot spot) {
        Box box = spot.box();
        if (!box.isWithin(area)) {
            return Double.POSITIVE_INFINITY;
        }
        Box wide = box.grown(MARGIN);
        Box around = box.grown(NEAR);
        double cost = spot.cost();
        for (Box obstacle : obstacles) {
            boolean own = spot.symbol().filter(obstacle::equals).isPresent();
            if (wide.overlaps(obstacle) || !own && isCrossed(obstacle, spot)) {
                return Double.POSITIVE_INFINITY;
            }
            cost += spot.symbol().isPresent() && !own && around.overlaps(obstacle) ? NEAR_COST : 0;
        }
        return cost + LINE_COST * stretches.lengthInside(box, Double.POSITIVE_INFINITY);
    }

    private static boolean isCrossed(Box obstacle, Spot spot) {
        return spot.leader().isPresent() && spot.leader().get().lengthInside(obstacle.grown(LEADER_ROOM)) > 0;
    }
}
