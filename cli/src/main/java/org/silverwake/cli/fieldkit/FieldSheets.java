// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.silverwake.cli.fieldkit.Bottle.Role;

/** One page for each place, to be filled in there; further pages where a place has very many bottles. */
final class FieldSheets {
    private static final double SIZE = 9;
    private static final double NAME = 18;
    private static final double SMALLEST_NAME = 11;
    private static final double SMALL = 7.5;
    private static final double STEP = 8.5;
    private static final double LAST = Sheet.HEIGHT - 14;
    private static final int MOST_ON_A_PAGE = 12;
    private static final Grid BOTTLES = new Grid(List.of(40.0, 58.0, 18.0, 24.0, 26.0, 14.0), 6.2, 8.5);

    private final Kit kit;
    private final KitWords words;

    FieldSheets(Kit kit) {
        this.kit = kit;
        this.words = kit.words();
    }

    void draw(PdfBook book) {
        for (int stop = 0; stop < kit.plan().stops().size(); stop++) {
            place(book, stop);
        }
    }

    private void place(PdfBook book, int stop) {
        List<Bottle> bottles = kit.plan().at(stop);
        String heading =
                words.text("sheet.title", stop + 1 + " / " + kit.plan().stops().size());
        try (Sheet sheet = new Sheet(book)) {
            double y = where(
                    sheet, kit.frame(sheet, heading) + 2, kit.plan().stops().get(stop));
            y = visit(sheet, y + 3);
            y = bottles(sheet, y, bottles.subList(0, Math.min(MOST_ON_A_PAGE, bottles.size())));
            double safety = LAST - safetyHeight(sheet);
            remarks(sheet, y + 6, safety - 3);
            safety(sheet, safety);
        }
        for (int from = MOST_ON_A_PAGE; from < bottles.size(); from += 3 * MOST_ON_A_PAGE) {
            try (Sheet sheet = new Sheet(book)) {
                double y = kit.frame(sheet, heading + ", " + words.text("sheet.more"));
                bottles(sheet, y, bottles.subList(from, Math.min(from + 3 * MOST_ON_A_PAGE, bottles.size())));
            }
        }
    }

    private double where(Sheet sheet, double top, Stop stop) {
        sheet.fitted(Kit.LEFT, top + 2, Kit.WIDTH, NAME, SMALLEST_NAME, true, stop.name());
        double y = top + 8.5;
        String position = words.text(
                "sheet.position",
                String.format(Locale.ROOT, "%.5f", stop.latitude()),
                String.format(Locale.ROOT, "%.5f", stop.longitude()));
        sheet.text(Kit.LEFT, y, SIZE, true, position);
        y = sheet.wrapped(Kit.LEFT, y + Sheet.lineHeight(SIZE), Kit.WIDTH, SIZE, false, stop.reference());
        String uses = stop.uses().stream()
                .map(use -> use.name().toLowerCase(Locale.ROOT).replace('_', ' '))
                .collect(Collectors.joining(", "));
        String line = words.text("sheet.used", uses)
                + (stop.note().isEmpty() ? "" : "; " + words.text("sheet.note", stop.note()));
        List<String> lines = sheet.lines(line, false, SIZE, Kit.WIDTH);
        for (String each : lines.subList(0, Math.min(2, lines.size()))) {
            sheet.text(Kit.LEFT, y, SIZE, false, each);
            y += Sheet.lineHeight(SIZE);
        }
        return y;
    }

