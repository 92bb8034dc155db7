// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.silverwake.cli.text.Names;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.quantity.Unit;
import org.silverwake.model.table.CsvTable;

/**
 * A column of the sites table, and the headings that people give it (site-columns.csv).
 *
 * @param column of the sites table
 * @param words what headings call it, without accents
 * @param dimension of its numbers, where it has a unit
 * @param byState whether it may be given for each flow state
 */
record SiteHeading(String column, Pattern words, Optional<Dimension> dimension, boolean byState) {
    private static final Pattern UNIT_AT_END = Pattern.compile("(.*?)[_ ]*[\\[(_]([^\\[(_]+?(?:/[^\\])]+)?)[\\])]?");
    private static final Pattern IN_BRACKETS = Pattern.compile("(.*?)[_ ]*[\\[(]([^\\[(]+)[\\])]");
    private static final Pattern TWO_WORDS_AT_END = Pattern.compile("(.*?)_([a-z]+)_(?:per_|por_|par_)?([a-z]+)");

    /**
     * How a heading was read.
     *
     * @param state the flow state it names, as in column names
     * @param unit it gives, where it is one that is known
     */
    record Reading(Optional<String> state, Optional<String> unit) {}

    static List<SiteHeading> all() {
        List<SiteHeading> all = new ArrayList<>();
        for (CsvTable.Row row :
                CsvTable.ofResource(SiteHeading.class, "site-columns.csv").rows()) {
            String dimension = row.value("dimension");
            all.add(new SiteHeading(
                    row.value("column"),
                    Pattern.compile("(?:" + row.value("words").replace(' ', '|') + ")"),
                    dimension.isEmpty() ? Optional.empty() : Optional.of(Dimension.valueOf(dimension)),
                    row.value("states").equals("true")));
        }
        return List.copyOf(all);
    }

    /** Whether and how a heading means this column; states as they stand in column names. */
    Optional<Reading> read(String heading, List<String> states) {
        String plain = Names.fold(heading);
        List<String[]> readings = new ArrayList<>(List.<String[]>of(new String[] {plain, ""}));
        Matcher two = TWO_WORDS_AT_END.matcher(plain);
        if (dimension.isPresent() && two.matches()) {
            readings.add(new String[] {two.group(1), two.group(2) + "/" + two.group(3)});
        }
        for (Pattern pattern : List.of(UNIT_AT_END, IN_BRACKETS)) {
            Matcher matcher = pattern.matcher(plain);
            if (matcher.matches()) {
                readings.add(new String[] {matcher.group(1), matcher.group(2)});
            }
        }
        for (String[] reading : readings) {
            Optional<String> unit = dimension.flatMap(d -> unit(reading[1], d));
            boolean bracket = reading[1].isEmpty() || plain.endsWith(")") || plain.endsWith("]");
            if (unit.isEmpty() && !bracket) {
                continue;
            }
            if (words.matcher(reading[0]).matches()) {
                return Optional.of(new Reading(Optional.empty(), unit));
            }
            for (String state : byState ? states : List.<String>of()) {
                String end = "_" + Names.fold(state);
                if (reading[0].endsWith(end)
                        && words.matcher(reading[0].substring(0, reading[0].length() - end.length()))
                                .matches()) {
                    return Optional.of(new Reading(Optional.of(state), unit));
                }
            }
        }
        return Optional.empty();
    }

    /** Headings are in lower case here, units are not; days, months and years are called by their usual words. */
    static Optional<String> unit(String spelled, Dimension dimension) {
        String plain = spelled.replaceAll("_?\\b(per|por|par)\\b_?", "/")
                .replaceAll("_(per|por|par)_", "/")
                .replaceAll("/(ano|an|annum|yrs|years)$", "/yr")
                .replaceAll("/(dia|jour|days)$", "/d")
                .strip();
        return dimension
                .findUnit(plain)
                .map(Unit::name)
                .or(() -> dimension.units().stream()
                        .map(Unit::name)
                        .filter(name -> name.toLowerCase(Locale.ROOT).equals(plain.toLowerCase(Locale.ROOT)))
                        .findFirst());
    }
}
