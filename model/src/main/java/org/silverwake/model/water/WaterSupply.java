// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.List;

/**
 * Water that the land brings to each reach in one flow state: at the head of a headwater, and along the reach. A negative
 * value along a reach is a water correction: water goes, mercury stays.
 */
public final class WaterSupply {
    private final double[] head;
    private final double[] along;
    private final List<String> notes;

    /**
     * A supply; arrays are taken over.
     *
     * @param head at the head of each reach [m3/s], at least 0
     * @param along along each reach [m3/s]
     * @param notes what was assumed, one line each
     */
    WaterSupply(double[] head, double[] along, List<String> notes) {
        this.head = head;
        this.along = along;
        this.notes = List.copyOf(notes);
    }

    /** From arrays in reach order [m3/s], copied. */
    public static WaterSupply of(double[] head, double[] along) {
        return new WaterSupply(head.clone(), along.clone(), List.of());
    }

    /** Water entering at the head of a reach [m3/s]. */
    public double head(int reach) {
        return head[reach];
    }

    /** Water entering along a reach [m3/s], negative for a correction. */
    public double along(int reach) {
        return along[reach];
    }

    /** What was assumed, one line each. */
    public List<String> notes() {
        return notes;
    }
}
