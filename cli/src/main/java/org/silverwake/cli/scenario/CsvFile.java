// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import de.siegmar.fastcsv.reader.CsvParseException;
import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.silverwake.model.quantity.DecimalMark;

/**
 * Reads a table as offices save it: comma or semicolon, decimal point or (with semicolons) decimal comma, with or without
 * a byte-order mark, UTF-8 or else Windows-1252.
 */
final class CsvFile {
    private static final Charset OFFICE = Charset.forName("windows-1252");
    private static final String NUMBER_AND_UNIT = "([+-]?[\\d.,]+)(\\s*[^\\d\\s].*)?";

    private CsvFile() {}

    /** The table; empty with a noted problem where the file cannot be read as one. */
    static Optional<Table> read(Path file, Problems problems) {
        return read(file, problems, text -> new HeadingLine(text, separator(text)));
    }

    /** The same for a list whose headings may stand below a title, and whose columns may be parted by tabs. */
    static Optional<Table> list(Path file, Problems problems) {
        return read(
                file, problems, text -> HeadingLine.find(text).orElseGet(() -> new HeadingLine(text, separator(text))));
    }

    private static Optional<Table> read(Path file, Problems problems, Function<String, HeadingLine> headings) {
        String label = file.getFileName().toString();
        try {
            byte[] bytes = Files.readAllBytes(file);
            if (isWorkbook(bytes)) {
                problems.add(label, "is a workbook, not text; save it as CSV (comma or semicolon separated)");
                return Optional.empty();
            }
            HeadingLine from = headings.apply(decode(bytes));
            return table(label, from.text(), from.separator(), problems);
        } catch (CsvParseException e) {
            String line = String.valueOf(e.getMessage()).replaceAll("(?s).*?\\bline (\\d+).*|.*", "$1");
            problems.add(
                    line.isEmpty() ? label : label + ":" + line,
                    "cannot be read as rows of a table from here on; a quote that is opened is not closed, or a cell is"
                            + " too long");
        } catch (IOException | UncheckedIOException e) {
            problems.add(label, "cannot be read as text (" + e.getMessage() + "); save it as CSV in UTF-8");
        }
        return Optional.empty();
    }

    private static Optional<Table> table(String label, String text, char separator, Problems problems) {
        List<CsvRecord> records = new ArrayList<>();
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .allowExtraFields(true)
                .allowMissingFields(true)
                .ofCsvRecord(text)) {
            reader.forEach(records::add);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        if (records.isEmpty()) {
            problems.add(label, "is empty; give a heading line and a line for each entry");
            return Optional.empty();
        }
        List<String> header = header(label, records.get(0), problems);
        List<Table.Line> rows = new ArrayList<>();
        for (CsvRecord record : records.subList(1, records.size())) {
            line(label, header, record, problems).ifPresent(rows::add);
        }
        DecimalMark mark = separator == ',' ? DecimalMark.POINT : mark(rows);
        return Optional.of(new Table(label, new LinkedHashSet<>(header), rows, mark));
    }

    private static List<String> header(String label, CsvRecord record, Problems problems) {
        List<String> header = new ArrayList<>();
        for (String field : record.getFields()) {
            String name = Table.columnName(field);
            if (name.isEmpty()) {
                name = "note (column " + (header.size() + 1) + ", without a heading)";
            } else if (header.contains(name)) {
                problems.add(label + ":" + record.getStartingLineNumber() + " " + name, "is a column twice; keep one");
            }
            header.add(name);
        }
        return header;
    }

    private static Optional<Table.Line> line(String label, List<String> header, CsvRecord record, Problems problems) {
        Map<String, String> cells = new LinkedHashMap<>();
        for (int i = 0; i < record.getFieldCount(); i++) {
            String cell = record.getField(i).replace('\u00a0', ' ').strip();
            if (cell.isEmpty()) {
                continue;
            }
            if (i >= header.size()) {
                problems.add(
                        label + ":" + record.getStartingLineNumber(),
                        "has " + record.getFieldCount() + " cells under " + header.size()
                                + " headings; put a cell that holds the separator in quotes");
                break;
            }
            cells.put(header.get(i), cell);
        }
        return cells.isEmpty() ? Optional.empty() : Optional.of(new Table.Line(record.getStartingLineNumber(), cells));
    }

    /** A decimal comma, unless the numbers of the file show points that can be nothing but decimal. */
    private static DecimalMark mark(List<Table.Line> rows) {
        boolean point = false;
        for (Table.Line row : rows) {
            for (Map.Entry<String, String> cell : row.cells().entrySet()) {
                if (cell.getKey().startsWith("note") || !cell.getValue().matches(NUMBER_AND_UNIT)) {
                    continue;
                }
                String number = cell.getValue().replaceAll(NUMBER_AND_UNIT, "$1");
                if (DecimalMark.showsComma(number)) {
                    return DecimalMark.COMMA;
                }
                point |= DecimalMark.showsPoint(number);
            }
        }
        return point ? DecimalMark.POINT : DecimalMark.COMMA;
    }

    /** Whether the file is a zip, as workbooks are now, or a compound file, as they were. */
    private static boolean isWorkbook(byte[] bytes) {
        String start = new String(bytes, 0, Math.min(4, bytes.length), StandardCharsets.ISO_8859_1);
        return start.equals("PK\u0003\u0004") || start.equals("\u00d0\u00cf\u0011\u00e0");
    }

    /** The separator that the heading line holds more of, outside quotes. */
    private static char separator(String text) {
        int commas = 0;
        int semicolons = 0;
        boolean quoted = false;
        for (int i = 0; i < text.length() && (quoted || text.charAt(i) != '\n'); i++) {
            char c = text.charAt(i);
            quoted ^= c == '"';
            if (!quoted) {
                commas += c == ',' ? 1 : 0;
                semicolons += c == ';' ? 1 : 0;
            }
        }
        return semicolons > commas ? ';' : ',';
    }

    private static String decode(byte[] bytes) throws IOException {
        String text;
        if (bytes.length > 1
                && (bytes[0] == (byte) 0xff && bytes[1] == (byte) 0xfe
                        || bytes[0] == (byte) 0xfe && bytes[1] == (byte) 0xff)) {
            throw new IOException("UTF-16");
        }
        try {
            text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
        } catch (CharacterCodingException e) {
            text = new String(bytes, OFFICE);
        }
        return text.startsWith("\ufeff") ? text.substring(1) : text;
    }
}
