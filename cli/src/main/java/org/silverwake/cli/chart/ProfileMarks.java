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
import java.util.List;
import java.util.Optional;

/** What is drawn over a profile's plot: gaps, guideline lines, and marks with their names above. */
final class ProfileMarks {
    static final double SYMBOL = 7;

    private static final double HATCH = 6;
    private static final double GAP_LABEL = 10;

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
        g.setColor(Theme.GAP);
        g.fill(box);
        g.setColor(Theme.MARK);
        g.setStroke(Theme.HAIR);
        for (double x = box.getX() - box.getHeight(); x < box.getMaxX(); x += HATCH) {
            g.draw(new Line2D.Double(x, box.getMaxY(), x + box.getHeight(), box.getY()));
        }
        g.setClip(clip);
    }

    /** Along the gap where it is wide enough, else upright, else not at all. */
    private void gapName(String words, Rectangle2D box) {
        Font font = Theme.regular(GAP_LABEL);
        double width = text.width(words, font);
        if (width + GAP_LABEL < box.getWidth()) {
            text.drawOver(words, font, box.getCenterX() - width / 2, box.getCenterY(), false);
        } else if (box.getWidth() > 1.4 * GAP_LABEL && width + GAP_LABEL < box.getHeight()) {
            text.drawOver(words, font, box.getCenterX() + GAP_LABEL / 3, box.getCenterY() + width / 2, true);
        }
    }

    /** Lines of guideline values, named among the others at their right ends. */
    void guidelines(EndLabels names) {
        guidelines(profile.guidelines(), decades, area, g, names);
    }

    static void guidelines(
            List<Profile.GuidelineValue> guidelines, Decades decades, Rectangle2D area, Graphics2D g, EndLabels names) {
        for (Profile.GuidelineValue guideline : guidelines) {
            double y = decades.y(guideline.value(), area);
            g.setColor(Theme.GUIDELINE);
            g.setStroke(Theme.GUIDE);
            g.draw(new Line2D.Double(area.getX(), y, area.getMaxX(), y));
            names.line(y, guideline.name(), guideline.valueWords(), Theme.GUIDELINE, Theme.GUIDE);
        }
    }

    /** Lines of sites and places through the plot, symbols at its upper edge, names in their rows. */
    void marks(List<Optional<MarkLabels.Placed>> names, double row) {
        lines();
        for (int i = 0; i < names.size(); i++) {
            Profile.Mark mark = profile.marks().get(i);
            double x = x(mark.kilometers());
            double upper = area.getY() - SYMBOL;
            if (names.get(i).isPresent()) {
                Font font = font(mark.kind());
                double baseline = upper - 3 - names.get(i).get().row() * row;
                g.setColor(Theme.MARK);
                g.setStroke(Theme.HAIR);
                g.draw(new Line2D.Double(x, upper, x, baseline - font.getSize2D() / 3));
                text.draw(mark.name(), font, Theme.TEXT, names.get(i).get().from(), baseline);
            }
        }
        // places stand over tributaries, sites over both
        for (Profile.Mark.Kind kind :
                List.of(Profile.Mark.Kind.TRIBUTARY, Profile.Mark.Kind.PLACE, Profile.Mark.Kind.SITE)) {
            profile.marks().stream()
                    .filter(m -> m.kind() == kind)
                    .forEach(m -> symbol(g, kind, x(m.kilometers()), area.getY() - SYMBOL / 2));
        }
    }

    /** Letters of a mark's name: those of rivers slanted, as on maps, and smaller. */
    static Font font(Profile.Mark.Kind kind) {
        return kind == Profile.Mark.Kind.TRIBUTARY ? Theme.oblique(Theme.SMALL_NAME) : Theme.regular(Theme.NAME);
    }

    /** Lines of sites and places alone; tributaries have none, as there may be many. */
    void lines() {
        profile.marks().stream()
                .filter(m -> m.kind() != Profile.Mark.Kind.TRIBUTARY)
                .forEach(this::line);
    }

    private void line(Profile.Mark mark) {
        double x = x(mark.kilometers());
        g.setColor(Theme.MARK);
        g.setStroke(mark.kind() == Profile.Mark.Kind.SITE ? Theme.THIN : Theme.HAIR);
        g.draw(new Line2D.Double(x, area.getY(), x, area.getMaxY()));
    }

    static void symbol(Graphics2D g, Profile.Mark.Kind kind, double x, double y) {
        double r = SYMBOL / 2;
        Shape shape = switch (kind) {
            case SITE -> triangle(x, y, r);
            case TRIBUTARY -> new Ellipse2D.Double(x - r * 0.6, y - r * 0.6, 1.2 * r, 1.2 * r);
            case PLACE -> new Rectangle2D.Double(x - r * 0.85, y - r * 0.85, 1.7 * r, 1.7 * r);
        };
        g.setColor(kind == Profile.Mark.Kind.SITE ? Theme.TEXT : Color.WHITE);
        g.fill(shape);
        g.setColor(Theme.TEXT);
        g.setStroke(Theme.THIN);
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
}
