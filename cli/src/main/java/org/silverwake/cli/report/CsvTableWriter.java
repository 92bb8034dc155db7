// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.ScenarioInput.TableForm;
import org.silverwake.cli.text.Numbers;

/**
 * One CSV table: UTF-8, a header with units; commas and decimal points, or, as the spreadsheet programs of many languages
 * want it, semicolons and decimal commas behind a byte-order mark. Rows are given cell by cell.
 */
final class CsvTableWriter implements AutoCloseable {
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final CsvWriter writer;
    private final List<String> row = new ArrayList<>();
    private final int columns;
    private final TableForm form;

    CsvTableWriter(Path file, List<String> header, TableForm form) {
        this.form = form;
        try {
            Files.createDirectories(file.getParent());
            BufferedWriter text = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
            if (form == TableForm.SEMICOLON) {
                text.write(BYTE_ORDER_MARK);
            }
            this.writer = CsvWriter.builder()
                    .lineDelimiter(LineDelimiter.LF)
                    .fieldSeparator(form == TableForm.SEMICOLON ? ';' : ',')
                    .build(text);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        this.columns = header.size();
        writer.writeRecord(header);
    }

    CsvTableWriter text(String value) {
        row.add(value);
        return this;
    }

    CsvTableWriter number(double value) {
        return figures(Numbers.text(value));
    }

    CsvTableWriter degrees(double value) {
        return figures(Numbers.degrees(value));
    }

    private CsvTableWriter figures(String text) {
        row.add(form == TableForm.SEMICOLON ? text.replace('.', ',') : text);
        return this;
    }

    CsvTableWriter yes(boolean value) {
        row.add(value ? "yes" : "");
        return this;
    }

    /** Ends a row whose further cells are blank. */
    void endBlank() {
        while (row.size() < columns) {
            row.add("");
        }
        end();
    }

    void end() {
        if (row.size() != columns) {
            throw new IllegalStateException("a row of " + row.size() + " cells under a header of " + columns);
        }
        writer.writeRecord(row);
        row.clear();
    }

    @Override
    public void close() {
        try {
            writer.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
