// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.model.table.CsvTable;

/** Headings that laboratories use for our columns: those of headings.csv beside this class. */
public final class Headings {
    private Headings() {}

    /** Headings known for each of our columns besides its own name, in the order of preference. */
    public static Map<String, List<String>> known() {
        Map<String, List<String>> known = new LinkedHashMap<>();
        for (CsvTable.Row row :
                CsvTable.ofResource(Headings.class, "headings.csv").rows()) {
            known.computeIfAbsent(row.value("column"), c -> new ArrayList<>()).add(row.value("heading"));
        }
        return known;
    }
}
