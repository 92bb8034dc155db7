// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Stroke;
import java.util.List;

/** Colors and lines of charts. They differ in lightness and dash as well as hue; none is green. */
final class Ink {
    static final Color TEXT = new Color(0x1A1A1A);
    static final Color FAINT_TEXT = new Color(0x4D4D4D);
    static final Color GRID = new Color(0xD9D9D9);
    static final Color FINE_GRID = new Color(0xEFEFEF);
    static final Color BAND = new Color(0xF6CFA0);
    static final Color HIGH = new Color(0x8C2D04);
    static final Color LOW = new Color(0x2B4C8C);
    static final Color WITH_BED = new Color(0x24123D);
    static final Color BACKGROUND = new Color(0x707070);
    static final Color GUIDELINE = new Color(0x000000);
    static final Color MARK = new Color(0x8C8C8C);
    static final Color GAP = new Color(0xE6E6E6);

    static final Stroke THICK = line(2.2f);
    static final Stroke MEDIUM =
            new BasicStroke(1.8f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {7, 3}, 0);
    static final Stroke BED = line(3);
    static final Stroke DOTS =
            new BasicStroke(1.4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 10, new float[] {0.1f, 3.5f}, 0);
    static final Stroke GUIDE =
            new BasicStroke(1.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {12, 3, 2, 3}, 0);
    static final Stroke THIN = line(0.7f);
    static final Stroke DASHED =
            new BasicStroke(0.7f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {3, 3}, 0);
    static final Stroke SAMPLE = line(0.9f);
    static final Stroke EDGE = line(2.4f);
    static final Stroke HAIR = line(0.4f);

    /** Scenarios side by side, by falling weight: lightness, width and dash all differ. */
    private static final List<Color> SCENARIOS =
            List.of(new Color(0x24123D), new Color(0xA63A08), new Color(0x3F78B5), new Color(0x8F6BB3));

    private static final List<Stroke> SCENARIO_LINES = List.of(
            line(3),
            new BasicStroke(2.6f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {12, 4}, 0),
            new BasicStroke(2.4f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {5, 3}, 0),
            new BasicStroke(2.2f, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, new float[] {10, 3, 2, 3}, 0));

    private Ink() {}

    static Color scenario(int k) {
        return SCENARIOS.get(k % SCENARIOS.size());
    }

    static Stroke scenarioLine(int k) {
        return SCENARIO_LINES.get(k % SCENARIO_LINES.size());
    }

    private static Stroke line(float width) {
        return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }
}
