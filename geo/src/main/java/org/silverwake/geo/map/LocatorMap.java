// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;

/** The basin as a box on a layer of lines or areas. */
final class LocatorMap {
    private static final Color INK = Color.decode(MapStyles.INK);
    private static final Color LAND = new Color(0xf1ece5);
    private static final double PADDING = 4;
    /** The land shown is at most so many times as wide as the basin [-], so that the box can be seen; chosen. */
    private static final double MOST_TIMES = 14;
    /** A smaller box is ringed [points]. */
    private static final double SMALL = 9;

    private static final double RING = 7;
    private static final double THIN = 0.5;

    private final Graphics2D g;
    private final Rectangle2D room;
    private final List<Coordinate> basin;

    LocatorMap(Graphics2D g, Rectangle2D room, List<Coordinate> basin) {
        this.g = g;
        this.room = room;
        this.basin = basin;
    }

    void draw(BackdropLayer layer) {
        MapFrame frame = frame(layer);
        Shape old = g.getClip();
        g.setColor(Color.WHITE);
        g.fill(room);
        g.clip(room);
        BackdropLook usual = BackdropLook.of(new BackdropLayer.Look(
                BackdropLayer.Kind.ROADS,
                Optional.empty(),
                Optional.empty(),
                OptionalDouble.of(THIN),
                Optional.empty()));
        BackdropLook look =
                new BackdropLook(Optional.of(LAND), false, usual.edge(), usual.width(), usual.dash(), usual.ink());
        new BackdropPainter(frame, Ground.bare()).paint(g, layer, look);
        box(frame);
        g.setClip(old);
        g.setColor(INK);
        g.setStroke(new BasicStroke(0.7f));
        g.draw(room);
    }

    /** All of the layer, or the part around the basin where that is small in it. */
    private MapFrame frame(BackdropLayer layer) {
        MapFrame near = new MapFrame(basin, room, PADDING);
        double pad = Math.min(room.getWidth(), room.getHeight()) / 2 * (1 - 1 / MOST_TIMES);
        MapFrame wide = new MapFrame(basin, room, pad);
        List<Coordinate> all = new ArrayList<>(basin);
        for (BackdropLayer.Item item : layer.items()) {
            all.addAll(List.of(item.shape().getEnvelope().getCoordinates()));
        }
        MapFrame whole = new MapFrame(all, room, PADDING);
        return whole.pointsPerMeter() >= wide.pointsPerMeter() ? smaller(whole, near) : wide;
    }

    private static MapFrame smaller(MapFrame a, MapFrame b) {
        return a.pointsPerMeter() <= b.pointsPerMeter() ? a : b;
    }

    private void box(MapFrame frame) {
        Rectangle2D box = null;
        for (Coordinate place : basin) {
            Point2D at = frame.toPage(place.x, place.y);
            if (box == null) {
                box = new Rectangle2D.Double(at.getX(), at.getY(), 0, 0);
            } else {
                box.add(at);
            }
        }
        boolean small = Math.max(box.getWidth(), box.getHeight()) < SMALL;
        Shape mark = small
                ? new Ellipse2D.Double(box.getCenterX() - RING, box.getCenterY() - RING, 2 * RING, 2 * RING)
                : box;
        outline(mark);
        if (small) {
            g.fill(box);
        }
    }

    private void outline(Shape mark) {
        g.setColor(Color.WHITE);
        g.setStroke(new BasicStroke(3.4f));
        g.draw(mark);
        g.setColor(INK);
        g.setStroke(new BasicStroke(1.6f));
        g.draw(mark);
    }
}
