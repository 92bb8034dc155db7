// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.scenario.ListFile;
import org.silverwake.cli.workbook.ListSheet;
import org.silverwake.model.screening.GuidelineLibrary;

/** Questions 6 to 8: the sites, whose guideline values, and who made the work. */
final class PeopleQuestions {
    private static final List<String> ENDINGS = List.of("csv", "txt", "xlsx");
    private static final String NONE = "none";

    private final Dialog dialog;
    private final Answers answers;
    private final Path folder;

    PeopleQuestions(Dialog dialog, Answers answers, Path folder) {
        this.dialog = dialog;
        this.answers = answers;
        this.folder = folder;
    }

    /** Takes the list of sites into the sites table. */
    void sites() {
        dialog.say("6. Where is your list of sites?");
        List<Path> found = RiverQuestions.files(folder, ENDINGS);
        found.forEach(file -> dialog.note("here: " + folder.relativize(file)));
        String proposal = found.size() == 1 ? folder.relativize(found.get(0)).toString() : NONE;
        Optional<SiteList> list = dialog.askUntil("a table (.csv or .xlsx), or none", proposal, this::read);
        list.ifPresent(this::take);
    }

    private Optional<SiteList> read(String answer) {
        if (answer.equalsIgnoreCase(NONE)) {
            return Optional.empty();
        }
        Path file = RiverQuestions.path(folder, answer);
        boolean workbook = file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
        SiteList list = new SiteList(workbook ? ListSheet.read(file) : ListFile.read(file));
        if (!list.has("name") || list.size() == 0) {
            throw new IllegalArgumentException(
                    "it has "
                            + (list.size() == 0 ? "no rows" : "no column of names")
                            + "; give a table with a heading line, with columns such as name, longitude, latitude, mercury (kg/yr)");
        }
        return Optional.of(list);
    }

    private void take(SiteList list) {
        dialog.note(list.size() + " sites, understood as:");
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
        Optional<String> path = list.has("path") ? Optional.empty() : Optional.of(path());
        for (Map<String, String> row : list.rows()) {
            Map<String, String> cells = new LinkedHashMap<>(row);
            path.ifPresent(word -> cells.put("path", word));
            answers.row("sites", cells);
        }
        if (!list.has("release") && !list.has("tailings") && !list.has("effluent")) {
            dialog.note("The list does not say how much mercury they release; fill it in on the sheet of sites.");
        }
        if (!list.has("exchangeable_share")) {
            dialog.note(
                    "How much of the mercury is exchangeable is not known; each run is made with none and with all.");
        }
    }

    private String path() {
        List<String> paths = List.of("slurry", "leach-tank", "seepage");
        return dialog.askUntil(
                "how does the mercury leave them: slurry (tailings run to the creek), leach-tank or seepage",
                paths.get(0),
                answer -> {
                    String word = answer.toLowerCase(Locale.ROOT).replace(' ', '-');
                    if (!paths.contains(word)) {
                        throw new IllegalArgumentException("give " + String.join(" or ", paths));
                    }
                    return word;
                });
    }

    /** Asks whose values are compared. */
    void values() {
        dialog.say("7. Which country's guideline values?");
        GuidelineLibrary library = GuidelineLibrary.builtIn();
        dialog.note("Known: " + String.join(", ", library.jurisdictions()));
        GuidelineLibrary.Selection selection =
                dialog.askUntil("country or body", "international", library::forJurisdiction);
        answers.put("guidelines.jurisdiction", selection.jurisdiction());
        List<String> media = new ArrayList<>();
        selection.guidelines().stream()
                .map(g -> g.observable().medium().word())
                .distinct()
                .forEach(media::add);
        dialog.note(
                selection.guidelines().size() + " values" + (media.isEmpty() ? "" : ": " + String.join(", ", media)));
        selection.gaps().forEach(dialog::note);
    }

    /** Asks for title and maker. */
    void project(LocalDate today) {
        dialog.say("8. What is the work called, and who makes it?");
        answers.put("title", dialog.askUntil("title, on every map", "", PeopleQuestions::text));
        answers.put("prepared-by", dialog.askUntil("made by", "", PeopleQuestions::text));
        answers.put("date", today.toString());
    }

    private static String text(String answer) {
        if (answer.isEmpty()) {
            throw new IllegalArgumentException("this stands on every map; give it");
        }
        return answer;
    }
}
