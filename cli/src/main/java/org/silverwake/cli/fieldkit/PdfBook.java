// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Calendar;
import java.util.GregorianCalendar;
import java.util.TimeZone;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/** One PDF file. Its date is the scenario's and its number fixed, so that the same scenario gives the same bytes. */
final class PdfBook implements AutoCloseable {
    private static final long NUMBER = 1;

    private final PDDocument document = new PDDocument();
    private final Letters letters = new Letters(document);

    PdfBook(String title, LocalDate date) {
        PDDocumentInformation information = new PDDocumentInformation();
        information.setTitle(title);
        Calendar day = new GregorianCalendar(TimeZone.getTimeZone("UTC"));
        day.clear();
        day.set(date.getYear(), date.getMonthValue() - 1, date.getDayOfMonth());
        information.setCreationDate(day);
        document.setDocumentInformation(information);
        document.setDocumentId(NUMBER);
    }

    Letters letters() {
        return letters;
    }

    /** Adds a page and opens it for drawing. */
    PDPageContentStream page(PDPage page) {
        document.addPage(page);
        try {
            return new PDPageContentStream(document, page);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    void save(Path file) {
        try {
            document.save(file.toFile());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Override
    public void close() {
        try {
            document.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
