// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.Locale;

/** For whom a page is. */
public enum Audience {
    /** For everybody: groups of at least three sites alone. */
    PUBLIC,
    /** For the office: single sites, not for posting. */
    OFFICE;

    /** Word in the data. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
