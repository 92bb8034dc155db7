// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.cli.scenario.ScenarioInput.Position;
import org.silverwake.model.quantity.DecimalMark;
import org.silverwake.model.quantity.LocalUnits;

/** A row of a table while it is read; notes problems with their place. */
final class TableRow {
    private final TablePlaces places;
    private final long line;
    private final Map<String, String> cells;
    private final DecimalMark mark;
    private final LocalUnits units;
    private final Problems problems;

    TableRow(TablePlaces places, Table.Line line, DecimalMark mark, LocalUnits units, Problems problems) {
        this.places = places;
        this.line = line.line();
        this.cells = line.cells();
        this.mark = mark;
        this.units = units;
        this.problems = problems;
    }

    /** "sites.csv:12" or "Sites!A12". */
    String where() {
        return places.row(line);
    }

    void problem(String column, String text) {
        problems.add(places.cell(line, column), text);
    }

    void warn(String column, String text) {
        problems.warn(places.cell(line, column), text);
    }

    boolean has(String column) {
        return cells.containsKey(column);
    }

    Optional<String> text(String column) {
        return Optional.ofNullable(cells.get(column));
    }

    /** Text that must be there; empty with a noted problem otherwise. */
    String requireText(String column, String expected) {
        if (!has(column)) {
            problem(column, "is blank; give " + expected);
        }
        return cells.getOrDefault(column, "");
    }

    /** Quantity in SI; its unit stands in the cell, or else in the column {@code unitColumn}. */
    OptionalDouble quantity(String column, Key key, String unitColumn) {
        Optional<String> cell = text(column);
        if (cell.isEmpty()) {
            return OptionalDouble.empty();
        }
        boolean bare = cell.get().matches("[+\u2212-]?[\\d.,]+([eE][+\u2212-]?\\d+)?");
        String written = bare && has(unitColumn) ? cell.get() + " " + cells.get(unitColumn) : cell.get();
        try {
            return OptionalDouble.of(key.read(written, mark, units));
        } catch (IllegalArgumentException e) {
            problem(column, e.getMessage());
            return OptionalDouble.empty();
        }
    }

    /** The row's name, which no other row has. */
    String requireName(Set<String> seen) {
        String name = requireText("name", "a name");
        if (!name.isEmpty() && !seen.add(name)) {
            problem("name", "\"" + name + "\" is there twice; give each row its own name");
        }
        return name;
    }

    /**
     * A quantity by flow state: the column itself, the same in every state, or a column for every state. Empty where all
     * are blank.
     */
    Optional<List<Double>> byState(String column, Key key, StateNames states) {
        List<String> columns = states.columns(column);
        List<String> filled = columns.stream().filter(this::has).toList();
        if (filled.isEmpty()) {
            return has(column)
                    ? Optional.of(
                            states.same(quantity(column, key, column + "_unit").orElse(Double.NaN)))
                    : Optional.empty();
        }
        if (has(column)) {
            problem(column, "stands beside " + String.join(", ", filled) + "; keep one way");
        }
        List<Double> values = new ArrayList<>();
        for (String each : columns) {
            if (!has(each)) {
                problem(each, "is blank while other flow states are given; give every one, 0 where there is none");
            }
            values.add(quantity(each, key, column + "_unit").orElse(Double.NaN));
        }
        return Optional.of(values);
    }

    /** Quantity that takes no unit. */
    OptionalDouble number(String column, Key key) {
        return quantity(column, key, "");
    }

    /** The position in one of its ways; a placeholder with a noted problem where it is not one. */
    Position position() {
        return new PositionCells(this, mark).read();
    }
}
