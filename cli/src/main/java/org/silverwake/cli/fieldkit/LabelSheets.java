// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.util.List;
import java.util.Locale;
import org.silverwake.cli.fieldkit.Bottle.Role;

/**
 * Bottle labels, 2 x 7 on A4 of 99.1 x 38.1 mm: a size of label paper that is common (from memory); on plain paper they are cut
 * along the dashes.
 */
final class LabelSheets {
    private static final int COLUMNS = 2;
    private static final int ROWS = 7;
    private static final double WIDTH = 99.1;
    private static final double HEIGHT = 38.1;
    private static final double GAP = 2.5;
    private static final double SIDE = (Sheet.WIDTH - COLUMNS * WIDTH - GAP) / 2;
    private static final double TOP = (Sheet.HEIGHT - ROWS * HEIGHT) / 2;
    private static final double INSET = 5;
    private static final double CODE = 16;
    private static final double ROLE = 24;
    private static final double SIZE = 8.5;
    private static final double SMALLEST = 6;

    private final Kit kit;

    LabelSheets(Kit kit) {
        this.kit = kit;
    }

    void draw(PdfBook book) {
        List<Bottle> bottles = kit.plan().bottles();
        for (int from = 0; from < bottles.size(); from += COLUMNS * ROWS) {
            try (Sheet sheet = new Sheet(book)) {
                for (int i = from; i < Math.min(from + COLUMNS * ROWS, bottles.size()); i++) {
                    int at = i - from;
                    label(sheet, SIDE + at % COLUMNS * (WIDTH + GAP), TOP + at / COLUMNS * HEIGHT, bottles.get(i));
                }
            }
        }
    }

    private void label(Sheet sheet, double x, double y, Bottle bottle) {
        KitWords words = kit.words();
        sheet.cutFrame(x, y, WIDTH, HEIGHT);
        double left = x + INSET;
        double right = x + WIDTH - INSET;
        double width = right - left;
        sheet.fitted(left, y + 8.5, width - ROLE, CODE, SIZE, true, bottle.code());
        if (bottle.role() != Role.SAMPLE) {
            sheet.right(right, y + 8, ROLE, SIZE, words.text("role." + bottle.role()));
        }
        Stop stop = kit.plan().stops().get(bottle.stop());
        String place = String.format(Locale.ROOT, "%d  %s", bottle.stop() + 1, stop.name());
        sheet.fitted(left, y + 14, width, SIZE + 1, SMALLEST, false, place);
        sheet.fitted(
                left, y + 18.7, width, SIZE, SMALLEST, true, bottle.analysis().words());
        double middle = x + WIDTH / 2;
        sheet.blank(left, y + 24.5, middle - 2, SIZE, words.text("label.date"));
        sheet.blank(middle, y + 24.5, right, SIZE, words.text("label.time"));
        sheet.blank(left, y + 30.5, middle + 8, SIZE, words.text("label.preserve"));
        sheet.blank(middle + 10, y + 30.5, right, SIZE, words.text("label.sampler"));
        sheet.fitted(left, y + 35.2, width, SMALLEST, SMALLEST, false, kit.title());
    }
}
