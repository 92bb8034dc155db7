// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.ScenarioReader;
import org.silverwake.cli.scenario.TableList;
import org.silverwake.cli.workbook.SheetPlan.Kind;

/** The text form of a new scenario: scenario.yaml with comments, and tables that hold their headings. */
public final class TextForm {
    /** Tables that come with it. */
    public static final List<String> TABLES = List.of("sites.csv", "places.csv");

    private TextForm() {}

    /**
     * Writes the files into a folder; none may be there already.
     *
     * @return what was written
     * @throws IOException if a file cannot be written, or is there already
     */
    public static List<Path> write(Path folder) throws IOException {
        List<Path> files = new ArrayList<>();
        files.add(write(folder.resolve(ScenarioReader.FILE), template()));
        for (String table : TABLES) {
            files.add(write(folder.resolve(table), String.join(",", headings(table.replace(".csv", ""))) + "\n"));
        }
        return files;
    }

    /** The YAML, as text. */
    static String template() throws IOException {
        try (InputStream in = TextForm.class.getResourceAsStream("scenario.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    /** Columns of a table without those for single flow states or classes, x and y. */
    private static List<String> headings(String table) {
        List<Field> fields = TableList.all().get(table).stream()
                .filter(k ->
                        !WorkbookPlan.isRepeated(k.path()) && !List.of("x", "y").contains(k.path()))
                .map(k -> new Field(k.path(), k))
                .toList();
        return SheetColumn.of(new SheetPlan(table, Kind.ROWS, fields), 0, 0).stream()
                .map(SheetColumn::name)
                .toList();
    }

    private static Path write(Path file, String text) throws IOException {
        return Files.writeString(file, text, StandardCharsets.UTF_8, StandardOpenOption.CREATE_NEW);
    }
}
