// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import java.util.List;
import java.util.OptionalDouble;
import org.silverwake.model.solids.FergusonChurch2004;
import org.silverwake.model.solids.ParticleClass;

/**
 * A form of mercury that is carried beside exchangeable Hg(II) and grain-bound mercury.
 *
 * @param name its name, as outputs have it
 * @param exchanging whether it belongs to the core, whose members turn into one another both ways (Hg(0), MeHg); else it
 *     turns into core members alone (the cyanide complex, droplets)
 * @param carriage how it moves with water and solids
 * @param evades whether its free part escapes to the air
 */
public record Form(String name, boolean exchanging, Carriage carriage, boolean evades) {
    /** Name of dissolved elemental mercury. */
    public static final String ELEMENTAL = "Hg(0)";

    /** Name of methylmercury. */
    public static final String METHYL = "MeHg";

    /** Name of the mercury-cyanide complex. */
    public static final String COMPLEX = "Hg-CN";

    /** How a form moves. */
    public sealed interface Carriage permits Partitioned, Droplets {}

    /**
     * At equilibrium between water and solids.
     *
     * @param log10Kd log10 of the partition coefficient by particle class [log10 L/kg]; minus infinity where nothing sorbs
     * @param docBinding K_doc [DOC] by flow state [-], 0 on basis filtered
     */
    public record Partitioned(List<Double> log10Kd, List<Double> docBinding) implements Carriage {
        /** Copies the lists. */
        public Partitioned {
            log10Kd = List.copyOf(log10Kd);
            docBinding = List.copyOf(docBinding);
        }
    }

    /**
     * Liquid droplets of one size: they settle as particles, are held by a filter and sorb nothing.
     *
     * @param particles size, density and settling
     */
    public record Droplets(ParticleClass particles) implements Carriage {
        /**
         * Droplets of a diameter, falling as smooth spheres (Ferguson &amp; Church 2004) and suspended as sand is.
         *
         * @param diameter [m], above 0
         */
        public static Droplets of(double diameter) {
            return new Droplets(new ParticleClass(
                    "droplets",
                    diameter,
                    ElementalMercury.DENSITY,
                    FergusonChurch2004.smoothSpheres(),
                    false,
                    0,
                    Double.NEGATIVE_INFINITY,
                    OptionalDouble.empty(),
                    0));
        }
    }
}
