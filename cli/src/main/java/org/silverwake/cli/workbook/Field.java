// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import org.silverwake.cli.scenario.Key;

/**
 * One thing that a sheet asks for.
 *
 * @param name in the sheet's own row of names: a key, or a column of a table
 * @param key what it takes
 */
record Field(String name, Key key) {
    /** End of the name of a unit column. */
    static final String UNIT = "_unit";

    /** Whether a unit stands beside the value. */
    boolean hasUnit() {
        return key.kind() == Key.Kind.QUANTITY && !key.dimension().isBare();
    }

    /** Whether a number is asked for. */
    boolean isNumber() {
        return key.kind() == Key.Kind.QUANTITY;
    }
}
