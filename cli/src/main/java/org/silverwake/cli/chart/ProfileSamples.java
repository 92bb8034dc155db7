// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Field samples on a profile: a filled bottle at a value, a hollow one with an arrow at a limit, its code beside it where there is room. */
final class ProfileSamples {
    static final double SIZE = 10;

    private static final double NAME_SIZE = 8.5;
    private static final double ARROW = 10;
    private static final double HEAD = 2.4;

    private final Profile profile;
    private final Decades decades;
    private final Rectangle2D area;
    private final PageText text;
    private final Graphics2D g;

    ProfileSamples(Profile profile, Decades decades, Rectangle2D area, PageText text) {
        this.profile = profile;
        this.decades = decades;
        this.area = area;
        this.text = text;
        this.g = text.graphics();
    }

    /** Draws all; how many codes found no room. */
    int draw() {
        List<Rectangle2D> taken = new ArrayList<>();
        for (Profile.Sample sample : profile.samples()) {
            sign(g, sample.kind(), x(sample), y(sample), ARROW);
            taken.add(new Rectangle2D.Double(x(sample) - SIZE / 2, y(sample) - SIZE / 2, SIZE, SIZE));
            if (sample.kind() != Profile.Sample.Kind.VALUE) {
                double from = sample.kind() == Profile.Sample.Kind.BELOW ? y(sample) : y(sample) - SIZE / 2 - ARROW;
                taken.add(new Rectangle2D.Double(x(sample) - HEAD, from, 2 * HEAD, SIZE / 2 + ARROW));
            }
        }
        int omitted = 0;
        Font font = Theme.regular(NAME_SIZE);
        for (Profile.Sample sample : profile.samples()) {
            Optional<Rectangle2D> room = room(sample, text.width(sample.name(), font), taken);
            room.ifPresent(box -> {
                taken.add(box);
                text.drawOver(sample.name(), font, box.getX(), box.getMaxY() - 2, false);
            });
            omitted += room.isEmpty() ? 1 : 0;
        }
        return omitted;
    }

    /** Right of the mark, left, above, below: the first that covers nothing. */
    private Optional<Rectangle2D> room(Profile.Sample sample, double width, List<Rectangle2D> taken) {
        double x = x(sample);
        double y = y(sample);
        double height = NAME_SIZE + 2;
        double off = SIZE / 2 + 1.5;
        List<Rectangle2D> wishes = List.of(
                new Rectangle2D.Double(x + off, y - height / 2, width, height),
                new Rectangle2D.Double(x - off - width, y - height / 2, width, height),
                new Rectangle2D.Double(x - width / 2, y - off - height, width, height),
                new Rectangle2D.Double(x - width / 2, y + off, width, height));
        return wishes.stream()
                .filter(w -> area.contains(w) && taken.stream().noneMatch(w::intersects))
                .findFirst();
    }

    /** The mark of a kind around a place on the page. */
    static void sign(Graphics2D g, Profile.Sample.Kind kind, double x, double y, double arrow) {
        g.setStroke(Theme.SAMPLE);
        g.setColor(Theme.TEXT);
        if (kind != Profile.Sample.Kind.VALUE) {
            double way = kind == Profile.Sample.Kind.BELOW ? 1 : -1;
            double from = y + way * SIZE / 2;
            double to = from + way * arrow;
            g.draw(new Line2D.Double(x, from, x, to));
            g.draw(new Line2D.Double(x - HEAD, to - way * HEAD * 1.4, x, to));
            g.draw(new Line2D.Double(x + HEAD, to - way * HEAD * 1.4, x, to));
        }
        Path2D bottle = bottle(x, y);
        g.setColor(Color.WHITE);
        g.setStroke(Theme.EDGE);
        g.draw(bottle);
        g.setStroke(Theme.SAMPLE);
        g.setColor(kind == Profile.Sample.Kind.VALUE ? Theme.TEXT : Color.WHITE);
        g.fill(bottle);
        g.setColor(Theme.TEXT);
        g.draw(bottle);
    }

    /** The bottle of the maps, its middle at the value. */
    private static Path2D bottle(double x, double y) {
        double[] outline = {
            -0.17, -0.5, 0.17, -0.5, 0.17, -0.34, 0.11, -0.34, 0.11, -0.16, 0.34, 0, 0.34, 0.5, -0.34, 0.5, -0.34, 0,
            -0.11, -0.16, -0.11, -0.34, -0.17, -0.34
        };
        Path2D path = new Path2D.Double();
        path.moveTo(x + SIZE * outline[0], y + SIZE * outline[1]);
        for (int k = 2; k < outline.length; k += 2) {
            path.lineTo(x + SIZE * outline[k], y + SIZE * outline[k + 1]);
        }
        path.closePath();
        return path;
    }

    private double x(Profile.Sample sample) {
        return area.getX() + area.getWidth() * sample.kilometers() / profile.length();
    }

    private double y(Profile.Sample sample) {
        return decades.y(sample.value(), area);
    }
}
