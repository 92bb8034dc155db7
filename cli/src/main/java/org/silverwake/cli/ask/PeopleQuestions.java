// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.scenario.ListFile;
import org.silverwake.cli.workbook.ListSheet;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.GuidelineLibrary;
import org.silverwake.model.screening.Substance;

/** Questions 6 to 8: the sites, whose guideline values, and who made the work. */
final class PeopleQuestions {
    private static final List<String> ENDINGS = List.of("csv", "txt", "xlsx");
    private static final String NONE = "none";

    /** Inorganic mercury in whole water, the lowest national value whose print was seen. */
    private static final String ELSEWHERE = "CCME-FW-iHg";

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
        if (selection.guidelines().stream().noneMatch(Guideline::isOfReaches)) {
            fromElsewhere(library);
        }
    }

    /** Without a value of river water or sediment no map can be drawn. */
    private void fromElsewhere(GuidelineLibrary library) {
        dialog.note(
                "None of them is a value of mercury in river water or its bed, with which a map is drawn. Values from elsewhere:");
        for (Guideline g : lowestSeen(library)) {
            dialog.note(String.format(
                    Locale.ROOT,
                    "  %-16s %s, %s (%s)",
                    g.id(),
                    g.printed(),
                    g.observable().words(),
                    g.source().jurisdiction()));
        }
        dialog.note("It is a yardstick here, not the law of your country.");
        Optional<Guideline> chosen = dialog.askUntil("one of these, or none", ELSEWHERE, answer -> {
            if (answer.equalsIgnoreCase(NONE)) {
                return Optional.empty();
            }
            Guideline guideline = library.require(answer);
            if (!guideline.isOfReaches()) {
                throw new IllegalArgumentException(answer + " is not a value of river water or its bed");
            }
            return Optional.of(guideline);
        });
        chosen.ifPresent(g -> answers.put("guidelines.use", g.id()));
    }

    /** Lowest mercury value of each country and medium among those whose printed value was seen. */
    private static Collection<Guideline> lowestSeen(GuidelineLibrary library) {
        Map<List<Object>, Guideline> lowest = new LinkedHashMap<>();
        library.all().stream()
                .filter(g -> g.isOfReaches() && g.observable().substance() != Substance.SUSPENDED_SOLIDS)
                .filter(g -> g.status() != Guideline.Status.SUPERSEDED && g.checked() == Guideline.Checked.SEEN)
                .forEach(g -> lowest.merge(
                        List.of(g.source().jurisdiction(), g.observable().medium()),
                        g,
                        (a, b) -> b.value() < a.value() ? b : a));
        return lowest.values();
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
