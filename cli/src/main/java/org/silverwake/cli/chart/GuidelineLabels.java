// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Font;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Guideline names at the right of a chart, spread so that none covers another, each led to its line. */
final class GuidelineLabels {
    private static final double LARGEST = 10.5;
    private static final double SMALLEST = 6;
    private static final double STEP = 0.5;
    private static final double GAP = 4;
    private static final double LEAD = 12;

    private final PageText text;
    private final double left;
    private final double width;

    GuidelineLabels(PageText text, double left, double width) {
        this.text = text;
        this.left = left;
        this.width = width - LEAD;
    }

    private record Block(double lineY, List<String> name, List<String> value, double height) {}

    /** Draws names for lines at the given heights, between top and bottom, as large as they all fit. */
    void draw(List<Profile.GuidelineValue> guidelines, List<Double> lineY, double top, double bottom) {
        double size = LARGEST;
        List<Block> blocks = blocks(guidelines, lineY, size);
        while (size > SMALLEST && total(blocks) > bottom - top) {
            size -= STEP;
            blocks = blocks(guidelines, lineY, size);
        }
        double[] tops = spread(
                blocks.stream().mapToDouble(Block::lineY).toArray(),
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

    private List<Block> blocks(List<Profile.GuidelineValue> guidelines, List<Double> lineY, double size) {
        Font heavy = text.bold(size);
        Font light = text.regular(size);
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < guidelines.size(); i++) {
            List<String> name = text.wrap(guidelines.get(i).name(), heavy, width);
            List<String> value = text.wrap(guidelines.get(i).valueWords(), light, width);
            double height = (name.size() + value.size()) * PageText.lineHeight(light);
            blocks.add(new Block(lineY.get(i), name, value, height));
        }
        blocks.sort(Comparator.comparingDouble(Block::lineY));
        return blocks;
    }

    private void draw(Block block, double top, double size) {
        double middle = top + block.height() / 2;
        Path2D lead = new Path2D.Double();
        lead.moveTo(left, block.lineY());
        lead.lineTo(left + LEAD - 5, middle);
        lead.lineTo(left + LEAD - 2, middle);
        text.graphics().setColor(Ink.GUIDELINE);
        text.graphics().setStroke(Ink.THIN);
        text.graphics().draw(lead);
        text.graphics().draw(new Line2D.Double(left + LEAD - 2, top + 1, left + LEAD - 2, top + block.height() - 1));
        double y = text.drawLines(block.name(), text.bold(size), Ink.TEXT, left + LEAD + 1, top);
        text.drawLines(block.value(), text.regular(size), Ink.TEXT, left + LEAD + 1, y);
    }
}
