// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

/** Which end of a range is meant. */
public enum Level {
    /** Low end. */
    LOW,
    /** Best guess. */
    MIDDLE,
    /** High end. */
    HIGH
}
