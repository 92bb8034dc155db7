// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class ManningChannelTest {
    private static final double FOOT = 0.3048;
    private static final HydraulicGeometry GEOMETRY = new HydraulicGeometry(8.3, 0.5, 0.40, 0.4, 0.26, 0.40);
    /** ROUNDING: the depth is solved to 1e-13. */
    private static final double SOLVED_PERCENT = 1e-10;

    /** b 20 m, h 1.5 m, n 0.030, S 5e-4: R 1.30435 m, V 0.88980 m/s, Q 26.694 m3/s, tau 6.398 Pa; evaluated outside this program. */
    @Test
    void rectangularChannelInMetricUnits() {
        Section section = ManningChannel.normal(26.694, 20, 0, 0.030, 5e-4);
        double printed = 5e-6;
        // the printed discharge has five digits: 5e-4/26.694 of it moves the depth by 0.6 of that
        double ofDischarge = 2e-5;
        assertThat(section.depth()).isCloseTo(1.5, within(ofDischarge));
        assertThat(section.radius()).isCloseTo(1.30435, within(ofDischarge));
        assertThat(section.velocity()).isCloseTo(0.88980, within(printed));
        Shear shear = Shear.of(section, 5e-4, 0.030, 1000, 1e-3);
        assertThat(shear.total()).isCloseTo(6.398, within(5e-4));
        assertThat(shear.velocity(1000)).isCloseTo(0.07999, within(printed));
        Shear depth = Shear.of(new Section(20, 1.5, 0.88980, 1.5, false), 5e-4, 0, 1000, 1e-3);
        assertThat(depth.velocity(1000)).isCloseTo(0.08578, within(printed));
    }

    /**
     * A published example in US units (title not recorded): n 0.025, Q 600 ft3/s, b 10 ft, y 4.82 ft: S = 0.0132 printed,
     * 0.013178 with 1.49 for the exact 1.48592; converted to SI the exact factor gives 0.01325. Forgetting it gives 0.0293.
     */
    @Test
    void publishedExampleInFeet() {
        Section section = ManningChannel.normal(600 * FOOT * FOOT * FOOT, 10 * FOOT, 0, 0.025, 0.013178);
        double factorOf149 = 0.4;
        assertThat(section.depth() / FOOT).isCloseTo(4.82, withinPercentage(factorOf149));
        Section exact = ManningChannel.normal(600 * FOOT * FOOT * FOOT, 10 * FOOT, 0, 0.025, 0.013249);
        assertThat(exact.depth() / FOOT).isCloseTo(4.82, withinPercentage(0.01));
    }

    @ParameterizedTest
    @ValueSource(doubles = {1e-16, 1e-9, 1e-3, 1, 5e4})
    void theEquationHoldsFromATrickleToAGreatRiver(double discharge) {
        Section section = ManningChannel.normal(discharge, 3, 1.5, 0.04, 1e-3);
        double area = section.width() * section.depth();
        assertThat(area * section.velocity()).isCloseTo(discharge, withinPercentage(SOLVED_PERCENT));
        // U = R^(2/3) S^(1/2)/n
        double manning = StrictMath.pow(section.radius(), 2.0 / 3) * StrictMath.sqrt(1e-3) / 0.04;
        assertThat(section.velocity()).isCloseTo(manning, withinPercentage(SOLVED_PERCENT));
        assertThat(section.radiusKnown()).isTrue();
    }

    @Test
    void widthIsTheAttributeElseTheGeometryAtTheReferenceDischarge() {
        Column slope = Column.of(1e-3, 1e-3);
        Column width = new Column(2);
        width.put(0, 7);
        ManningChannel channel = new ManningChannel(slope, Column.of(0.03, 0.03), width, GEOMETRY, 0);
        assertThat(channel.section(0, 0, 2, 9).width()).isEqualTo(7);
        // 8.3 x 9^0.5
        assertThat(channel.section(1, 0, 2, 9).width()).isCloseTo(24.9, withinPercentage(SOLVED_PERCENT));
    }
}
