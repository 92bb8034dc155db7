// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.function.Supplier;
import java.util.function.UnaryOperator;

/** How messages name a place in a table: by line of a file, or by cell of a sheet. */
public interface TablePlaces {
    /** A row, "sites.csv:12" or "Sites!A12". */
    String row(long line);

    /** What one column holds in a row, "sites.csv:12 release" or "Sites!F12 release"; the column need not be there. */
    String cell(long line, String column);

    /** A column's heading, "sites.csv:1 release" or "Sites!F1 release"; the column need not be there. */
    String heading(String column);

    /** One row that is a map of a scenario, each column a key of it. */
    static TablePlaces of(Supplier<String> row, UnaryOperator<String> cell) {
        return new TablePlaces() {
            @Override
            public String row(long line) {
                return row.get();
            }

            @Override
            public String cell(long line, String column) {
                return cell.apply(column);
            }

            @Override
            public String heading(String column) {
                return cell.apply(column);
            }
        };
    }

    /** Lines of a file whose headings stand in the first. */
    static TablePlaces lines(String file) {
        return new TablePlaces() {
            @Override
            public String row(long line) {
                return file + ":" + line;
            }

            @Override
            public String cell(long line, String column) {
                return row(line) + " " + column;
            }

            @Override
            public String heading(String column) {
                return cell(1, column);
            }
        };
    }
}
