// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import java.util.zip.ZipFile;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;
import org.dhatim.fastexcel.reader.SheetVisibility;

/** Reads the sheets of a workbook (.xlsx), whatever they hold. */
final class BookReader {
    private static final String SAVE_AS = "save it from the spreadsheet program as an Excel workbook (.xlsx)";
    private static final byte[] OLD_OR_LOCKED = {(byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0};
    private static final byte[] ZIP = {'P', 'K', 3, 4};

    private BookReader() {}

    /**
     * The sheets in their order.
     *
     * @throws BookException in words for the user, if the file is no workbook that can be read
     */
    static List<BookSheet> read(Path file) {
        try {
            byte[] bytes = Files.readAllBytes(file);
            if (startsWith(bytes, OLD_OR_LOCKED)) {
                boolean locked = new String(bytes, StandardCharsets.UTF_16LE).contains("EncryptedPackage");
                throw new BookException(
                        locked
                                ? "is locked with a password; save it without one"
                                : "is a workbook of the old kind (.xls); " + SAVE_AS);
            }
            if (!startsWith(bytes, ZIP)) {
                throw new BookException("is no workbook, whatever its name says; " + SAVE_AS);
            }
            return readZip(file);
        } catch (BookException e) {
            throw e;
        } catch (AccessDeniedException e) {
            throw new BookException("cannot be opened; close it in other programs", e);
        } catch (Exception e) { // the library passes on whatever its XML reader throws, checked or not
            throw new BookException("is damaged (" + e.getMessage() + "); " + SAVE_AS + " again", e);
        }
    }

    private static boolean startsWith(byte[] bytes, byte[] start) {
        boolean same = bytes.length >= start.length;
        for (int i = 0; same && i < start.length; i++) {
            same = bytes[i] == start[i];
        }
        return same;
    }

    private static List<BookSheet> readZip(Path file) throws IOException {
        List<BookSheet> sheets = new ArrayList<>();
        try (ZipFile zip = new ZipFile(file.toFile())) {
            if (zip.getEntry("xl/workbook.xml") == null) {
                boolean open = zip.getEntry("content.xml") != null;
                throw new BookException(
                        (open ? "is an OpenDocument file (.ods); " : "is a zip file, but no workbook; ") + SAVE_AS);
            }
            SheetParts parts = new SheetParts(zip);
            try (ReadableWorkbook book = new ReadableWorkbook(file.toFile(), new ReadingOptions(true, true))) {
                CellTexts texts = new CellTexts(book.isDate1904());
                for (Sheet sheet : book.getSheets().toList()) {
                    sheets.add(new BookSheet(
                            sheet.getName(),
                            sheet.getVisibility() != SheetVisibility.VISIBLE,
                            rows(sheet, texts),
                            parts.hiddenRows(sheet.getName()),
                            parts.merged(sheet.getName())));
                }
            }
        }
        return sheets;
    }

    private static TreeMap<Integer, Map<Integer, BookCell>> rows(Sheet sheet, CellTexts texts) throws IOException {
        TreeMap<Integer, Map<Integer, BookCell>> rows = new TreeMap<>();
        try (Stream<Row> stream = sheet.openStream()) {
            stream.forEach(row -> {
                Map<Integer, BookCell> cells = new HashMap<>();
                for (Cell cell : row) {
                    BookCell found = cell == null ? BookCell.BLANK : texts.of(cell);
                    if (!found.isBlank()) {
                        cells.put(cell.getColumnIndex(), found);
                    }
                }
                if (!cells.isEmpty()) {
                    rows.put(row.getRowNum() - 1, cells);
                }
            });
        }
        return rows;
    }
}
