// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.List;

/**
 * A medium for which countries have no value. Never a value of 0.
 *
 * @param jurisdictions the countries
 * @param medium the medium without a value
 * @param reason why, or how far it was looked for
 * @param note remarks, "" for none
 */
public record NoNationalValue(List<String> jurisdictions, Medium medium, String reason, String note) {
    /** Copies the list. */
    public NoNationalValue {
        jurisdictions = List.copyOf(jurisdictions);
    }

    /** In one line: "Ghana, surface water: no national value (no ambient numeric value found)". */
    public String words() {
        return String.join(", ", jurisdictions) + ", " + medium.word() + ": no national value (" + reason + ")";
    }
}
