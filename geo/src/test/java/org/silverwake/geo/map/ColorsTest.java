// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Colors of classes are told apart in grey and with any color vision, and texts stand out from what they are on. */
class ColorsTest {
    /** WCAG 2.2, success criterion 1.4.3, level AA: 4.5 for texts, 3 for large ones. */
    private static final double TEXT = 4.5;

    /** Least step of lightness between classes [L* of CIE 1976]. Chosen: a just visible step is about 1, on paper in poor light much more. */
    private static final double STEP = 12;
    /** Least distance of two classes in any color vision [CIE 1976 color difference]. Chosen. */
    private static final double APART = 15;

    /** Least contrast of parts of a picture [-]. */
    private static final double GRAPHIC = 3;

    private static final List<ReachShade> ANSWERS = List.of(
            ReachShade.FAR_ABOVE, ReachShade.ABOVE, ReachShade.LIKELY_ABOVE, ReachShade.MAY_BE_ABOVE, ReachShade.BELOW);

    /** Machado, Oliveira and Fernandes (2009), IEEE Transactions on Visualization and Computer Graphics 15(6), table 1, severity 1.0: protan, deutan, tritan. */
    private static final double[][][] VISIONS = {
        {{1, 0, 0}, {0, 1, 0}, {0, 0, 1}},
        {{0.152286, 1.052583, -0.204868}, {0.114503, 0.786281, 0.099216}, {-0.003882, -0.048116, 1.051998}},
        {{0.367322, 0.860646, -0.227968}, {0.280085, 0.672501, 0.047413}, {-0.011820, 0.042940, 0.968881}},
        {{1.255528, -0.076749, -0.178779}, {-0.078411, 0.930809, 0.147602}, {0.004733, 0.691367, 0.303900}}
    };

    private static Color color(ReachShade shade) {
        return Color.decode(shade.withLegend("x").color());
    }

    private static double linear(double share) {
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** L*, a*, b* (CIE 1976, D65) of a color as seen with a vision; matrices are applied to linear light. */
    private static double[] lab(Color color, double[][] vision) {
        double[] seen = new double[3];
        float[] channels = color.getRGBColorComponents(null);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                seen[i] += vision[i][j] * linear(channels[j]);
            }
            seen[i] = Math.max(0, Math.min(1, seen[i]));
        }
        double x = f((0.4124 * seen[0] + 0.3576 * seen[1] + 0.1805 * seen[2]) / 0.9505);
        double y = f(0.2126 * seen[0] + 0.7152 * seen[1] + 0.0722 * seen[2]);
        double z = f((0.0193 * seen[0] + 0.1192 * seen[1] + 0.9505 * seen[2]) / 1.089);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double f(double share) {
        double cube = Math.pow(6.0 / 29, 3);
        return share > cube ? Math.cbrt(share) : share / (3 * Math.pow(6.0 / 29, 2)) + 4.0 / 29;
    }

    /** WCAG's own examples: black on white 21; #777777 on white 4.48, #767676 4.54. */
    @Test
    void contrastIsThatOfTheStandard() {
        assertThat(Contrast.ratio(Color.BLACK, Color.WHITE)).isCloseTo(21, within(1e-9));
        assertThat(Contrast.ratio(new Color(0x77, 0x77, 0x77), Color.WHITE)).isCloseTo(4.48, within(0.005));
        assertThat(Contrast.ratio(new Color(0x76, 0x76, 0x76), Color.WHITE)).isCloseTo(4.54, within(0.005));
    }

    @Test
    void lightnessRisesByTwelveFromClassToClass() {
        for (int k = 1; k < ANSWERS.size(); k++) {
            double before = lab(color(ANSWERS.get(k - 1)), VISIONS[0])[0];
            double after = lab(color(ANSWERS.get(k)), VISIONS[0])[0];
            assertThat(after - before).as(ANSWERS.get(k).key()).isGreaterThan(STEP);
        }
    }

    /** Greys stand for no answer: apart from every answer, told from each other by dashes. */
    @Test
    void whatHasNoAnswerIsPalerThanEveryAnswer() {
        List<ReachShade> none = List.of(ReachShade.NOT_ASSESSED, ReachShade.NO_WATER, ReachShade.DOES_NOT_APPLY);
        for (ReachShade shade : none) {
            assertThat(lab(color(shade), VISIONS[0])[0] - lab(color(ReachShade.BELOW), VISIONS[0])[0])
                    .as(shade.key())
                    .isGreaterThan(STEP);
            assertThat(shade.withLegend("x").dash()).as(shade.key()).isNotEmpty();
        }
    }

    /** WCAG 2.2, success criterion 1.4.11 (level AA): what must be seen to understand a picture stands out by 3:1. */
    @Test
    void answersStandOutFromPaper() {
        for (ReachShade shade : ANSWERS) {
            assertThat(Contrast.ratio(color(shade), Color.WHITE))
                    .as(shade.key())
                    .isGreaterThanOrEqualTo(GRAPHIC);
        }
    }

    @Test
    void classesAreApartInAnyColorVision() {
        for (double[][] vision : VISIONS) {
            for (int i = 0; i < ANSWERS.size(); i++) {
                for (int j = 0; j < i; j++) {
                    double[] a = lab(color(ANSWERS.get(i)), vision);
                    double[] b = lab(color(ANSWERS.get(j)), vision);
                    double apart = Math.hypot(Math.hypot(a[0] - b[0], a[1] - b[1]), a[2] - b[2]);
                    assertThat(apart).as(ANSWERS.get(i) + " " + ANSWERS.get(j)).isGreaterThan(APART);
                }
            }
        }
    }

    /** Green is hue 90 to 165 degrees at some saturation: there is none. */
    @Test
    void noClassIsGreen() {
        for (ReachShade shade : ReachShade.values()) {
            Color color = color(shade);
            float[] hsb = Color.RGBtoHSB(color.getRed(), color.getGreen(), color.getBlue(), null);
            assertThat(hsb[1] > 0.1 && hsb[0] > 75 / 360.0 && hsb[0] < 170 / 360.0)
                    .as(shade.key())
                    .isFalse();
        }
    }

    /** No two looks are told apart by hue alone: width or dash differ too. */
    @Test
    void classesDifferInWidthOrDash() {
        for (ReachShade a : ReachShade.values()) {
            for (ReachShade b : ReachShade.values()) {
                LineClass one = a.withLegend("x");
                LineClass other = b.withLegend("x");
                assertThat(a == b || one.width() != other.width() || !one.dash().equals(other.dash()))
                        .as(a + " " + b)
                        .isTrue();
            }
        }
    }

    @Test
    void textsStandOutFromTheirGround() {
        Color ink = Color.decode(MapStyles.INK);
        Color water = Color.decode(MapStyles.WATER_INK);
        Color band = new Color(0x2b, 0x0a, 0x2f);
        assertThat(Contrast.ratio(ink, Color.WHITE)).isGreaterThan(TEXT);
        assertThat(Contrast.ratio(Color.WHITE, band)).isGreaterThan(TEXT);
        for (Color ground : List.of(Color.WHITE, Color.decode(MapStyles.AREA), WallMaps.PALE)) {
            assertThat(Contrast.ratio(ink, ground)).isGreaterThan(TEXT);
            assertThat(Contrast.ratio(water, ground)).isGreaterThan(TEXT);
        }
        for (String fill : WallBars.FILLS) {
            Color part = Color.decode(fill);
            assertThat(Math.max(Contrast.ratio(part, Color.WHITE), Contrast.ratio(part, ink)))
                    .as(fill)
                    .isGreaterThan(TEXT);
        }
    }
}
