// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.Project;
import org.silverwake.model.quantity.Dimension;

/** What sheets and page say, to whom, and what maps lie upon. */
final class SheetsSection {
    static final String KINDS = "sheets.kinds";
    private static final String LAYER = "backdrop.layers.*.";
    /** Months for which a sheet may hang, unless the scenario says another day. */
    private static final int MONTHS = 12;
    /** So much more green than red and blue, of 255, is seen as green [-]; chosen. */
    private static final int GREENER = 12;

    private final ScenarioValue root;
    private final Sources sources;

    SheetsSection(ScenarioValue root, Sources sources) {
        this.root = root;
        this.sources = sources;
    }

    static void keys(List<Key> keys) {
        keys.add(Key.choice(
                "outputs.audience",
                OutputsSection.words(Outputs.Audience.values()),
                "public",
                "who sees sheets and page: public shows groups of three or more sites as areas and holds nothing of single"
                        + " sites; office shows sites and is not for posting"));
        keys.add(Key.choice("sheets.paper", List.of("A4", "A3", "A1"), "A3", "size of the sheets (ISO 216)"));
        keys.add(
                Key.choice("sheets.orientation", List.of("landscape", "portrait"), "landscape", "how the sheets hang"));
        keys.add(Key.choice(
                KINDS,
                OutputsSection.words(Sheets.Kind.values()),
                "map",
                "list: what is printed: map of the scenario's value in each flow state, flow-states side by side, profile"
                        + " down a river, recovery in years, site-shares at places"));
        keys.add(Key.word(
                "sheets.title", Kind.TEXT, "made from the work's title", "title of the sheets in plain words"));
        keys.add(Key.word("sheets.what-to-do", Kind.TEXT, "none", "list of sentences: what people can do"));
        keys.add(Key.word("sheets.whom-to-ask", Kind.TEXT, "none", "list of lines: whom to ask, and where"));
        keys.add(Key.word(
                "sheets.use-until",
                Kind.DATE,
                "12 months after date",
                "day after which sheets and page must not be used any more, as YYYY-MM-DD"));
        keys.add(Key.quantity(
                "sheets.walking-speed",
                Dimension.VELOCITY,
                "km/h",
                0.5,
                10,
                "none",
                "speed on foot; with it the scale bar also tells walking time"));
        keys.add(Key.quantity(
                "sheets.boat-speed",
                Dimension.VELOCITY,
                "km/h",
                0.5,
                100,
                "none",
                "speed of a boat; with it the scale bar also tells time by boat"));
        keys.add(Key.word(
                "sheets.locator.file",
                Kind.FILE,
                "none",
                "layer of lines or areas that people know the land by, for the small map of where the basin lies"));
        backdrop(keys);
    }

    private static void backdrop(List<Key> keys) {
        keys.add(Key.word(
                "backdrop.hill-shade",
                Kind.FLAG,
                "false",
                "true to shade slopes under maps, by the raster of rivers.elevation"));
        keys.add(Key.word(LAYER + "file", Kind.FILE, "required", "layer to draw under the rivers, the lowest first"));
        keys.add(Key.word(LAYER + "layer", Kind.TEXT, "the only one", "layer of the file"));
        keys.add(Key.choice(
                LAYER + "kind",
                OutputsSection.words(Backdrop.Kind.values()),
                "other",
                "what it is of, which gives its look"));
        keys.add(Key.word(LAYER + "label", Kind.TEXT, "none", "column with names to be written"));
        keys.add(Key.word(LAYER + "color", Kind.TEXT, "the kind's", "color as #rrggbb, in quotes"));
        keys.add(Key.quantity(
                LAYER + "width", Dimension.LENGTH, "mm", 0.05, 10, "the kind's", "width of its lines on A4 paper"));
        keys.add(Key.word(LAYER + "style", Kind.FILE, "none", "style of your own for it (SLD or SE)"));
    }

    Outputs.Audience audience() {
        return root.at("outputs")
                .at("audience")
                .choice()
                .map(word -> Outputs.Audience.valueOf(word.toUpperCase(Locale.ROOT)))
                .orElse(Outputs.Audience.PUBLIC);
    }

