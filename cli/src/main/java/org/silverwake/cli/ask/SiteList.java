// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.silverwake.cli.scenario.Table;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.quantity.Unit;
import org.silverwake.model.table.CsvTable;

/** A list of sites as people keep it, brought to the columns of the sites table; what is not known goes into the note. */
final class SiteList {
    private static final Pattern UNIT_AT_END = Pattern.compile("(.*?)[_ ]*[\\[(_]([^\\[(_]+?(?:/[^\\])]+)?)[\\])]?");
    private static final Pattern TWO_WORDS_AT_END = Pattern.compile("(.*?)_([a-z]+)_(?:per_)?([a-z]+)");

    /**
     * What a heading was taken for.
     *
     * @param heading in the list
     * @param column of the sites table
     * @param unit of its numbers, where the heading gives it
     */
    record Match(String heading, String column, Optional<String> unit) {}

    private final Table table;
    private final List<Match> matches = new ArrayList<>();
    private final List<String> left = new ArrayList<>();

    SiteList(Table table) {
        this.table = table;
        List<CsvTable.Row> known =
                CsvTable.ofResource(SiteList.class, "site-columns.csv").rows();
        for (String heading : table.columns()) {
            match(heading, known).ifPresentOrElse(matches::add, () -> left.add(heading));
        }
    }

    private Optional<Match> match(String heading, List<CsvTable.Row> known) {
        for (CsvTable.Row row : known) {
            String column = row.value("column");
            if (matches.stream().anyMatch(m -> m.column.equals(column))) {
                continue;
            }
            if (heading.equals(column + "_unit")) {
                return Optional.of(new Match(heading, heading, Optional.empty()));
            }
            Pattern words = Pattern.compile(row.value("words").replace(' ', '|'));
            if (words.matcher(heading).matches()) {
                return Optional.of(new Match(heading, column, Optional.empty()));
            }
            if (!row.value("dimension").isEmpty()) {
                Optional<Match> withUnit = withUnit(heading, column, words, Dimension.valueOf(row.value("dimension")));
                if (withUnit.isPresent()) {
                    return withUnit;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Match> withUnit(String heading, String column, Pattern words, Dimension dimension) {
        Matcher bracket = UNIT_AT_END.matcher(heading);
        Matcher two = TWO_WORDS_AT_END.matcher(heading);
        List<String[]> readings = new ArrayList<>();
        if (bracket.matches()) {
            readings.add(new String[] {bracket.group(1), bracket.group(2)});
        }
        if (two.matches()) {
            readings.add(new String[] {two.group(1), two.group(2) + "/" + two.group(3)});
        }
        for (String[] reading : readings) {
            Optional<String> unit = unit(reading[1], dimension);
            if (unit.isPresent() && words.matcher(reading[0]).matches()) {
                return Optional.of(new Match(heading, column, unit));
            }
        }
        return Optional.empty();
    }

    /** Headings are in lower case here, units are not. */
    private static Optional<String> unit(String spelled, Dimension dimension) {
        return dimension
                .findUnit(spelled)
                .map(Unit::name)
                .or(() -> dimension.units().stream()
                        .map(Unit::name)
                        .filter(name -> name.toLowerCase(Locale.ROOT).equals(spelled))
                        .findFirst());
    }

    List<Match> matches() {
        return List.copyOf(matches);
    }

    /** Headings that were not understood. */
    List<String> left() {
        return List.copyOf(left);
    }

    boolean has(String column) {
        return matches.stream().anyMatch(match -> match.column.equals(column));
    }

    int size() {
        return table.rows().size();
    }

    /** A number as the workbook holds it, whatever the list's decimal mark. */
    private String plain(String cell) {
        if (!cell.matches("[+-]?[\\d.,]+")) {
            return cell;
        }
        try {
            return BigDecimal.valueOf(table.mark().parse(cell))
                    .stripTrailingZeros()
                    .toPlainString();
        } catch (IllegalArgumentException e) {
            return cell;
        }
    }

    /** The rows under the columns of the sites table. */
    List<Map<String, String>> rows() {
        List<Map<String, String>> rows = new ArrayList<>();
        for (Table.Line line : table.rows()) {
            Map<String, String> cells = new LinkedHashMap<>();
            for (Match match : matches) {
                String cell = line.cells().get(match.heading);
                if (cell != null) {
                    cells.put(match.column, plain(cell));
                    match.unit.ifPresent(unit -> cells.put(match.column + "_unit", unit));
                }
            }
            List<String> notes = new ArrayList<>();
            for (String heading : left) {
                String cell = line.cells().get(heading);
                if (cell != null) {
                    notes.add(heading.startsWith("note") ? cell : heading + ": " + cell);
                }
            }
            if (!notes.isEmpty()) {
                cells.put("note", String.join("; ", notes));
            }
            rows.add(cells);
        }
        return rows;
    }
}
