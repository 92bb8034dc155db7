// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.layout;

import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Area;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;

/**
 * Something drawn on a page.
 *
 * @param parts what it is of, outermost first
 * @param tag of the element
 * @param text its letters; "" for a shape
 * @param shape its outline; of a text the box that its letters fill
 * @param fill color; "none" for no fill
 * @param stroke color; "none" for no line
 * @param strokeWidth of its line [points]
 */
public record SvgItem(
        List<String> parts, String tag, String text, Shape shape, String fill, String stroke, double strokeWidth) {
    /** Ends of an outline are told apart no finer [points]. */
    private static final double SLIVER = 0.05;

    /** The part of the page that it belongs to; "" for none. */
    public String block() {
        return parts.isEmpty() ? "" : parts.get(0);
    }

    /** The innermost part; "" for none. */
    public String kind() {
        return parts.isEmpty() ? "" : parts.get(parts.size() - 1);
    }

    public boolean isText() {
        return tag.equals("text");
    }

    /** What it covers: its fill, its line, its letters' box. */
    Area covered() {
        Area area = new Area();
        if (isText() || tag.equals("image") || !fill.equals("none")) {
            area.add(new Area(shape));
        }
        if (!isText() && !stroke.equals("none") && strokeWidth > 0) {
            area.add(new Area(new BasicStroke((float) strokeWidth, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND)
                    .createStrokedShape(shape)));
        }
        return area;
    }

    /** The box of what it covers. */
    Rectangle2D bounds() {
        Rectangle2D bounds = shape.getBounds2D();
        if (isText() || stroke.equals("none")) {
            return bounds;
        }
        double half = strokeWidth / 2;
        return new Rectangle2D.Double(
                bounds.getX() - half,
                bounds.getY() - half,
                bounds.getWidth() + strokeWidth,
                bounds.getHeight() + strokeWidth);
    }

    Point2D middle() {
        Rectangle2D bounds = shape.getBounds2D();
        return new Point2D.Double(bounds.getCenterX(), bounds.getCenterY());
    }

    /** Whether both cover a place, more than a sliver of it. */
    boolean lieson(SvgItem other) {
        if (!bounds().intersects(other.bounds())) {
            return false;
        }
        Area common = covered();
        common.intersect(other.covered());
        Rectangle2D both = common.getBounds2D();
        return Math.min(both.getWidth(), both.getHeight()) > SLIVER;
    }

    /** The same, moved on the page [points]. */
    SvgItem moved(double right, double down) {
        Shape there = AffineTransform.getTranslateInstance(right, down).createTransformedShape(shape);
        return new SvgItem(parts, tag, text, there, fill, stroke, strokeWidth);
    }

    @Override
    public String toString() {
        Rectangle2D at = bounds();
        String what = isText() ? "\"" + text + "\"" : String.join(" ", parts) + " " + tag;
        return what + " at " + Math.round(at.getCenterX()) + " " + Math.round(at.getCenterY());
    }
}
