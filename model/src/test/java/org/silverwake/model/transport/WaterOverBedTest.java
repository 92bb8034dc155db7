// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.transport.History.Era;
import org.silverwake.model.transport.SteadyResult.Fraction;
import org.silverwake.model.transport.YearsResult.Whereabouts;
import org.silverwake.model.validation.Reference;

/**
 * Two compartments, water over bed, exactly. Water crosses the cell in tau = L/U and loses D = f_p w/H + v_d f_d/H; the bed
 * of stock M gives back R M, spread along the cell, and buries beta M. With x = D tau, dM/dt = (1 - e^-x) W_in - lambda M,
 * lambda = R (1 - e^-x)/x + beta.
 *
 * <p>The water of the years solver is quasi-steady, so its own, fast time constant is not there: after a change the water
 * follows at once. Both constants of a system whose water stores too are tested where they can be seen, in the propagator.
 */
@Reference(key = "chapra1997", locator = "two layers in balance and in time, from memory")
class WaterOverBedTest {
    /** The demand. ROUNDING: some dozen operations a year for forty years, and 1e-11 of a core of two over a year. */
    private static final double EXACT = 1e-9;

    private static final double DAY = 86400;
    private static final double YEAR = TestBed.YEAR;
    private static final double RELEASED = 2e-7;
    private static final double METERS = 5000;
    private static final double VELOCITY = 0.4;
    private static final double DEPTH = 1.5;
    private static final double DISCHARGE = 6;
    private static final double SEDIMENT = 0.05;
    private static final double KD = 100;
    private static final double KD_BED = 60;
    private static final double SETTLING = 1 / DAY;
    private static final double PORE_EXCHANGE = 0.01 / DAY;
    private static final double THICKNESS = 0.1;
    private static final double POROSITY = 0.8;
    private static final double DENSITY = 2500;
    private static final double BURIAL = 2e-3 / YEAR;

    private final double dry = (1 - POROSITY) * DENSITY;
    private final double sorbed = KD * SEDIMENT / (1 + KD * SEDIMENT);
    private final double down = (sorbed * SETTLING + (1 - sorbed) * PORE_EXCHANGE) / DEPTH;
    private final double tau = METERS / VELOCITY;
    private final double x = down * tau;
    private final double lost = -StrictMath.expm1(-x);
    private final double onSolids = KD_BED * dry / (POROSITY + KD_BED * dry);
    private final double resuspension = SETTLING * SEDIMENT / dry - BURIAL;
    private final double back = (resuspension * onSolids + PORE_EXCHANGE / (POROSITY + KD_BED * dry)) / THICKNESS;
    private final double buried = BURIAL * onSolids / THICKNESS;
    private final double lambda = back * lost / x + buried;

    private static SteadyResult run() {
        TestRiver river = TestRiver.chain(1, METERS, DISCHARGE);
        river.velocity.set(0, VELOCITY);
        river.depth.set(0, DEPTH);
        river.sediment = SEDIMENT;
        river.cohesive("silt", SETTLING, 1e300, KD, 1).site("r0", RELEASED, 1);
        TestBed bed = new TestBed();
        bed.thickness = THICKNESS;
        bed.porosity = POROSITY;
        bed.density = DENSITY;
        bed.burial = BURIAL;
        bed.poreExchange = PORE_EXCHANGE;
        bed.kd(StateLayout.EXCHANGEABLE, KD_BED);
        return SteadyRun.run(river.input().over(bed.input(1)));
    }

    @Test
    void theSteadyValue() {
        SteadyResult result = run();
        BedAnswer answer = result.bedAnswer().orElseThrow();
        double stock = lost * RELEASED / lambda;
        assertThat(answer.stock(0, 0, 0) / stock).isCloseTo(1, within(EXACT));
        double out = RELEASED * (1 - lost) + back * stock * lost / x;
        assertThat(answer.solution(0).loadOut(0, 0) / out).isCloseTo(1, within(EXACT));
        // what does not leave is buried
        assertThat((RELEASED - out) / (buried * stock)).isCloseTo(1, within(EXACT));
        assertThat(answer.residence(0) * lambda).isCloseTo(1, within(EXACT));
    }

