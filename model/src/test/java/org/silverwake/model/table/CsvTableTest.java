// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.table;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Against RFC 4180 (2005), section 2; the numbers in method names are its rules. */
class CsvTableTest {
    @Test
    void rules1To4LineEndsHeaderAndCommas() {
        CsvTable table = CsvTable.parse("t.csv", "\uFEFFa,b\r\n1,2\r\n\r\n3,\n");
        assertThat(table.columns()).containsExactly("a", "b");
        assertThat(table.rows()).hasSize(2);
        assertThat(table.rows().get(1).value("a")).isEqualTo("3");
        assertThat(table.rows().get(1).value("b")).isEmpty();
        assertThat(table.rows().get(1).where()).isEqualTo("t.csv:4");
    }

    @Test
    void rules5To7QuotesCommasAndLineBreaksInside() {
        CsvTable table = CsvTable.parse("t.csv", "a,b\n\"x, \"\"y\"\"\",\"two\nlines\"\nlast,row");
        assertThat(table.rows().get(0).value("a")).isEqualTo("x, \"y\"");
        assertThat(table.rows().get(0).value("b")).isEqualTo("two\nlines");
        assertThat(table.rows().get(1).where()).isEqualTo("t.csv:4");
    }

    @Test
    void everyProblemIsReportedWithItsLine() {
        assertThatThrownBy(() -> CsvTable.parse("t.csv", "a,a,\n1,2\n1,2,3\n1,2,3,4"))
                .isInstanceOfSatisfying(
                        TableException.class,
                        e -> assertThat(e.problems())
                                .hasSize(4)
                                .satisfies(p -> assertThat(p.get(0)).startsWith("t.csv:1 column a stands twice"))
                                .satisfies(p -> assertThat(p.get(1)).startsWith("t.csv:1 column 3 has no name"))
                                .satisfies(p -> assertThat(p.get(2)).startsWith("t.csv:2 has 2 values"))
                                .satisfies(p -> assertThat(p.get(3)).startsWith("t.csv:4 has 4 values")));
    }

    @Test
    void brokenTextIsRefused() {
        for (String text : List.of("", "a\n\"open", "a\n\"x\"y", "a\n\uFFFD")) {
            assertThatThrownBy(() -> CsvTable.parse("t.csv", text)).isInstanceOf(TableException.class);
        }
        assertThatThrownBy(() -> CsvTable.parse("t.csv", "a\n1\n\n\"open"))
                .hasMessageStartingWith("t.csv:4 a quote is opened");
    }

    @Test
    void missingResourceAndColumnAreNamed() {
        assertThatThrownBy(() -> CsvTable.ofResource(CsvTableTest.class, "none.csv"))
                .hasMessageContaining("none.csv");
        CsvTable.Row row = CsvTable.parse("t.csv", "a\n1").rows().get(0);
        assertThatThrownBy(() -> row.value("b")).hasMessage("t.csv:2: no column b");
    }
}
