// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;

/**
 * A list that someone keeps as a table, read without knowing its columns: separated by commas, semicolons or tabs, with or
 * without lines of title above the headings.
 */
public final class ListFile {
    private ListFile() {}

    /**
     * The list's rows.
     *
     * @throws IllegalArgumentException in words for the user, if the file is no table
     */
    public static Table read(Path file) {
        Problems problems = new Problems();
        try {
            Table table = CsvFile.list(file, problems).orElse(null);
            problems.requireNone();
            return table;
        } catch (ScenarioException e) {
            throw new IllegalArgumentException(String.join("\n   ", e.problems()), e);
        }
    }
}
