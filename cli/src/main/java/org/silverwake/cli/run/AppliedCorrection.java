// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.Locale;
import org.silverwake.cli.scenario.Corrections;
import org.silverwake.geo.assembly.CorrectionOutcome;

/**
 * A correction and what became of it.
 *
 * @param row the user's row
 * @param outcome what became of it
 */
public record AppliedCorrection(Corrections.Row row, CorrectionOutcome outcome) {
    /** "applied", "no longer needed" or "does not fit". */
    public String status() {
        return outcome.status().name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** Whether it acts or settles something; the others deserve a warning. */
    public boolean isApplied() {
        return outcome.status() == CorrectionOutcome.Status.APPLIED;
    }

    /** In one line: row, words, what became of it. */
    public String line() {
        return row.where() + " " + row.words() + ": " + status() + ": " + outcome.text();
    }
}
