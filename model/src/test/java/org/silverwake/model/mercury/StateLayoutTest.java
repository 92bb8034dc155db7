// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.solids.MeasuredSettling;
import org.silverwake.model.solids.ParticleClass;

class StateLayoutTest {
    @Test
    void exchangeableComesFirstThenOneStatePerClass() {
        StateLayout layout = StateLayout.of(List.of(grains("silt"), grains("sand")));
        assertThat(layout.count()).isEqualTo(3);
        assertThat(layout.core() + layout.feeders()).isEqualTo(layout.count());
        assertThat(layout.classCount()).isEqualTo(2);
        assertThat(layout.exchangeable()).isZero();
        assertThat(layout.name(layout.exchangeable())).isEqualTo("Hg(II)");
        assertThat(layout.name(layout.grainBound(1))).isEqualTo("grain-bound sand");
    }

    private static ParticleClass grains(String name) {
        return new ParticleClass(
                name, 1e-5, 2650, new MeasuredSettling(1e-4), true, 0.1, 5, OptionalDouble.empty(), 0.5);
    }
}
