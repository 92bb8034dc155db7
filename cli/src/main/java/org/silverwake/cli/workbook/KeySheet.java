// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.dhatim.fastexcel.Worksheet;
import org.silverwake.cli.scenario.Key;
import org.silverwake.model.input.Setting;
import org.silverwake.model.input.SettingList;

/** Writes a sheet that has a row for each key: key, what it is, value, unit, default, what is allowed, source. */
final class KeySheet {
    private static final int MEANING = 1;
    private static final int VALUE = 2;
    private static final int UNIT = 3;
    private static final int DEFAULT = 4;
    private static final int ALLOWED = 5;
    private static final int SOURCE = 6;
    private static final int ROWS_FOR_MORE = 30;
    private static final double[] WIDTHS = {30, 46, 24, 13, 24, 34, 60};

    private static final List<String> NEEDS = List.of("required", "optional", "files");

    private final Worksheet sheet;
    private final WorkbookWords words;
    private final CellWriter cells;
    private final Map<String, String> sources = new HashMap<>();

    KeySheet(Worksheet sheet, WorkbookWords words) {
        this.sheet = sheet;
        this.words = words;
        this.cells = new CellWriter(sheet);
        for (Setting setting : SettingList.all()) {
            sources.put(setting.path(), setting.source());
        }
    }

    /** Writes it; what was placed is taken from {@code left}. */
    void write(SheetPlan plan, WorkbookContents contents, Set<String> left) {
        SheetFrame frame = new SheetFrame(sheet, words);
        boolean settings = plan.fields().stream().anyMatch(f -> sources.containsKey(f.name()));
        int last = settings ? SOURCE : ALLOWED;
        frame.write(plan.id(), last);
        sheet.value(SheetFrame.HEADINGS, 0, words.text("heading.key"));
        Look.heading(sheet.style(SheetFrame.HEADINGS, 0));
        List<String> names = List.of("meaning", Marks.VALUE, Marks.UNIT, "default", "allowed", "source");
        for (int i = MEANING; i <= last; i++) {
            frame.column(i, names.get(i - 1), words.text("heading." + names.get(i - 1)));
            sheet.comment(SheetFrame.HEADINGS, i, words.text("comment." + names.get(i - 1)));
        }
        for (int i = 0; i <= last; i++) {
            sheet.width(i, WIDTHS[i]);
        }
        int row = SheetFrame.FIRST;
        String group = "";
        for (Field field : settings ? plan.fields() : byNeed(plan.fields())) {
            String start = settings ? field.name().split("\\.")[0] : need(field);
            if (!start.equals(group)) {
                group(row++, start, last);
                group = start;
            }
            line(row++, field, last);
            contents.text(field.name()).ifPresent(text -> left.remove(field.name()));
            fill(row - 1, field, contents.text(field.name()).orElse(""));
        }
        if (plan.kind() == SheetPlan.Kind.MORE) {
            more(row, contents, left);
        }
        sheet.freezePane(VALUE, SheetFrame.FIRST);
        Look.lock(sheet);
    }

    /** What must be given first, files that stand in for sheets last. */
    private static List<Field> byNeed(List<Field> fields) {
        return NEEDS.stream()
                .flatMap(need -> fields.stream().filter(f -> need(f).equals(need)))
                .toList();
    }

    private static String need(Field field) {
        boolean stands = field.key().kind() == Key.Kind.FILE && !field.name().startsWith("rivers.");
        return NEEDS.get(field.isRequired() ? 0 : stands ? 2 : 1);
    }

    /** Rows with a key of one's own choice; what has no other place is put there. */
    private void more(int from, WorkbookContents contents, Set<String> left) {
        int row = from;
        for (String name : List.copyOf(left)) {
            Optional<Key> key = WorkbookPlan.key(name);
            if (key.isPresent() && contents.text(name).isPresent()) {
                sheet.value(row, 0, name);
                sheet.value(
                        row, MEANING, words.meaning(key.get().path(), key.get().meaning()));
                fill(row, new Field(name, key.get()), contents.text(name).orElseThrow());
                left.remove(name);
                row++;
            }
        }
        Key any = Key.word("", Key.Kind.TEXT, "", "");
        for (int column : new int[] {0, VALUE, UNIT}) {
            cells.input(from, row + ROWS_FOR_MORE, column, new Field("", any), false);
        }
    }

    private void group(int row, String start, int last) {
        sheet.value(row, MEANING, words.find("group." + start).orElse(start));
        Look.group(sheet.range(row, 0, row, last).style());
    }

    private void line(int row, Field field, int last) {
        Key key = field.key();
        sheet.value(row, 0, field.name());
        Look.name(sheet.style(row, 0));
        sheet.value(row, MEANING, words.meaning(key.path(), key.meaning()) + (field.isRequired() ? " *" : ""));
        cells.input(row, row, VALUE, field, false);
        if (field.hasUnit()) {
            cells.input(row, row, UNIT, field, true);
        }
        sheet.value(row, DEFAULT, fallback(key));
        sheet.value(row, ALLOWED, allowed(field));
        if (last == SOURCE) {
            sheet.value(row, SOURCE, words.translated(sources.getOrDefault(field.name(), "")));
        }
        double height = 0;
        for (int column : new int[] {MEANING, DEFAULT, ALLOWED, SOURCE}) {
            if (column <= last) {
                Look.text(sheet.style(row, column));
                String text = String.valueOf(sheet.value(row, column));
                height = Math.max(height, SheetFrame.height(text, WIDTHS[column]));
            }
        }
        sheet.rowHeight(row, height);
    }

    private void fill(int row, Field field, String text) {
        if (!text.isEmpty()) {
            cells.value(row, VALUE, UNIT, field, text);
        }
    }

    private String fallback(Key key) {
        return words.find("fallback." + key.path())
                .or(() -> words.find("fallback." + key.fallback()))
                .orElseGet(() -> words.translated(key.fallback()));
    }

    private String allowed(Field field) {
        Key key = field.key();
        String list = WorkbookPlan.isList(field.key().path()) ? " " + words.text("allowed.list") : "";
        return switch (key.kind()) {
            case QUANTITY -> words.range(key);
            case CHOICE -> key.choices().stream().collect(Collectors.joining(", ")) + list;
            case FLAG -> "true, false";
            case FILE -> words.text("allowed.file");
            case DATE -> words.text("allowed.date");
            case UNIT -> words.text("allowed.unit");
            case TEXT -> words.text("allowed.text") + list;
        };
    }
}
