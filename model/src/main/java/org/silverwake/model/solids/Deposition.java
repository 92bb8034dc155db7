// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.solids;

/** How fast particles in suspension reach the bed and stay. */
public final class Deposition {
    private static final double VON_KARMAN = 0.41;
    private static final double ALL_BED_LOAD = 2.5;
    private static final double ALL_SUSPENDED = 0.8;
    private static final double HINDERED_FROM = 5;
    private static final double VISCOUS = 0.2;
    private static final double LARGEST = 500;
    private static final double N_VISCOUS = 4.65;
    private static final double N_LOW = 4.35;
    private static final double N_LOW_EXPONENT = -0.03;
    private static final double N_HIGH = 4.45;
    private static final double N_HIGH_EXPONENT = -0.1;
    private static final double N_TURBULENT = 2.39;

    private Deposition() {}

    /**
     * Probability that a cohesive grain at the bed stays, max(0, 1 - tau'/tau_cd). Krone (1962).
     *
     * @param skinShear tau' [Pa], at least 0
     * @param criticalShear tau_cd [Pa], above 0
     * @return probability [-], 0 to 1
     */
    public static double krone(double skinShear, double criticalShear) {
        return Math.max(0, 1 - skinShear / criticalShear);
    }

    /**
     * Rouse number P = w/(0.41 u*).
     *
     * @param settling w [m/s]
     * @param shearVelocity u* of total shear [m/s], above 0
     * @return P [-]
     */
    public static double rouse(double settling, double shearVelocity) {
        return settling / (VON_KARMAN * shearVelocity);
    }

    /** Share in suspension by Rouse number [-]: 1 below 0.8, 0 above 2.5, linear between: [-]. Limits after Rouse (1937), from memory. */
    public static double suspendedShare(double rouse) {
        double share = (ALL_BED_LOAD - rouse) / (ALL_BED_LOAD - ALL_SUSPENDED);
        return Math.min(1, Math.max(0, share));
    }

    /** Whether suspensions of this many solids [kg/m3] settle hindered: above 5 g/L. */
    public static boolean isHindered(double solids) {
        return solids > HINDERED_FROM;
    }

    /**
     * Factor on settling in dense suspensions, (1 - c)^n. Richardson &amp; Zaki (1954), n by grain Reynolds number
     * (from memory); 1 up to 5 g/L.
     *
     * @param solids solids per volume of water [kg/m3], at least 0
     * @param grainDensity [kg/m3]
     * @param reynolds grain Reynolds number w d/nu [-]
     * @return factor [-], 0 to 1
     */
    public static double hindrance(double solids, double grainDensity, double reynolds) {
        if (!isHindered(solids)) {
            return 1;
        }
        double n;
        if (reynolds < VISCOUS) {
            n = N_VISCOUS;
        } else if (reynolds < 1) {
            n = N_LOW * StrictMath.pow(reynolds, N_LOW_EXPONENT);
        } else if (reynolds < LARGEST) {
            n = N_HIGH * StrictMath.pow(reynolds, N_HIGH_EXPONENT);
        } else {
            n = N_TURBULENT;
        }
        return StrictMath.pow(Math.max(0, 1 - solids / grainDensity), n);
    }

    /**
     * First-order rate at which a class leaves suspension.
     *
     * @param particles the class
     * @param settling settling velocity, hindrance included [m/s]
     * @param flow the water
     * @return rate [1/s], at least 0
     */
    public static double rate(ParticleClass particles, double settling, Flow flow) {
        if (particles.retentionLength().isPresent() && !flow.still()) {
            return flow.velocity() / particles.retentionLength().getAsDouble();
        }
        if (particles.cohesive()) {
            return settling * krone(flow.skinShear(), particles.criticalShear()) / flow.depth();
        }
        double bedShare = 1 - suspendedShare(rouse(settling, flow.shearVelocity()));
        double rate = settling * bedShare / flow.depth();
        return flow.setDownLength() > 0 && !flow.still()
                ? Math.min(rate, flow.velocity() / flow.setDownLength())
                : rate;
    }

    /**
     * The water that particles settle in.
     *
     * @param velocity U [m/s]
     * @param depth H [m]
     * @param shearVelocity u* [m/s]
     * @param skinShear tau' [Pa]
     * @param setDownLength e-fold length of what sand a flood sets down [m]; 0 in other states
     * @param still whether it is still water, in which lengths measured along rivers say nothing
     */
    public record Flow(
            double velocity,
            double depth,
            double shearVelocity,
            double skinShear,
            double setDownLength,
            boolean still) {
        /** Flowing water. Velocity and u* [m/s], depth and length [m], skin shear [Pa]. */
        public Flow(double velocity, double depth, double shearVelocity, double skinShear, double setDownLength) {
            this(velocity, depth, shearVelocity, skinShear, setDownLength, false);
        }
    }
}
