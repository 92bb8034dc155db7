// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

/** A way to find the cross-section of a reach at a discharge. */
public interface ChannelShape {
    /**
     * The section.
     *
     * @param reach reach index [-]
     * @param state flow state [-], from 0
     * @param discharge mean discharge there in that state [m3/s], above 0
     * @param reference share-weighted mean discharge there [m3/s], above 0
     */
    Section section(int reach, int state, double discharge, double reference);
}
