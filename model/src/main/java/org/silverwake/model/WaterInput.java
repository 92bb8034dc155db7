// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model;

import java.util.List;
import java.util.OptionalDouble;
import org.silverwake.model.input.Settings;

/**
 * How water is found. Lists "by state" have one entry per flow state, in their order.
 *
 * @param states flow states
 * @param method way of discharge
 * @param specificDischarge by state [m/s]; empty unless the method uses it
 * @param areaExponent exponent of area with one gauge [-], 1 as a rule
 * @param headwaterDischarge by state [m3/s]; empty unless the method uses it
 * @param lateralPerLength by state [m2/s]; empty unless the method uses it
 * @param gauges gauges
 * @param channel way of channel shape
 * @param settings coefficients
 * @param basinAreas area of outlets' basins, where stated
 * @param siteWater water that sites add
 * @param abstractions declared abstractions
 */
public record WaterInput(
        List<State> states,
        DischargeMethod method,
        List<Double> specificDischarge,
        double areaExponent,
        List<Double> headwaterDischarge,
        List<Double> lateralPerLength,
        List<Gauge> gauges,
        ChannelMethod channel,
        Settings settings,
        List<BasinArea> basinAreas,
        List<AtHead> siteWater,
        List<AtHead> abstractions) {
    /** Copies the lists. */
    public WaterInput {
        states = List.copyOf(states);
        specificDischarge = List.copyOf(specificDischarge);
        headwaterDischarge = List.copyOf(headwaterDischarge);
        lateralPerLength = List.copyOf(lateralPerLength);
        gauges = List.copyOf(gauges);
        basinAreas = List.copyOf(basinAreas);
        siteWater = List.copyOf(siteWater);
        abstractions = List.copyOf(abstractions);
    }

    /**
     * A flow state.
     *
     * @param name its name
     * @param share share of the year [-]
     * @param temperature water temperature [degC]
     */
    public record State(String name, double share, double temperature) {}

    /** Ways to find discharge. */
    public enum DischargeMethod {
        ATTRIBUTE,
        SPECIFIC_DISCHARGE,
        GAUGES,
        HEADWATERS
    }

    /** Ways to find the channel's shape. */
    public enum ChannelMethod {
        HYDRAULIC_GEOMETRY,
        MANNING,
        ATTRIBUTE
    }

    /**
     * A gauge.
     *
     * @param name its name
     * @param reach reach that begins at it
     * @param discharge by state [m3/s]
     */
    public record Gauge(String name, int reach, List<Double> discharge) {}

    /**
     * Water that is added or taken at the head of a reach.
     *
     * @param reach the reach
     * @param discharge by state [m3/s], at least 0
     */
    public record AtHead(int reach, List<Double> discharge) {}

    /**
     * Area of an outlet's basin.
     *
     * @param reach the outlet's reach
     * @param area [m2], above 0
     */
    public record BasinArea(int reach, double area) {}

    /** Stated Manning n, if any [s/m^(1/3)]. */
    OptionalDouble manning() {
        return settings.isGiven("channel.manning-n")
                ? OptionalDouble.of(settings.value("channel.manning-n"))
                : OptionalDouble.empty();
    }
}
