// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.Locale;
import net.sf.geographiclib.Geodesic;
import org.locationtech.jts.geom.Coordinate;

/** What stands around a map: frame with ticks of longitude and latitude, scale bar, north arrow. */
final class Surround {
    private static final Color INK = Color.decode(MapStyles.INK);
    private static final double[] STEPS = {1, 2, 5};
    private static final double KILOMETER = 1000;
    private static final int MOST_LINES = 2;
    private static final double SMALLEST_NOTE = 6;
    private static final float NOTE_STEP = 0.25f;

    private final Graphics2D g;
    private final MapFrame frame;
    private final Rectangle2D view;

    Surround(Graphics2D g, MapFrame frame) {
        this.g = g;
        this.frame = frame;
        view = frame.view();
    }

    void paint(MapWords words, Ground ground) {
        g.setColor(INK);
        g.setStroke(new BasicStroke(1));
        Part.draw(g, "frame", () -> g.draw(view));
        Part.draw(g, "degrees", this::ticks);
        Part.draw(g, "scale", () -> scale(words, ground));
    }

    private void scale(MapWords words, Ground ground) {
        double y = view.getMaxY() + 16;
        northArrow(g, view.getX() + 10, y, words.north());
        double end = scaleBar(view.getX() + 34, y + 14);
        g.setColor(INK);
        double left = end + 14;
        double room = view.getMaxX() - left;
        String note = Travel.line(bar(scaleMeters()), scaleMeters(), ground, words.ground())
                .map(ways -> ways + " " + words.scaleNote())
                .orElse(words.scaleNote());
        Font font = Fonts.regular(8.5);
        while (Prose.wrap(note, font, room).size() > MOST_LINES && font.getSize2D() > SMALLEST_NOTE) {
            font = font.deriveFont(font.getSize2D() - NOTE_STEP);
        }
        double lines = Prose.wrap(note, font, room).size();
        Prose.draw(g, note, font, left, y + 14 - 5 * lines, room);
    }

    private void ticks() {
        Coordinate northWest = frame.toGround(view.getX(), view.getY());
        Coordinate southEast = frame.toGround(view.getMaxX(), view.getMaxY());
        double width = southEast.x - northWest.x + (southEast.x < northWest.x ? 360 : 0);
        double height = northWest.y - southEast.y;
        Font font = Fonts.regular(8.5);
        g.setFont(font);
        double stepX = below(width / 2.5);
        for (double k = Math.ceil(northWest.x / stepX); k * stepX <= northWest.x + width; k++) {
            double x = frame.toPage(k * stepX, northWest.y).getX();
            g.draw(new Line2D.Double(x, view.getMaxY(), x, view.getMaxY() + 4));
            g.draw(new Line2D.Double(x, view.getY(), x, view.getY() - 4));
            String text = degrees(k * stepX, stepX, "E", "W");
            if (x < view.getX() + 8 || x > view.getMaxX() - 8) {
                continue;
            }
            g.drawString(text, (float) (x - Prose.width(text, font) / 2), (float) (view.getMaxY() + 12));
        }
        double stepY = below(height / 2.5);
        for (double k = Math.ceil(southEast.y / stepY); k * stepY <= northWest.y; k++) {
            double y = frame.toPage(northWest.x, k * stepY).getY();
            g.draw(new Line2D.Double(view.getX() - 4, y, view.getX(), y));
            g.draw(new Line2D.Double(view.getMaxX(), y, view.getMaxX() + 4, y));
            String text = degrees(k * stepY, stepY, "N", "S");
            if (y < view.getY() + 24 || y > view.getMaxY() - 24) {
                continue;
            }
            AffineTransform old = g.getTransform();
            g.translate(view.getX() - 6, y + Prose.width(text, font) / 2);
            g.rotate(-Math.PI / 2);
            g.drawString(text, 0, 0);
            g.setTransform(old);
        }
    }

    private static String degrees(double value, double step, String positive, String negative) {
        double turn = value > 180 ? value - 360 : value;
        int places = Math.max(0, (int) Math.ceil(-Math.log10(step) - 1e-9));
        String side = Math.abs(turn) < step / 2 ? "" : turn > 0 ? " " + positive : " " + negative;
        return String.format(Locale.ROOT, "%." + places + "f\u00b0%s", Math.abs(turn), side);
    }

    /** The largest of 1, 2, 5 times a power of ten that is not larger. */
    static double below(double value) {
        double power = Math.pow(10, Math.floor(Math.log10(value)));
        double best = power;
        for (double step : STEPS) {
            best = step * power <= value ? step * power : best;
        }
        return best;
    }

    /** Length of the bar on the ground [m]. */
    double scaleMeters() {
        return below(0.34 * view.getWidth() / frame.pointsPerMeter());
    }

    /** Length of the bar on the page [points]: so that it spans its length along the geodesic due east through the middle. */
    double scalePoints() {
        Coordinate middle = frame.toGround(view.getCenterX(), view.getCenterY());
        var east = Geodesic.WGS84.Direct(middle.y, middle.x, 90, scaleMeters() / 2);
        Point2D right = frame.toPage(east.lon2, middle.y);
        return 2 * (right.getX() - view.getCenterX());
    }

    private double scaleBar(double x, double y) {
        double length = scalePoints();
        double meters = scaleMeters();
        g.setStroke(new BasicStroke(1));
        for (int k = 0; k < 4; k++) {
            Rectangle2D part = new Rectangle2D.Double(x + length * k / 4, y, length / 4, 5);
            g.setColor(k % 2 == 0 ? INK : Color.WHITE);
            g.fill(part);
            g.setColor(INK);
            g.draw(part);
        }
        Font font = Fonts.bold(11);
        g.setFont(font);
        String end = bar(meters);
        String half = number(meters >= KILOMETER ? meters / 2 / KILOMETER : meters / 2);
        g.drawString("0", (float) x, (float) y - 4);
        g.drawString(half, (float) (x + length / 2 - Prose.width(half, font) / 2), (float) y - 4);
        g.drawString(end, (float) (x + length - Prose.width(number(1), font)), (float) y - 4);
        return x + length - Prose.width(number(1), font) + Prose.width(end, font);
    }

    private static String bar(double meters) {
        return meters >= KILOMETER ? number(meters / KILOMETER) + " km" : number(meters) + " m";
    }

    static String number(double value) {
        return value == Math.rint(value) ? Long.toString(Math.round(value)) : Double.toString(value);
    }

    static void northArrow(Graphics2D g, double x, double y, String letter) {
        Path2D arrow = new Path2D.Double();
        arrow.moveTo(x, y - 2);
        arrow.lineTo(x + 6, y + 20);
        arrow.lineTo(x, y + 15);
        arrow.lineTo(x - 6, y + 20);
        arrow.closePath();
        g.setColor(INK);
        g.fill(arrow);
        Font font = Fonts.bold(11);
        g.setFont(font);
        g.drawString(letter, (float) (x + 8), (float) (y + 6));
    }
}
