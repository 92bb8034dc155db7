// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.silverwake.cli.scenario.ScenarioInput.Channel;
import org.silverwake.cli.scenario.ScenarioInput.Discharge;
import org.silverwake.cli.scenario.ScenarioInput.Discharge.Method;
import org.silverwake.cli.scenario.ScenarioInput.Rivers;
import org.silverwake.model.input.Settings;

/** How discharge, width and depth are found. */
final class WaterSection {
    private WaterSection() {}

    static Discharge discharge(ScenarioValue section, Rivers rivers, Settings settings, StateNames states) {
        Method method =
                method(section).map(word -> Method.valueOf(enumName(word))).orElse(Method.SPECIFIC_DISCHARGE);
        boolean known = section.at("method").isPresent();
        if (known && method == Method.ATTRIBUTE && !isMapped("discharge", rivers, states)) {
            section.at("method")
                    .problem(
                            "attribute needs rivers.columns.discharge, one column or one for every flow state; map it");
        }
        boolean headwaterColumn = isMapped("headwater-discharge", rivers, states);
        return new Discharge(
                method,
                byState(section.at("specific-discharge"), states, known && method == Method.SPECIFIC_DISCHARGE),
                settings.value("discharge.area-exponent"),
                byState(
                        section.at("headwater-discharge"),
                        states,
                        known && method == Method.HEADWATERS && !headwaterColumn),
                byState(section.at("lateral-inflow"), states, known && method == Method.HEADWATERS));
    }

    static Channel channel(ScenarioValue section, Rivers rivers, Settings settings, StateNames states) {
        Channel.Method method = method(section)
                .map(word -> Channel.Method.valueOf(enumName(word)))
                .orElse(Channel.Method.HYDRAULIC_GEOMETRY);
        if (method == Channel.Method.MANNING
                && !settings.isGiven("channel.manning-n")
                && !isMapped("manning-n", rivers, states)) {
            section.at("method").problem("manning needs channel.manning-n; give 0.01 to 0.3");
        }
        boolean shaped = isMapped("velocity", rivers, states)
                || isMapped("width", rivers, states) && isMapped("depth", rivers, states);
        if (method == Channel.Method.ATTRIBUTE && !shaped) {
            section.at("method").problem("attribute needs rivers.columns.velocity, or both width and depth; map them");
        }
        return new Channel(method);
    }

    /** Checks that need the gauges. */
    static void checkGauges(ScenarioValue section, ScenarioInput input) {
        if (input.discharge().method() == Method.GAUGES && input.gauges().isEmpty()) {
            section.at("method")
                    .problem("gauges needs a table of gauges with at least one row; give gauges: {file: ...}");
        }
        if (input.settings().isGiven("discharge.area-exponent")
                && input.discharge().areaExponent() != 1
                && (input.discharge().method() != Method.GAUGES
                        || input.gauges().size() != 1)) {
            section.at("area-exponent").problem("acts only with method gauges and one gauge; leave it out");
        }
    }

    private static Optional<String> method(ScenarioValue section) {
        ScenarioValue method = section.at("method");
        if (!method.isPresent()) {
            method.missing();
        }
        return method.choice();
    }

    private static List<Double> byState(ScenarioValue map, StateNames states, boolean required) {
        if (!required) {
            if (map.isPresent()) {
                map.warn("is not used by this method");
            }
            return List.of();
        }
        return states.quantities(map);
    }

    private static boolean isMapped(String key, Rivers rivers, StateNames states) {
        List<String> keys =
                rivers.columns().stream().map(ScenarioInput.Column::key).toList();
        return keys.contains(key) || keys.containsAll(states.each(name -> key + "." + name)) && states.size() > 0;
    }

    private static String enumName(String word) {
        return word.toUpperCase(Locale.ROOT).replace('-', '_');
    }
}
