// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.fieldkit.Bottle.Role;

/** The first page: how many bottles of what, what to ask the laboratory, how samples are taken. */
final class SummarySheet {
    private static final double SIZE = 9;
    private static final double HEADING = 11;
    private static final double GAP = 5;

    private static final Grid COUNTS = new Grid(List.of(76.0, 22.0, 24.0, 26.0, 18.0, 14.0), 6.5, SIZE);
    private static final Grid QUESTIONS = new Grid(List.of(56.0, 30.0, 22.0, 32.0, 18.0, 22.0), 7.5, SIZE);

    private final Kit kit;

    SummarySheet(Kit kit) {
        this.kit = kit;
    }

    void draw(PdfBook book) {
        KitWords words = kit.words();
        try (Sheet sheet = new Sheet(book)) {
            double y = kit.frame(sheet, words.text("summary.title"));
            sheet.fitted(
                    Kit.LEFT, y, Kit.WIDTH, SIZE, SIZE, false, words.text("summary.by", kit.preparedBy(), kit.date()));
            y = counts(sheet, y + GAP) + GAP;
            y = sheet.wrapped(Kit.LEFT, y, Kit.WIDTH, SIZE, false, words.text("summary.every", kit.every()));
            y = sheet.wrapped(Kit.LEFT, y, Kit.WIDTH, SIZE, false, codes());
            y = questions(sheet, y + GAP) + GAP;
            sheet.text(Kit.LEFT, y + 1, HEADING, true, words.text("summary.practice"));
            y += GAP + 1;
            for (String line : words.list("summary.practice")) {
                y = sheet.wrapped(Kit.LEFT, y, Kit.WIDTH, SIZE, false, line) + 0.8;
            }
            sheet.wrapped(Kit.LEFT, y + 2, Kit.WIDTH, SIZE, false, words.text("summary.back"));
        }
    }

    private double counts(Sheet sheet, double top) {
        KitWords words = kit.words();
        SamplePlan plan = kit.plan();
        double y = COUNTS.row(
                sheet,
                top,
                true,
                List.of(
                        words.text("summary.kind"),
                        words.text("summary.places"),
                        words.text("summary.duplicates"),
                        words.text("summary.blanks"),
                        words.text("summary.bottles"),
                        words.text("summary.code")));
        List<Long> sums = new ArrayList<>(List.of(0L, 0L, 0L));
        for (Analysis analysis : plan.analyses()) {
            List<String> cells = new ArrayList<>(List.of(analysis.words()));
            long all = 0;
            for (Role role : Role.values()) {
                long count = plan.count(analysis, role);
                sums.set(role.ordinal(), sums.get(role.ordinal()) + count);
                all += count;
                cells.add(String.valueOf(count));
            }
            cells.add(String.valueOf(all));
            cells.add(analysis.letters());
            y = COUNTS.row(sheet, y, false, cells);
        }
        List<String> total = new ArrayList<>(List.of(words.text("summary.total")));
        sums.forEach(sum -> total.add(String.valueOf(sum)));
        total.add(String.valueOf(plan.bottles().size()));
        return COUNTS.row(sheet, y, true, total);
    }

    private String codes() {
        Bottle first = kit.plan().bottles().get(0);
        String example = kit.words()
                .text(
                        "summary.codes.example",
                        first.code(),
                        first.stop() + 1,
                        first.analysis().words());
        return kit.words().text("summary.codes", example);
    }

    private double questions(Sheet sheet, double top) {
        KitWords words = kit.words();
        sheet.text(Kit.LEFT, top + 1, HEADING, true, words.text("summary.laboratory"));
        List<String> header = new ArrayList<>();
        for (String column : List.of("kind", "bottle", "filter", "preserve", "cool", "within")) {
            header.add(words.text("summary.laboratory." + column));
        }
        double y = QUESTIONS.row(sheet, top + 3.5, true, header);
        for (Analysis analysis : kit.plan().analyses()) {
            y = QUESTIONS.row(sheet, y, false, List.of(analysis.words()));
        }
        return y + 2;
    }
}
