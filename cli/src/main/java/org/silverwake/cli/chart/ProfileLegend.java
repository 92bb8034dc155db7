// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.Font;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;

/** What the marks along a profile are, below it: the kinds that occur, set like words in lines of text. */
final class ProfileLegend {
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

    /** Of the kinds of marks and samples of a profile. */
    ProfileLegend(Profile profile, PageText text) {
        this(text);
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
        ProfileSamples.sign(g, kind, x + ProfileSamples.SIZE / 2, y - up, Theme.KEY / 2);
    }

    /** How high it is within a width; nothing where there are no marks. */
    double height(double width) {
        if (entries.isEmpty()) {
            return 0;
        }
        Font font = Theme.regular(Theme.KEY);
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
        Font font = Theme.regular(Theme.KEY);
        double x = left;
        double y = top + LINE;
        for (Entry entry : entries) {
            double needed = entry.signWidth() + 4 + text.width(entry.words(), font);
            if (x > left && x + needed > left + width) {
                x = left;
                y += LINE;
            }
            entry.sign().draw(x, y - Theme.KEY * 0.36);
            text.draw(entry.words(), font, Theme.TEXT, x + entry.signWidth() + 4, y);
            x += needed + GAP;
        }
        return y;
    }
}
