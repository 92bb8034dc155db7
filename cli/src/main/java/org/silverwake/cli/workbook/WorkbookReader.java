// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.silverwake.cli.scenario.Problems;
import org.silverwake.cli.scenario.ScenarioDoor;
import org.silverwake.cli.scenario.Table;
import org.silverwake.cli.scenario.TableList;
import org.silverwake.cli.scenario.Written;
import org.silverwake.cli.workbook.BookSheet.CellRange;
import org.silverwake.cli.workbook.SheetPlan.Kind;

/** Reads what a workbook holds. Sheets are known by their mark, columns by their fixed names; words are not looked at. */
public final class WorkbookReader implements ScenarioDoor {
    /** Name of the workbook in its folder. */
    public static final String FILE = "scenario.xlsx";

    @Override
    public Optional<Written> open(Path file, Problems problems) {
        String label = String.valueOf(file.getFileName());
        List<BookSheet> sheets;
        try {
            sheets = BookReader.read(file);
        } catch (BookException e) {
            problems.add(label, e.getMessage());
            return Optional.empty();
        }
        problems.inOrderOf(sheets.stream().map(BookSheet::name).toList());
        Map<String, SheetLayout> found = new HashMap<>();
        sheets.forEach(sheet -> recognize(label, sheet, found, problems));
        if (found.isEmpty()) {
            problems.add(
                    label,
                    "holds none of Silverwake's sheets; make one with \"silverwake new DIR\" and fill that in, or put back"
                            + " cell A1 of its sheets");
            return Optional.empty();
        }
        return Optional.of(read(label, found, problems));
    }

    private static void recognize(String label, BookSheet sheet, Map<String, SheetLayout> found, Problems problems) {
        String id = SheetLayout.idOf(sheet).orElse("");
        Optional<SheetPlan> plan =
                WorkbookPlan.sheets().stream().filter(p -> p.id().equals(id)).findFirst();
        if (plan.isEmpty()) {
            if (!id.equals(Marks.GUIDE) && !sheet.rows().isEmpty()) {
                problems.warn(label, "sheet \"" + sheet.name() + "\" is not one of Silverwake's; it was not read");
            }
            return;
        }
        Optional<SheetLayout> layout = SheetLayout.of(plan.get(), sheet);
        if (layout.isEmpty()) {
            problems.add(
                    sheet.place(0, 0),
                    "the row of fixed names above the headings is gone; copy the sheet's rows into a new workbook");
        } else if (found.containsKey(id)) {
            problems.add(
                    sheet.place(0, 0),
                    "is a second sheet like \"" + found.get(id).sheet().name() + "\"; delete one of the two");
        } else {
            found.put(id, layout.get());
            check(layout.get(), problems);
        }
    }

    private static void check(SheetLayout layout, Problems problems) {
        BookSheet sheet = layout.sheet();
        layout.unnamed().forEach((column, heading) -> nameless(layout, column, heading, problems));
        if (sheet.isHidden()) {
            problems.warn(sheet.place(0, 0), "is a hidden sheet; it was read");
        }
        for (CellRange range : sheet.merged()) {
            if (range.lastRow() >= layout.first()) {
                problems.add(
                        sheet.name() + "!" + range.text(),
                        "is merged into one cell; unmerge it and write every row's own value");
            }
        }
    }

    /** A column whose fixed name was taken away, or one that somebody put in. */
    private static void nameless(SheetLayout layout, int column, String heading, Problems problems) {
        String place = layout.sheet().place(layout.first() - 2, column);
        String found = "the column \"" + heading + "\" has no fixed name here, above its heading; ";
        boolean ours = WorkbookWords.languages().stream()
                .anyMatch(language -> WorkbookWords.of(language).isHeading(layout.plan(), heading));
        if (ours) {
            problems.add(place, found + "put it back as a new workbook has it, or delete the column");
        } else {
            problems.warn(place, found + "it was not read");
        }
    }

    private static Written read(String label, Map<String, SheetLayout> found, Problems problems) {
        TreeBuilder root = new TreeBuilder();
        Map<String, List<String>> names = new HashMap<>();
        Map<String, Table> tables = new HashMap<>();
        for (SheetPlan plan : WorkbookPlan.sheets()) {
            SheetLayout layout = found.get(plan.id());
            if (layout != null && plan.kind() != Kind.ROWS) {
                names.put(plan.id(), new KeyRows(layout, root, problems).read());
            }
        }
        Map<String, List<String>> repeated = Map.of(
                TableList.STATE, names.getOrDefault(WorkbookPlan.STATES, List.of()),
                TableList.CLASS, names.getOrDefault(WorkbookPlan.CLASSES, List.of()));
        for (SheetPlan plan : WorkbookPlan.sheets()) {
            SheetLayout layout = found.get(plan.id());
            if (layout != null && plan.kind() == Kind.ROWS) {
                new TableReader(layout, repeated, problems).read().ifPresent(table -> tables.put(plan.id(), table));
            }
        }
        return new Written(label, root.build(), tables);
    }
}
