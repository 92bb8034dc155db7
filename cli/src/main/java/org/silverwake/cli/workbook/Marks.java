// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

/** Fixed texts by which the reader finds its way, whatever the language of the words around them. */
final class Marks {
    /** In A1 of every sheet of ours, followed by the sheet's id. */
    static final String SHEET = "silverwake:";

    /** In column A of the row that names the columns. */
    static final String COLUMNS = "silverwake:columns";

    /** Id of the sheet that tells what to fill in; it is not read. */
    static final String GUIDE = "guide";

    /** Stands before the number of a flow state or particle class in column names: "release_#2". */
    static final String NUMBER = "#";

    static final String VALUE = "value";
    static final String UNIT = "unit";

    private Marks() {}
}
