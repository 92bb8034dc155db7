// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.BitSet;

/** How the bed's solids move, cell by cell: velocities of bulk bed, resuspension by flow state, burial over the year. */
final class BedMotion {
    private final double[][] resuspension;
    private final double[] burial;
    private final double[] width;
    private final double[] backgroundBuried;
    private final BitSet eaten;
    private final BitSet shortOfSolids;
    private final BitSet quiet;

    /**
     * Motion.
     *
     * @param resuspension v_r by flow state and cell [m/s], over the state's wetted width
     * @param burial v_b by cell [m/s], over the bed's own width
     * @param width the bed's own width by cell [m]; 0 where there is no bed
     * @param backgroundBuried background solids buried by cell while there is water [kg/s]
     */
    BedMotion(double[][] resuspension, double[] burial, double[] width, double[] backgroundBuried) {
        this(resuspension, burial, width, backgroundBuried, new BitSet(), new BitSet(), new BitSet());
    }

    /** Motion, with the reaches in which the year did not close as stated. */
    BedMotion(
            double[][] resuspension,
            double[] burial,
            double[] width,
            double[] backgroundBuried,
            BitSet eaten,
            BitSet shortOfSolids,
            BitSet quiet) {
        this.resuspension = resuspension;
        this.burial = burial;
        this.width = width;
        this.backgroundBuried = backgroundBuried;
        this.eaten = eaten;
        this.shortOfSolids = shortOfSolids;
        this.quiet = quiet;
    }

    /** v_r [m/s]. */
    double resuspension(int state, int cell) {
        return resuspension[state][cell];
    }

    /** v_b [m/s]. */
    double burial(int cell) {
        return burial[cell];
    }

    /** Whether solids of a cell's bed go back or are buried at all. */
    boolean isMoving(int cell) {
        boolean moving = burial[cell] > 0;
        for (double[] state : resuspension) {
            moving |= state[cell] > 0;
        }
        return moving;
    }

    /** The bed's own width [m]. */
    double width(int cell) {
        return width[cell];
    }

    /** Background solids buried in a cell while there is water [kg/s]. */
    double backgroundBuried(int cell) {
        return backgroundBuried[cell];
    }

    /** Whether a reach's bed would lose more than it gains, so that its erosion was scaled down. */
    boolean isEaten(int reach) {
        return eaten.get(reach);
    }

    /** Whether less is laid down in a reach than the stated burial. */
    boolean isShortOfSolids(int reach) {
        return shortOfSolids.get(reach);
    }

    /** Whether no state of a reach erodes by itself, so that what is laid down goes back in the state that brought it. */
    boolean isQuiet(int reach) {
        return quiet.get(reach);
    }
}
