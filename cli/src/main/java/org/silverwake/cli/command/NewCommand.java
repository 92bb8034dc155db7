// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioReader;
import org.silverwake.cli.workbook.TextForm;
import org.silverwake.cli.workbook.WorkbookContents;
import org.silverwake.cli.workbook.WorkbookReader;
import org.silverwake.cli.workbook.WorkbookWords;
import org.silverwake.cli.workbook.WorkbookWriter;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Writes a scenario to be filled in: a workbook, or the text form. Nothing that is there is written over. */
@Command(
        name = "new",
        mixinStandardHelpOptions = true,
        description =
                "Writes a workbook to fill in, or with --yaml the text form; or with --field-sheets paper for the field.",
        footer = {"", "Example: silverwake new my-river"})
public final class NewCommand implements Callable<Integer> {
    @Parameters(paramLabel = "DIR", description = "The folder for it; made if it is not there.")
    private Path folder;

    @Option(names = "--language", paramLabel = "L", description = "Language of the workbook's words: en, es (a draft).")
    private String language = "en";

    @Option(names = "--yaml", description = "Write scenario.yaml and headings of its tables, not a workbook.")
    private boolean text;

    @Mixin
    private FieldSheetsOption fieldSheets;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        PrintWriter print = spec.commandLine().getOut();
        fieldSheets.problem().ifPresent(problem -> {
            throw new ParameterException(spec.commandLine(), problem);
        });
        if (fieldSheets.isGiven()) {
            return fieldSheets.write(folder, print);
        }
        requireRoom(folder);
        if (!WorkbookWords.languages().contains(language)) {
            throw new ParameterException(
                    spec.commandLine(),
                    "there are no words in \"" + language + "\" yet; give --language "
                            + String.join(" or ", WorkbookWords.languages()));
        }
        List<Path> written;
        try {
            Files.createDirectories(folder);
            written = text ? TextForm.write(folder) : List.of(workbook());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        written.forEach(file -> print.println("written: " + file));
        print.println(
                "Fill it in, put the river layer and the elevation file beside it, then: silverwake check " + folder);
        print.flush();
        return 0;
    }

    private Path workbook() throws IOException {
        Path file = folder.resolve(WorkbookReader.FILE);
        WorkbookWriter.write(file, WorkbookContents.none(), language);
        return file;
    }

    /**
     * Refuses a folder that holds a scenario already.
     *
     * @throws ScenarioException with one line
     */
    static void requireRoom(Path folder) {
        if (Files.exists(folder) && !Files.isDirectory(folder)) {
            throw new ScenarioException(List.of(folder + ": is a file; give the name of a folder"));
        }
        Stream.concat(Stream.of(WorkbookReader.FILE, ScenarioReader.FILE), TextForm.TABLES.stream())
                .filter(name -> Files.exists(folder.resolve(name)))
                .findFirst()
                .ifPresent(name -> {
                    throw new ScenarioException(List.of(
                            folder + ": holds " + name + " already; give another folder, or take that file away"));
                });
    }
}
