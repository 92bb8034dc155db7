// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;

/**
 * A workbook written cell by cell in the plainest form that the standard allows (ECMA-376, part 1, 18): inline strings, no
 * shared ones. Begins as a copy of one of ours and is then broken the way people and programs break theirs.
 */
final class RawWorkbook {
    private static final String MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
    private static final String HEAD = "<?xml version=\"1.0\" encoding=\"UTF-8\" standalone=\"yes\"?>\n";
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
    private static final String PACKAGE = "http://schemas.openxmlformats.org/package/2006/";

    private static final Pattern NAMED = Pattern.compile("\\[([^|\\]]+)\\|([^|\\]]+)(?:\\|(\\d+))?\\]");

    private final List<Tab> tabs = new ArrayList<>();

    /** A sheet: cells as XML by row and column, 0 is the first. */
    private static final class Tab {
        private String name;
        private boolean hidden;
        private final TreeMap<Integer, TreeMap<Integer, String>> rows = new TreeMap<>();
        private final Set<Integer> hiddenRows = new TreeSet<>();
        private final List<String> merged = new ArrayList<>();

        private Tab(String name) {
            this.name = name;
        }
    }

    static RawWorkbook copyOf(Path file) {
        RawWorkbook raw = new RawWorkbook();
        for (BookSheet sheet : BookReader.read(file)) {
            Tab tab = new Tab(sheet.name());
            sheet.rows()
                    .forEach((row, cells) -> cells.forEach((column, cell) -> {
                        String xml = switch (cell.kind()) {
                            case NUMBER -> "<v>" + cell.text() + "</v>";
                            case NO_RESULT -> "";
                            default -> string(cell.text());
                        };
                        tab.rows.computeIfAbsent(row, r -> new TreeMap<>()).put(column, xml);
                    }));
            raw.tabs.add(tab);
        }
        return raw;
    }

    private static String string(String text) {
        return "s" + text.replace("&", "&amp;").replace("<", "&lt;");
    }

    private Tab tab(String name) {
        return tabs.stream().filter(t -> t.name.equals(name)).findFirst().orElseThrow();
    }

    private RawWorkbook put(String place, String xml) {
        String[] parts = resolve(place).split("!");
        BookSheet.CellRange at = BookSheet.CellRange.of(parts[1]);
        tab(parts[0]).rows.computeIfAbsent(at.firstRow(), r -> new TreeMap<>()).put(at.firstColumn(), xml);
        return this;
    }

    RawWorkbook text(String place, String text) {
        return put(place, string(text));
    }

    /** A number as a file holds it, such as 1.0E-3. */
    RawWorkbook number(String place, String raw) {
        return put(place, "<v>" + raw + "</v>");
    }

    RawWorkbook date(String place, String days) {
        return put(place, "d" + days);
    }

    RawWorkbook truth(String place, boolean value) {
        return put(place, "b" + (value ? 1 : 0));
    }

    RawWorkbook error(String place, String error) {
        return put(place, "e<v>" + error + "</v>");
    }

    /** A formula with the XML of its result, which may be blank. */
    RawWorkbook formula(String place, String formula, String result) {
        return put(place, "<f>" + formula + "</f>" + result);
    }

    RawWorkbook formulaWithError(String place, String formula, String error) {
        return put(place, "e<f>" + formula + "</f><v>" + error + "</v>");
    }

    RawWorkbook blank(String place) {
        String[] parts = resolve(place).split("!");
        BookSheet.CellRange at = BookSheet.CellRange.of(parts[1]);
        assertThat(tab(parts[0]).rows.get(at.firstRow()).remove(at.firstColumn()))
                .as("something at %s", place)
                .isNotNull();
        return this;
    }

    /**
     * A text with cells named by what they hold: "[Sites|release|6]" for a column and a row, "[Settings|channel.manning-n]"
     * for the value of a key, so that tests do not count columns.
     */
    String resolve(String text) {
        return NAMED.matcher(text).replaceAll(found -> place(found.group(1), found.group(2), found.group(3)));
    }