    /** Release for 20 years, then none for 20: the bed fills as 1 - e^(-lambda t) and empties as e^(-lambda t), year by year. */
    @Test
    void theSlowTimeConstant() {
        SteadyResult steady = run();
        int stop = 20;
        YearsResult years = BedYears.run(
                steady,
                new History(
                        2 * stop,
                        List.of(new Era(0, steady.input().sites()), new Era(stop, List.of())),
                        List.of(),
                        Optional.empty()),
                List.of(Fraction.WHOLE));
        double full = lost * RELEASED / lambda;
        assertThat(lambda * YEAR).as("slow, and seen well within the years").isBetween(0.05, 1.0);
        for (int year = 0; year < 2 * stop; year++) {
            double filled = -StrictMath.expm1(-lambda * YEAR * Math.min(year + 1, stop));
            double stock = full * filled * StrictMath.exp(-lambda * YEAR * Math.max(0, year + 1 - stop));
            assertThat(years.amount(Whereabouts.BED, year, 0) / stock)
                    .as("year %d", year)
                    .isCloseTo(1, within(EXACT));
        }
        // no trace of the fast constant: from the first year on the water is that over the bed's mean stock of the year
        for (int year = stop; year < 2 * stop; year++) {
            double start =
                    full * -StrictMath.expm1(-lambda * YEAR * stop) * StrictMath.exp(-lambda * YEAR * (year - stop));
            double mean = start * -StrictMath.expm1(-lambda * YEAR) / (lambda * YEAR);
            double end = back * mean * lost / x / DISCHARGE;
            assertThat(years.mean(0).high(year, 0) / end).isCloseTo(1, within(EXACT));
            assertThat(years.worst(0).high(year, 0) / end).isCloseTo(1, within(EXACT));
        }
    }

    /** Both constants of water that stores, W' = -(1/T + D) W + R M, M' = D W - (R + beta) M: the eigenvalues of that matrix. */
    @Test
    void bothTimeConstantsWhereTheWaterStoresToo() {
        double a = 1 / tau + down;
        double d = back + buried;
        double root = StrictMath.sqrt((a - d) * (a - d) + 4 * back * down);
        double fast = 0.5 * (a + d + root);
        double slow = (a * d - back * down) / fast;
        Propagator propagator = new Propagator(2, 0);
        double[] rates = {-a, back, down, -d};
        double[] out = new double[2];
        double[] time = new double[2];
        for (double t : new double[] {0.1 / fast, 1 / fast, 3 / fast, DAY, 30 * DAY, YEAR, 3 / slow}) {
            propagator.prepare(rates, 0, t);
            propagator.apply(new double[] {1, 0}, new double[2], out, time, 0, 1);
            double early = StrictMath.exp(-fast * t);
            double late = StrictMath.exp(-slow * t);
            double water = ((a - slow) * early + (fast - a) * late) / (fast - slow);
            double bed = down * late * -StrictMath.expm1(-(fast - slow) * t) / (fast - slow);
            assertThat(out[0] / water).as("water after %s s", t).isCloseTo(1, within(EXACT));
            assertThat(out[1] / bed).as("bed after %s s", t).isCloseTo(1, within(EXACT));
        }
        // filled by a unit source until it stands still: the steady value
        propagator.prepare(rates, 0, 40 / slow);
        propagator.apply(new double[2], new double[] {1, 0}, out, time, 0, 1);
        double held = d / (a * d - back * down);
        assertThat(out[0] / held).isCloseTo(1, within(EXACT));
        assertThat(out[1] / (held * down / d)).isCloseTo(1, within(EXACT));
        // taking the water as quasi-steady makes the slow constant too large by (d - slow)/a, hours over years
        double quasi = (a * d - back * down) / a;
        assertThat((quasi / slow - 1) / ((d - slow) / a)).isCloseTo(1, within(EXACT));
        assertThat(quasi / slow - 1).isBetween(1e-6, 1e-4);
    }

    /** Check C14: what is buried, over the bed's area and the water's mean content, is 0.0228311 m/d; settling alone 0.835. */
    @Test
    void netLossVelocity() {
        TestRiver river = TestRiver.chain(1, METERS, DISCHARGE);
        river.velocity.set(0, VELOCITY);
        river.depth.set(0, DEPTH);
        river.sediment = SEDIMENT;
        river.cohesive("silt", SETTLING, 1e300, KD, 1).site("r0", RELEASED, 1);
        TestBed bed = new TestBed();
        bed.porosity = POROSITY;
        bed.density = DENSITY;
        bed.burial = 1e-3 / 365 / DAY;
        bed.poreExchange = PORE_EXCHANGE;
        bed.kd(StateLayout.EXCHANGEABLE, KD);
        SteadyResult result = SteadyRun.run(river.input().over(bed.input(1)));
        BedAnswer answer = result.bedAnswer().orElseThrow();
        double area = METERS * DISCHARGE / (VELOCITY * DEPTH);
        double net = answer.buried(0, 0) / area / answer.solution(0).mean(0, 0, 0) * DAY;
        assertThat(net).isCloseTo(0.0228311, within(5.1e-8));
        StateSolution laid = result.solution(Bound.LAID_DOWN, 0);
        // settling 0.83333 m/d, and 0.00167 into the pores that the laid-down bound leaves out
        double gross = laid.mercuryDeposition(0, 0) / area / laid.mean(0, 0, 0) * DAY;
        assertThat(gross + PORE_EXCHANGE * DAY / 6).isCloseTo(0.835, within(5e-4));
    }
}
