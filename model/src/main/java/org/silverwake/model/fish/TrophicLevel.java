// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import org.silverwake.model.input.Settings;

/** Place of a fish in the food web. */
public enum TrophicLevel {
    /** Fish that eat plants, insects and snails. */
    THREE(3, "fish.baf-3"),
    /** Fish that eat fish. */
    FOUR(4, "fish.baf-4");

    private final int number;
    private final String setting;

    TrophicLevel(int number, String setting) {
        this.number = number;
        this.setting = setting;
    }

    /** 3 or 4 [-]. */
    public int number() {
        return number;
    }

    /** Its bioaccumulation factor: content of the fish over methylmercury in filtered water [m3/kg]. */
    double factor(Settings settings) {
        return settings.value(setting);
    }
}
