// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.function.Consumer;
import org.geotools.api.style.Symbolizer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** The column beside a map: texts and legend rows from top to bottom, all smaller together where they would not fit. */
final class Panel {
    private static final double SMALLEST = 0.5;
    private static final double STEP = 0.03;
    private static final double AREA = 9;
    private static final double SWATCH = 48;
    private static final double SAMPLE_ROW = 14;
    private static final double SAMPLE_WIDTH = 24;
    /** For the widest point symbol with its edge. */
    private static final double SYMBOL_ROOM = 22;

    /** A row that is lower has smaller symbols [points]. */
    private static final double SYMBOL_ROW = 14;

    private static final GeometryFactory SHAPES = new GeometryFactory();
    private static final Color INK = Color.decode(MapStyles.INK);

    private final Graphics2D g;
    private final Rectangle2D room;
    private final double scale;
    private double y;

    private Panel(Graphics2D g, Rectangle2D room, double scale) {
        this.g = g;
        this.room = room;
        this.scale = scale;
        y = room.getY();
    }

    /** Draws a column at the largest size that fits, and gives that [-]. */
    static double draw(Graphics2D g, Rectangle2D room, Consumer<Panel> content) {
        double scale = 1;
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        while (scale > SMALLEST && height(nowhere, room, scale, content) > room.getHeight()) {
            scale -= STEP;
        }
        nowhere.dispose();
        Panel panel = new Panel(g, room, scale);
        content.accept(panel);
        return scale;
    }