    private double visit(Sheet sheet, double top) {
        double left = Kit.LEFT;
        double right = Kit.RIGHT;
        double y = top + 2;
        sheet.blank(left, y, 58, SIZE, words.text("sheet.date"));
        sheet.blank(61, y, 92, SIZE, words.text("sheet.time"));
        sheet.blank(95, y, 142, SIZE, words.text("sheet.sampler"));
        sheet.blank(145, y, right, SIZE, words.text("sheet.second"));
        y += STEP;
        sheet.blank(left, y, 88, SIZE, words.text("sheet.latitude"));
        sheet.blank(91, y, 142, SIZE, words.text("sheet.longitude"));
        sheet.blank(145, y, right, SIZE, words.text("sheet.accuracy"));
        y = flow(sheet, y + STEP);
        sheet.blank(left, y, 62, SIZE, words.text("sheet.level"));
        sheet.blank(65, y, 120, SIZE, words.text("sheet.gauge"));
        sheet.text(123, y, SIZE, false, words.text("sheet.trend"));
        double x = 138;
        for (String trend : words.list("sheet.trend")) {
            x = sheet.box(x, y, SIZE, trend) - 1;
        }
        y += STEP;
        sheet.blank(left, y, 100, SIZE, words.text("sheet.weather"));
        sheet.blank(103, y, right, SIZE, words.text("sheet.before"));
        y += STEP;
        sheet.blank(left, y, 58, SIZE, words.text("sheet.temperature"));
        sheet.blank(61, y, 84, SIZE, words.text("sheet.ph"));
        sheet.blank(87, y, 144, SIZE, words.text("sheet.conductivity"));
        sheet.blank(147, y, right, SIZE, words.text("sheet.turbidity"));
        return y + 4;
    }

    /** A box for each flow state, over several lines where there are many. */
    private double flow(Sheet sheet, double top) {
        sheet.text(Kit.LEFT, top, SIZE, false, words.text("sheet.flow"));
        double y = top;
        double x = Kit.LEFT + 14;
        for (String state : kit.states()) {
            if (x + 2.0 * state.length() + 6 > Kit.RIGHT - 40) {
                y += 5.5;
                x = Kit.LEFT + 14;
            }
            x = sheet.box(x, y, SIZE, state);
        }
        sheet.box(x, y, SIZE, "");
        sheet.blank(x + 5, y, Kit.RIGHT, SIZE, words.text("sheet.flow.other"));
        return y + STEP;
    }

    private double bottles(Sheet sheet, double top, List<Bottle> bottles) {
        List<String> header = List.of("code", "what", "volume", "filter", "preserve", "taken").stream()
                .map(column -> words.text("sheet." + column))
                .toList();
        double y = BOTTLES.row(sheet, top, true, header);
        for (Bottle bottle : bottles) {
            String what = bottle.analysis().words()
                    + (bottle.role() == Role.SAMPLE ? "" : ", " + words.text("role." + bottle.role()));
            double next = BOTTLES.row(sheet, y, false, List.of(bottle.code(), what));
            sheet.box(Kit.RIGHT - 8.6, y + 4.3, 11, "");
            y = next;
        }
        return y;
    }

    private void remarks(Sheet sheet, double top, double bottom) {
        sheet.blank(Kit.LEFT, top, Kit.RIGHT, SIZE, words.text("sheet.photos"));
        sheet.text(Kit.LEFT, top + 6, SIZE, false, words.text("sheet.remarks"));
        for (double y = top + 14; y < bottom; y += 7) {
            sheet.line(Kit.LEFT, y, Kit.RIGHT, y);
        }
    }

    private double safetyHeight(Sheet sheet) {
        int lines = words.list("safety").stream()
                .mapToInt(line -> sheet.lines(line, false, SMALL, Kit.WIDTH - 6).size())
                .sum();
        return 8 + lines * Sheet.lineHeight(SMALL) + 1;
    }

    private void safety(Sheet sheet, double top) {
        sheet.frame(Kit.LEFT, top, Kit.WIDTH, safetyHeight(sheet));
        sheet.text(Kit.LEFT + 3, top + 4.5, SIZE, true, words.text("safety.title"));
        double y = top + 9;
        for (String line : words.list("safety")) {
            y = sheet.wrapped(Kit.LEFT + 3, y, Kit.WIDTH - 6, SMALL, false, line);
        }
    }
}
