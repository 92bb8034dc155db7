// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.List;
import java.util.Map;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.quantity.Quantity;

/**
 * The bed that all flow states share.
 *
 * @param thickness of the active layer, z [m], above 0
 * @param porosity phi [-], between 0 and 1
 * @param solidsDensity rho_s [kg/m3]
 * @param turnover how its solids close over the year
 * @param poreExchange velocity v_d of exchange between pore water and river, per total bed area [m/s], at least 0
 * @param sorption of every partitioned form by its name
 * @param reactions in the bed, acting on all of a form there
 * @param methylCeiling content of MeHg above which no more is made [kg/kg dry], by kind alone; infinite where there is none
 * @param celsius temperature by flow state [degC]
 * @param horizon beds slower than this are shown after this time at the present rate, as is what never leaves a bed [s],
 *     whole years
 */
public record BedInput(
        double thickness,
        double porosity,
        double solidsDensity,
        Turnover turnover,
        ByStateAndKind poreExchange,
        Map<String, Sorption> sorption,
        List<BedReaction> reactions,
        ByStateAndKind methylCeiling,
        List<Double> celsius,
        double horizon) {
    /** Copies lists and map. */
    public BedInput {
        sorption = Map.copyOf(sorption);
        reactions = List.copyOf(reactions);
        celsius = List.copyOf(celsius);
    }

    /**
     * How the bed's solids close over the year: burial is given and erosion follows, or the other way round.
     *
     * @param given which of the two is given
     * @param burial velocity v_b of burial, by kind alone [m/s of bulk bed], at least 0; not used where erosion is given
     * @param erosionRate M [kg/m2/s]; where burial is given it only shares erosion out over the flow states
     * @param criticalShear tau_ce [Pa]
     */
    public record Turnover(Given given, ByStateAndKind burial, double erosionRate, double criticalShear) {}

    /** Which side of the bed's solids is given. */
    public enum Given {
        /** Burial; erosion is what else has been laid down. */
        BURIAL,
        /** Erosion; burial is what is left of what has been laid down. */
        EROSION
    }

    /**
     * Equilibrium of a form between pore water and the bed's solids.
     *
     * @param kd partition coefficient in the bed [m3/kg], at least 0
     * @param docBinding K_doc [DOC] of the pore water [-]; 0 on basis filtered
     */
    public record Sorption(double kd, double docBinding) {}

    /**
     * One form turns into another in the bed.
     *
     * @param from name of a form
     * @param to name of a core form
     * @param law its rate
     */
    public record BedReaction(String from, String to, FirstOrder law) {}

    /** The horizon in years [-]. */
    int horizonYears() {
        return (int) Math.round(horizon / Quantity.SECONDS_PER_YEAR);
    }

    /** Dry solids per bulk bed, (1 - phi) rho_s [kg/m3]. */
    public double dryDensity() {
        return (1 - porosity) * solidsDensity;
    }
}
