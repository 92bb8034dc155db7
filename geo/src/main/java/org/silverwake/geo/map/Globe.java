// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;

/** A globe seen from far above the basin, orthographic (Snyder 1987, Map projections, USGS Professional Paper 1395, equations 20-3 to 20-5). */
final class Globe {
    private static final Color INK = Color.decode(MapStyles.INK);
    private static final Color SPHERE = new Color(0xf3f5f8);
    private static final Color NET = new Color(0xaab2bd);
    private static final Color EQUATOR = new Color(0x5f6874);
    /** From this radius on the net has a mesh of 10 degrees, below of 30 [points]. */
    private static final double LARGE = 70;

    private static final int FINE = 10;
    private static final int COARSE = 30;
    private static final int STEP = 2;
    private static final int POLE = 90;
    private static final int HALF_TURN = 180;
    /** The eye stands over so much of the basin's latitude [-], so that equator or pole comes into sight; chosen. */
    private static final double TOWARD_EQUATOR = 0.55;

    private static final double TEXT = 8;
    private static final double DOT = 3.4;
    private static final double RING = 7;

    private final Graphics2D g;
    private final double longitude;
    private final double latitude;
    private final double eye;
    private final double radius;
    private final double x;
    private final double y;

    Globe(Graphics2D g, Rectangle2D room, List<Coordinate> basin) {
        this.g = g;
        Coordinate middle = new MapFrame(basin, new Rectangle2D.Double(0, 0, 2, 2), 0).toGround(1, 1);
        longitude = middle.x;
        latitude = middle.y;
        eye = Math.toRadians(latitude * TOWARD_EQUATOR);
        radius = Math.max(1, Math.min(room.getWidth(), room.getHeight() - 2 * TEXT) / 2 - 1);
        x = room.getCenterX();
        y = room.getY() + radius + 1 + (room.getHeight() - 2 * TEXT - 2 * radius - 2) / 2;
    }

    void draw(GroundWords words) {
        Ellipse2D disc = new Ellipse2D.Double(x - radius, y - radius, 2 * radius, 2 * radius);
        g.setColor(SPHERE);
        g.fill(disc);
        net(radius < LARGE ? COARSE : FINE);
        g.setColor(INK);
        g.setStroke(new BasicStroke(0.9f));
        g.draw(disc);
        mark();
        equator(words.equator());
        Font font = Fonts.bold(TEXT);
        g.setFont(font);
        String text = place();
        g.setColor(INK);
        g.drawString(text, (float) (x - Prose.width(text, font) / 2), (float) (y + radius + 1.4 * TEXT));
    }

    private void net(int mesh) {
        g.setColor(NET);
        g.setStroke(new BasicStroke(0.5f));
        for (int meridian = -HALF_TURN; meridian < HALF_TURN; meridian += mesh) {
            Path2D line = new Path2D.Double();
            for (int k = -POLE; k <= POLE; k += STEP) {
                extend(line, meridian, k);
            }
            g.draw(line);
        }
        for (int parallel = mesh - POLE; parallel < POLE; parallel += mesh) {
            g.setColor(parallel == 0 ? EQUATOR : NET);
            g.setStroke(new BasicStroke(parallel == 0 ? 1.1f : 0.5f));
            Path2D line = new Path2D.Double();
            for (int k = -HALF_TURN; k <= HALF_TURN; k += STEP) {
                extend(line, longitude + k, parallel);
            }
            g.draw(line);
        }
    }

    private void extend(Path2D line, double lon, double lat) {
        Optional<Point2D> at = at(lon, lat);
        if (at.isEmpty()) {
            return;
        }
        Point2D last = line.getCurrentPoint();
        boolean joins = last != null && last.distance(at.get()) < radius / 4;
        if (joins) {
            line.lineTo(at.get().getX(), at.get().getY());
        } else {
            line.moveTo(at.get().getX(), at.get().getY());
        }
    }

    /** A place [degrees] on the page; empty on the far side. */
    private Optional<Point2D> at(double lon, double lat) {
        double turn = Math.toRadians(lon - longitude);
        double phi = Math.toRadians(lat);
        double front = Math.sin(eye) * Math.sin(phi) + Math.cos(eye) * Math.cos(phi) * Math.cos(turn);
        if (front < 0) {
            return Optional.empty();
        }
        double east = Math.cos(phi) * Math.sin(turn);
        double north = Math.cos(eye) * Math.sin(phi) - Math.sin(eye) * Math.cos(phi) * Math.cos(turn);
        return Optional.of(new Point2D.Double(x + radius * east, y - radius * north));
    }

    private void equator(String word) {
        Optional<Point2D> at = at(longitude, 0);
        if (at.isEmpty() || Math.abs(latitude) < POLE / 6) {
            return;
        }
        Font font = Fonts.regular(TEXT - 1.5);
        double left = x - Prose.width(word, font) / 2;
        double base = latitude < 0 ? at.get().getY() - 2 : at.get().getY() + TEXT - 1;
        if (base - TEXT > y - radius && base < y + radius) {
            g.setFont(font);
            g.setColor(EQUATOR);
            g.drawString(word, (float) left, (float) base);
        }
    }

    private void mark() {
        at(longitude, latitude).ifPresent(at -> {
            g.setColor(Color.WHITE);
            g.fill(disc(at, RING + 1));
            g.setColor(INK);
            g.fill(disc(at, DOT));
            g.setStroke(new BasicStroke(1.3f));
            g.draw(disc(at, RING));
        });
    }

    private static Ellipse2D disc(Point2D at, double radius) {
        return new Ellipse2D.Double(at.getX() - radius, at.getY() - radius, 2 * radius, 2 * radius);
    }

    private String place() {
        return degrees(latitude, "N", "S") + ", " + degrees(longitude, "E", "W");
    }

    private static String degrees(double value, String positive, String negative) {
        return String.format(Locale.ROOT, "%.1f\u00b0 %s", Math.abs(value), value < 0 ? negative : positive);
    }
}
