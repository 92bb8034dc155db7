// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.input;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Values of all settings of one run, in SI, with defaults filled in. Immutable. */
public final class Settings {
    private final double[] values;
    private final boolean[] given;

    private Settings(double[] values, boolean[] given) {
        this.values = values;
        this.given = given;
    }

    /**
     * Settings with the given values, the rest at their defaults.
     *
     * @param givenSi values by path, SI
     * @throws IllegalArgumentException if a path is unknown or a value is out of the setting's range or not finite
     */
    public static Settings of(Map<String, Double> givenSi) {
        List<Setting> all = SettingList.all();
        double[] values = new double[all.size()];
        boolean[] given = new boolean[all.size()];
        Map<String, Double> rest = new TreeMap<>(givenSi);
        for (int i = 0; i < values.length; i++) {
            Setting setting = all.get(i);
            Double value = rest.remove(setting.path());
            given[i] = value != null;
            values[i] = value != null ? value : setting.fallback() * setting.toSi();
            double shown = values[i] / setting.toSi();
            double slack = 1e-12 * Math.abs(shown);
            if (!(shown >= setting.low() - slack && shown <= setting.high() + slack)) {
                throw new IllegalArgumentException(setting.path() + ": " + shown + " " + setting.unit()
                        + " is not allowed; give " + setting.low() + " to " + setting.high() + " " + setting.unit());
            }
        }
        if (!rest.isEmpty()) {
            throw new IllegalArgumentException("unknown setting " + rest.keySet());
        }
        return new Settings(values, given);
    }

    /**
     * Value of a setting [SI].
     *
     * @throws IllegalArgumentException if the path is unknown, or the setting has neither a value nor a default
     */
    public double value(String path) {
        int i = index(path);
        if (!given[i] && !SettingList.all().get(i).hasDefault()) {
            throw new IllegalArgumentException(path + ": no default; state it in the scenario");
        }
        return values[i];
    }

    /** Whether the scenario stated the setting. */
    public boolean isGiven(String path) {
        return given[index(path)];
    }

    /** All values in the unit of their setting, in order, for the record of the run; those without a value are left out. */
    public Map<String, Double> shown() {
        Map<String, Double> map = new LinkedHashMap<>();
        List<Setting> all = SettingList.all();
        for (int i = 0; i < values.length; i++) {
            if (given[i] || all.get(i).hasDefault()) {
                map.put(all.get(i).path(), values[i] / all.get(i).toSi());
            }
        }
        return map;
    }

    private static int index(String path) {
        List<Setting> all = SettingList.all();
        for (int i = 0; i < all.size(); i++) {
            if (all.get(i).path().equals(path)) {
                return i;
            }
        }
        throw new IllegalArgumentException("unknown setting " + path);
    }
}
