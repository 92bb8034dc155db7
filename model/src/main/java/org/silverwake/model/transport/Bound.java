// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

/** The two answers between which the river's own lies until its bed is modelled. */
public enum Bound {
    /** Everything settles at the gross rates; nothing returns. */
    LAID_DOWN,
    /** Only the stated net sedimentation takes anything out; what settles otherwise comes back. */
    CARRIED_THROUGH
}
