// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.geotools.api.style.LinePlacement;
import org.geotools.api.style.TextSymbolizer;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.silverwake.geo.label.Box;
import org.silverwake.geo.label.LabelLayout;
import org.silverwake.geo.label.LabelPlacer;
import org.silverwake.geo.label.LabelRequest;
import org.silverwake.geo.label.Spot;
import org.silverwake.geo.label.Spots;

/** Gathers the texts of a map while its symbols are drawn, then places and draws them last. */
final class LabelInk {
    private static final FontRenderContext PAPER = new FontRenderContext(null, true, true);
    private static final double SYMBOL_RADIUS = 7;
    private static final double HALF_STROKE = 3;
    /** Kept free of names along the frame. */
    private static final double RIM = 2;

    private static final double QUIET_HALO = 1.3;
    /** From the middle of a label down to its base line, in sizes: half of the 0.73 that capitals of DejaVu Sans are high. */
    private static final double BASE = 0.36;

    private static final Color LEADER = new Color(0x40, 0x40, 0x40);

    private record Text(String words, boolean uncounted, Font font, Color fill, Color halo, double haloRadius) {}

    private final LabelPlacer placer;
    private final List<PageLine> lines = new ArrayList<>();
    private final List<Text> texts = new ArrayList<>();
    private final List<LabelRequest> requests = new ArrayList<>();
    private final Set<Object> avoided = Collections.newSetFromMap(new IdentityHashMap<>());
    private Object symbolOf;
    private double longestLeader;
    private Rectangle2D lastSymbol;

    LabelInk(Rectangle2D view) {
        placer = new LabelPlacer(box(view).grown(-RIM));
    }

    void keepClear(double x, double y, double size) {
        placer.keepClear(new Box(x, y, size / 2, size / 2, 0));
    }

    /** The symbol of a feature, which its name stands beside. */
    void keepClear(Rectangle2D symbol, Object feature) {
        placer.keepClear(box(symbol));
        symbolOf = feature;
        lastSymbol = symbol;
    }

    private static Box box(Rectangle2D room) {
        return Box.upright(room.getX(), room.getY(), room.getWidth(), room.getHeight());
    }

    /** Lines that names had better not cover; once for each feature, however often it is drawn. */
    void avoid(PageShape shape, Object feature) {
        if (avoided.add(feature)) {
            for (int part = 0; part < shape.parts(); part++) {
                if (shape.isLine(part)) {
                    lines.add(shape.line(part));
                }
            }
        }
    }

    void add(TextSymbolizer symbolizer, Object feature, Geometry page) {
        String words = StyleValues.text(symbolizer.getLabel(), feature, "").strip();
        if (words.isEmpty()) {
            return;
        }
        Font font = StyleValues.font(symbolizer.getFont(), feature);
        Rectangle2D box = font.getStringBounds(words, PAPER);
        double height = height(font, words);
        boolean ofLine = symbolizer.getLabelPlacement() instanceof LinePlacement && page instanceof LineString;
        List<Spot> spots = ofLine
                ? along(PageLine.of((LineString) page), box.getWidth(), height)
                : Spots.around(symbol(feature, page), box.getWidth(), height);
        boolean hasHalo = symbolizer.getHalo() != null;
        texts.add(new Text(
                words,
                ofLine,
                font,
                StyleValues.color(symbolizer.getFill(), feature, Color.BLACK),
                hasHalo ? StyleValues.color(symbolizer.getHalo().getFill(), feature, Color.WHITE) : Color.WHITE,
                hasHalo ? StyleValues.number(symbolizer.getHalo().getRadius(), feature, 1) : 0));
        requests.add(new LabelRequest(StyleValues.number(symbolizer.getPriority(), feature, 0), spots));
    }

    /** A text that gives way to all others of lower priority number and is left out without a word. */
    void addQuiet(String words, Font font, Color fill, double priority, List<Spot> spots) {
        texts.add(new Text(words, true, font, fill, Color.WHITE, QUIET_HALO));
        requests.add(new LabelRequest(priority, spots));
    }

