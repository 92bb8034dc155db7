// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.text;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;

/** How tables are written: UTF-8 text with line feeds. */
public enum TableForm {
    /** Commas between cells, decimal points. */
    COMMA(','),
    /** Semicolons between cells, decimal commas, behind a byte-order mark: as spreadsheet programs set to a decimal comma open it. */
    SEMICOLON(';');

    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private final char separator;

    TableForm(char separator) {
        this.separator = separator;
    }

    /** Opens a file to write rows into; an old one is replaced. */
    public CsvWriter open(Path file) throws IOException {
        BufferedWriter text = Files.newBufferedWriter(file, StandardCharsets.UTF_8);
        if (this == SEMICOLON) {
            text.write(BYTE_ORDER_MARK);
        }
        return CsvWriter.builder()
                .lineDelimiter(LineDelimiter.LF)
                .fieldSeparator(separator)
                .build(text);
    }

    /** A number, written with a decimal point, as it stands in a cell. */
    public String figures(String number) {
        return this == SEMICOLON ? number.replace('.', ',') : number;
    }
}
