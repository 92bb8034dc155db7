// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.input;

import static org.silverwake.model.input.SettingList.TRADE;
import static org.silverwake.model.input.SettingList.of;

import java.util.List;

/** Settings of fish; rows of {@link SettingList}. */
final class FurtherSettings {
    private static final String BAF = "EPA (2001) draft national geometric mean (from memory)";
    private static final String GUIDANCE = "US EPA (2000), EPA 823-B-00-008 (from memory)";

    static final List<Setting> FISH = List.of(
            of("fish.baf-3", "L/kg", 1, 6.8e5, 1e9, BAF, "MeHg of fish of trophic level 3 over that of filtered water"),
            of("fish.baf-4", "L/kg", 1, 2.7e6, 1e9, BAF, "MeHg of fish of trophic level 4 over that of filtered water"),
            of(
                    "fish.baf-factor",
                    "-",
                    1,
                    5,
                    1000,
                    TRADE,
                    "both factors, down and up, for the low and the high estimate"),
            of("fish.range", "km", 0.1, 10, 500, TRADE, "way along the network, either way, that fish swim"),
            of(
                    "fish.measured-factor",
                    "-",
                    1,
                    2,
                    1000,
                    TRADE,
                    "least range about the mean of fish that were measured, down and up"),
            of(
                    "fish.reference-dose",
                    "ug/kg/d",
                    1e-3,
                    0.1,
                    10,
                    "US EPA (2001) reference dose of MeHg",
                    "MeHg per body weight and day, for portions"),
            of("fish.weight-adult", "kg", 5, 70, 200, GUIDANCE, "body weight of an adult"),
            of("fish.weight-woman", "kg", 5, 64, 200, GUIDANCE, "body weight of a woman of child-bearing age"),
            of("fish.weight-child", "kg", 5, 14.5, 200, GUIDANCE, "body weight of a young child"),
            of("fish.portion-adult", "g", 1, 227, 2000, GUIDANCE + ": 8 ounces", "portion of an adult"),
            of(
                    "fish.portion-woman",
                    "g",
                    1,
                    227,
                    2000,
                    GUIDANCE + ": 8 ounces",
                    "portion of a woman of child-bearing age"),
            of("fish.portion-child", "g", 1, 85, 2000, GUIDANCE + ": 3 ounces", "portion of a young child"));

    private FurtherSettings() {}
}
