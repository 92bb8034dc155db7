// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Stroke;
import java.util.List;
import org.silverwake.geo.map.Fonts;

/**
 * How all charts look: the page, letters, inks, lines. Lines differ in lightness, width and dash as well as hue, and neighbors among
 * layers alternate in lightness, so that all can be told apart in grey; none is green. Sizes are points of 1/72 inch.
 */
final class Theme {
    static final double WIDTH = 576;
    static final double HEIGHT = 360;
    static final double MARGIN = 12;
    /** Room at the right in which lines and layers are named. */
    static final double GUTTER = 128;

    static final double TITLE = 18;
    static final double SUBTITLE = 11.5;
    static final double PANEL_TITLE = 11;
    static final double AXIS_TITLE = 10.5;
    static final double TICK = 10.5;
    static final double NAME = 10;
    static final double SMALL_NAME = 8.5;
    static final double KEY = 9;
    static final double CAUTION = 8.5;
    static final double IMPRINT = 8;

    static final Color PAPER = Color.WHITE;
    static final Color TEXT = new Color(0x1A1A1A);
    static final Color FAINT_TEXT = new Color(0x4D4D4D);
    static final Color GRID = new Color(0xDCDCDC);
    static final Color BAND = new Color(0xF6CFA0);
    static final Color HIGH = new Color(0x8C2D04);
    static final Color LOW = new Color(0x2B4C8C);
    static final Color WITH_BED = new Color(0x24123D);
    static final Color BACKGROUND = new Color(0x707070);
    static final Color GUIDELINE = new Color(0x000000);
    static final Color MARK = new Color(0x8C8C8C);
    static final Color GAP = new Color(0xE6E6E6);
    static final Color REST = new Color(0xC8C8C8);

    static final Stroke THICK = line(2.2f);
    static final Stroke MEDIUM = dashed(1.8f, 7, 3);
    static final Stroke BED = line(3);
    static final Stroke DOTS =
            new BasicStroke(1.4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {0.1f, 3.5f}, 0);
    static final Stroke GUIDE = dashed(1.4f, 12, 3, 2, 3);
    static final Stroke THIN = line(0.7f);
    static final Stroke SAMPLE = line(0.9f);
    static final Stroke EDGE = line(2.4f);
    static final Stroke HAIR = line(0.4f);
    static final Stroke NONE = new BasicStroke(0.1f);

    /** Layers that lie on one another: lightness alternates. */
    private static final List<Color> LAYERS = List.of(
            new Color(0x5A2A0C),
            new Color(0xE0A060),
            new Color(0x2B4C8C),
            new Color(0xA9C3E6),
            new Color(0x8A2A55),
            new Color(0xF0D78C),
            new Color(0x4D4D4D));

    /** Scenarios side by side, by falling weight. */
    private static final List<Color> SCENARIOS =
            List.of(new Color(0x24123D), new Color(0xA63A08), new Color(0x3F78B5), new Color(0x8F6BB3));

    private static final List<Stroke> SCENARIO_LINES =
            List.of(line(3), dashed(2.6f, 12, 4), dashed(2.4f, 5, 3), dashed(2.2f, 10, 3, 2, 3));

    /** Lightness below which letters on a color are white, of 255 (luma of ITU-R BT.601; chosen). */
    private static final double DARK = 140;

    private static final double[] LUMA = {0.299, 0.587, 0.114};

    private Theme() {}

    static Font regular(double size) {
        return Fonts.regular(size);
    }

    static Font bold(double size) {
        return Fonts.bold(size);
    }

    static Font oblique(double size) {
        return Fonts.oblique(size);
    }

    /** How many layers have a color of their own. */
    static int layers() {
        return LAYERS.size();
    }

    static Color layer(int k) {
        return LAYERS.get(k % LAYERS.size());
    }

    static Color scenario(int k) {
        return SCENARIOS.get(k % SCENARIOS.size());
    }

    static Stroke scenarioLine(int k) {
        return SCENARIO_LINES.get(k % SCENARIO_LINES.size());
    }

    /** White on dark, black on light. */
    static Color letters(Color fill) {
        double lightness = LUMA[0] * fill.getRed() + LUMA[1] * fill.getGreen() + LUMA[2] * fill.getBlue();
        return lightness < DARK ? PAPER : TEXT;
    }

    private static Stroke line(float width) {
        return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private static Stroke dashed(float width, float... dashes) {
        return new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, dashes, 0);
    }
}
