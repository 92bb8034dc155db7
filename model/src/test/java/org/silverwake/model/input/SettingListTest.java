// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.input;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

class SettingListTest {
    /** ROUNDING: two products of doubles, in percent. */
    private static final double ROUNDING = 1e-13;

    @Test
    void everyDefaultIsInItsRangeAndHasASource() {
        Set<String> paths = new HashSet<>();
        for (Setting setting : SettingList.all()) {
            assertThat(paths.add(setting.path())).as(setting.path()).isTrue();
            assertThat(setting.fallback()).as(setting.path()).isBetween(setting.low(), setting.high());
            assertThat(setting.source()).as(setting.path()).isNotBlank();
            assertThat(setting.acts()).as(setting.path()).isNotBlank();
        }
    }

    @Test
    void factorsComeFromTheUnits() {
        Settings settings = Settings.of(Map.of());
        // model.md section 11: 0.05 mg/kg; flood set-down e-fold 1 km; 63 um
        assertThat(settings.value("background.solids-mercury-content")).isCloseTo(5e-8, withinPercentage(ROUNDING));
        assertThat(settings.value("flood.set-down-length")).isCloseTo(1000, withinPercentage(ROUNDING));
        assertThat(settings.value("solids.cohesive-below")).isCloseTo(63e-6, withinPercentage(ROUNDING));
        // 2 mm in a year of 31557600 s
        double rate = 2e-3 / 31557600;
        assertThat(Settings.of(Map.of("solids.net-sedimentation", rate)).shown().get("solids.net-sedimentation"))
                .isCloseTo(2, withinPercentage(ROUNDING));
    }

    @Test
    void outOfRangeUnknownAndAbsentAreRefused() {
        assertThatThrownBy(() -> Settings.of(Map.of("mercury.log10-kd", 200000.0)))
                .hasMessageContaining("give 1.0 to 8.0");
        assertThatThrownBy(() -> Settings.of(Map.of("mercury.log10-kdd", 5.0))).hasMessageContaining("unknown");
        assertThatThrownBy(() -> Settings.of(Map.of()).value("channel.manning-n"))
                .hasMessageContaining("no default");
    }
}
