// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.util.List;

/** Who had the bottles when: codes of one shipment, and lines for each hand they pass through. */
final class CustodyForm {
    private static final double SIZE = 9;
    private static final int ROWS = 28;
    private static final int HANDS = 4;
    private static final Grid CODES = new Grid(List.of(42.0, 66.0, 36.0, 36.0), 6.2, 8.5);
    private static final Grid SIGNATURES = new Grid(List.of(56.0, 56.0, 30.0, 38.0), 11, 8.5);
    private static final Grid SIGNATURE_HEADER = new Grid(SIGNATURES.widths(), 6.2, 8);

    private final Kit kit;

    CustodyForm(Kit kit) {
        this.kit = kit;
    }

    void draw(PdfBook book) {
        List<Bottle> bottles = kit.plan().bottles();
        int pages = (bottles.size() + ROWS - 1) / ROWS;
        for (int page = 0; page < pages; page++) {
            int from = page * ROWS;
            page(book, page, pages, bottles.subList(from, Math.min(from + ROWS, bottles.size())));
        }
    }

    private void page(PdfBook book, int page, int pages, List<Bottle> bottles) {
        KitWords words = kit.words();
        try (Sheet sheet = new Sheet(book)) {
            double y = kit.frame(sheet, words.text("custody.title") + ", " + words.text("page", page + 1, pages));
            y += 3;
            sheet.blank(Kit.LEFT, y, 75, SIZE, words.text("custody.shipment"));
            sheet.blank(78, y, Kit.RIGHT, SIZE, words.text("custody.laboratory"));
            y += 8.5;
            sheet.blank(Kit.LEFT, y, 75, SIZE, words.text("custody.cooler"));
            sheet.blank(78, y, 125, SIZE, words.text("custody.seal"));
            sheet.blank(128, y, Kit.RIGHT, SIZE, words.text("custody.temperature"));
            y = CODES.row(
                    sheet,
                    y + 6,
                    true,
                    List.of(
                            words.text("custody.code"),
                            words.text("custody.what"),
                            words.text("custody.date"),
                            words.text("custody.condition")));
            for (Bottle bottle : bottles) {
                y = CODES.row(
                        sheet,
                        y,
                        false,
                        List.of(bottle.code(), bottle.analysis().words()));
            }
            y = SIGNATURE_HEADER.row(
                    sheet,
                    y + 6,
                    true,
                    List.of(
                            words.text("custody.relinquished"),
                            words.text("custody.received"),
                            words.text("custody.when"),
                            words.text("custody.state")));
            for (int hand = 0; hand < HANDS; hand++) {
                y = SIGNATURES.row(sheet, y, false, List.of());
            }
        }
    }
}
