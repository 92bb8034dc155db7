// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

/**
 * Canals are built, so a canal whose section the layer gives has that section, however the shape of rivers is found. A section
 * is given by two of width, depth and velocity, or by velocity alone.
 */
public final class GivenSections {
    private final ReachTable reaches;
    private final AttributeChannel attributes;

    /** Sections given by attributes. */
    public GivenSections(ReachTable reaches, AttributeChannel attributes) {
        this.reaches = reaches;
        this.attributes = attributes;
    }

    /** Whether a reach is a canal whose section is given. */
    public boolean isGiven(int reach) {
        return reaches.kind(reach) == ReachKind.CANAL && attributes.isSectionGiven(reach);
    }

    /** Given sections where there are any, others as the shape has them. */
    public ChannelShape over(ChannelShape others) {
        boolean any = false;
        for (int r = 0; r < reaches.size(); r++) {
            any |= isGiven(r);
        }
        return any
                ? (reach, state, discharge, reference) ->
                        (isGiven(reach) ? attributes : others).section(reach, state, discharge, reference)
                : others;
    }
}
