// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Test;

/** Classes of reaches in grey, with other eyes, and on paper. */
class ReachShadeTest {
    /** A step that is seen between grey lines side by side; chosen. */
    private static final double STEP = 12;
    /** The same for eyes that lack a kind of cones, who also see a difference of blue and yellow; chosen. */
    private static final double STEP_OF_FEWER_CONES = 8;
    /** Least contrast of what must be seen to understand a picture (WCAG 2.2, success criterion 1.4.11, level AA). */
    private static final double GRAPHIC = 3;
    /** Half the last digit of the printed values below. */
    private static final double PRINTED = 0.005;

    private static final List<ReachShade> ANSWERS = List.of(
            ReachShade.FAR_ABOVE, ReachShade.ABOVE, ReachShade.LIKELY_ABOVE, ReachShade.MAY_BE_ABOVE, ReachShade.BELOW);

    private static final List<ReachShade> NO_ANSWER =
            List.of(ReachShade.NOT_ASSESSED, ReachShade.NO_WATER, ReachShade.DOES_NOT_APPLY);

    private static final List<UnaryOperator<Color>> FEWER_CONES = List.of(Looks::protanope, Looks::deuteranope);

    @Test
    void theFormulasGiveKnownValues() {
        // WCAG 2.2: black on white is 21:1. Grey #767676 on white is the usual example of just 4.5:1 (4.54; common
        // practice, no source).
        assertThat(Looks.contrast(Color.BLACK, Color.WHITE)).isCloseTo(21, within(PRINTED));
        assertThat(Looks.contrast(Color.decode("#767676"), Color.WHITE)).isCloseTo(4.54, within(PRINTED));
        // Middle grey: 18.4 % of white is L* 50 (CIE 1976, by hand: 116 x 0.18419^(1/3) - 16 = 50.00).
        assertThat(Looks.lightness(Color.decode("#777777"))).isCloseTo(50, within(0.1));
        // Neutral colors stay neutral for every eye: rows of the matrix sum so.
        for (UnaryOperator<Color> eye : FEWER_CONES) {
            Color grey = eye.apply(Color.decode("#808080"));
            assertThat(Math.abs(grey.getRed() - grey.getBlue())).isLessThanOrEqualTo(2);
            assertThat(Math.abs(grey.getRed() - grey.getGreen())).isLessThanOrEqualTo(2);
        }
        // Red and green of the same luminance come together for eyes without middle-wave cones, and not for others.
        Color red = Color.decode("#c83232");
        assertThat(Looks.deuteranope(red).getRed() - Looks.deuteranope(red).getGreen())
                .isLessThan(red.getRed() - red.getGreen());
    }

    @Test
    void answersDifferInGrey() {
        requireSteps(color -> color, STEP);
    }

    @Test
    void answersDifferForEyesWithFewerCones() {
        FEWER_CONES.forEach(eye -> requireSteps(eye, STEP_OF_FEWER_CONES));
    }

    private static void requireSteps(UnaryOperator<Color> eye, double step) {
        for (ReachShade one : ReachShade.values()) {
            for (ReachShade other : ReachShade.values()) {
                boolean bothNone = NO_ANSWER.contains(one) && NO_ANSWER.contains(other);
                if (one != other && !bothNone) {
                    assertThat(Math.abs(lightness(eye, one) - lightness(eye, other)))
                            .as(one + " and " + other)
                            .isGreaterThanOrEqualTo(step);
                }
            }
        }
    }

    private static double lightness(UnaryOperator<Color> eye, ReachShade shade) {
        return Looks.lightness(eye.apply(color(shade)));
    }

    private static Color color(ReachShade shade) {
        return Color.decode(shade.withLegend("x").color());
    }

    @Test
    void theWorseTheDarkerAndWider() {
        for (int k = 1; k < ANSWERS.size(); k++) {
            LineClass worse = ANSWERS.get(k - 1).withLegend("x");
            LineClass better = ANSWERS.get(k).withLegend("x");
            assertThat(worse.width()).isGreaterThan(better.width() + 0.5);
            assertThat(Looks.luminance(Color.decode(worse.color())))
                    .isLessThan(Looks.luminance(Color.decode(better.color())));
        }
    }

    @Test
    void answersStandOutFromPaper() {
        for (ReachShade shade : ANSWERS) {
            assertThat(Looks.contrast(color(shade), Color.WHITE))
                    .as(shade.name())
                    .isGreaterThanOrEqualTo(GRAPHIC);
        }
    }

    @Test
    void whatHasNoAnswerIsToldApartByDashes() {
        Set<List<Double>> dashes = new HashSet<>();
        NO_ANSWER.forEach(shade -> dashes.add(shade.withLegend("x").dash()));
        assertThat(dashes).hasSize(NO_ANSWER.size()).doesNotContain(List.of());
    }
}
