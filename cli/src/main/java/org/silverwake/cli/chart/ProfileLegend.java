// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;

/** The legend below a profile: lines, band and the kinds of marks that occur, set like words in lines of text. */
final class ProfileLegend {
    private static final double SIZE = 9.5;
    private static final double SWATCH = 24;
    private static final double GAP = 14;
    private static final double LINE = 13;

    private final PageText text;
    private final Graphics2D g;
    private final List<Entry> entries = new ArrayList<>();

    private interface Sign {
        void draw(double x, double y);
    }

    private record Entry(String words, double signWidth, Sign sign) {}

    private ProfileLegend(PageText text) {
        this.text = text;
        this.g = text.graphics();
    }

    /** Of the kinds of marks alone. */
    static ProfileLegend ofMarks(Profile profile, PageText text) {
        ProfileLegend legend = new ProfileLegend(text);
        legend.marks(profile);
        return legend;
    }

    /** Of scenarios and the kinds of marks. */
    static ProfileLegend of(ScenarioProfile profile, PageText text) {
        ProfileLegend legend = new ProfileLegend(text);
        for (int k = 0; k < profile.courses().size(); k++) {
            int scenario = k;
            legend.entries.add(
                    new Entry(profile.courses().get(k).name(), 2 * SWATCH, (x, y) -> legend.course(scenario, x, y)));
        }
        legend.marks(profile.frame());
        return legend;
    }

    private void course(int scenario, double x, double y) {
        g.setColor(Ink.scenario(scenario));
        g.setStroke(Ink.scenarioLine(scenario));
        g.draw(new Line2D.Double(x, y, x + 2 * SWATCH, y));
    }

    ProfileLegend(Profile profile, PageText text) {
        this(text);
        entries.add(new Entry(
                profile.ofBounds() ? "carried through: the bed keeps little or nothing" : "high estimate",
                SWATCH,
                this::high));
        entries.add(
                new Entry(profile.ofBounds() ? "laid down: what settles stays" : "low estimate", SWATCH, this::low));
        if (profile.hasBed()) {
            entries.add(new Entry("with the bed: it takes in and gives back", SWATCH, this::withBed));
        }
        entries.add(new Entry("background alone", SWATCH, this::background));
        marks(profile);
        samples(profile);
    }

    private void marks(Profile profile) {
        for (Profile.Mark.Kind kind : Profile.Mark.Kind.values()) {
            if (profile.marks().stream().anyMatch(m -> m.kind() == kind)) {
                entries.add(new Entry(
                        kind.words(),
                        ProfileMarks.SYMBOL,
                        (x, y) -> ProfileMarks.symbol(g, kind, x + ProfileMarks.SYMBOL / 2, y)));
            }
        }
    }

    private void samples(Profile profile) {
        for (Profile.Sample.Kind kind : Profile.Sample.Kind.values()) {
            if (profile.samples().stream().anyMatch(s -> s.kind() == kind)) {
                entries.add(new Entry(kind.words(), ProfileSamples.SIZE, (x, y) -> sample(kind, x, y)));
            }
        }
    }

    private void sample(Profile.Sample.Kind kind, double x, double y) {
        double up = switch (kind) {
            case BELOW -> 3;
            case VALUE -> 0;
            case ABOVE -> -3;
        };
        ProfileSamples.sign(g, kind, x + ProfileSamples.SIZE / 2, y - up, SIZE / 2);
    }

    /** How high it is within a width. */
    double height(double width) {
        Font font = text.regular(SIZE);
        double x = 0;
        int lines = 1;
        for (Entry entry : entries) {
            double needed = entry.signWidth() + 4 + text.width(entry.words(), font);
            if (x > 0 && x + needed > width) {
                x = 0;
                lines++;
            }
            x += needed + GAP;
        }
        return lines * LINE;
    }

    /** Draws it from a left and top edge within a width; its bottom edge. */
    double draw(double left, double top, double width) {
        Font font = text.regular(SIZE);
        double x = left;
        double y = top + LINE;
        for (Entry entry : entries) {
            double needed = entry.signWidth() + 4 + text.width(entry.words(), font);
            if (x > left && x + needed > left + width) {
                x = left;
                y += LINE;
            }
            entry.sign().draw(x, y - SIZE * 0.36);
            text.draw(entry.words(), font, Ink.TEXT, x + entry.signWidth() + 4, y);
            x += needed + GAP;
        }
        return y;
    }

    private void high(double x, double y) {
        g.setColor(Ink.BAND);
        g.fill(new Rectangle2D.Double(x, y, SWATCH, SIZE / 2));
        g.setColor(Ink.HIGH);
        g.setStroke(Ink.THICK);
        g.draw(new Line2D.Double(x, y, x + SWATCH, y));
    }

    private void low(double x, double y) {
        g.setColor(Ink.BAND);
        g.fill(new Rectangle2D.Double(x, y - SIZE / 2, SWATCH, SIZE / 2));
        g.setColor(Ink.LOW);
        g.setStroke(Ink.MEDIUM);
        g.draw(new Line2D.Double(x, y, x + SWATCH, y));
    }

    private void withBed(double x, double y) {
        g.setColor(Ink.WITH_BED);
        g.setStroke(Ink.BED);
        g.draw(new Line2D.Double(x, y, x + SWATCH, y));
    }

    private void background(double x, double y) {
        g.setColor(Ink.BACKGROUND);
        g.setStroke(Ink.DOTS);
        g.draw(new Line2D.Double(x, y, x + SWATCH, y));
    }
}
