// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

/** What the user corrected on the check page: points moved, reaches turned, the outlet chosen, repairs refused. */
public record Corrections() {
    /** None. */
    public static Corrections none() {
        return new Corrections();
    }
}
