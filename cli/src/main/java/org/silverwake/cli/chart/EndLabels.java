// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Stroke;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Names at the right of a plot for what ends there, spread so that none covers another, each led to its end. */
final class EndLabels {
    private static final double SMALLEST = 6;
    private static final double STEP = 0.5;
    private static final double GAP = 3;
    private static final double LEAD = 10;
    private static final double SIGN = 14;

    private final PageText text;
    private final double left;
    private final double width;
    private final List<Label> labels = new ArrayList<>();

    EndLabels(PageText text, double left, double width) {
        this.text = text;
        this.left = left;
        this.width = width - LEAD - SIGN - 3;
    }

    /** What is named: where it ends, its words, and how it is drawn, as a line or as a fill. */
    private record Label(double endY, String name, String more, Color color, Stroke line) {
        boolean isFill() {
            return line == Theme.NONE;
        }
    }

    private record Block(Label label, List<String> name, List<String> more, double height) {}

    /** Names a line. */
    void line(double endY, String name, String more, Color color, Stroke stroke) {
        labels.add(new Label(endY, name, more, color, stroke));
    }

    /** Names a layer. */
    void fill(double endY, String name, String more, Color color) {
        labels.add(new Label(endY, name, more, color, Theme.NONE));
    }

    /** Draws them between top and bottom, as large as they all fit. */
    void draw(double top, double bottom) {
        double size = Theme.NAME;
        List<Block> blocks = blocks(size);
        while (size > SMALLEST && total(blocks) > bottom - top) {
            size -= STEP;
            blocks = blocks(size);
        }
        double[] tops = spread(
                blocks.stream().mapToDouble(b -> b.label().endY()).toArray(),
                blocks.stream().mapToDouble(Block::height).toArray(),
                GAP,
                top,
                bottom);
        for (int i = 0; i < tops.length; i++) {
            draw(blocks.get(i), tops[i], size);
        }
    }

    /**
     * Top edges of blocks, each as near as it goes to being centered on its wish, none over another.
     *
     * @param wishes wished centers, ascending
     */
    static double[] spread(double[] wishes, double[] heights, double gap, double top, double bottom) {
        double[] tops = new double[wishes.length];
        double free = top;
        for (int i = 0; i < wishes.length; i++) {
            tops[i] = Math.max(free, wishes[i] - heights[i] / 2);
            free = tops[i] + heights[i] + gap;
        }
        double limit = bottom;
        for (int i = wishes.length - 1; i >= 0; i--) {
            tops[i] = Math.min(tops[i], limit - heights[i]);
            limit = tops[i] - gap;
        }
        return tops;
    }

    private static double total(List<Block> blocks) {
        return blocks.stream().mapToDouble(b -> b.height() + GAP).sum() - GAP;
    }

    private List<Block> blocks(double size) {
        Font heavy = Theme.bold(size);
        Font light = Theme.regular(size);
        List<Block> blocks = new ArrayList<>();
        for (Label label : labels) {
            List<String> name = text.wrap(label.name(), heavy, width);
            List<String> more = label.more().isEmpty() ? List.of() : text.wrap(label.more(), light, width);
            blocks.add(new Block(label, name, more, (name.size() + more.size()) * PageText.lineHeight(light)));
        }
        blocks.sort(Comparator.comparingDouble(b -> b.label().endY()));
        return blocks;
    }

    private void draw(Block block, double top, double size) {
        Graphics2D g = text.graphics();
        double middle = top + PageText.lineHeight(Theme.regular(size)) / 2;
        Label label = block.label();
        Path2D lead = new Path2D.Double();
        lead.moveTo(left, label.endY());
        lead.lineTo(left + LEAD - 2, middle);
        g.setColor(Theme.FAINT_TEXT);
        g.setStroke(Theme.HAIR);
        g.draw(lead);
        double x = left + LEAD;
        g.setColor(label.color());
        if (label.isFill()) {
            Rectangle2D swatch = new Rectangle2D.Double(x, middle - SIGN / 3, SIGN - 2, 2 * SIGN / 3);
            g.fill(swatch);
            g.setColor(Theme.TEXT);
            g.draw(swatch);
        } else {
            g.setStroke(label.line());
            g.draw(new Line2D.Double(x, middle, x + SIGN, middle));
        }
        double y = text.drawLines(block.name(), Theme.bold(size), Theme.TEXT, x + SIGN + 3, top);
        text.drawLines(block.more(), Theme.regular(size), Theme.TEXT, x + SIGN + 3, y);
    }
}
