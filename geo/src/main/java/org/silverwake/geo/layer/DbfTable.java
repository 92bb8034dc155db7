// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** The attribute table of a Shapefile (dBASE III and its successors). */
final class DbfTable {
    private static final int HEADER = 32;
    private static final int FIELD = 32;
    private static final int NAME_BYTES = 11;
    private static final byte END_OF_FIELDS = 0x0d;
    /** Whole numbers of fewer digits fit in a long. */
    private static final int LONG_DIGITS = 19;

    private static final String WESTERN = "windows-1252";
    /** Code pages by the language byte of the header; the commonest of dBASE's list. */
    private static final Map<Integer, String> LANGUAGES = Map.ofEntries(
            Map.entry(0x01, "IBM437"),
            Map.entry(0x02, "IBM850"),
            Map.entry(0x03, WESTERN),
            Map.entry(0x13, "Shift_JIS"),
            Map.entry(0x4d, "GBK"),
            Map.entry(0x4f, "Big5"),
            Map.entry(0x57, WESTERN),
            Map.entry(0x58, WESTERN),
            Map.entry(0x59, WESTERN),
            Map.entry(0x64, "IBM852"),
            Map.entry(0x65, "IBM866"),
            Map.entry(0x7b, "GBK"),
            Map.entry(0x7c, "windows-874"),
            Map.entry(0xc8, "windows-1250"),
            Map.entry(0xc9, "windows-1251"),
            Map.entry(0xca, "windows-1254"),
            Map.entry(0xcb, "windows-1253"),
            Map.entry(0xcc, "windows-1257"));

    private record Field(String name, char type, int offset, int length, int decimals) {}

    private final ByteBuffer bytes;
    private final Charset charset;
    private final int firstRow;
    private final int rowLength;
    private final int rowCount;
    private final List<Field> fields = new ArrayList<>();

    DbfTable(ByteBuffer bytes, Optional<String> codePage, List<String> warnings) {
        this.bytes = bytes.order(ByteOrder.LITTLE_ENDIAN);
        if (bytes.limit() < HEADER) {
            warnings.add("the .dbf file is cut off: features have no attributes");
            charset = StandardCharsets.UTF_8;
            firstRow = 0;
            rowLength = 1;
            rowCount = 0;
            return;
        }
        firstRow = bytes.getShort(8) & 0xffff;
        rowLength = Math.max(1, bytes.getShort(10) & 0xffff);
        int stated = bytes.getInt(4);
        int there = Math.max(0, (bytes.limit() - firstRow) / rowLength);
        rowCount = Math.max(0, Math.min(stated, there));
        if (rowCount < stated) {
            warnings.add("the .dbf file is cut off after row " + rowCount + " of " + stated);
        }
        charset = charset(codePage, warnings);
        readFields();
    }

    private void readFields() {
        int offset = 1;
        for (int at = HEADER; at + FIELD <= firstRow && bytes.get(at) != END_OF_FIELDS; at += FIELD) {
            int length = bytes.get(at + 16) & 0xff;
            int decimals = bytes.get(at + 17) & 0xff;
            char type = (char) bytes.get(at + 11);
            if (type == 'C') {
                length += decimals << 8;
            }
            String name = text(at, NAME_BYTES);
            int end = name.indexOf(0);
            fields.add(new Field(end < 0 ? name : name.substring(0, end), type, offset, length, decimals));
            offset += length;
        }
    }

    private Charset charset(Optional<String> codePage, List<String> warnings) {
        if (codePage.isPresent() && !codePage.get().isEmpty()) {
            String name = javaName(codePage.get());
            try {
                return Charset.forName(name);
            } catch (IllegalArgumentException e) {
                warnings.add("the .cpg file names the encoding \"" + codePage.get() + "\", which is not known");
            }
        }
        String byLanguage = LANGUAGES.get(bytes.get(29) & 0xff);
        if (byLanguage != null && Charset.isSupported(byLanguage)) {
            return Charset.forName(byLanguage);
        }
        try {
            ByteBuffer body = bytes.duplicate().position(Math.min(firstRow, bytes.limit()));
            StandardCharsets.UTF_8.newDecoder().decode(body);
            return StandardCharsets.UTF_8;
        } catch (CharacterCodingException notUtf8) {
            warnings.add("neither .cpg nor .dbf names the text's encoding: read as " + WESTERN
                    + "; put the encoding's name in a .cpg file if names look wrong");
            return Charset.forName(WESTERN);
        }
    }

    private static String javaName(String written) {
        String name = written.lines().findFirst().orElse("").strip().toUpperCase(Locale.ROOT);
        name = name.replaceFirst("^(ANSI|OEM|CP)[ _-]?(?=\\d)", "");
        if (name.equals("65001")) {
            return "UTF-8";
        }
        if (name.matches("(ISO)?[ _-]?8859[ _-]?\\d+")) {
            return "ISO-8859-" + name.replaceFirst("^.*8859[ _-]?", "");
        }
        if (name.matches("125\\d|874")) {
            return "windows-" + name;
        }
        return name.matches("\\d+") ? "IBM" + name : name;
    }

    List<String> columns() {
        return fields.stream().map(Field::name).toList();
    }

    int rowCount() {
        return rowCount;
    }

    /** Whether a row is marked as deleted. */
    boolean deleted(int row) {
        return bytes.get(firstRow + row * rowLength) == '*';
    }

    /** Values of a row by column, absent where empty. */
    Map<String, Object> row(int row) {
        Map<String, Object> values = new LinkedHashMap<>();
        int start = firstRow + row * rowLength;
        for (Field field : fields) {
            if (field.offset() + field.length() <= rowLength) {
                Object value = value(field, start + field.offset());
                if (value != null) {
                    values.put(field.name(), value);
                }
            }
        }
        return values;
    }

    private Object value(Field field, int at) {
        if (field.type() == 'O' && field.length() == 8 || field.type() == 'B' && field.length() == 8) {
            return bytes.getDouble(at);
        }
        if (field.type() == 'I' && field.length() == 4) {
            return (long) bytes.getInt(at);
        }
        String text = text(at, field.length()).replace("\0", "");
        if (field.type() == 'C') {
            return text.isBlank() ? null : text.stripTrailing();
        }
        text = text.strip();
        // Rows of asterisks mean no value in numbers (ESRI practice).
        if (text.isEmpty() || text.charAt(0) == '*') {
            return null;
        }
        return switch (field.type()) {
            case 'N', 'F' -> number(text, field);
            case 'D' -> date(text);
            case 'L' -> text.equals("?") ? null : (Object) "YyTt".contains(text);
            default -> text;
        };
    }

    private static Object number(String text, Field field) {
        try {
            if (field.decimals() == 0 && text.length() < LONG_DIGITS && text.matches("[+-]?\\d+")) {
                return Long.valueOf(text);
            }
            return Double.valueOf(text.replace(',', '.'));
        } catch (NumberFormatException e) {
            return text;
        }
    }

    private static Object date(String text) {
        try {
            return text.equals("00000000") ? null : LocalDate.parse(text, DateTimeFormatter.BASIC_ISO_DATE);
        } catch (DateTimeException e) {
            return text;
        }
    }

    private String text(int at, int length) {
        int end = Math.min(at + length, bytes.limit());
        return new String(bytes.array(), bytes.arrayOffset() + at, Math.max(0, end - at), charset);
    }
}
