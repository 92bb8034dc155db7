// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.cli.scenario.FieldNotesPlan.NotedSite;
import org.silverwake.cli.scenario.FieldNotesPlan.OfferedPractice;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.DrumBleed;
import org.silverwake.model.release.Effect;
import org.silverwake.model.release.Gain;
import org.silverwake.model.release.Practice;
import org.silverwake.model.release.Spread;

/** Field notes and changes of practice: two tables, which practices are in force, prices. */
final class PracticesSection {
    static final String NOTES = "field-notes";
    static final String PRACTICES = "practices";
    private static final List<String> LEVELS = List.of("low", "middle", "high");
    private static final double LEAST_LIFE = 0.1;
    private static final List<String> COSTS = List.of("cost_once", "cost_per_year");

    /** Columns of the table of practices. */
    static final List<Key> KEYS = List.of(
            Key.word("name", Kind.TEXT, "", "required, each once"),
            Key.word(
                    "sites",
                    Kind.TEXT,
                    "",
                    "sites or groups for which it is, separated by ;; all with field notes if blank"),
            number("start_year", 1500, 3500, "first year in force; always if blank"),
            number("shed_share", 0, 1, "share of the sheds that take it up; all if blank"),
            number("retorts", 0, 1, "share of what is burned in the open that retorts take"),
            number("retort_recovery", 0, 1, "share of the mercury driven off that these give back"),
            number("contained", 0, 1, "share of the tailings given to the river that is kept"),
            number("reprocessed", 0, 1, "share of the tailings that goes over a sluice or table"),
            number("reprocessed_recovery", 0, 1, "share of their mercury that this takes out"),
            number("concentrate", 0, 1, "share of the ore of which a concentrate is amalgamated in place of the whole"),
            number("mercury_free", 0, 1, "share of the ore from which gold is got by gravity alone"),
            number("detoxified", 0, 1, "share of the mercury dissolved in leach solution that is taken out"),
            number("cost_once", -1e12, 1e12, "cost per shed to begin with, in the scenario's currency"),
            number("cost_once_low", -1e12, 1e12, "its low end; as the middle if blank"),
            number("cost_once_high", -1e12, 1e12, "its high end; as the middle if blank"),
            number("cost_per_year", -1e12, 1e12, "cost per shed and year"),
            number("cost_per_year_low", -1e12, 1e12, "its low end; as the middle if blank"),
            number("cost_per_year_high", -1e12, 1e12, "its high end; as the middle if blank"),
            Key.quantity(
                    "life",
                    Dimension.TIME,
                    "yr",
                    0.1,
                    1000,
                    "",
                    "how long what is bought lasts; required where it costs something once"),
            number("gold_gain", -1, 10, "gold gained over gold produced, below 0 where gold is lost; none if blank"),
            Key.quantity(
                    "drums_hold",
                    Dimension.MASS,
                    "kg",
                    0,
                    1e5,
                    "",
                    "mercury in the drums of a shed when use stops; none if blank"),
            Key.quantity(
                    "drums_decay",
                    Dimension.TIME,
                    "yr",
                    0.01,
                    1000,
                    "",
                    "in this time it falls by a factor e; required with drums_hold"),
            Key.word("note", Kind.TEXT, "", "free: cost, who says so"));

    private final StateNames states;
    private final Problems problems;

    PracticesSection(StateNames states, Problems problems) {
        this.states = states;
        this.problems = problems;
    }

    private static Key number(String column, double low, double high, String meaning) {
        return Key.quantity(column, Dimension.DIMENSIONLESS, "-", low, high, "", meaning);
    }

