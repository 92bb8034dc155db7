// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Random;
import java.util.concurrent.ForkJoinPool;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

class InkTest {
    /** ROUNDING: lines cut at the edge of a band are computed anew, a level of a color apart at most. */
    private static final int LEVELS = 2;

    private interface Pen {
        void draw(java.awt.Shape shape, Color color, BasicStroke stroke);
    }

    private static void scribble(Pen pen) {
        Random random = new Random(3);
        for (int k = 0; k < 5000; k++) {
            double x = 150 * random.nextDouble();
            double y = 250 * random.nextDouble();
            BasicStroke stroke = new BasicStroke(
                    (float) (3 * random.nextDouble()), random.nextInt(3), random.nextInt(3), 10, null, 0);
            Color color = new Color(random.nextInt(1 << 24));
            if (k % 3 == 0) {
                pen.draw(new Ellipse2D.Double(x, y, 4, 40), color, k % 2 == 0 ? null : stroke);
            } else {
                pen.draw(
                        new Line2D.Double(x, y, x + 9 * random.nextGaussian(), y + 9 * random.nextGaussian()),
                        color,
                        stroke);
            }
        }
    }

    private static int[] pixels(Consumer<Graphics2D> painter) {
        BufferedImage image = Picture.image(150, 250, 288, g -> {
            g.clip(new Rectangle2D.Double(10, 12, 120, 230));
            painter.accept(g);
        });
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    private static void inBands(Graphics2D g) {
        Ink ink = new Ink(g);
        scribble((shape, color, stroke) -> {
            if (stroke == null) {
                ink.fill(shape, color);
            } else {
                ink.draw(shape, color, stroke);
            }
        });
        ink.dry();
    }

    /** Enough lines for bands; one color after the other and mixed. */
    private static void lines(Graphics2D g) {
        Random random = new Random(4);
        Ink ink = new Ink(g);
        for (int k = 0; k < 6000; k++) {
            double x = 150 * random.nextDouble();
            double y = 250 * random.nextDouble();
            PageLine line = PageLine.of(
                    new double[] {x, x + 5 * random.nextGaussian(), x + 9 * random.nextGaussian()},
                    new double[] {y, y + 5 * random.nextGaussian(), y + 9 * random.nextGaussian()});
            BasicStroke stroke =
                    new BasicStroke((float) (3 * random.nextDouble()), random.nextInt(2), BasicStroke.JOIN_ROUND);
            ink.draw(line, new Color((k < 3000 ? k / 500 : random.nextInt(64)) * 0x040301), stroke);
            if (k % 1000 == 0) {
                ink.fill(new Ellipse2D.Double(x, y, 20, 90), Color.ORANGE);
            }
        }
        ink.dry();
    }

    private static void oneByOne(Graphics2D g) {
        scribble((shape, color, stroke) -> {
            g.setColor(color);
            if (stroke == null) {
                g.fill(shape);
            } else {
                g.setStroke(stroke);
                g.draw(shape);
            }
        });
    }

    @Test
    void bandsShowWhatIsDrawnOneByOne() {
        int[] bands = pixels(InkTest::inBands);
        int[] single = pixels(InkTest::oneByOne);
        int worst = 0;
        for (int k = 0; k < bands.length; k++) {
            for (int shift = 0; shift < 24; shift += 8) {
                worst = Math.max(worst, Math.abs((bands[k] >> shift & 255) - (single[k] >> shift & 255)));
            }
        }
        assertThat(worst).isLessThanOrEqualTo(LEVELS);
    }

    @Test
    void pixelsAreTheSameWhateverTheNumberOfThreads() throws Exception {
        int[] oneOfLines =
                new ForkJoinPool(1).submit(() -> pixels(InkTest::lines)).get();
        int[] fiveOfLines =
                new ForkJoinPool(5).submit(() -> pixels(InkTest::lines)).get();
        assertThat(oneOfLines).isEqualTo(fiveOfLines);
        int[] one = new ForkJoinPool(1).submit(() -> pixels(InkTest::inBands)).get();
        int[] five = new ForkJoinPool(5).submit(() -> pixels(InkTest::inBands)).get();
        assertThat(one).isEqualTo(five);
    }
}
