// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioReader;
import org.silverwake.cli.workbook.WorkbookReader;

/** Finds the door by which a scenario comes in: a workbook, or a text file with tables. */
public final class Scenarios {
    private static final List<String> WORKBOOKS = List.of(".xlsx", ".xlsm", ".xls", ".ods");

    /** What spreadsheet programs put before the name of a workbook that is open. */
    private static final String LOCK = "~$";

    private Scenarios() {}

    /**
     * Reads a scenario.
     *
     * @param folderOrFile a folder that holds scenario.xlsx or scenario.yaml, or such a file
     * @throws ScenarioException with all problems found
     */
    public static ScenarioInput read(Path folderOrFile) {
        Path file = file(folderOrFile);
        return isWorkbook(file)
                ? ScenarioReader.read(file, new WorkbookReader(), PointLayers::table)
                : ScenarioReader.read(file, PointLayers::table);
    }

    /** Whether a file's name is a workbook's. */
    public static boolean isWorkbook(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return WORKBOOKS.stream().anyMatch(name::endsWith);
    }

    /**
     * The scenario's file.
     *
     * @throws ScenarioException if a folder holds none, or two
     */
    public static Path file(Path folderOrFile) {
        Path workbook = folderOrFile.resolve(WorkbookReader.FILE);
        Path text = folderOrFile.resolve(ScenarioReader.FILE);
        boolean folder = Files.isDirectory(folderOrFile);
        if (folder && Files.isRegularFile(workbook) && Files.isRegularFile(text)) {
            throw new ScenarioException(List.of(folderOrFile + ": holds both " + WorkbookReader.FILE + " and "
                    + ScenarioReader.FILE + "; give the file itself, or take one of the two away"));
        }
        Path file = !folder ? folderOrFile : Files.isRegularFile(workbook) ? workbook : text;
        if (!Files.isRegularFile(file)) {
            throw new ScenarioException(List.of(folderOrFile + ": there is no scenario here; give a folder that holds "
                    + ScenarioReader.FILE + " or " + WorkbookReader.FILE));
        }
        String name = String.valueOf(file.getFileName());
        if (name.startsWith(LOCK)) {
            throw new ScenarioException(List.of(name + ": is the mark of a program that has the workbook open; give "
                    + name.substring(LOCK.length()) + ", and close it there after saving"));
        }
        return file;
    }
}
