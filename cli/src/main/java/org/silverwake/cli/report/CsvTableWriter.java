// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.text.Numbers;
import org.silverwake.cli.text.TableForm;

/** One CSV table with units in its header. Rows are given cell by cell. */
public final class CsvTableWriter implements AutoCloseable {
    private final CsvWriter writer;
    private final List<String> row = new ArrayList<>();
    private final int columns;
    private final TableForm form;

    /** Opens a table. */
    public CsvTableWriter(Path file, List<String> header, TableForm form) {
        this.form = form;
        try {
            Files.createDirectories(file.getParent());
            this.writer = form.open(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        this.columns = header.size();
        writer.writeRecord(header);
    }

    /** A cell of words. */
    public CsvTableWriter text(String value) {
        row.add(value);
        return this;
    }

    /** A cell with a number; blank where it is NaN. */
    public CsvTableWriter number(double value) {
        return figures(Numbers.text(value));
    }

    /** A cell with a geographic coordinate [deg]. */
    public CsvTableWriter degrees(double value) {
        return figures(Numbers.degrees(value));
    }

    private CsvTableWriter figures(String text) {
        row.add(form.figures(text));
        return this;
    }

    /** A cell that says yes, or nothing. */
    public CsvTableWriter yes(boolean value) {
        row.add(value ? "yes" : "");
        return this;
    }

    /** Ends a row whose further cells are blank. */
    public void endBlank() {
        while (row.size() < columns) {
            row.add("");
        }
        end();
    }

    /** Ends a row. */
    public void end() {
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