    /** Of the box around the middle that holds all letters, with accents and what hangs below the line. */
    static double height(Font font, String words) {
        Rectangle2D letters = font.createGlyphVector(PAPER, words).getVisualBounds();
        double base = BASE * font.getSize2D();
        return Math.max(font.getSize2D(), 2 * Math.max(-letters.getMinY() - base, letters.getMaxY() + base));
    }

    private static List<Spot> along(PageLine line, double width, double height) {
        return Spots.along(line.xs(), line.ys(), HALF_STROKE, width, height);
    }

    /** The symbol just drawn for a feature; room for one where there is none. */
    private Box symbol(Object feature, Geometry page) {
        if (feature == symbolOf && lastSymbol != null) {
            return box(lastSymbol);
        }
        Point at = page.getInteriorPoint();
        return new Box(at.getX(), at.getY(), SYMBOL_RADIUS, SYMBOL_RADIUS, 0);
    }

    /** Draws what finds room; how many names of points do not. */
    int paint(Graphics2D g) {
        for (PageLine line : lines) {
            for (int k = 1; k < line.size(); k++) {
                placer.avoid(line.x(k - 1), line.y(k - 1), line.x(k), line.y(k));
            }
        }
        lines.clear();
        LabelLayout layout = placer.place(requests);
        for (int k = 0; k < texts.size(); k++) {
            Optional<Spot> spot = layout.spots().get(k);
            if (spot.isPresent() && spot.get().leader().isPresent()) {
                Spot at = spot.get();
                Part.draw(g, "leader", () -> paintLeader(g, at));
                longestLeader =
                        Math.max(longestLeader, at.leader().orElseThrow().length());
            }
        }
        for (int k = 0; k < texts.size(); k++) {
            Optional<Spot> spot = layout.spots().get(k);
            if (spot.isPresent()) {
                paintText(g, texts.get(k), spot.get().box());
            }
        }
        return (int) IntStream.range(0, texts.size())
                .filter(k -> !texts.get(k).uncounted() && layout.spots().get(k).isEmpty())
                .count();
    }

    /** Of the leaders drawn [points]; 0 where there are none. */
    double longestLeader() {
        return longestLeader;
    }

    private static void paintLeader(Graphics2D g, Spot spot) {
        Spot.Leader leader = spot.leader().orElseThrow();
        Line2D line = new Line2D.Double(leader.fromX(), leader.fromY(), leader.toX(), leader.toY());
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(2.2f));
        g.draw(line);
        g.setColor(LEADER);
        g.setStroke(new BasicStroke(0.8f));
        g.draw(line);
    }

    private static void paintText(Graphics2D g, Text text, Box box) {
        GlyphVector glyphs = text.font().createGlyphVector(PAPER, text.words());
        Rectangle2D bounds = glyphs.getLogicalBounds();
        AffineTransform to = AffineTransform.getTranslateInstance(box.x(), box.y());
        to.rotate(box.angle());
        to.translate(-bounds.getWidth() / 2, BASE * text.font().getSize2D());
        Shape outline = to.createTransformedShape(glyphs.getOutline());
        if (text.haloRadius() > 0) {
            g.setColor(text.halo());
            g.setStroke(
                    new BasicStroke((float) (2 * text.haloRadius()), BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
            Part.draw(g, "halo", () -> g.draw(outline));
        }
        g.setColor(text.fill());
        Part.draw(g, "label", () -> paintLetters(g, text, to, outline));
    }

    private static void paintLetters(Graphics2D g, Text text, AffineTransform to, Shape outline) {
        if (Picture.keepsLetters(g)) {
            AffineTransform old = g.getTransform();
            g.transform(to);
            g.setFont(text.font());
            g.drawString(text.words(), 0, 0);
            g.setTransform(old);
        } else {
            g.fill(outline);
        }
    }
}
