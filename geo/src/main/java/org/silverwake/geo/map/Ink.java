// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Takes what is to be filled and drawn, in order, and puts it on the page when it dries. Of many things on a page of pixels, each processor draws
 * a band of rows at a time. Bands are the same whatever the number of processors: same drawing, same pixels.
 */
final class Ink {
    /** Pixels high: many to share out, few lines in two of them. */
    private static final int BAND = 256;
    /** So few things are drawn faster than shared out. */
    private static final int FEW = 2000;
    /** How far square ends reach, in halves of the width: the diagonal of a square. */
    private static final double SQUARE_END = 1.5;
    /** Rounding of edges [pixels]. */
    private static final double ROUNDING = 2;

    /** What is filled, or drawn where there is a stroke; its first and last row of pixels. */
    private record Waiting(Shape shape, Color color, BasicStroke stroke, float top, float bottom) {
        void draw(Graphics2D g) {
            g.setColor(color);
            if (stroke == null) {
                g.fill(shape);
            } else {
                g.setStroke(stroke);
                g.draw(shape);
            }
        }
    }

    private final Graphics2D g;
    private final AffineTransform toPixels;
    private final List<Waiting> waiting = new ArrayList<>();

    /** For a page in its present scale. */
    Ink(Graphics2D g) {
        this.g = g;
        toPixels = g.getTransform();
    }

    void fill(Shape shape, Color color) {
        add(shape, color, null, 0);
    }

    void draw(Shape shape, Color color, BasicStroke stroke) {
        boolean pointed = stroke.getLineJoin() == BasicStroke.JOIN_MITER;
        double halves = pointed ? Math.max(SQUARE_END, stroke.getMiterLimit()) : SQUARE_END;
        add(shape, color, stroke, halves * stroke.getLineWidth() / 2);
    }

    private void add(Shape shape, Color color, BasicStroke stroke, double margin) {
        Rectangle2D box = shape.getBounds2D();
        double left = box.getMinX() - margin;
        double right = box.getMaxX() + margin;
        double turned = Math.min(toPixels.getShearY() * left, toPixels.getShearY() * right);
        double turnedToo = Math.max(toPixels.getShearY() * left, toPixels.getShearY() * right);
        double top = toPixels.getScaleY() * (box.getMinY() - margin) + toPixels.getTranslateY();
        double bottom = toPixels.getScaleY() * (box.getMaxY() + margin) + toPixels.getTranslateY();
        waiting.add(new Waiting(shape, color, stroke, (float) (Math.min(top, bottom) + turned - ROUNDING), (float)
                (Math.max(top, bottom) + turnedToo + ROUNDING)));
    }

    /** Puts what waits on the page. */
    void dry() {
        int bands = (Picture.rows(g) + BAND - 1) / BAND;
        if (waiting.size() <= FEW || bands == 0) {
            waiting.forEach(thing -> thing.draw(g));
        } else {
            List<Graphics2D> pages =
                    IntStream.range(0, bands).mapToObj(this::band).toList();
            IntStream.range(0, bands).parallel().forEach(k -> draw(pages.get(k), k * BAND, (k + 1) * BAND));
        }
        waiting.clear();
    }

    private Graphics2D band(int k) {
        Graphics2D band = (Graphics2D) g.create();
        AffineTransform old = band.getTransform();
        band.setTransform(new AffineTransform());
        band.clipRect(0, k * BAND, Short.MAX_VALUE, BAND);
        band.setTransform(old);
        return band;
    }

    private void draw(Graphics2D band, int top, int bottom) {
        for (Waiting thing : waiting) {
            if (thing.top < bottom && thing.bottom > top) {
                thing.draw(band);
            }
        }
        band.dispose();
    }
}
