// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.model.transport.NumericCasesTest.ours;

import java.io.IOException;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.Mixing;
import org.silverwake.model.water.WaterProperties;

/** What the numeric cases say beside their reaches: cut cells and their limit, a closed form, and dispersion left out. */
class NumericCaseLimitsTest {
    /** PRINTED: case 02 states 1e-11, twelve digits. */
    private static final double STATED_02 = 2e-11;
    /** PRINTED: case 05 states 1e-12, twelve digits. */
    private static final double STATED_05 = 6e-12;
    /** DISCRETIZATION: the case's own observed order is 1.997 in the last halving. */
    private static final double ORDER = 0.1;

    /** Basis free, all forms: cells of a half, a quarter ... of each reach, and order 2 towards nothing averaged. */
    @Test
    void case02CutFiner() throws IOException {
        NumericCase numeric = NumericCase.read("02_y_two_sites");
        TestRiver river = NumericCasesTest.withAllForms(numeric.at("inputs"));
        TransportInput input = river.input();
        StateLayout layout = input.layout();
        NumericCase finer = numeric.at("expected", "load_out_if_every_reach_is_cut_into_equal_pieces_kg_per_s");
        NumericCase exact = numeric.at("expected", "load_out_if_nothing_is_averaged_kg_per_s");
        double[] error = new double[8];
        for (int k = 0; k < error.length; k++) {
            Cells cells = Cells.uncut(input.hydraulics().reaches()).finer(1 << k);
            StateSolution solution = SteadyRun.solve(input, cells).solution(Bound.LAID_DOWN, 0);
            for (String id : river.ids) {
                for (String name : List.of("HgII", "MeHg")) {
                    double load = solution.loadOut(river.index(id), layout.place(ours(name)), 0);
                    if (finer.has(String.valueOf(1 << k))) {
                        assertThat(load / finer.number(String.valueOf(1 << k), id, name))
                                .as("%s out of %s in %d pieces", name, id, 1 << k)
                                .isCloseTo(1, within(STATED_02));
                    }
                }
            }
            error[k] = solution.loadOut(river.index("c"), 0, 0) / exact.number("c", "HgII") - 1;
        }
        for (int k = error.length - 4; k < error.length; k++) {
            assertThat(StrictMath.log(error[k - 1] / error[k]) / StrictMath.log(2))
                    .as("order at %d pieces", 1 << k)
                    .isCloseTo(2, within(ORDER));
        }
    }

    @Test
    void case05ClosedForm() throws IOException {
        NumericCase numeric = NumericCase.read("05_cyanide");
        TestRiver river = NumericCasesTest.withAllForms(numeric.at("inputs"));
        NumericCase closed = numeric.at("expected", "closed_form_load_at_p3_end_kg_per_s");
        for (Bound bound : Bound.both()) {
            StateSolution solution = river.run().solution(bound, 0);
            int complex = river.input().layout().place("HgCN");
            // the complex neither sorbs nor settles: the same in both bounds
            assertThat(solution.loadOut(river.index("p3"), complex, 0) / closed.number("HgCN"))
                    .isCloseTo(1, within(STATED_05));
            double divalent = solution.loadOut(river.index("p3"), 0, 0) / closed.number("HgII");
            if (bound == Bound.LAID_DOWN) {
                assertThat(divalent).isCloseTo(1, within(STATED_05));
            } else {
                assertThat(divalent).isGreaterThan(2);
            }
        }
    }

    /**
     * Case 15 with dispersion, which the sweep leaves out: at first order in n = k D/U^2 the load that is left is (1 - 2 n + n k x/U) e^(-k x/U),
     * and the run's dispersion number is n, so that it says when this shows. It says nothing of the row of n = 1.16, of which less
     * than 1 % arrives: 0.044 % with dispersion, 0.00094 % without.
     */
    @Test
    void case15WhatLeavingDispersionOutCosts() throws IOException {
        NumericCase rows = NumericCase.read("15_exact_solutions").at("expected", "steady_decay");
        int small = 0;
        int large = 0;
        for (int r = 0; r < rows.size(); r++) {
            NumericCase row = rows.at(r);
            double dispersion = row.number("d_m2_per_s");
            if (dispersion > 0) {
                double u = row.number("u_m_per_s");
                double k = row.number("k_per_s");
                SteadyResult result = dispersing(row.number("x_m"), u, k, dispersion);
                double n = k * dispersion / (u * u);
                double left = result.solution(Bound.LAID_DOWN, 0).loadOut(0, 0) / RELEASED;
                double error = row.number("load_cq_over_w") / left - 1;
                double first = n * (k * row.number("x_m") / u - 2);
                if (n < 0.05) {
                    assertThat(result.dispersionNumber(0) / n).isCloseTo(1, within(1e-9));
                    assertThat(error - first).isBetween(-6 * n * n, 6 * n * n);
                    assertThat(Math.abs(error)).isGreaterThan(0.5 * Math.abs(first));
                    small++;
                } else {
                    assertThat(result.dispersionNumber(0)).isZero();
                    assertThat(left).isLessThan(SteadyResult.COUNTS);
                    assertThat(error).isBetween(45.0, 48.0);
                    large++;
                }
            }
        }
        assertThat(small).isEqualTo(3);
        assertThat(large).isEqualTo(1);
    }

    private static final double RELEASED = 3e-6;

    /** A reach whose width makes Fischer's (1975) coefficient the row's. */
    private static SteadyResult dispersing(double meters, double u, double k, double dispersion) {
        double depth = 1;
        double friction = StrictMath.sqrt(0.05 / WaterProperties.at(20).density());
        double width = StrictMath.sqrt(dispersion / Mixing.longitudinal(u, 1, depth, friction));
        TestRiver river = TestRiver.chain(1, meters, u * depth * width);
        river.velocity.set(0, u);
        river.depth.set(0, depth);
        river.particles("measured", 0, true, 1, 0, OptionalDouble.of(u / k), 1);
        return river.site(new TestRiver.Site(
                        "site", "r0", RELEASED, OptionalDouble.of(0), Collections.nCopies(1, 1.0), 0, 0, false))
                .run();
    }
}
