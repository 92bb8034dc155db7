// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.text.Names;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.GuidelineLibrary;

/** Questions 7 and 8: whose guideline values, and who made the work. */
final class PeopleQuestions {
    private static final String NONE = "none";

    /** Inorganic mercury in whole water, the lowest national value whose print was seen. */
    private static final String ELSEWHERE = "CCME-FW-iHg";

    private final Dialog dialog;
    private final Answers answers;

    PeopleQuestions(Dialog dialog, Answers answers) {
        this.dialog = dialog;
        this.answers = answers;
    }

    /** Asks whose values are compared. */
    void values() {
        dialog.say("7. Which country's guideline values?");
        GuidelineLibrary library = GuidelineLibrary.builtIn();
        dialog.note("Known: " + String.join(", ", library.jurisdictions()));
        GuidelineLibrary.Selection selection =
                dialog.askUntil("country or body", "international", answer -> selection(library, answer));
        answers.put("guidelines.jurisdiction", selection.jurisdiction());
        List<String> media = new ArrayList<>();
        selection.guidelines().stream()
                .map(g -> g.observable().medium().word())
                .distinct()
                .forEach(media::add);
        dialog.note(selection.guidelines().size()
                + (selection.guidelines().size() == 1 ? " value" : " values")
                + (media.isEmpty() ? "" : ": " + String.join(", ", media)));
        selection.gaps().forEach(dialog::note);
        if (selection.guidelines().stream().noneMatch(Guideline::isOfReaches)) {
            fromElsewhere(library);
        }
    }

    /** Large and small letters and accents make no difference. */
    private static GuidelineLibrary.Selection selection(GuidelineLibrary library, String answer) {
        String name = library.jurisdictions().stream()
                .filter(each -> Names.fold(each).equals(Names.fold(answer)))
                .findFirst()
                .orElse(answer);
        try {
            return library.forJurisdiction(name);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    e.getMessage().replaceFirst("; that does not mean.*", "")
                            + "; that does not mean it has no value: give one of those above, or international",
                    e);
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
            Guideline guideline = library.all().stream()
                    .filter(g -> g.id().equalsIgnoreCase(answer))
                    .findFirst()
                    .orElseGet(() -> library.require(answer));
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
                .filter(g -> g.isOfReaches() && g.observable().substance().isMercury())
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
