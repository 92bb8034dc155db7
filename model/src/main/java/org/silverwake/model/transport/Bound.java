// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.List;

/** What becomes of what settles: the two bounds, and between them the bed where it is modelled. */
public enum Bound {
    /** Mercury and tailings solids settle at gross rates; nothing returns. */
    LAID_DOWN,
    /** Only the stated net sedimentation stays down. */
    CARRIED_THROUGH,
    /** The bed that all flow states share takes in and gives back. */
    WITH_BED;

    private static final List<Bound> BOTH = List.of(LAID_DOWN, CARRIED_THROUGH);

    private static final List<Bound> ALL = List.of(values());

    /** The two bounds, which every run has. */
    public static List<Bound> both() {
        return BOTH;
    }

    /** The two bounds and that with a bed. */
    static List<Bound> all() {
        return ALL;
    }
}
