// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.util.Locale;

/** What a word of a laboratory may tell. The name of each is also the column it stands in. */
public enum Category {
    /** Water, sediment, fish. */
    MEDIUM,
    /** What was measured. */
    SUBSTANCE,
    /** Part of the water sample. */
    FRACTION,
    /** Wet or dry weight. */
    BASIS,
    /** Detected, not detected, estimated, rejected. */
    QUALIFIER,
    /** Sample, blank, replicate. */
    TYPE,
    /** Flow state of the scenario. */
    STATE;

    /** Its column. */
    public String column() {
        return name().toLowerCase(Locale.ROOT);
    }
}
