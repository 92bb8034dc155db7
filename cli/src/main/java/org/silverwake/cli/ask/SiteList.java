// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.silverwake.cli.scenario.Table;
import org.silverwake.cli.text.Names;
import org.silverwake.model.quantity.DecimalMark;
import org.silverwake.model.quantity.Dimension;

/** A list of sites as people keep it, brought to the columns of the sites table; what is not known goes into the note. */
final class SiteList {
    private static final String UNIT = "_unit";
    private static final String BARE = "[+-]?[\\d.,]+";
    /** Thousands or thousandths. */
    private static final String GROUPS = "[+-]?[1-9]\\d{0,2}(,\\d{3})+";

    private static final double DEGREES = 180;

    /** Columns that are looked for only where the list has eastings. */
    private static final List<String> OF_GRID = List.of("northing", "zone", "hemisphere");

    private static final String NUMBERED = "(?:site|mine|mina)?_?(?:id|code|codigo|no|nr|num|numero)";
    private static final String UNITS = "units?|unidad|unidade|unite";
    private static final String SUMS = "(?i)(grand )?total(es)?|totaux|sum|suma|soma|somme";

    /**
     * What a heading was taken for.
     *
     * @param heading in the list
     * @param column of the sites table
     * @param unit of its numbers, where known
     * @param dimension of its numbers, where they have a unit
     */
    record Match(String heading, String column, Optional<String> unit, Optional<Dimension> dimension) {
        /** A unit that it might have. */
        String unitSuch() {
            return dimension
                    .map(d -> d == Dimension.MASS_FLOW
                            ? "kg/yr"
                            : d.units().get(0).name())
                    .orElse("");
        }
    }

    private final Table table;
    private final List<String> states;
    private final Map<String, SiteHeading> known = new LinkedHashMap<>();
    private final List<Match> matches = new ArrayList<>();

    /** Reads the headings; states as they stand in column names. */
    SiteList(Table table, List<String> states) {
        this.table = table;
        this.states = List.copyOf(states);
        SiteHeading.all().forEach(each -> known.put(each.column(), each));
        boolean grid = table.columns().stream()
                .anyMatch(h -> known.get("easting").read(h, states).isPresent());
        if (!grid) {
            OF_GRID.forEach(known::remove);
        }
        table.columns().forEach(this::match);
        left().stream()
                .filter(h -> !has("name") && Names.fold(h).matches(NUMBERED))
                .findFirst()
                .ifPresent(h -> matches.add(0, new Match(h, "name", Optional.empty(), Optional.empty())));
        left().stream()
                .filter(h -> Names.fold(h).matches(UNITS))
                .findFirst()
                .flatMap(h -> needingUnit().map(m -> new Match(h, m.column + UNIT, Optional.empty(), Optional.empty())))
                .ifPresent(matches::add);
        if (isFar("longitude") || isFar("latitude")) {
            rename("longitude", "easting");
            rename("latitude", "northing");
        }
    }

    private void match(String heading) {
        for (SiteHeading each : known.values()) {
            Optional<SiteHeading.Reading> reading = each.read(heading, states);
            boolean unitColumn =
                    heading.equals(each.column() + UNIT) && each.dimension().isPresent();
            if (reading.isEmpty() && !unitColumn) {
                continue;
            }
            String column = unitColumn
                    ? heading
                    : each.column() + reading.get().state().map(s -> "_" + s).orElse("");
            if (!has(column)) {
                matches.add(new Match(
                        heading,
                        column,
                        reading.flatMap(SiteHeading.Reading::unit),
                        unitColumn ? Optional.empty() : each.dimension()));
                return;
            }
        }
    }

    /** Numbers that are no degrees are meters of a grid. */
    private boolean isFar(String column) {
        return values(column).anyMatch(cell -> {
            String number = plain(cell);
            return number.matches("[+-]?\\d+(\\.\\d+)?") && Math.abs(Double.parseDouble(number)) > DEGREES;
        });
    }

    private Stream<String> values(String column) {
        List<String> headings = matches.stream()
                .filter(m -> m.column.equals(column))
                .map(Match::heading)
                .toList();
        return table.rows().stream()
                .flatMap(row -> headings.stream().map(row.cells()::get))
                .filter(cell -> cell != null);
    }

    private void rename(String from, String to) {
        if (!has(to)) {
            matches.replaceAll(
                    m -> m.column.equals(from) ? new Match(m.heading, to, Optional.empty(), Optional.empty()) : m);
        }
    }