    static void keys(List<Key> keys) {
        keys.add(Key.word(NOTES + ".file", Kind.FILE, "none", "table of field notes of sites"));
        keys.add(
                Key.choice(
                        NOTES + ".level",
                        LEVELS,
                        "middle",
                        "which of a balance's low, middle and high to the river the run takes; all three are in site-balance.csv"));
        keys.add(Key.word(PRACTICES + ".file", Kind.FILE, "none", "table of changes of practice"));
        keys.add(
                Key.word(
                        PRACTICES + ".in-force",
                        Kind.TEXT,
                        "none",
                        "list of practices in force, each from its start year on; `ponds at Sconce sheds` where at one site or group alone"));
        keys.add(Key.quantity(
                PRACTICES + ".year",
                Dimension.DIMENSIONLESS,
                "-",
                1500,
                3500,
                "that of the date",
                "year that maps of a steady river show: practices that begin later are not yet in force"));
        keys.add(Key.quantity(
                PRACTICES + ".mercury-price",
                Dimension.DIMENSIONLESS,
                "-",
                0,
                1e9,
                "not counted",
                "money per kg of mercury"));
        keys.add(Key.quantity(
                PRACTICES + ".gold-price",
                Dimension.DIMENSIONLESS,
                "-",
                0,
                1e12,
                "not counted",
                "money per kg of gold"));
        keys.add(Key.word(PRACTICES + ".currency", Kind.TEXT, "money", "what costs and prices are in, such as USD"));
    }

    /** Sites with notes. */
    List<NotedSite> notes(ScenarioValue section, Sources sources) {
        return sources.table(NOTES, section.at("file"))
                .map(new FieldNotesTable(states, problems)::read)
                .orElse(List.of());
    }

    /** All of it, with names checked against those of sites. */
    FieldNotesPlan read(
            List<NotedSite> noted,
            ScenarioValue notes,
            ScenarioValue section,
            Sources sources,
            List<Site> sites,
            int year) {
        List<OfferedPractice> practices = sources.table(PRACTICES, section.at("file"))
                .map(table -> practices(table, sites))
                .orElse(List.of());
        List<String> names = practices.stream().map(p -> p.practice().name()).toList();
        List<String> inForce = new ArrayList<>();
        for (ScenarioValue item : section.at("in-force").items()) {
            item.text().ifPresent(name -> {
                inForce.add(name);
                boolean somewhere = names.stream()
                        .filter(each -> name.startsWith(each + FieldNotesPlan.AT))
                        .map(each -> name.substring((each + FieldNotesPlan.AT).length()))
                        .anyMatch(who -> sites.stream()
                                .anyMatch(site ->
                                        site.name().equals(who) || site.group().equals(who)));
                if (!names.contains(name) && !somewhere) {
                    item.problem(
                            "\"" + name + "\" is no practice of the table, nor one of them \"at\" a site or group; "
                                    + Nearest.hint(name, names));
                }
            });
        }
        int level = LEVELS.indexOf(notes.at("level").choice().orElse("middle"));
        return new FieldNotesPlan(
                sites,
                noted,
                Spread.Level.values()[Math.max(0, level)],
                practices,
                inForce,
                (int) section.at("year").quantity().orElse(year),
                prices(section),
                section.at("currency").text().orElse("money"),
                Trial.NONE);
    }

    private static Optional<Gain.Prices> prices(ScenarioValue section) {
        OptionalDouble mercury = section.at("mercury-price").quantity();
        OptionalDouble gold = section.at("gold-price").quantity();
        return mercury.isPresent() || gold.isPresent()
                ? Optional.of(new Gain.Prices(mercury.orElse(0), gold.orElse(0)))
                : Optional.empty();
    }

    private List<OfferedPractice> practices(Table table, List<Site> sites) {
        Set<String> known = new LinkedHashSet<>();
        KEYS.forEach(key -> known.add(key.path()));
        known.addAll(List.of("life_unit", "drums_hold_unit", "drums_decay_unit"));
        Set<String> whom = new LinkedHashSet<>();
        sites.forEach(site -> whom.addAll(List.of(site.name(), site.group())));
        List<OfferedPractice> practices = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (TableRow row : table.checkColumns(known, List.of("name"), problems).read(problems)) {
            String name = row.requireName(seen);
            List<String> of = row.text("sites").stream()
                    .flatMap(text -> Arrays.stream(text.split(";")))
                    .map(String::strip)
                    .filter(text -> !text.isEmpty())
                    .toList();
            of.stream()
                    .filter(each -> !whom.contains(each))
                    .forEach(each -> row.problem(
                            "sites", "\"" + each + "\" is neither a site nor a group; " + Nearest.hint(each, whom)));
            practices.add(new OfferedPractice(row.where(), practice(row, name), of));
        }
        return practices;
    }

