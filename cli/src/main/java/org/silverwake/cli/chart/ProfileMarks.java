// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.Shape;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What is drawn over a profile's plot: gaps, guideline lines, and marks with their names above. */
final class ProfileMarks {
    static final double NAME_SIZE = 10;
    static final double SYMBOL = 7;

    private static final double HATCH = 6;
    private static final double GAP_LABEL = 10;
    private static final double QUARTER_TURN = Math.PI / 2;

    private final Profile profile;
    private final Decades decades;
    private final Rectangle2D area;
    private final PageText text;
    private final Graphics2D g;

    ProfileMarks(Profile profile, Decades decades, Rectangle2D area, PageText text) {
        this.profile = profile;
        this.decades = decades;
        this.area = area;
        this.text = text;
        this.g = text.graphics();
    }

    void gaps() {
        for (Profile.Gap gap : profile.gaps()) {
            hatch(box(gap));
        }
    }

    void gapNames() {
        for (Profile.Gap gap : profile.gaps()) {
            gapName(gap.words(), box(gap));
        }
    }

    private Rectangle2D box(Profile.Gap gap) {
        double from = x(gap.fromKilometers());
        return new Rectangle2D.Double(from, area.getY(), x(gap.toKilometers()) - from, area.getHeight());
    }

    private void hatch(Rectangle2D box) {
        Shape clip = g.getClip();
        g.clip(box);
        g.setColor(Ink.GAP);
        g.fill(box);
        g.setColor(Ink.MARK);
        g.setStroke(Ink.HAIR);
        for (double x = box.getX() - box.getHeight(); x < box.getMaxX(); x += HATCH) {
            g.draw(new Line2D.Double(x, box.getMaxY(), x + box.getHeight(), box.getY()));
        }
        g.setClip(clip);
    }

    /** Along the gap where it is wide enough, else upright, else not at all. */
    private void gapName(String words, Rectangle2D box) {
        Font font = text.regular(GAP_LABEL);
        double width = text.width(words, font);
        if (width + GAP_LABEL < box.getWidth()) {
            text.drawOver(words, font, box.getCenterX() - width / 2, box.getCenterY(), 0);
        } else if (box.getWidth() > 1.4 * GAP_LABEL && width + GAP_LABEL < box.getHeight()) {
            text.drawOver(words, font, box.getCenterX() + GAP_LABEL / 3, box.getCenterY() + width / 2, -QUARTER_TURN);
        }
    }

    void guidelines(double labelWidth, double lowest) {
        List<Double> heights = new ArrayList<>();
        for (Profile.GuidelineValue guideline : profile.guidelines()) {
            double y = y(guideline.value());
            heights.add(y);
            Line2D line = new Line2D.Double(area.getX(), y, area.getMaxX(), y);
            g.setColor(Ink.GUIDELINE);
            g.setStroke(Ink.GUIDE);
            g.draw(line);
        }
        new GuidelineLabels(text, area.getMaxX(), labelWidth).draw(profile.guidelines(), heights, area.getY(), lowest);
    }

    /** Lines of all marks through the plot, symbols at its upper edge, names in their rows. */
    void marks(List<Optional<MarkLabels.Placed>> names, double row) {
        for (int i = 0; i < names.size(); i++) {
            Profile.Mark mark = profile.marks().get(i);
            double x = x(mark.kilometers());
            double upper = area.getY() - SYMBOL;
            line(mark);
            if (names.get(i).isPresent()) {
                double baseline = upper - 3 - names.get(i).get().row() * row;
                g.setStroke(Ink.HAIR);
                g.draw(new Line2D.Double(x, upper, x, baseline - NAME_SIZE / 3));
                text.draw(
                        mark.name(),
                        text.regular(NAME_SIZE),
                        Ink.TEXT,
                        names.get(i).get().from(),
                        baseline);
            }
            symbol(g, mark.kind(), x, area.getY() - SYMBOL / 2);
        }
    }

    /** Lines of all marks alone. */
    void lines() {
        profile.marks().forEach(this::line);
    }

    private void line(Profile.Mark mark) {
        double x = x(mark.kilometers());
        g.setColor(Ink.MARK);
        g.setStroke(mark.kind() == Profile.Mark.Kind.SITE ? Ink.THIN : Ink.DASHED);
        g.draw(new Line2D.Double(x, area.getY(), x, area.getMaxY()));
    }

    static void symbol(Graphics2D g, Profile.Mark.Kind kind, double x, double y) {
        double r = SYMBOL / 2;
        Shape shape = switch (kind) {
            case SITE -> triangle(x, y, r);
            case TRIBUTARY -> new Ellipse2D.Double(x - r * 0.7, y - r * 0.7, 1.4 * r, 1.4 * r);
            case PLACE -> new Rectangle2D.Double(x - r * 0.85, y - r * 0.85, 1.7 * r, 1.7 * r);
        };
        g.setColor(kind == Profile.Mark.Kind.SITE ? Ink.TEXT : Color.WHITE);
        g.fill(shape);
        g.setColor(Ink.TEXT);
        g.setStroke(Ink.THIN);
        g.draw(shape);
    }

    private static Shape triangle(double x, double y, double r) {
        Path2D path = new Path2D.Double();
        path.moveTo(x - r, y - r);
        path.lineTo(x + r, y - r);
        path.lineTo(x, y + r);
        path.closePath();
        return path;
    }

    private double x(double kilometers) {
        return area.getX() + area.getWidth() * kilometers / profile.length();
    }

    private double y(double value) {
        double part = (Math.log10(decades.drawn(value)) - decades.lowest()) / (decades.highest() - decades.lowest());
        return area.getMaxY() - part * area.getHeight();
    }
}
