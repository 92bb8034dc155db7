// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.TableList;

/**
 * A column of a table sheet.
 *
 * @param name in the sheet's row of names, such as "release", "release_unit", "release_#2"
 * @param field what it holds
 * @param isUnit whether it holds the unit of that
 * @param number of the flow state or class it is for, 1 is the first; 0 where it is for none or all
 */
record SheetColumn(String name, Field field, boolean isUnit, int number) {
    /** Columns of a sheet, with one for each of so many flow states and classes where the plan says so. */
    static List<SheetColumn> of(SheetPlan plan, int states, int classes) {
        List<SheetColumn> columns = new ArrayList<>();
        for (Field field : plan.fields()) {
            String word = WorkbookPlan.repeated(field.name()).orElse("");
            if (word.isEmpty()) {
                columns.add(new SheetColumn(field.name(), field, false, 0));
            }
            int count = word.isEmpty() ? 0 : word.equals(TableList.STATE) ? states : classes;
            for (int i = 1; i <= count; i++) {
                columns.add(new SheetColumn(field.name().replace(word, Marks.NUMBER + i), field, false, i));
            }
            if (field.hasUnit()) {
                columns.add(new SheetColumn(
                        unitOf(word.isEmpty() ? field.name() : field.name().replace(word, Marks.NUMBER)),
                        field,
                        true,
                        0));
            }
        }
        return columns;
    }

    /** Name of the unit column of a value column: "release" to "release_unit", "release_#2" to "release_#_unit". */
    static String unitOf(String name) {
        return name.replaceFirst("#\\d+$", Marks.NUMBER) + Field.UNIT;
    }
}
