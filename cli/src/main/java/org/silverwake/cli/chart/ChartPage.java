// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Font;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import org.silverwake.geo.map.Paper;
import org.silverwake.geo.map.Picture;

/** A page of 8 by 5 inches with heading and foot, as all charts have it. */
final class ChartPage {
    private static final double SUBTITLE_LEAST = 9.5;
    private static final double INNER = Theme.WIDTH - 2 * Theme.MARGIN;

    private ChartPage() {}

    /** Draws a page into a file: PNG (2400 by 1500 pixels), SVG or PDF, as its name ends. */
    static void write(Path file, Consumer<PageText> drawing) {
        Picture.write(file, Theme.WIDTH, Theme.HEIGHT, Paper.DOTS_PER_INCH, g -> drawing.accept(new PageText(g)));
    }

    /** Title and what is below it; the bottom edge. */
    static double heading(String title, String below, PageText text) {
        double size = text.fit(title, true, Theme.TITLE, Theme.TITLE / 2, INNER);
        double y = text.drawLines(List.of(title), Theme.bold(size), Theme.TEXT, Theme.MARGIN, Theme.MARGIN - 3);
        Font font = Theme.regular(text.fit(below, false, Theme.SUBTITLE, SUBTITLE_LEAST, INNER));
        return text.drawLines(text.wrap(below, font, INNER), font, Theme.TEXT, Theme.MARGIN, y) + 2;
    }

    /** Caution and imprint at the bottom; their top edge. */
    static double foot(String caution, String imprint, PageText text) {
        Font font = Theme.regular(Theme.IMPRINT);
        Font heavy = Theme.bold(Theme.CAUTION);
        List<String> lines = text.wrap(caution, heavy, INNER);
        double imprintTop = Theme.HEIGHT - Theme.MARGIN + 4 - PageText.lineHeight(font);
        double top = imprintTop - lines.size() * PageText.lineHeight(heavy);
        text.drawLines(lines, heavy, Theme.TEXT, Theme.MARGIN, top);
        Font small = Theme.regular(text.fit(imprint, false, Theme.IMPRINT, Theme.IMPRINT / 2, INNER));
        text.drawLines(List.of(imprint), small, Theme.FAINT_TEXT, Theme.MARGIN, imprintTop);
        return top;
    }
}
