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
    private final Map<String, Double> varied;

    private Settings(double[] values, boolean[] given, Map<String, Double> varied) {
        this.values = values;
        this.given = given;
        this.varied = varied;
    }

    /**
     * Settings with the given values, the rest at their defaults.
     *
     * @param givenSi values by path, SI; of settings that may differ, also by {@link Setting#inState} and
     *     {@link Setting#inKind}
     * @throws IllegalArgumentException if a path is unknown or a value is out of the setting's range or not finite
     */
    public static Settings of(Map<String, Double> givenSi) {
        List<Setting> all = SettingList.all();
        double[] values = new double[all.size()];
        boolean[] given = new boolean[all.size()];
        Map<String, Double> rest = new TreeMap<>(givenSi);
        Map<String, Double> varied = new TreeMap<>();
        for (int i = 0; i < values.length; i++) {
            Setting setting = all.get(i);
            Double value = rest.remove(setting.path());
            given[i] = value != null;
            values[i] = value != null ? value : setting.fallback() * setting.toSi();
            requireInRange(setting, setting.path(), values[i]);
            for (String path : setting.varies() ? List.copyOf(rest.keySet()) : List.<String>of()) {
                if (path.startsWith(setting.inState("")) || path.startsWith(setting.inKind(""))) {
                    varied.put(path, rest.remove(path));
                    requireInRange(setting, path, varied.get(path));
                }
            }
        }
        if (!rest.isEmpty()) {
            throw new IllegalArgumentException("unknown setting " + rest.keySet());
        }
        return new Settings(values, given, varied);
    }

    private static void requireInRange(Setting setting, String path, double value) {
        double shown = value / setting.toSi();
        double slack = 1e-12 * Math.abs(shown);
        if (!(shown >= setting.low() - slack && shown <= setting.high() + slack)) {
            throw new IllegalArgumentException(path + ": " + shown + " " + setting.unit() + " is not allowed; give "
                    + setting.low() + " to " + setting.high() + " " + setting.unit());
        }
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

    /**
     * Value of a setting in a flow state and kind of reach [SI]: the kind's own, else the state's own, else the setting's.
     *
     * @throws IllegalArgumentException if the path is unknown, or there is neither such a value nor a default
     */
    public double value(String path, String state, String kind) {
        Setting setting = SettingList.all().get(index(path));
        Double own = varied.getOrDefault(setting.inKind(kind), varied.get(setting.inState(state)));
        return own != null ? own : value(path);
    }

    /** Whether a setting has a value, or a default, in a flow state and kind of reach. */
    public boolean has(String path, String state, String kind) {
        Setting setting = SettingList.all().get(index(path));
        return setting.hasDefault()
                || isGiven(path)
                || varied.containsKey(setting.inKind(kind))
                || varied.containsKey(setting.inState(state));
    }

    /** Values by state and kind of a setting, by what follows its path, in the setting's unit, in alphabetic order. */
    public Map<String, Double> shownVaried(Setting setting) {
        Map<String, Double> shown = new LinkedHashMap<>();
        String start = setting.path() + ".";
        varied.forEach((path, value) -> {
            if (path.startsWith(start)) {
                shown.put(path.substring(start.length()), value / setting.toSi());
            }
        });
        return shown;
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
