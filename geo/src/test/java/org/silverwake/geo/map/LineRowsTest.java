// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Rectangle;
import java.awt.image.BufferedImage;
import java.util.List;
import java.util.Random;
import org.geotools.api.style.LineSymbolizer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against Java2D, which counts 8 by 8 points in each pixel where we measure distances from its middle. */
class LineRowsTest {
    private static final int SIDE = 60;
    private static final double SCALE = 300 / 72.0;
    private static final Color INK = Color.BLACK;
    /**
     * DISCRETIZATION: mean difference of pixels in lines and at their edges, in levels of 255; found: 7.1 for dots, which are all edge, at most 4
     * for all else.
     */
    private static final double MEAN = 8;
    /** DISCRETIZATION: share of them that differ by more than a quarter of the levels, at corners and ends [-]; found: 0.0066 at most. */
    private static final double OFTEN = 0.01;

    private static PageLine wandering(Random random) {
        int n = 2 + random.nextInt(24);
        double[] xs = new double[n];
        double[] ys = new double[n];
        double heading = 2 * Math.PI * random.nextDouble();
        xs[0] = SIDE / 2.0;
        ys[0] = SIDE / 2.0;
        for (int k = 1; k < n; k++) {
            heading += 0.25 * random.nextGaussian();
            xs[k] = xs[k - 1] + 2 * Math.cos(heading);
            ys[k] = ys[k - 1] + 2 * Math.sin(heading);
        }
        return PageLine.of(xs, ys);
    }

    private static BufferedImage byJava2D(PageLine line, BasicStroke stroke) {
        return Picture.image(SIDE, SIDE, 300, g -> {
            g.setColor(INK);
            g.setStroke(stroke);
            g.draw(line.path());
        });
    }

    private static BufferedImage byRows(PageLine line, BasicStroke stroke, Rectangle... parts) {
        return Picture.image(SIDE, SIDE, 300, g -> {
            for (Rectangle part : parts) {
                LineMask mask =
                        LineMask.of(Picture.pixels(g).orElseThrow(), part).orElseThrow();
                new LineRows(mask).add(line, stroke, SCALE, 0, 0);
                mask.lay(INK);
            }
        });
    }

    private static int level(BufferedImage image, int x, int y) {
        return image.getRGB(x, y) & 255;
    }

    /** Widths and dashes of all looks of reaches, as on maps with room and on crowded ones. */
    @ParameterizedTest
    @EnumSource
    void linesLookLikeThoseOfJava2D(ReachShade shade) {
        for (double factor : new double[] {1, 0.45}) {
            List<LineSymbolizer> looks = MapStyles.reach(shade.withLegend(""), factor);
            BasicStroke stroke = StyleValues.stroke(looks.get(looks.size() - 1).getStroke(), null);
            assertThat(LineRows.takes(stroke, INK)).isTrue();
            long touched = 0;
            long often = 0;
            double sum = 0;
            for (int seed = 0; seed < 40; seed++) {
                PageLine line = wandering(new Random(seed));
                BufferedImage expected = byJava2D(line, stroke);
                BufferedImage drawn = byRows(line, stroke, new Rectangle(0, 0, 250, 250));
                for (int p = 0; p < 250 * 250; p++) {
                    int a = level(expected, p % 250, p / 250);
                    int b = level(drawn, p % 250, p / 250);
                    if (a < 255 || b < 255) {
                        touched++;
                        sum += Math.abs(a - b);
                        often += Math.abs(a - b) > 64 ? 1 : 0;
                    }
                }
            }
            assertThat(touched).as("%s, %s", shade, factor).isGreaterThan(5000);
            assertThat(sum / touched).as("%s, %s", shade, factor).isLessThan(MEAN);
            assertThat((double) often / touched).as("%s, %s", shade, factor).isLessThan(OFTEN);
        }
    }

    /** A page drawn in parts is the page drawn at once, whatever line crosses from part to part. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void partsMeetWithoutASeam(long seed) {
        PageLine line = wandering(new Random(seed));
        BasicStroke stroke = new BasicStroke(
                3, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 10, seed % 2 == 0 ? new float[] {6, 2} : null, 0);
        BufferedImage whole = byRows(line, stroke, new Rectangle(0, 0, 250, 250));
        BufferedImage parts = byRows(
                line,
                stroke,
                new Rectangle(0, 0, 250, 113),
                new Rectangle(0, 113, 121, 137),
                new Rectangle(121, 113, 129, 137));
        for (int p = 0; p < 250 * 250; p++) {
            assertThat(level(parts, p % 250, p / 250))
                    .as("seed %d, pixel %d", seed, p)
                    .isEqualTo(level(whole, p % 250, p / 250));
        }
    }

    /** By hand: 2 points wide is 8.33 pixels; from row 125 - 4.17 a sixth of row 120 is covered, row 121 wholly. */
    @Test
    void edgesAreAsDarkAsTheyCoverPixels() {
        PageLine line = PageLine.of(new double[] {12, 48}, new double[] {30, 30});
        BufferedImage drawn = byRows(
                line, new BasicStroke(2, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND), new Rectangle(0, 0, 250, 250));
        assertThat(level(drawn, 125, 119)).isEqualTo(255);
        assertThat(level(drawn, 125, 120)).isBetween(212, 213);
        assertThat(level(drawn, 125, 121)).isZero();
        assertThat(level(drawn, 49, 125)).isEqualTo(255);
        assertThat(level(drawn, 50, 125)).isZero();
        assertThat(level(drawn, 199, 125)).isZero();
        assertThat(level(drawn, 200, 125)).isEqualTo(255);
    }

    /** Two lines of one color that meet within a pixel leave no light between them but at square ends. */
    @Test
    void linesOfOneColorJoinWithoutASeam() {
        BasicStroke stroke = new BasicStroke(3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
        BufferedImage drawn = Picture.image(SIDE, SIDE, 300, g -> {
            LineMask mask = LineMask.of(Picture.pixels(g).orElseThrow(), new Rectangle(0, 0, 250, 250))
                    .orElseThrow();
            LineRows rows = new LineRows(mask);
            rows.add(PageLine.of(new double[] {12, 30.07}, new double[] {30, 30}), stroke, SCALE, 0, 0);
            rows.add(PageLine.of(new double[] {30.07, 48}, new double[] {30, 30}), stroke, SCALE, 0, 0);
            mask.lay(INK);
        });
        for (int x = 50; x < 200; x++) {
            assertThat(level(drawn, x, 125)).as("column %d", x).isZero();
        }
    }
}
