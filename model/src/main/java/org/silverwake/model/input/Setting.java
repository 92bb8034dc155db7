// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.input;

import org.silverwake.model.quantity.Dimension;

/**
 * One scalar that a scenario may set, with everything a reader must know of it. The list of all of them is
 * {@link SettingList}.
 *
 * @param path stable dotted path, as in {@code mercury.log10-kd}
 * @param unit the unit in which range and default are given here and on the reference page, as people write it
 * @param toSi factor from that unit to SI (1 where the unit is SI or none) [-]
 * @param low smallest accepted value [the setting's unit]
 * @param fallback default [the setting's unit]; meaningless where there is none
 * @param hasDefault whether {@code fallback} may be used
 * @param high largest accepted value [the setting's unit]
 * @param source where the default comes from, with "(from memory)" or "(common practice, no source)" where so
 * @param acts where it acts, in a few words
 * @param varies whether it may differ by flow state and by kind of reach
 */
public record Setting(
        String path,
        String unit,
        double toSi,
        double low,
        double fallback,
        boolean hasDefault,
        double high,
        String source,
        String acts,
        boolean varies) {
    /** Step of a path below which a number stands for each flow state that has its own. */
    public static final String BY_STATE = "by-state";

    /** Step of a path below which a number stands for each kind of reach that has its own. */
    public static final String BY_KIND = "by-kind";

    /** The same setting, which may differ by flow state and by kind of reach. */
    Setting varying() {
        return new Setting(path, unit, toSi, low, fallback, hasDefault, high, source, acts, true);
    }

    /** Path of its number in one flow state. */
    public String inState(String state) {
        return path + "." + BY_STATE + "." + state;
    }

    /** Path of its number in one kind of reach. */
    public String inKind(String kind) {
        return path + "." + BY_KIND + "." + kind;
    }

    /** What the setting measures. */
    public Dimension dimension() {
        return dimensionOf(unit);
    }

    /** The first dimension that accepts the unit. */
    static Dimension dimensionOf(String unit) {
        for (Dimension dimension : Dimension.values()) {
            if (dimension.findUnit(unit).isPresent()) {
                return dimension;
            }
        }
        throw new IllegalArgumentException("no dimension has the unit " + unit);
    }
}
