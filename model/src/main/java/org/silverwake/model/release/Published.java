// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

/** Usual values of field notes: middle, range, and source. */
final class Published {
    static final String TRADE = "common practice, no source";
    private static final String DASH = "-";
    private static final String ADVICE = "O'Neill & Telmer 2017 (from memory)";
    private static final String SQUEEZED =
            "amalgam after squeezing (from memory); three quarters common practice, no source";

    static final Assumed AMALGAM_SHARE =
            new Assumed("mercury's share of the amalgam", new Spread(0.40, 0.45, 0.75), DASH, SQUEEZED);
    static final Assumed SPONGE_REMAINDER = new Assumed(
            "mercury's share of the sponge gold", new Spread(0.02, 0.035, 0.05), DASH, "2 to 5 % (from memory)");
    static final Assumed RETORT_RECOVERY = new Assumed(
            "share that the retort gives back",
            new Spread(0.75, 0.85, 0.95),
            DASH,
            "75 to 95 %, 95 % well run (from memory)");
    static final Assumed WHOLE_ORE_RATIO =
            new Assumed("mercury used per gold, whole ore", new Spread(3, 5, 50), DASH, ADVICE);
    static final Assumed CONCENTRATE_RATIO =
            new Assumed("mercury used per gold, concentrate", new Spread(1, 1.3, 2), DASH, ADVICE);
    static final Assumed WHOLE_ORE_TO_AIR = new Assumed(
            "share of the mercury used that open burning sends to air, whole ore",
            new Spread(0.25, 1.0 / 3, 0.71),
            DASH,
            "25 % as in global inventories (from memory); 71 %, Velasquez-Lopez 2010; a third, twice as much to the tailings as"
                    + " into the amalgam, common practice, no source");
    static final Assumed CONCENTRATE_TO_AIR = new Assumed(
            "share of the mercury used that open burning sends to air, concentrate",
            new Spread(0.70, 0.75, 0.80),
            DASH,
            "van Straaten 2000, 70 to 80 %; 75 % as in global inventories (from memory)");
    static final Assumed LOST_OF_CHARGE = new Assumed(
            "share of the mercury put in that is not squeezed back, whole ore",
            new Spread(0.25, 0.275, 0.30),
            DASH,
            "Veiga et al. 2009, 25 to 30 % in ball mills");
    static final Assumed DISSOLVED = new Assumed(
            "mercury dissolved in leach solution, at most what the tailings bring",
            new Spread(1e-4, 1e-3, 1e-2),
            "kg/m3",
            "barren solutions 0.1 to 10 mg/L, their geometric middle (from memory)");
    static final Assumed TAILINGS_CONTENT = new Assumed(
            "mercury content of tailings",
            new Spread(0.3e-6, 25e-6, 350e-6),
            "kg/kg",
            "Opiso et al. 2018 and Velasquez-Lopez 2010, 0.3 to 350 mg/kg");
    static final Assumed CHARGE = new Assumed(
            "mercury put in per ore",
            new Spread(0, 1e-3, 1.0 / 30),
            "kg/kg",
            "up to 1 kg per 30 kg of ore, J. Phys. IV 107:79 (2003)");

    /** Standard deviation over the value of a weighed note that states none [-]. */
    static final double WEIGHED = 0.1;

    /** Standard deviation over the value of a content that states none [-]. */
    static final double ASSAYED = 0.3;

    static final Assumed UNCERTAINTY = new Assumed(
            "standard deviation of weighed and counted notes that state none", Spread.exact(WEIGHED), DASH, TRADE);
    static final Assumed ASSAY_UNCERTAINTY =
            new Assumed("standard deviation of mercury contents that state none", Spread.exact(ASSAYED), DASH, TRADE);

    private Published() {}
}
