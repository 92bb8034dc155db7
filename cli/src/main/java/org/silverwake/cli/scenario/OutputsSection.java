// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.silverwake.cli.scenario.Outputs.Profile;
import org.silverwake.cli.scenario.Outputs.ShownForm;
import org.silverwake.cli.scenario.Outputs.ShownMedium;
import org.silverwake.cli.scenario.ScenarioInput.Guidelines;
import org.silverwake.cli.scenario.ScenarioInput.Mercury;
import org.silverwake.cli.text.TableForm;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.GuidelineLibrary;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Substance;

/** What results are compared with and what is drawn. */
final class OutputsSection {
    static final String FORMS = "outputs.forms";
    static final String FORM_MEDIA = "outputs.form-media";

    private final GuidelineLibrary library;
    private final Map<String, Guideline> chosen = new LinkedHashMap<>();

    private boolean isMistaken;

    private OutputsSection(GuidelineLibrary library) {
        this.library = library;
    }

    /** With the user's own table, unless it is at fault, which is noted. */
    private static OutputsSection of(Optional<Path> own, ScenarioValue file) {
        try {
            return new OutputsSection(GuidelineFiles.library(own));
        } catch (ScenarioException e) {
            e.problems().forEach(file::problem);
            return new OutputsSection(GuidelineLibrary.builtIn());
        }
    }

    /** Guidelines used in general; the map may also show one of those that classes of reaches use. */
    static Guidelines guidelines(
            ScenarioValue section, Set<Substance> carried, List<String> ofClasses, ScenarioValue map, Sources sources) {
        Optional<Path> own = sources.find("guidelines", section.at("file"));
        OutputsSection outputs = of(own, section.at("file"));
        for (ScenarioValue item : section.at("use").items()) {
            item.text().ifPresent(id -> outputs.choose(id, item));
        }
        section.at("jurisdiction").text().ifPresent(name -> outputs.jurisdiction(name, section.at("jurisdiction")));
        ofClasses.forEach(id -> outputs.library.find(id).ifPresent(g -> outputs.chosen.putIfAbsent(id, g)));
        outputs.check(map, carried);
        return new Guidelines(
                section.at("use").texts(), section.at("jurisdiction").text(), own);
    }

    private void choose(String id, ScenarioValue item) {
        if (library.find(id).isEmpty() && isListedAlone(id)) {
            item.problem(id + " is a limit in air or of intake, with which nothing here is compared; leave it out");
            return;
        }
        try {
            chosen.put(id, library.require(id));
        } catch (IllegalArgumentException e) {
            isMistaken = true; // of the map's guideline, one line is enough
            item.problem(e.getMessage());
        }
    }

    private static boolean isListedAlone(String id) {
        return Stream.of(GuidelineLibrary.airLimits(), GuidelineLibrary.intakeLimits())
                .anyMatch(table ->
                        table.rows().stream().anyMatch(row -> row.value("id").equals(id)));
    }

    private void jurisdiction(String name, ScenarioValue value) {
        try {
            library.forJurisdiction(name).guidelines().forEach(g -> chosen.putIfAbsent(g.id(), g));
        } catch (IllegalArgumentException e) {
            value.problem(e.getMessage());
        }
    }

    /** The map's guideline is one of those used and compared with reaches, and goes with the map's medium. */
    private void check(ScenarioValue map, Set<Substance> carried) {
        List<String> media = Arrays.stream(Medium.values()).map(Medium::word).toList();
        ScenarioValue mediumValue = map.at("medium");
        Optional<String> medium = mediumValue.text();
        if (medium.isPresent() && !media.contains(medium.get())) {
            mediumValue.problem("\"" + medium.get() + "\" is not known; " + Nearest.hint(medium.get(), media));
        }
        ScenarioValue value = map.at("guideline");
        Optional<String> id = value.text();
        if (id.isEmpty() || isMistaken) {
            return;
        }
        Guideline drawn = chosen.get(id.get());
        List<String> drawable = chosen.values().stream()
                .filter(g -> g.scope() == Medium.Scope.REACH && g.observable().isModelled(carried))
                .map(Guideline::id)
                .toList();
        if (!drawable.contains(id.get())) {
            value.problem(id.get()
                    + (drawn == null ? " is not among the guidelines used" : " is not compared with reaches")
                    + "; give one of " + String.join(", ", drawable));
        } else if (medium.isPresent()
                && media.contains(medium.get())
                && !drawn.observable().medium().word().equals(medium.get())) {
            value.problem(id.get() + " is for " + drawn.observable().medium().word() + ", but the map's medium is "
                    + medium.get() + "; make them agree");
        }
    }

    static Outputs outputs(
            ScenarioValue section,
            Mercury mercury,
            boolean withBed,
            SheetsSection sheets,
            ScenarioInput.Project project,
            boolean hasElevation) {
        List<Profile> profiles = new ArrayList<>();
        for (ScenarioValue item : section.at("profiles").items()) {
            profiles.add(new Profile(
                    item.at("name").requireText(),
                    item.at("from").requireText(),
                    item.at("to").text()));
        }
        return new Outputs(
                section.atPath("map.medium").text(),
                section.atPath("map.guideline").text(),
                profiles,
                forms(section.at("forms"), mercury),
                formMedia(section, withBed),
                section.at("tables")
                        .choice()
                        .map(word -> TableForm.valueOf(word.toUpperCase(Locale.ROOT)))
                        .orElse(TableForm.COMMA),
                sheets.audience(),
                sheets.sheets(project),
                sheets.backdrop(hasElevation));
    }

    private static Set<ShownForm> forms(ScenarioValue list, Mercury mercury) {
        Set<ShownForm> forms = EnumSet.noneOf(ShownForm.class);
        for (ScenarioValue item : list.items()) {
            item.choiceOf(FORMS).map(word -> constant(ShownForm.class, word)).ifPresent(form -> {
                forms.add(form);
                boolean standard = form == ShownForm.DIVALENT || form == ShownForm.GRAIN_BOUND;
                if (!standard
                        && mercury.forms().stream().noneMatch(f -> f.name().equals(form.name()))) {
                    item.warn(ScenarioWriter.word(form)
                            + " is not carried, so no picture of it is drawn; list it in mercury.forms to carry it");
                }
            });
        }
        return forms;
    }

    /** Those asked for; all without a word. */
    private static Set<ShownMedium> formMedia(ScenarioValue section, boolean withBed) {
        ScenarioValue list = section.at("form-media");
        Set<ShownMedium> media = EnumSet.noneOf(ShownMedium.class);
        for (ScenarioValue item : list.items()) {
            item.choiceOf(FORM_MEDIA)
                    .map(word -> constant(ShownMedium.class, word))
                    .ifPresent(media::add);
        }
        if (media.contains(ShownMedium.BED_SEDIMENT) && !withBed) {
            list.warn("bed-sediment is drawn form by form only where the bed is modelled; give a section bed");
        }
        if (list.isPresent() && !section.at("forms").isPresent()) {
            list.warn("draws nothing without outputs.forms, the forms to be drawn; give both, or neither");
        }
        return media.isEmpty() ? EnumSet.allOf(ShownMedium.class) : media;
    }

    static <E extends Enum<E>> E constant(Class<E> type, String word) {
        return Enum.valueOf(type, word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    /** Constants as the scenario spells them. */
    static List<String> words(Enum<?>[] constants) {
        return Arrays.stream(constants).map(ScenarioWriter::word).toList();
    }
}
