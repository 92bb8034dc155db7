// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CellTextsTest {
    @ParameterizedTest
    @CsvSource({
        "1.0E-3, 0.001",
        "0.59999999999999998, 0.6",
        "900, 900",
        "-19.6496, -19.6496",
        "1E20, 1E+20",
        "0, 0",
        "-0.0, 0",
        "2.5E-7, 0.00000025"
    })
    void numbers(String raw, String text) {
        assertThat(CellTexts.number(Double.parseDouble(raw))).isEqualTo(text);
    }

    /** Days as ECMA-376, part 1, 18.17.4.1 counts them, with its example of 1 January 1900 and 1 March 1900. */
    @ParameterizedTest
    @CsvSource({
        "false, 1, 1900-01-01",
        "false, 61, 1900-03-01",
        "false, 46351, 2026-11-25",
        "false, 46351.5, 2026-11-25T12:00",
        "true, 0, 1904-01-01",
        "true, 44889, 2026-11-25"
    })
    void dates(boolean from1904, double days, String text) {
        assertThat(new CellTexts(from1904).date(days)).isEqualTo(text);
    }

    @ParameterizedTest
    @CsvSource({"0, 0, A1", "11, 5, F12", "0, 25, Z1", "0, 26, AA1", "9, 701, ZZ10", "9, 702, AAA10"})
    void references(int row, int column, String text) {
        assertThat(BookSheet.reference(row, column)).isEqualTo(text);
        assertThat(BookSheet.CellRange.of(text)).isEqualTo(new BookSheet.CellRange(row, column, row, column));
    }
}
