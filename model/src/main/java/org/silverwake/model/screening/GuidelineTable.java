// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.silverwake.model.table.CsvTable;
import org.silverwake.model.table.TableException;

/** Turns rows of a guideline table into guidelines, collecting every problem. */
final class GuidelineTable {
    static final List<String> COLUMNS = List.of(
            "id",
            "medium",
            "substance",
            "fraction",
            "basis",
            "value",
            "unit",
            "protects",
            "averaging",
            "compare",
            "body",
            "document",
            "year",
            "jurisdiction",
            "status",
            "checked",
            "note");

    private final List<String> problems = new ArrayList<>();

    private GuidelineTable() {}

    /**
     * Guidelines of a table, in order.
     *
     * @param taken where each id that may not be used again was first given
     * @throws TableException with every problem of the table
     */
    static List<Guideline> read(CsvTable table, Map<String, String> taken) {
        GuidelineTable reader = new GuidelineTable();
        reader.checkColumns(table);
        List<Guideline> guidelines = new ArrayList<>();
        if (reader.problems.isEmpty()) {
            Map<String, String> ids = new HashMap<>(taken);
            for (CsvTable.Row row : table.rows()) {
                String id = row.value("id");
                String earlier = ids.putIfAbsent(id, row.where());
                if (earlier != null) {
                    reader.problems.add(
                            row.where() + " id: " + id + " is given already in " + earlier + "; give another id");
                }
                reader.guideline(row).ifPresent(guidelines::add);
            }
        }
        if (!reader.problems.isEmpty()) {
            throw new TableException(reader.problems);
        }
        return guidelines;
    }

    private void checkColumns(CsvTable table) {
        for (String column : COLUMNS) {
            if (!table.columns().contains(column)) {
                problems.add(table.name() + ":1 column " + column + " is missing; the columns are "
                        + String.join(", ", COLUMNS));
            }
        }
        for (String column : table.columns()) {
            if (!COLUMNS.contains(column)) {
                problems.add(table.name() + ":1 column " + column + " is not known" + Words.meant(column, COLUMNS)
                        + "; leave it out");
            }
        }
    }

    private Optional<Guideline> guideline(CsvTable.Row row) {
        int before = problems.size();
        Medium medium = word(row, "medium", Medium.class, Medium::word);
        Substance substance = word(row, "substance", Substance.class, Substance::word);
        Fraction fraction = word(row, "fraction", Fraction.class, Fraction::word);
        Basis basis = word(row, "basis", Basis.class, Basis::word);
        Averaging averaging = word(row, "compare", Averaging.class, Averaging::word);
        Guideline.Status status = word(row, "status", Guideline.Status.class, Guideline.Status::word);
        Guideline.Checked checked = word(row, "checked", Guideline.Checked.class, Guideline.Checked::word);
        double value = number(row);
        GuidelineUnit unit = unit(row, medium);
        if (row.value("id").isEmpty()) {
            problems.add(row.where() + " id: empty; give every guideline an id of its own");
        }
        if (problems.size() == before) {
            Observable.refusal(medium, fraction, basis, averaging)
                    .ifPresent(reason -> problems.add(row.where() + " " + reason));
        }
        if (problems.size() > before) {
            return Optional.empty();
        }
        return Optional.of(new Guideline(
                row.value("id"),
                new Observable(medium, substance, fraction, basis, averaging),
                value * unit.toSi(),
                row.value("value") + " " + unit.word(),
                row.value("protects"),
                row.value("averaging"),
                new Guideline.Source(
                        row.value("body"), row.value("document"), row.value("year"), row.value("jurisdiction")),
                status,
                checked,
                row.value("note")));
    }

    /** The constant whose word stands in a column; null, and a problem, where there is none. */
    private <E extends Enum<E>> E word(CsvTable.Row row, String column, Class<E> type, Function<E, String> word) {
        String text = row.value(column);
        for (E constant : EnumSet.allOf(type)) {
            if (word.apply(constant).equals(text)) {
                return constant;
            }
        }
        List<String> known = Arrays.stream(type.getEnumConstants())
                .map(word)
                .map(w -> w.isEmpty() ? "nothing" : w)
                .toList();
        String found = text.isEmpty() ? "empty" : text + " is not allowed" + Words.meant(text, known);
        problems.add(row.where() + " " + column + ": " + found + "; give " + Words.list(known));
        return null;
    }

    private double number(CsvTable.Row row) {
        String text = row.value("value");
        double value;
        try {
            value = Double.parseDouble(text);
        } catch (NumberFormatException e) {
            value = Double.NaN;
        }
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            String found = text.isEmpty() ? "empty" : text + " is not allowed";
            problems.add(row.where() + " value: " + found + "; give a number above 0 with a decimal point");
        }
        return value;
    }

    private GuidelineUnit unit(CsvTable.Row row, Medium medium) {
        String text = row.value("unit");
        Optional<GuidelineUnit> unit = GuidelineUnit.find(text);
        if (medium == null) {
            return unit.orElse(null);
        }
        if (unit.isEmpty() || !unit.get().fits(medium)) {
            String found = text.isEmpty() ? "empty" : text + " is not a unit of a value in " + medium.word();
            problems.add(row.where() + " unit: " + found + "; give " + Words.list(GuidelineUnit.wordsFor(medium)));
        }
        return unit.orElse(null);
    }
}
