// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.model.solids.FergusonChurch2004;
import org.silverwake.model.solids.Stokes1851;

/**
 * Settling velocities. Ferguson &amp; Church (2004) J Sed Res 74:933-937, eq. 4 and its four pairs of constants; the table is
 * that equation evaluated outside this program (R 1.65, nu 1e-6 m2/s, g 9.81; five digits).
 */
@Reference(key = "ferguson2004", locator = "eq. 4")
class FergusonChurch2004Test {
    private static final double MM = 1e-3;
    private static final double UM = 1e-6;
    private static final double NU = 1e-6;
    private static final double WATER = 1000;
    private static final double QUARTZ = 2650;
    /** PRINTED: half the last of five digits is at most 0.005 %. */
    private static final double PRINTED_PERCENT = 0.0051;

    private static final double PERCENT_OF_A_TENTH = 0.1;

    @ParameterizedTest
    @CsvSource({
        "1, 0.00089908, 0.00080918, 0.00089914, 0.00067433",
        "4, 0.014366, 0.012930, 0.014374, 0.010777",
        "16, 0.22739, 0.20479, 0.22842, 0.17092",
        "31.25, 0.84945, 0.76591, 0.85979, 0.64083",
        "62.5, 3.2061, 2.8996, 3.3123, 2.4426",
        "125, 11.059, 10.073, 11.998, 8.6218",
        "250, 31.840, 29.370, 37.875, 25.882",
        "500, 71.050, 66.495, 94.908, 60.694",
        "1000, 126.28, 119.41, 184.60, 111.86",
        "2000, 196.41, 186.67, 301.01, 177.20"
    })
    void fourPairsOfConstants(double um, double sieve, double nominal, double sphere, double angular) {
        assertThat(velocity(um, 18, 1.0)).isCloseTo(sieve * MM, withinPercentage(PRINTED_PERCENT));
        assertThat(velocity(um, 20, 1.1)).isCloseTo(nominal * MM, withinPercentage(PRINTED_PERCENT));
        assertThat(velocity(um, 18, 0.4)).isCloseTo(sphere * MM, withinPercentage(PRINTED_PERCENT));
        assertThat(velocity(um, 24, 1.2)).isCloseTo(angular * MM, withinPercentage(PRINTED_PERCENT));
    }

    /** A published number for D 125 um, R 1.65, nu 1e-6, C1 18, C2 1.0: 11.06 mm/s; the source is named only as a web calculation. */
    @Test
    void publishedNumberAt125Micrometers() {
        double halfTheLastDigit = 0.005 * MM;
        double w = FergusonChurch2004.naturalGrains().velocity(125 * UM, QUARTZ, WATER, NU);
        assertThat(w).isCloseTo(11.06 * MM, within(halfTheLastDigit));
    }

    /** R g d^2/(18 nu), rho_s 2650, rho 998.2, mu 1.002e-3 (20 degC); rows with a grain Reynolds number up to 1. */
    @ParameterizedTest
    @Reference(key = "stokes1851", locator = "terminal velocity of a sphere")
    @CsvSource({"1, 0.00089843", "4, 0.014375", "16, 0.23000", "31.25, 0.87738", "62.5, 3.5095"})
    void stokesColumn(double um, double printed) {
        assertThat(stokes(um)).isCloseTo(printed * MM, withinPercentage(PRINTED_PERCENT));
    }

    /** The Stokes column's larger grains have w d/nu of 1.7 (125 um) and more, where the law fails by 27 % and more. */
    @ParameterizedTest
    @CsvSource({"125, 14.038", "250, 56.152", "500, 224.61", "1000, 898.43", "2000, 3593.7"})
    void stokesIsRefusedForLargerGrains(double um, double wouldBe) {
        assertThat(wouldBe * MM * um * UM / (1.002e-3 / 998.2)).isGreaterThan(1);
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> stokes(um))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("grain Reynolds number")
                .hasMessageContaining("use ferguson-church");
    }

    @Test
    void approachesStokesForSmallGrains() {
        Stokes1851 stokes = new Stokes1851();
        double before = Double.MAX_VALUE;
        for (double um = 16; um >= 0.25; um /= 2) {
            double off = 1 - velocity(um, 18, 1.0) / stokes.velocity(um * UM, QUARTZ, WATER, NU);
            assertThat(off).as("at %s um", um).isPositive().isLessThan(before);
            before = off;
        }
        assertThat(velocity(1, 18, 1.0))
                .isCloseTo(stokes.velocity(UM, QUARTZ, WATER, NU), withinPercentage(PERCENT_OF_A_TENTH));
    }

    /** Spheres of liquid mercury, 13,534 kg/m3 (from memory), at 25 degC (rho 997.045, mu 8.904e-4): three digits printed. */
    @ParameterizedTest
    @CsvSource({"10, 0.758, 0.0015", "50, 16.9, 0.05", "100, 55.7, 0.05", "500, 367, 0.5", "1000, 592, 0.5"})
    void dropsOfLiquidMercury(double um, double printed, double half) {
        double w = new FergusonChurch2004(18, 0.4).velocity(um * UM, 13534, 997.045, 8.904e-4 / 997.045);
        assertThat(w).isCloseTo(printed * MM, within(half * MM));
    }

    private static double velocity(double um, double c1, double c2) {
        return new FergusonChurch2004(c1, c2).velocity(um * UM, QUARTZ, WATER, NU);
    }

    private static double stokes(double um) {
        return new Stokes1851().velocity(um * UM, QUARTZ, 998.2, 1.002e-3 / 998.2);
    }
}
