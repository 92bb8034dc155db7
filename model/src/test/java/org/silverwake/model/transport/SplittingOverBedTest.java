// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.Reaction.Part;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.water.Cells;

/** A reach over a bed, cut ever finer. Without bed, tailings and lateral inflow cutting changes nothing (InvarianceTest, FormsTest). */
class SplittingOverBedTest {
    private static final double DAY = 86400;
    /** DISCRETIZATION: the observed order over five halvings, two-sided. */
    private static final double ORDER = 0.1;

    private static final int HALVINGS = 5;
    private static final int COARSEST = 64;

    private static Partitioned kd(double log10) {
        return new Partitioned(List.of(log10, log10), List.of(0.0, 0.0));
    }

    private static TestRiver river(double tailings) {
        TestRiver river = TestRiver.chain(1, 12000, 5);
        river.flow = new double[] {1, 8};
        river.share = new double[] {0.8, 0.2};
        river.flood = List.of(false, false);
        river.shape = Optional.of(TestRiver.geometry());
        river.slope = OptionalDouble.of(2e-5);
        river.sediment = 0.06;
        river.cohesive("wash", 2e-5, 0.3, 200, 0.5);
        river.cohesive("silt", 2e-4, 0.3, 100, 0.5);
        river.chemistry = new Chemistry(
                List.of(
                        new Form(Form.METHYL, true, kd(5.0), false),
                        new Form(Form.ELEMENTAL, true, kd(-300), true),
                        new Form(Form.COMPLEX, false, kd(-300), false),
                        new Form("droplets", false, Droplets.of(3e-6), false)),
                List.of(
                        reaction(StateLayout.EXCHANGEABLE, Form.ELEMENTAL, 0.01 / DAY),
                        reaction(Form.COMPLEX, StateLayout.EXCHANGEABLE, 0.1 / DAY)),
                List.of(20.0, 20.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(1e-2),
                ByStateAndKind.same(Double.NaN),
                1);
        river.site("r0", 3e-6, OptionalDouble.of(0.6), tailings, 0, false);
        river.furtherShares.put("site 1", Map.of("droplets", 0.2, Form.COMPLEX, 0.2));
        return river;
    }

    private static Reaction reaction(String from, String to, double rate) {
        return new Reaction(from, to, new FirstOrder(ByStateAndKind.same(rate), 1, false), Part.TOTAL);
    }

    private static TestBed bed() {
        TestBed bed = new TestBed();
        bed.burial = 1e-3 / TestBed.YEAR;
        bed.kd(Form.METHYL, 8).kd(Form.ELEMENTAL, 0).kd(Form.COMPLEX, 0);
        bed.reaction(StateLayout.EXCHANGEABLE, Form.METHYL, 0.005 / DAY);
        bed.reaction(Form.METHYL, StateLayout.EXCHANGEABLE, 0.2 / DAY);
        return bed;
    }

    /**
     * One stock per cell is the mean over the cell of what changes along it. So the content at a place, that of the first cell
     * for that at the head, is found at order 1; loads and reach means, in which the errors of the cell's two halves cancel, at
     * order 2.
     */
    @ParameterizedTest
    @ValueSource(doubles = {0, 0.3})
    void contentAtAPlaceConvergesAtOrderOneLoadsAndMeansAtOrderTwo(double tailings) {
        TransportInput input = river(tailings).input().over(bed().input(2));
        int methyl = input.layout().place(Form.METHYL);
        double[][] found = new double[HALVINGS + 1][];
        for (int k = 0; k <= HALVINGS; k++) {
            Cells cells = Cells.uncut(input.hydraulics().reaches()).finer(COARSEST << k);
            BedAnswer answer = SteadyRun.solve(input, cells).bedAnswer().orElseThrow();
            double perLength = cells.count();
            found[k] = new double[] {
                answer.stock(0, 0, 0) * perLength,
                answer.stock(0, methyl, 0) * perLength,
                answer.stock(cells.count() - 1, 0, 0) * perLength,
                answer.solution(0).loadOut(0, 0),
                answer.solution(1).loadOut(0, 0),
                answer.content(0, 0),
                answer.content(0, methyl, 0)
            };
        }
        int[] expected = {1, 1, 1, 2, 2, 2, 2};
        for (int what = 0; what < expected.length; what++) {
            for (int k = 0; k + 2 <= HALVINGS; k++) {
                double before = found[k + 1][what] - found[k][what];
                double after = found[k + 2][what] - found[k + 1][what];
                assertThat(StrictMath.log(before / after) / StrictMath.log(2))
                        .as("quantity %d at %d cells", what, COARSEST << k)
                        .isCloseTo(expected[what], within(ORDER));
            }
        }
    }
}
