// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Envelope;

/**
 * Takes what is to be filled and drawn, in order, and puts it on the page when it dries; at once on a page without pixels. Of many things on a page of pixels, each processor draws
 * a band of rows at a time, lines by {@link LineRows}, all else by Java2D. Bands are the same whatever the number of processors: same drawing, same pixels.
 */
final class Ink {
    /** Pixels high: many to share out, few lines in two of them. */
    private static final int BAND = 256;
    /** So few things are drawn faster than shared out. */
    private static final int FEW = 2000;
    /** How far square ends reach, in halves of the width: the diagonal of a square, and a bit. */
    private static final double SQUARE_END = 1.5;
    /** Rounding of edges [pixels]. */
    private static final double ROUNDING = 2;

    /** What is filled, or drawn where there is a stroke: a line of the page or another shape; its first and last row of pixels. */
    private record Waiting(PageLine line, Shape shape, Color color, BasicStroke stroke, float top, float bottom) {}

    private final Graphics2D g;
    private final AffineTransform toPixels;
    private final Optional<BufferedImage> image;
    private final List<Waiting> waiting = new ArrayList<>();

    /** For a page in its present scale. */
    Ink(Graphics2D g) {
        this.g = g;
        toPixels = g.getTransform();
        image = Picture.pixels(g);
    }

    void fill(Shape shape, Color color) {
        Rectangle2D box = shape.getBounds2D();
        add(null, shape, color, null, box.getMinY(), box.getMaxY());
    }

    void draw(Shape shape, Color color, BasicStroke stroke) {
        Rectangle2D box = shape.getBounds2D();
        add(null, shape, color, stroke, box.getMinY(), box.getMaxY());
    }

    void draw(PageLine line, Color color, BasicStroke stroke) {
        Envelope box = line.box();
        add(line, null, color, stroke, box.getMinY(), box.getMaxY());
    }

    private void add(PageLine line, Shape shape, Color color, BasicStroke stroke, double top, double bottom) {
        double margin = 0;
        if (stroke != null) {
            boolean pointed = stroke.getLineJoin() == BasicStroke.JOIN_MITER;
            double halves = pointed ? Math.max(SQUARE_END, stroke.getMiterLimit()) : SQUARE_END;
            margin = halves * stroke.getLineWidth() / 2;
        }
        double first = toPixels.getScaleY() * (top - margin) + toPixels.getTranslateY() - ROUNDING;
        double last = toPixels.getScaleY() * (bottom + margin) + toPixels.getTranslateY() + ROUNDING;
        Waiting thing = new Waiting(line, shape, color, stroke, (float) first, (float) last);
        if (image.isEmpty()) {
            draw(g, thing);
        } else {
            waiting.add(thing);
        }
    }

    /** Puts what waits on the page. */
    void dry() {
        if (waiting.size() <= FEW || image.isEmpty() || !isUpright(toPixels)) {
            waiting.forEach(thing -> draw(g, thing));
        } else {
            int bands = (image.get().getHeight() + BAND - 1) / BAND;
            List<Graphics2D> pages =
                    IntStream.range(0, bands).mapToObj(this::band).toList();
            IntStream.range(0, bands)
                    .parallel()
                    .forEach(k -> draw(pages.get(k), image.get(), k * BAND, (k + 1) * BAND));
        }
        waiting.clear();
    }

    /** Pages are scaled evenly and not turned. */
    private static boolean isUpright(AffineTransform to) {
        return to.getShearX() == 0 && to.getShearY() == 0 && to.getScaleX() > 0 && to.getScaleX() == to.getScaleY();
    }

    private Graphics2D band(int k) {
        Graphics2D band = (Graphics2D) g.create();
        band.setTransform(new AffineTransform());
        band.clipRect(0, k * BAND, Short.MAX_VALUE, BAND);
        return band;
    }

    /** Lines of one color one after the other go through one mask. */
    private void draw(Graphics2D band, BufferedImage image, int top, int bottom) {
        Optional<LineMask> mask = LineMask.of(image, band.getClip());
        LineRows rows = mask.map(LineRows::new).orElse(null);
        band.setTransform(toPixels);
        Color wet = null;
        for (Waiting thing : waiting) {
            if (thing.top >= bottom || thing.bottom <= top) {
                continue;
            }
            boolean masked = rows != null && thing.line != null && LineRows.takes(thing.stroke, thing.color);
            if (wet != null && !(masked && thing.color.equals(wet))) {
                mask.get().lay(wet);
                wet = null;
            }
            if (masked) {
                wet = thing.color;
                rows.add(
                        thing.line,
                        thing.stroke,
                        toPixels.getScaleX(),
                        toPixels.getTranslateX(),
                        toPixels.getTranslateY());
            } else {
                draw(band, thing);
            }
        }
        if (wet != null) {
            mask.get().lay(wet);
        }
        band.dispose();
    }

    private static void draw(Graphics2D g, Waiting thing) {
        Shape shape = thing.line == null ? thing.shape : thing.line.path();
        g.setColor(thing.color);
        if (thing.stroke == null) {
            g.fill(shape);
        } else {
            g.setStroke(thing.stroke);
            g.draw(shape);
        }
    }
}