    Sheets sheets(Project project) {
        ScenarioValue section = root.at("sheets");
        Set<Sheets.Kind> kinds = EnumSet.noneOf(Sheets.Kind.class);
        for (ScenarioValue item : section.at("kinds").items()) {
            item.choiceOf(KINDS)
                    .map(word -> OutputsSection.constant(Sheets.Kind.class, word))
                    .ifPresent(kinds::add);
        }
        return new Sheets(
                section.at("paper").choice().map(Sheets.Size::valueOf).orElse(Sheets.Size.A3),
                section.at("orientation").choice().orElse("landscape").equals("portrait"),
                kinds.isEmpty() ? EnumSet.of(Sheets.Kind.MAP) : kinds,
                section.at("title").text(),
                section.at("what-to-do").texts(),
                section.at("whom-to-ask").texts(),
                until(section.at("use-until"), project.date()),
                section.at("walking-speed").quantity(),
                section.at("boat-speed").quantity(),
                sources.find("locator", section.atPath("locator.file")),
                section.atPath("locator.file").where());
    }

    private static LocalDate until(ScenarioValue value, LocalDate made) {
        LocalDate usual = made.plusMonths(MONTHS);
        if (value.text().isEmpty()) {
            return usual;
        }
        try {
            LocalDate until = LocalDate.parse(value.text().get());
            if (until.isBefore(made)) {
                value.problem(until + " is before the date of the work, " + made + "; give a later day");
            }
            return until;
        } catch (DateTimeParseException e) {
            value.problem("\"" + value.text().get() + "\" is not a date; give it as YYYY-MM-DD, such as 2027-03-04");
            return usual;
        }
    }

    Backdrop backdrop(boolean hasElevation) {
        ScenarioValue section = root.at("backdrop");
        boolean shade = section.at("hill-shade").flag(false);
        if (shade && !hasElevation) {
            section.at("hill-shade").problem("needs heights; give rivers.elevation, or leave it out");
        }
        List<Backdrop.Layer> layers = new ArrayList<>();
        for (ScenarioValue item : section.at("layers").items()) {
            if (!item.at("file").isPresent()) {
                item.at("file").missing();
            }
            layer(item).ifPresent(layers::add);
        }
        return new Backdrop(shade, layers);
    }

    private static void color(ScenarioValue value, String text) {
        if (!text.matches("#[0-9a-fA-F]{6}")) {
            value.problem("\"" + text + "\" is not a color; give it as \"#rrggbb\", such as \"#8a6d3b\"");
        } else if (isGreen(Integer.parseInt(text.substring(1), 16))) {
            value.problem(
                    "\"" + text + "\" is a green, which on these maps would look as if all were well; give another"
                            + " color, such as \"#8a6d3b\"");
        }
    }

    private static boolean isGreen(int rgb) {
        int green = rgb >> 8 & 0xff;
        return green - Math.max(rgb >> 16, rgb & 0xff) >= GREENER;
    }

    /** All of its keys are looked at, also where the file is not there, so that everything amiss is told at once. */
    private Optional<Backdrop.Layer> layer(ScenarioValue item) {
        ScenarioValue color = item.at("color");
        color.text().ifPresent(text -> color(color, text));
        Optional<String> layer = item.at("layer").text();
        Backdrop.Kind kind = item.at("kind")
                .choice()
                .map(word -> OutputsSection.constant(Backdrop.Kind.class, word))
                .orElse(Backdrop.Kind.OTHER);
        Optional<String> label = item.at("label").text();
        OptionalDouble width = item.at("width").quantity();
        Optional<Path> style = sources.find("style", item.at("style"));
        return sources.find("backdrop", item.at("file"))
                .map(file -> new Backdrop.Layer(
                        item.at("file").where(),
                        item.at("label").where(),
                        item.at("style").where(),
                        file,
                        layer,
                        kind,
                        label,
                        color.text(),
                        width,
                        style));
    }
}