    private String place(String sheet, String name, String row) {
        Tab tab = tab(sheet.equals("Mis sitios") ? "Sites" : sheet);
        if (row == null) {
            int at = tab.rows.entrySet().stream()
                    .filter(r -> string(name).equals(r.getValue().get(0)))
                    .findFirst()
                    .orElseThrow()
                    .getKey();
            return sheet + "!" + BookSheet.reference(at, 2);
        }
        return tab.rows.get(SheetFrame.NAMES).entrySet().stream()
                .filter(cell -> cell.getValue().equals(string(name)))
                .map(cell -> sheet + "!" + BookSheet.reference(Integer.parseInt(row) - 1, cell.getKey()))
                .findFirst()
                .orElseThrow();
    }

    /** Puts in a blank column; what stood there moves to the right. */
    RawWorkbook insertColumn(String sheet, int at) {
        return shift(sheet, at, 1);
    }

    /** Takes a column out; what stood right of it moves to the left. */
    RawWorkbook deleteColumn(String sheet, int at) {
        tab(sheet).rows.values().forEach(row -> row.remove(at));
        return shift(sheet, at, -1);
    }

    private RawWorkbook shift(String sheet, int at, int by) {
        tab(sheet).rows.replaceAll((index, row) -> {
            TreeMap<Integer, String> moved = new TreeMap<>();
            row.forEach((column, xml) -> moved.put(column < at ? column : column + by, xml));
            return moved;
        });
        return this;
    }

    RawWorkbook merge(String sheet, String range) {
        tab(sheet).merged.add(range);
        return this;
    }

    RawWorkbook hideRow(String sheet, int row) {
        tab(sheet).hiddenRows.add(row - 1);
        return this;
    }

    RawWorkbook hide(String sheet) {
        tab(sheet).hidden = true;
        return this;
    }

    RawWorkbook rename(String sheet, String name) {
        tab(sheet).name = name;
        return this;
    }

    RawWorkbook add(String name) {
        tabs.add(new Tab(name));
        return this;
    }

    RawWorkbook remove(String sheet) {
        tabs.remove(tab(sheet));
        return this;
    }

    RawWorkbook duplicate(String sheet, String name) {
        Tab copy = new Tab(name);
        tab(sheet).rows.forEach((row, cells) -> copy.rows.put(row, new TreeMap<>(cells)));
        tabs.add(copy);
        return this;
    }

    /** Rows that hold formatting and nothing else. */
    RawWorkbook emptyRows(String sheet, int count) {
        for (int i = 0; i < count; i++) {
            tab(sheet).rows.computeIfAbsent(i + 100, r -> new TreeMap<>()).put(1, "");
        }
        return this;
    }

