// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.label;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StretchesTest {
    /** ROUNDING: sums of some hundred lengths of up to a thousand. */
    private static final double ROUNDING = 1e-8;

    private static final Box AREA = Box.upright(20, 10, 301, 202);

    /** Against the plain sum over all stretches, each clipped by the box alone; some run along the sides of cells, some beyond the area. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void lengthsAreThoseOfAllStretches(long seed) {
        Random random = new Random(seed);
        Stretches stretches = new Stretches(AREA);
        List<double[]> all = new ArrayList<>();
        for (int k = 0; k < 3000; k++) {
            double reach = k % 50 == 0 ? 400 : 4;
            double x = 20 + 301 * random.nextDouble();
            double y = 10 + 202 * random.nextDouble();
            double toX = x + reach * random.nextGaussian();
            double toY = y + reach * random.nextGaussian();
            if (k % 7 == 0) {
                x = 20 + 3 * random.nextInt(100);
                toX = x;
            } else if (k % 7 == 1) {
                y = 10 + 3 * random.nextInt(67);
                toY = y;
            }
            stretches.add(x, y, toX, toY);
            all.add(new double[] {x, y, toX, toY});
        }
        for (int k = 0; k < 200; k++) {
            double angle = k % 4 == 0 ? 0 : k % 4 == 1 ? Math.PI / 2 : Math.PI * random.nextDouble();
            Box box = new Box(
                    70 + 200 * random.nextDouble(),
                    70 + 80 * random.nextDouble(),
                    40 * random.nextDouble(),
                    7 * random.nextDouble(),
                    angle);
            double sum = 0;
            for (double[] s : all) {
                sum += box.lengthInside(s[0], s[1], s[2], s[3]);
            }
            assertThat(stretches.lengthInside(box, Double.POSITIVE_INFINITY))
                    .as("seed %d, %s", seed, box)
                    .isCloseTo(sum, within(ROUNDING));
            double enough = random.nextDouble() * 2 * sum;
            assertThat(stretches.lengthInside(box, enough) >= enough)
                    .as("seed %d, %s, enough %s", seed, box, enough)
                    .isEqualTo(sum >= enough);
        }
    }
}
