// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.ask.ColumnGuesser.Guess;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioReader;
import org.silverwake.cli.workbook.WorkbookContents;
import org.silverwake.cli.workbook.WorkbookReader;
import org.silverwake.cli.workbook.WorkbookWriter;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.layer.VectorLayer;
import org.silverwake.geo.place.Locator;

/**
 * Eight plain questions, and a workbook filled in as far as the answers go. Guesses are shown with their reason and can
 * be changed; what the program proposes without knowing it is named as proposed.
 */
public final class Asking {
    /** The workbook's name. */
    private static final String WORKBOOK = "scenario.xlsx";

    private static final double HALF = 0.5;
    private static final int SHOWN = 5;

    private Asking() {}

    /**
     * Asks, and writes the workbook into the folder.
     *
     * @param in answers, one a line
     * @param out questions
     * @param folder where the user's files lie and the workbook goes
     * @param today date of the work
     * @return whether the workbook was written; false where the user stopped, or one is there already
     */
    public static boolean run(BufferedReader in, PrintWriter out, Path folder, LocalDate today) {
        Dialog dialog = new Dialog(in, out);
        Path workbook = folder.resolve(WORKBOOK);
        if (Files.exists(workbook)) {
            dialog.say(workbook + " is there already and is not touched; move it away to be asked anew, or run it:");
            dialog.note("silverwake check " + workbook);
            out.flush();
            return false;
        }
        dialog.say(
                "Eight questions, then a workbook to look through. Enter takes what stands in [brackets]; stop ends.");
        try {
            Answers answers = ask(dialog, folder, today);
            write(dialog, answers, workbook);
            finish(dialog, answers, workbook);
            return true;
        } catch (Dialog.Stopped e) {
            dialog.say(e.getMessage());
            return false;
        } finally {
            out.flush();
        }
    }

    /**
     * Asks in a terminal, today.
     *
     * @param known the folder; where it is not known it is asked for first
     * @return as {@link #run}
     */
    public static boolean inFolder(BufferedReader in, PrintWriter out, Optional<Path> known) {
        Dialog dialog = new Dialog(in, out);
        try {
            Path folder = known.orElseGet(() -> dialog.askUntil("Which folder holds your files?", "", Asking::folder));
            return run(in, out, folder.toAbsolutePath().normalize(), LocalDate.now());
        } catch (Dialog.Stopped e) {
            dialog.say(e.getMessage());
            out.flush();
            return false;
        }
    }

    private static Path folder(String answer) {
        try {
            Path folder = Path.of(answer.replaceAll("^[\"']|[\"']$", ""));
            if (!answer.isEmpty() && Files.isDirectory(folder)) {
                return folder;
            }
            throw new IllegalArgumentException("there is no folder " + answer + "; give its whole path");
        } catch (InvalidPathException e) {
            throw new IllegalArgumentException("\"" + answer + "\" is no path; give the folder's whole path", e);
        }
    }

    private static Answers ask(Dialog dialog, Path folder, LocalDate today) {
        Answers answers = new Answers();
        RiverQuestions rivers = new RiverQuestions(dialog, answers, folder);
        VectorLayer layer = rivers.file();
        var drawn = DrawnNetwork.of(layer, AssemblyOptions.drawn(DrawnNetwork.SNAP));
        ColumnGuesser guesser = new ColumnGuesser(
                layer, column -> drawn.map(n -> n.growth(column)).orElse(HALF));
        Map<String, Guess> columns = new ColumnQuestions(dialog, answers, layer, guesser).ask();
        RiverMap map = rivers.outlet(layer, columns);
        List<String> states = new StateQuestions(dialog, answers).ask();
        new WaterQuestions(dialog, answers, new Locator(map, layer.crs())).water(states, columns);
        new SiteQuestions(dialog, answers, folder, states).ask();
        PeopleQuestions people = new PeopleQuestions(dialog, answers);
        people.values();
        people.project(today);
        return answers;
    }

    /** Answers are not lost where the folder cannot be written to: it is tried again, or another folder is taken. */
    private static void write(Dialog dialog, Answers answers, Path workbook) {
        WorkbookContents.Builder contents = WorkbookContents.builder();
        answers.keys().forEach(contents::put);
        answers.tables().forEach((table, rows) -> rows.forEach(row -> contents.addRow(table, row)));
        while (true) {
            try {
                WorkbookWriter.write(workbook, contents.build(), "en");
                return;
            } catch (FileAlreadyExistsException e) {
                dialog.say(workbook + " has come to be there meanwhile and is not touched; move it away");
            } catch (IOException e) {
                removeHalf(workbook);
                dialog.say(workbook + " cannot be written (" + e.getMessage()
                        + "); see whether the folder may be written to and the disk has room");
            }
            dialog.ask("Enter to try again, or stop", "");
        }
    }

    private static void removeHalf(Path workbook) {
        try {
            Files.deleteIfExists(workbook);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void finish(Dialog dialog, Answers answers, Path workbook) {
        dialog.say("Written: " + workbook);
        if (!answers.proposals().isEmpty()) {
            dialog.say("Proposed by the program, not known from you; put your own values in the workbook:");
            answers.proposals().forEach(dialog::note);
        }
        List<String> open = open(workbook);
        if (!open.isEmpty()) {
            dialog.say("Before a run, mend in the workbook:");
            open.stream().limit(SHOWN).forEach(dialog::note);
            if (open.size() > SHOWN) {
                dialog.note("and " + (open.size() - SHOWN) + " more, which check names");
            }
        }
        dialog.say("Next:");
        dialog.note("silverwake check " + workbook + "   (then open check.html)");
        dialog.note("silverwake run " + workbook);
    }

    /** What would keep the workbook from being read as it stands. */
    private static List<String> open(Path workbook) {
        try {
            ScenarioReader.read(workbook, new WorkbookReader(), file -> {
                throw new IllegalArgumentException(file.getFileName() + " is not a table");
            });
            return List.of();
        } catch (ScenarioException e) {
            return e.problems();
        }
    }
}
