// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.scenario.ListFile;
import org.silverwake.cli.scenario.Table;
import org.silverwake.cli.workbook.ListSheet;

/** Question 6: the list of sites. */
final class SiteQuestions {
    private static final List<String> ENDINGS = List.of("csv", "txt", "tsv", "xlsx");
    private static final List<String> OLDER = List.of(".xls", ".ods", ".xlsb", ".doc", ".docx", ".pdf");
    private static final List<String> PATHS = List.of("slurry", "leach-tank", "seepage");
    private static final String NONE = "none";
    private static final int MOST = 5;

    private final Dialog dialog;
    private final Answers answers;
    private final Path folder;
    private final List<String> states;

    SiteQuestions(Dialog dialog, Answers answers, Path folder, List<String> states) {
        this.dialog = dialog;
        this.answers = answers;
        this.folder = folder;
        this.states = states.stream().map(Table::columnName).toList();
    }

    /** Takes the list of sites into the sites table. */
    void ask() {
        dialog.say("6. Where is your list of sites?");
        List<Path> found = RiverQuestions.files(folder, ENDINGS);
        found.stream().limit(MOST).forEach(file -> dialog.note("here: " + folder.relativize(file)));
        String proposal = found.size() == 1 ? folder.relativize(found.get(0)).toString() : NONE;
        Optional<SiteList> list = dialog.askUntil("a table (.csv or .xlsx), or none", proposal, this::read);
        if (list.isEmpty()) {
            dialog.note("No site: what comes out is the background of the river alone. Fill in the sheet of sites.");
            return;
        }
        understood(list.get());
        take(list.get());
    }

    private Optional<SiteList> read(String answer) {
        if (answer.equalsIgnoreCase(NONE)) {
            return Optional.empty();
        }
        Path file = RiverQuestions.path(folder, answer);
        String name = file.toString().toLowerCase(Locale.ROOT);
        if (OLDER.stream().anyMatch(name::endsWith)) {
            throw new IllegalArgumentException(file.getFileName() + " is not read; save it as .xlsx or .csv");
        }
        SiteList list = new SiteList(name.endsWith(".xlsx") ? ListSheet.read(file) : ListFile.read(file), states);
        if (list.size() == 0) {
            throw new IllegalArgumentException(file.getFileName() + " has no rows; give a table with a heading line,"
                    + " with columns such as name, longitude, latitude, mercury (kg/yr)");
        }
        return Optional.of(list);
    }

    /** Shows what was understood and takes changes. */
    private void understood(SiteList list) {
        dialog.note(list.size() + (list.size() == 1 ? " site" : " sites") + ", understood as:");
        show(list);
        while (true) {
            Optional<SiteList.Match> unknown = list.needingUnit();
            boolean named = list.has("name");
            String prompt = !named
                    ? "which column holds the names of the sites"
                    : unknown.map(m -> "unit of " + m.heading() + " (such as "
                                    + m.unitSuch()
                                    + "), or none to keep it as a note")
                            .orElse("Enter if right, else a change such as \"longitude = X\" or \"river = none\"");
            String line = dialog.ask(prompt, "");
            if (named && unknown.isEmpty() && Dialog.isYes(line)) {
                return;
            }
            try {
                if (line.isEmpty()) {
                    throw new IllegalArgumentException(
                            named ? "give a unit, or none" : "give a column: " + String.join(", ", list.headings()));
                }
                String typed = line.contains("=")
                        ? line
                        : !named
                                ? "name = " + line
                                : unknown.map(m -> m.column() + " = "
                                                + (line.equalsIgnoreCase(NONE) ? NONE : m.heading() + " " + line))
                                        .orElse(line);
                list.change(ColumnChange.parse(typed, list.offered(), list.headings()));
                show(list);
            } catch (IllegalArgumentException e) {
                dialog.note(e.getMessage());
            }
        }
    }

    private void show(SiteList list) {
        for (SiteList.Match match : list.matches()) {
            dialog.note(String.format(
                    Locale.ROOT,
                    "  %-20s -> %s%s",
                    match.heading(),
                    match.column(),
                    match.unit().map(unit -> ", " + unit).orElse("")));
        }
        if (!list.left().isEmpty()) {
            dialog.note("  kept as notes: " + String.join(", ", list.left()));
        }
        if (!list.sums().isEmpty()) {
            dialog.note("  left out as no site: " + String.join(", ", list.sums()));
        }
    }

    private void take(SiteList list) {
        Optional<String> path = list.has("path") ? Optional.empty() : Optional.of(path());
        for (Map<String, String> row : list.rows()) {
            Map<String, String> cells = new LinkedHashMap<>(row);
            path.ifPresent(word -> cells.put("path", word));
            answers.row("sites", cells);
        }
        if (!list.has("release") && !list.has("tailings") && !list.has("effluent")) {
            dialog.note("The list does not say how much mercury they release; fill it in on the sheet of sites.");
        }
        if (!list.has("longitude") && !list.has("easting") && !list.has("x")) {
            dialog.note("The list does not say where they lie; fill it in on the sheet of sites.");
        }
        if (!list.has("exchangeable_share")) {
            dialog.note(
                    "How much of the mercury is exchangeable is not known; each run is made with none and with all.");
        }
    }

    private String path() {
        return dialog.askUntil(
                "how does the mercury leave them: slurry (tailings run to the creek), leach-tank or seepage",
                PATHS.get(0),
                answer -> {
                    String word = answer.toLowerCase(Locale.ROOT).replaceAll("[\\s_]+", "-");
                    if (!PATHS.contains(word)) {
                        throw new IllegalArgumentException(
                                "give " + String.join(" or ", PATHS) + "; single sites can be changed in the workbook");
                    }
                    return word;
                });
    }
}
