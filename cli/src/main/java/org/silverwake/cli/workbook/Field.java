// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.Set;
import org.silverwake.cli.scenario.Key;

/**
 * One thing that a sheet asks for.
 *
 * @param name in the sheet's own row of names: a key, or a column of a table
 * @param key what it takes
 */
record Field(String name, Key key) {
    /** Required only where the raster is given, to which they belong. */
    private static final Set<String> WITH_ANOTHER = Set.of("rivers.elevation.file", "rivers.elevation.unit");

    /** End of the name of a unit column. */
    static final String UNIT = "_unit";

    /** Whether a unit stands beside the value. */
    boolean hasUnit() {
        return key.kind() == Key.Kind.QUANTITY && !key.dimension().isBare();
    }

    /** Whether it must be given in every scenario, or in every row that is filled in. */
    boolean isRequired() {
        boolean stated = key.fallback().equals("required") || key.meaning().startsWith("required");
        boolean ofAGroup = key.path().matches(".*\\*\\.[^.]+\\..*"); // such as rating.a: only where its group is given
        return stated && !ofAGroup && !WITH_ANOTHER.contains(key.path());
    }

    /** Whether a number is asked for. */
    boolean isNumber() {
        return key.kind() == Key.Kind.QUANTITY;
    }
}