    /** How high a column is at its full size [points]. */
    static double height(double width, Consumer<Panel> content) {
        Graphics2D nowhere = new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB).createGraphics();
        double height = height(nowhere, new Rectangle2D.Double(0, 0, width, 1), 1, content);
        nowhere.dispose();
        return height;
    }

    private static double height(Graphics2D nowhere, Rectangle2D room, double scale, Consumer<Panel> content) {
        Panel panel = new Panel(nowhere, room, scale);
        content.accept(panel);
        return panel.y - room.getY();
    }

    /** What it draws onto; that of the measuring pass shows nothing. */
    Graphics2D graphics() {
        return g;
    }

    void heading(String text) {
        g.setColor(INK);
        y += Prose.draw(g, text, Fonts.bold(13.5 * scale), room.getX(), y, room.getWidth()) + 2 * scale;
    }

    void paragraph(String text, double size) {
        g.setColor(INK);
        y += Prose.draw(g, text, Fonts.regular(size * scale), room.getX(), y, room.getWidth()) + 1.5 * scale;
    }

    void strong(String text, double size) {
        g.setColor(INK);
        y += Prose.draw(g, text, Fonts.bold(size * scale), room.getX(), y, room.getWidth()) + 1 * scale;
    }

    /** An answer, in letters that are read from afar. */
    void answer(String text, double size) {
        g.setColor(INK);
        y += Prose.draw(g, text, Fonts.bold(size * scale), room.getX(), y, room.getWidth()) + 1 * scale;
    }

    void gap(double height) {
        y += height * scale;
    }

    void rule() {
        g.setColor(INK);
        g.setStroke(new BasicStroke(0.7f));
        g.draw(new java.awt.geom.Line2D.Double(room.getX(), y, room.getMaxX(), y));
        y += 4 * scale;
    }

    /** A row with a sample of a line. */
    void line(List<? extends Symbolizer> symbolizers, String text, double size) {
        Coordinate[] ends = {new Coordinate(0, 0), new Coordinate(SWATCH * scale, 0)};
        row(symbolizers, SHAPES.createLineString(ends), text, size, SWATCH);
    }

    /** A row with the sample of an area. */
    void area(List<? extends Symbolizer> symbolizers, String text, double size) {
        double half = AREA * scale / 2;
        Coordinate[] corners = {
            new Coordinate(0, -half),
            new Coordinate(SWATCH * scale, -half),
            new Coordinate(SWATCH * scale, half),
            new Coordinate(0, half),
            new Coordinate(0, -half)
        };
        row(symbolizers, SHAPES.createPolygon(corners), text, size, SWATCH);
    }

    /** A row with a point symbol. */
    void point(List<? extends Symbolizer> symbolizers, String text, double size) {
        row(symbolizers, SHAPES.createPoint(new Coordinate(SWATCH * scale / 2, 0)), text, size, SWATCH);
    }

    /** Point symbols and texts two to a row. */
    void points(List<? extends Symbolizer> symbolizers, List<String> texts, double size) {
        double half = room.getWidth() / 2;
        double height = 17 * scale;
        for (int k = 0; k < texts.size(); k++) {
            double x = room.getX() + k % 2 * half;
            double middle = y + k / 2 * height + height / 2;
            symbol(symbolizers.get(k), x + SYMBOL_ROOM / 2, middle, Math.min(1, height / SYMBOL_ROW));
            g.setColor(INK);
            var font = Prose.fitting(texts.get(k), Fonts.regular(size * scale), half - SYMBOL_ROOM - 4);
            Prose.draw(g, texts.get(k), font, x + SYMBOL_ROOM + 2, middle - 0.6 * font.getSize2D(), half);
        }
        y += (texts.size() + 1) / 2 * height + 2 * scale;
    }

    /** A point symbol, smaller where its row is low. */
    private void symbol(Symbolizer symbolizer, double x, double y, double size) {
        Graphics2D there = (Graphics2D) g.create();
        there.translate(x, y);
        there.scale(size, size);
        new SymbolPainter(there, new LabelInk(room)).paint(symbolizer, null, SHAPES.createPoint(new Coordinate(0, 0)));
        there.dispose();
    }

    /** Samples of what lies under the map and their texts, two to a row. */
    void samples(List<Consumer<Rectangle2D>> samples, List<String> texts, double size) {
        double half = room.getWidth() / 2;
        double height = SAMPLE_ROW * scale;
        double width = SAMPLE_WIDTH * scale;
        for (int k = 0; k < texts.size(); k++) {
            double x = room.getX() + k % 2 * half;
            double middle = y + k / 2 * height + height / 2;
            double tall = AREA * scale;
            samples.get(k).accept(new Rectangle2D.Double(x, middle - tall / 2, width, tall));
            g.setColor(INK);
            double left = width + 5 * scale;
            var font = Prose.fitting(texts.get(k), Fonts.regular(size * scale), half - left - 4);
            Prose.draw(g, texts.get(k), font, x + left, middle - 0.6 * font.getSize2D(), half);
        }
        y += (texts.size() + 1) / 2 * height + 2 * scale;
    }

    private void row(
            List<? extends Symbolizer> symbolizers,
            org.locationtech.jts.geom.Geometry sample,
            String text,
            double size,
            double swatch) {
        double left = room.getX() + (swatch + 9) * scale;
        var font = Fonts.regular(size * scale);
        double step = 1.22 * font.getSize2D();
        int lines = Prose.wrap(text, font, room.getMaxX() - left).size();
        double height = Math.max(lines * step, 12 * scale);
        paint(symbolizers, sample, room.getX(), y + height / 2);
        g.setColor(INK);
        Prose.draw(g, text, font, left, y + (height - lines * step) / 2, room.getMaxX() - left);
        y += height + 3 * scale;
    }

    private void paint(
            List<? extends Symbolizer> symbolizers,
            org.locationtech.jts.geom.Geometry sample,
            double x,
            double middle) {
        var place = sample.copy();
        place.apply(org.locationtech.jts.geom.util.AffineTransformation.translationInstance(x, middle));
        SymbolPainter painter = new SymbolPainter(g, new LabelInk(room));
        symbolizers.forEach(symbolizer -> painter.paint(symbolizer, null, place));
    }

    /** A framed block of paragraphs, each with a bar before it. */
    void box(String heading, List<String> texts, double size) {
        double from = y;
        double inset = 7 * scale;
        y += 5 * scale;
        double width = room.getWidth() - 2 * inset;
        g.setColor(INK);
        y += Prose.draw(g, heading, Fonts.bold(12.5 * scale), room.getX() + inset, y, width) + 2 * scale;
        for (String text : texts) {
            y += Prose.draw(g, text, Fonts.regular(size * scale), room.getX() + inset, y, width) + 3 * scale;
        }
        y += 3 * scale;
        g.setStroke(new BasicStroke((float) (1.6 * scale)));
        g.draw(new Rectangle2D.Double(room.getX(), from, room.getWidth(), y - from));
        y += 5 * scale;
    }
}
