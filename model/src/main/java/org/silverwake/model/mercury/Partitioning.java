// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

/**
 * Equilibrium of exchangeable mercury between water and particles.
 *
 * <p>Basis filtered (the basis of field partition coefficients): f_filt = 1/(1 + sum Kd_j m_j), f_j = Kd_j m_j f_filt.
 * Basis free: f_free = 1/(1 + K_doc [DOC] + sum K_j m_j), f_filt = f_free (1 + K_doc [DOC]). Thomann &amp; Mueller (1987),
 * from memory.
 *
 * @param filtered f_filt [-], 0 to 1
 * @param free f_free [-], equal to filtered on basis filtered
 */
public record Partitioning(double filtered, double free) {
    private static final double CUBIC_METERS_PER_LITER = 1e-3;

    /**
     * Fractions.
     *
     * @param doc K_doc [DOC] [-]; 0 on basis filtered
     * @param capacity sum of K_j m_j [-], at least 0
     */
    public static Partitioning of(double doc, double capacity) {
        double free = 1 / (1 + doc + capacity);
        return new Partitioning(free * (1 + doc), free);
    }

    /** Sorbed on a class, f_j [-], for its K_j m_j [-]. */
    public double sorbed(double classCapacity) {
        return classCapacity * free;
    }

    /**
     * Partition coefficient at a suspended sediment: log10 Kd = a - b log10(SSC/SSC_ref).
     *
     * @param log10 a [log10 L/kg]
     * @param slope b [-]
     * @param sediment SSC [kg/m3], above 0 where b is not 0
     * @param reference SSC_ref [kg/m3]
     * @return Kd [m3/kg]
     */
    public static double coefficient(double log10, double slope, double sediment, double reference) {
        double exponent = slope == 0 || sediment <= 0 ? log10 : log10 - slope * StrictMath.log10(sediment / reference);
        return StrictMath.pow(10, exponent) * CUBIC_METERS_PER_LITER;
    }
}
