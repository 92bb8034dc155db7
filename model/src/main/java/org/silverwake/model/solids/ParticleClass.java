// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.solids;

import java.util.OptionalDouble;

/**
 * A class of particles, background and tailings alike.
 *
 * @param name its name
 * @param diameter sieve diameter [m]
 * @param density grain density [kg/m3]
 * @param law settling law
 * @param cohesive whether Krone's law holds (fines), else the blended Rouse law (sand)
 * @param criticalShear skin shear above which nothing cohesive deposits, tau_cd [Pa]
 * @param log10Kd log10 of the partition coefficient of Hg(II) [log10 L/kg]
 * @param retentionLength measured e-fold length of net retention, instead of all settling laws [m]
 * @param backgroundShare share of background suspended sediment [-]
 */
public record ParticleClass(
        String name,
        double diameter,
        double density,
        SettlingLaw law,
        boolean cohesive,
        double criticalShear,
        double log10Kd,
        OptionalDouble retentionLength,
        double backgroundShare) {}
