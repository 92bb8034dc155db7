// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** One reach for each set of attributes; Q = 12 m3/s, reference 9 m3/s. */
class AttributeChannelTest {
    private static final double EXACT = 1e-12;
    private static final HydraulicGeometry GEOMETRY = new HydraulicGeometry(8, 0.5, 0.5, 0.4, 0.26, 0.40);
    private static final AttributeChannel CHANNEL = new AttributeChannel(
            List.of(column(0, 0.5, 1, 0.5, 2, 0.5, 3, 0.5)),
            List.of(column(0, 2, 1, 2, 4, 3, 6, 0)),
            List.of(column(1, 20, 2, 30, 5, 15)),
            GEOMETRY);

    private static Optional<Column> column(double... pairs) {
        Column column = new Column(7);
        for (int i = 0; i < pairs.length; i += 2) {
            column.put((int) pairs[i], pairs[i + 1]);
        }
        return Optional.of(column);
    }

    private static Section section(int reach) {
        Section section = CHANNEL.section(reach, 0, 12, 9);
        assertThat(section.width() * section.depth() * section.velocity()).isCloseTo(12, within(EXACT));
        return section;
    }

    @Test
    void velocityAndDepthGiveTheWidth() {
        assertThat(section(0).width()).isCloseTo(12, within(EXACT));
        assertThat(CHANNEL.isWidthRecomputed(0, 0, 12)).isFalse();
    }

    @Test
    void anAttributeWidthThatBreaksTheBalanceIsRecomputed() {
        assertThat(section(1).width()).isCloseTo(12, within(EXACT));
        assertThat(CHANNEL.isWidthRecomputed(1, 0, 12)).isTrue();
        assertThat(CHANNEL.isWidthRecomputed(1, 0, 20.1))
                .as("20 against 20.1: within 1 %")
                .isFalse();
    }

    @Test
    void velocityAndWidthGiveTheDepth() {
        assertThat(section(2).depth()).isCloseTo(0.8, within(EXACT));
    }

    @Test
    void velocityAloneTakesTheGeometrysWidth() {
        double width = 8 * 3 * StrictMath.pow(12.0 / 9, 0.26);
        assertThat(section(3).width()).isCloseTo(width, within(EXACT));
        assertThat(section(3).depth()).isCloseTo(24 / width, within(EXACT));
        assertThat(CHANNEL.isFilled(3, 0)).isFalse();
    }

    @Test
    void withoutVelocityTheGeometryFillsIn() {
        Section usual = GEOMETRY.section(4, 0, 12, 9);
        assertThat(section(4).depth()).isEqualTo(3);
        assertThat(section(4).width()).isEqualTo(usual.width());
        assertThat(section(5).width()).isEqualTo(15);
        assertThat(section(5).depth()).isEqualTo(usual.depth());
        assertThat(section(6)).as("0 is no depth").isEqualTo(usual);
        assertThat(CHANNEL.isFilled(4, 0)).isTrue();
    }
}
