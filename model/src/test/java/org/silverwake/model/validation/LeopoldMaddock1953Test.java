// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.silverwake.model.water.HydraulicGeometry;
import org.silverwake.model.water.Section;

/**
 * Hydraulic geometry. Leopold &amp; Maddock (1953) USGS Professional Paper 252: at-a-station b, f, m 0.26, 0.40, 0.34; downstream
 * 0.5, 0.4, 0.1 (from memory).
 */
@Reference(key = "leopold1953", locator = "exponents")
class LeopoldMaddock1953Test {
    private static final HydraulicGeometry GEOMETRY = new HydraulicGeometry(8.3, 0.5, 0.40, 0.4, 0.26, 0.40);
    /** PRINTED: half of the last of four decimals. */
    private static final double PRINTED = 5e-5;
    /** ROUNDING: a dozen operations, two logarithms. */
    private static final double EXACT = 1e-12;

    @Test
    void tenTimesTheDischargeAtAStation() {
        Section low = GEOMETRY.section(0, 0, 3, 3);
        Section high = GEOMETRY.section(0, 0, 30, 3);
        assertThat(high.width() / low.width()).isCloseTo(1.8197, within(PRINTED));
        assertThat(high.depth() / low.depth()).isCloseTo(2.5119, within(PRINTED));
        assertThat(high.velocity() / low.velocity()).isCloseTo(2.1878, within(PRINTED));
    }

    @Test
    void tenTimesTheDischargeDownstream() {
        Section upper = GEOMETRY.section(0, 0, 3, 3);
        Section lower = GEOMETRY.section(0, 0, 30, 30);
        assertThat(lower.width() / upper.width()).isCloseTo(3.1623, within(PRINTED));
        assertThat(lower.depth() / upper.depth()).isCloseTo(2.5119, within(PRINTED));
        assertThat(lower.velocity() / upper.velocity()).isCloseTo(1.2589, within(PRINTED));
    }

    @Test
    void widthDepthAndVelocityMakeTheDischarge() {
        for (double q : new double[] {1e-4, 0.3, 7, 5000}) {
            Section section = GEOMETRY.section(0, 0, q, 2);
            assertThat(section.width() * section.depth() * section.velocity() / q)
                    .isCloseTo(1, within(EXACT));
        }
    }

    @Test
    void atOneCubicMeterTheCoefficientsAreTheSection() {
        Section section = GEOMETRY.section(0, 0, 1, 1);
        assertThat(section.width()).isCloseTo(8.3, within(EXACT));
        assertThat(section.depth()).isCloseTo(0.40, within(EXACT));
        assertThat(section.radiusKnown()).isFalse();
    }
}
