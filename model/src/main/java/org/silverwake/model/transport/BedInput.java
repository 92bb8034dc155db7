// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.List;
import java.util.Map;
import org.silverwake.model.mercury.FirstOrder;

/**
 * The bed that all flow states share. Lists "by kind" have one entry per kind of reach, in the order of
 * {@link org.silverwake.model.water.ReachKind}.
 *
 * @param thickness of the active layer, z [m], above 0
 * @param porosity phi [-], between 0 and 1
 * @param solidsDensity rho_s [kg/m3]
 * @param turnover how its solids close over the year
 * @param poreExchange velocity v_d of exchange between pore water and river, per total bed area, by kind [m/s], at least 0
 * @param sorption of every partitioned form by its name
 * @param reactions in the bed, acting on all of a form there
 * @param methylCeiling content of MeHg above which no more is made, by kind [kg/kg dry]; infinite where there is none
 * @param celsius temperature by flow state [degC]
 */
public record BedInput(
        double thickness,
        double porosity,
        double solidsDensity,
        Turnover turnover,
        List<Double> poreExchange,
        Map<String, Sorption> sorption,
        List<BedReaction> reactions,
        List<Double> methylCeiling,
        List<Double> celsius) {
    /** Copies lists and map. */
    public BedInput {
        poreExchange = List.copyOf(poreExchange);
        sorption = Map.copyOf(sorption);
        reactions = List.copyOf(reactions);
        methylCeiling = List.copyOf(methylCeiling);
        celsius = List.copyOf(celsius);
    }

    /**
     * How the bed's solids close over the year: burial is given and erosion follows, or the other way round.
     *
     * @param given which of the two is given
     * @param burial velocity v_b of burial by kind [m/s of bulk bed], at least 0; not used where erosion is given
     * @param erosionRate M [kg/m2/s]; where burial is given it only shares erosion out over the flow states
     * @param criticalShear tau_ce [Pa]
     */
    public record Turnover(Given given, List<Double> burial, double erosionRate, double criticalShear) {
        /** Copies the list. */
        public Turnover {
            burial = List.copyOf(burial);
        }
    }

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
     * @param law rate by kind
     */
    public record BedReaction(String from, String to, List<FirstOrder> law) {
        /** Copies the list. */
        public BedReaction {
            law = List.copyOf(law);
        }
    }

    /** Dry solids per bulk bed, (1 - phi) rho_s [kg/m3]. */
    public double dryDensity() {
        return (1 - porosity) * solidsDensity;
    }
}
