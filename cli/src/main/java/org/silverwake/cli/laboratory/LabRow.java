// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.sample.Finding;

/**
 * One row of a laboratory's table.
 *
 * @param standing whether it is used
 * @param code the sample's own code, or ""
 * @param station where it was taken, in words, or ""
 * @param date day of sampling
 * @param time time of day as written, or ""
 * @param state flow state, if the row names one
 * @param written value, unit and limit as they stand in the file
 * @param finding what was found; empty unless understood
 * @param fish species and length as written, or ""
 * @param method method as written, or ""
 * @param note remarks as written, or ""
 * @param said how what was not plain was understood
 * @param reasons why it is left out or refused
 */
public record LabRow(
        Standing standing,
        String code,
        String station,
        Optional<LocalDate> date,
        String time,
        Optional<String> state,
        String written,
        Optional<Finding> finding,
        String fish,
        String method,
        String note,
        List<String> said,
        List<String> reasons) {
    /** Stands in {@link #said} of a result that asks for a second look at its unit. */
    public static final String ABOVE_SOLUBILITY = "above 60 ug/L in filtered water, the solubility of Hg(0)";

    /** Whether a row is used. */
    public enum Standing {
        /** Understood. */
        UNDERSTOOD("understood"),
        /** Understood as something that is not compared: a blank, a replicate, a rejected result. */
        LEFT_OUT("left out"),
        /** Not understood, or not allowed. */
        REFUSED("refused"),
        /** A bottle without any result, as in a table that is not filled in yet. */
        NO_RESULT("no result yet");

        private final String words;

        Standing(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** Copies the lists. */
    public LabRow {
        said = List.copyOf(said);
        reasons = List.copyOf(reasons);
    }

    /** The same row, refused or left out for a further reason. */
    public LabRow without(Standing now, String reason) {
        List<String> all = new java.util.ArrayList<>(reasons);
        all.add(reason);
        return new LabRow(now, code, station, date, time, state, written, finding, fish, method, note, said, all);
    }
}