    Path write(Path file) {
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            StringBuilder types = new StringBuilder();
            StringBuilder sheets = new StringBuilder();
            StringBuilder relations = new StringBuilder();
            for (int i = 1; i <= tabs.size(); i++) {
                Tab tab = tabs.get(i - 1);
                types.append(
                        "<Override PartName=\"/xl/worksheets/sheet" + i
                                + ".xml\" ContentType=\"application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml\"/>");
                sheets.append("<sheet name=\"" + tab.name.replace("&", "&amp;") + "\" sheetId=\"" + i + "\" r:id=\"r"
                        + i + "\"" + (tab.hidden ? " state=\"hidden\"" : "") + "/>");
                relations.append("<Relationship Id=\"r" + i + "\" Type=\"" + RELATIONS
                        + "/worksheet\" Target=\"worksheets/sheet" + i + ".xml\"/>");
                part(zip, "xl/worksheets/sheet" + i + ".xml", sheet(tab));
            }
            part(
                    zip,
                    "[Content_Types].xml",
                    "<Types xmlns=\"" + PACKAGE
                            + "content-types\"><Default Extension=\"rels\" ContentType=\"application/vnd"
                            + ".openxmlformats-package.relationships+xml\"/><Default Extension=\"xml\" ContentType=\"application"
                            + "/xml\"/><Override PartName=\"/xl/workbook.xml\" ContentType=\"application/vnd.openxmlformats-"
                            + "officedocument.spreadsheetml.sheet.main+xml\"/><Override PartName=\"/xl/styles.xml\" ContentType"
                            + "=\"application/vnd.openxmlformats-officedocument.spreadsheetml.styles+xml\"/>" + types
                            + "</Types>");
            part(
                    zip,
                    "_rels/.rels",
                    "<Relationships xmlns=\"" + PACKAGE + "relationships\"><Relationship Id=\"r1\" Type=\"" + RELATIONS
                            + "/officeDocument\" Target=\"xl/workbook.xml\"/></Relationships>");
            part(
                    zip,
                    "xl/workbook.xml",
                    "<workbook xmlns=\"" + MAIN + "\" xmlns:r=\"" + RELATIONS + "\"><sheets>" + sheets
                            + "</sheets></workbook>");
            part(
                    zip,
                    "xl/_rels/workbook.xml.rels",
                    "<Relationships xmlns=\"" + PACKAGE + "relationships\">" + relations
                            + "<Relationship Id=\"r0\" Type=\"" + RELATIONS
                            + "/styles\" Target=\"styles.xml\"/></Relationships>");
            part(
                    zip,
                    "xl/styles.xml",
                    "<styleSheet xmlns=\"" + MAIN + "\"><fonts><font/></fonts><fills><fill/></fills><borders><border/>"
                            + "</borders><cellStyleXfs><xf/></cellStyleXfs><cellXfs><xf numFmtId=\"0\"/><xf numFmtId=\"14\"/>"
                            + "</cellXfs></styleSheet>");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return file;
    }

    private static void part(ZipOutputStream zip, String name, String xml) throws IOException {
        zip.putNextEntry(new ZipEntry(name));
        zip.write((HEAD + xml).getBytes(StandardCharsets.UTF_8));
        zip.closeEntry();
    }

    private static String sheet(Tab tab) {
        StringBuilder xml = new StringBuilder("<worksheet xmlns=\"" + MAIN + "\"><sheetData>");
        for (Map.Entry<Integer, TreeMap<Integer, String>> row : tab.rows.entrySet()) {
            String hidden = tab.hiddenRows.contains(row.getKey()) ? " hidden=\"1\"" : "";
            xml.append("<row r=\"" + (row.getKey() + 1) + "\"" + hidden + ">");
            row.getValue().forEach((column, cell) -> xml.append(cell(BookSheet.reference(row.getKey(), column), cell)));
            xml.append("</row>");
        }
        xml.append("</sheetData>");
        if (!tab.merged.isEmpty()) {
            xml.append("<mergeCells>");
            tab.merged.forEach(range -> xml.append("<mergeCell ref=\"" + range + "\"/>"));
            xml.append("</mergeCells>");
        }
        return xml.append("</worksheet>").toString();
    }

    private static String cell(String reference, String cell) {
        String start = "<c r=\"" + reference + "\"";
        if (cell.isEmpty() || cell.startsWith("<")) {
            return start + ">" + cell + "</c>";
        }
        String rest = cell.substring(1);
        return switch (cell.charAt(0)) {
            case 's' -> start + " t=\"inlineStr\"><is><t xml:space=\"preserve\">" + rest + "</t></is></c>";
            case 'd' -> start + " s=\"1\"><v>" + rest + "</v></c>";
            case 'b' -> start + " t=\"b\"><v>" + rest + "</v></c>";
            case 'e' -> start + " t=\"e\">" + rest + "</c>";
            default -> throw new IllegalArgumentException(cell);
        };
    }
}