    /** What a column may be taken for, as it can be typed. */
    List<String> offered() {
        List<String> offered =
                SiteHeading.all().stream().map(SiteHeading::column).collect(Collectors.toList());
        offered.addAll(List.of("x", "y"));
        SiteHeading.all().stream()
                .filter(SiteHeading::byState)
                .forEach(each -> states.forEach(state -> offered.add(each.column() + "_" + state)));
        return offered;
    }

    /**
     * Takes a column for something else, or for nothing.
     *
     * @throws IllegalArgumentException in words for the user
     */
    void change(ColumnChange change) {
        Optional<Dimension> dimension = SiteHeading.all().stream()
                .filter(each ->
                        change.what().equals(each.column()) || change.what().startsWith(each.column() + "_"))
                .max(Comparator.comparingInt(each -> each.column().length()))
                .flatMap(SiteHeading::dimension);
        Optional<String> unit = change.unit()
                .map(word -> dimension
                        .orElseThrow(() ->
                                new IllegalArgumentException(change.what() + " has no unit here; leave out " + word))
                        .requireUnit(word)
                        .name());
        matches.removeIf(m -> m.column.equals(change.what()) || change.column().equals(Optional.of(m.heading)));
        change.column().ifPresent(h -> matches.add(new Match(h, change.what(), unit, dimension)));
    }

    /** A column of numbers of which neither its heading, nor another column, nor its cells say the unit. */
    Optional<Match> needingUnit() {
        return matches.stream()
                .filter(m -> m.dimension.isPresent() && m.unit.isEmpty() && !has(m.column + UNIT))
                .filter(m -> values(m.column).anyMatch(cell -> cell.matches(BARE)))
                .findFirst();
    }

    List<Match> matches() {
        return List.copyOf(matches);
    }

    List<String> headings() {
        return List.copyOf(table.columns());
    }

    /** Headings that were not understood. */
    List<String> left() {
        return table.columns().stream()
                .filter(h -> matches.stream().noneMatch(m -> m.heading.equals(h)))
                .toList();
    }

    /** Whether there is such a column, in every state or in one. */
    boolean has(String column) {
        return matches.stream()
                .anyMatch(m -> m.column.equals(column)
                        || states.stream().anyMatch(state -> m.column.equals(column + "_" + state)));
    }

    int size() {
        return sites().size();
    }

    /** Rows of sums at the end of the list, by name. */
    List<String> sums() {
        return values("name").filter(name -> name.matches(SUMS)).toList();
    }

    private List<Table.Line> sites() {
        List<String> names = matches.stream()
                .filter(m -> m.column.equals("name"))
                .map(Match::heading)
                .toList();
        return table.rows().stream()
                .filter(row -> names.stream()
                        .noneMatch(n -> row.cells().getOrDefault(n, "").matches(SUMS)))
                .toList();
    }

    /** A number as the workbook holds it, whatever its decimal mark; one that can be read in two ways stays as it is. */
    private String plain(String cell) {
        if (!cell.matches(BARE)) {
            return cell;
        }
        boolean comma = DecimalMark.showsComma(cell) && !cell.matches(GROUPS);
        try {
            return BigDecimal.valueOf((comma ? DecimalMark.COMMA : table.mark()).parse(cell))
                    .stripTrailingZeros()
                    .toPlainString();
        } catch (IllegalArgumentException e) {
            return cell;
        }
    }

    /** The rows under the columns of the sites table. */
    List<Map<String, String>> rows() {
        List<String> left = left();
        return sites().stream().map(line -> cells(line, left)).toList();
    }

    private Map<String, String> cells(Table.Line line, List<String> left) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (Match match : matches) {
            String cell = line.cells().get(match.heading);
            if (cell != null) {
                boolean ofState = !known.containsKey(match.column) && match.unit.isPresent();
                cells.put(match.column, plain(cell) + (ofState ? " " + match.unit.get() : ""));
                if (!ofState && !(cell.matches(".*\\p{L}.*") && !cell.matches(BARE))) {
                    match.unit.ifPresent(unit -> cells.put(match.column + UNIT, unit));
                }
            }
        }
        List<String> notes = new ArrayList<>();
        for (String heading : left) {
            String cell = line.cells().get(heading);
            if (cell != null) {
                notes.add(heading.toLowerCase(Locale.ROOT).startsWith("note") ? cell : heading + ": " + cell);
            }
        }
        if (!notes.isEmpty()) {
            cells.put("note", String.join("; ", notes));
        }
        return cells;
    }
}