    private static Practice practice(TableRow row, String name) {
        List<Effect> effects = new ArrayList<>();
        share(row, "concentrate").ifPresent(s -> effects.add(new Effect.ConcentrateOnly(s)));
        share(row, "mercury_free").ifPresent(s -> effects.add(new Effect.MercuryFree(s)));
        both(row, "retorts", "retort_recovery").ifPresent(s -> effects.add(new Effect.Retorts(s[0], s[1])));
        both(row, "reprocessed", "reprocessed_recovery")
                .ifPresent(s -> effects.add(new Effect.Reprocessed(s[0], s[1])));
        share(row, "detoxified").ifPresent(s -> effects.add(new Effect.Detoxified(s)));
        share(row, "contained").ifPresent(s -> effects.add(new Effect.Contained(s)));
        boolean isAnyGiven =
                List.of("retorts", "contained", "reprocessed", "concentrate", "mercury_free", "detoxified").stream()
                        .anyMatch(row::has);
        if (effects.isEmpty() && !isAnyGiven) {
            row.problem(
                    "name",
                    "does nothing; give at least one of retorts, contained, reprocessed, concentrate, mercury_free, detoxified");
        }
        return new Practice(
                name,
                effects,
                (int) value(row, "start_year").orElse(0),
                share(row, "shed_share").orElse(1.0),
                cost(row),
                value(row, "gold_gain").orElse(0),
                bleed(row));
    }

    private static Optional<Double> share(TableRow row, String column) {
        OptionalDouble value = value(row, column);
        return value.isPresent() && value.getAsDouble() >= 0 && value.getAsDouble() <= 1
                ? Optional.of(value.getAsDouble())
                : Optional.empty();
    }

    private static Optional<double[]> both(TableRow row, String one, String other) {
        if (row.has(one) != row.has(other)) {
            row.problem(row.has(one) ? other : one, "is blank while the other is given; give both, or neither");
        }
        Optional<Double> first = share(row, one);
        Optional<Double> second = share(row, other);
        return first.isPresent() && second.isPresent()
                ? Optional.of(new double[] {first.get(), second.get()})
                : Optional.empty();
    }

    private static Practice.Cost cost(TableRow row) {
        List<Spread> costs = new ArrayList<>();
        for (String column : COSTS) {
            double middle = value(row, column).orElse(0);
            double low = value(row, column + "_low").orElse(middle);
            double high = value(row, column + "_high").orElse(middle);
            if (!(low <= middle && middle <= high)) {
                row.problem(
                        column,
                        String.format(
                                Locale.ROOT,
                                "low %s, middle %s, high %s are not in order; give them from low to high",
                                Key.show(low),
                                Key.show(middle),
                                Key.show(high)));
                low = middle;
                high = middle;
            }
            costs.add(new Spread(low, middle, high));
        }
        OptionalDouble life = row.quantity("life", key("life"), "life_unit");
        if (life.isEmpty() && costs.get(0).high() > 0) {
            row.problem("life", "is blank while cost_once is given; say how long what is bought lasts");
        }
        return new Practice.Cost(
                costs.get(0),
                costs.get(1),
                Math.max(LEAST_LIFE, life.orElse(Quantity.SECONDS_PER_YEAR) / Quantity.SECONDS_PER_YEAR));
    }

    private static Optional<DrumBleed> bleed(TableRow row) {
        if (row.has("drums_hold") != row.has("drums_decay")) {
            row.problem(
                    row.has("drums_hold") ? "drums_decay" : "drums_hold",
                    "is blank while the other is given; give both, or neither");
        }
        if (row.has("drums_hold") && !row.has("start_year")) {
            row.problem("start_year", "is blank while drums_hold is given; say from when on their mercury is lost");
        }
        OptionalDouble held = row.quantity("drums_hold", key("drums_hold"), "drums_hold_unit");
        OptionalDouble decay = row.quantity("drums_decay", key("drums_decay"), "drums_decay_unit");
        return held.isPresent() && decay.isPresent() && decay.getAsDouble() > 0
                ? Optional.of(new DrumBleed(held.getAsDouble(), decay.getAsDouble()))
                : Optional.empty();
    }

    private static OptionalDouble value(TableRow row, String column) {
        return row.number(column, key(column));
    }

    private static Key key(String column) {
        return KEYS.stream().filter(k -> k.path().equals(column)).findFirst().orElseThrow();
    }
}
