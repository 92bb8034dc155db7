// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import org.silverwake.model.input.Settings;

/** Who eats fish: portions differ by weight of the body and size of the portion. */
public enum Eaters {
    /** Adults. */
    ADULTS("adults", "adult"),
    /** Women of child-bearing age; what they eat reaches the unborn and the breast-fed child. */
    WOMEN("women of child-bearing age", "woman"),
    /** Young children. */
    CHILDREN("children", "child");

    private static final double DAYS_PER_WEEK = 7;
    private static final double SECONDS_PER_DAY = 86400;

    private final String words;
    private final String key;

    Eaters(String words, String key) {
        this.words = words;
        this.key = key;
    }

    /** In words. */
    public String words() {
        return words;
    }

    /**
     * Portions a week at which fish of a content bring the reference dose, with the settings' body weight, portion and dose.
     *
     * @param content mercury of the fish [kg/kg wet], above 0
     * @return portions a week [-]
     */
    public double portionsPerWeek(Settings settings, double content) {
        double daily = consumptionLimit(
                settings.value("fish.reference-dose") * SECONDS_PER_DAY, settings.value("fish.weight-" + key), content);
        return portions(daily, DAYS_PER_WEEK, settings.value("fish.portion-" + key));
    }

    /**
     * Daily consumption limit CR_lim = RfD x BW / C. US EPA (2000), EPA 823-B-00-008, equation 3-3 (number from memory).
     *
     * @param dose reference dose RfD, mercury per body weight and day [kg/kg/d], above 0
     * @param weight body weight BW [kg], above 0
     * @param content mercury of the fish C [kg/kg wet], above 0
     * @return fish per day [kg/d]
     */
    public static double consumptionLimit(double dose, double weight, double content) {
        return dose * weight / content;
    }

    /**
     * Portions in a time, CR_lim x T / MS. US EPA (2000), EPA 823-B-00-008, equation 3-4 (number from memory).
     *
     * @param daily fish per day CR_lim [kg/d]
     * @param days time T [d]
     * @param portion size of a portion MS [kg], above 0
     * @return portions [-]
     */
    public static double portions(double daily, double days, double portion) {
        return daily * days / portion;
    }
}
