// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.silverwake.model.transport.NumericCasesTest.close;
import static org.silverwake.model.transport.NumericCasesTest.ours;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.balance.Balance.Process;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/**
 * Case 06 of the independent implementation: water over a bed, one value per cell, resuspension and burial carrying the
 * sorbed part ({@code box_solids}). The bed's velocities are the case's own; they do not follow from its solids.
 */
class NumericCase06BedTest {
    /** PRINTED: the case states 1e-10. */
    private static final double STATED = 1e-10;
    /** DISCRETIZATION: two-sided, over seven halvings. */
    private static final double ORDER = 0.1;

    private static final int HALVINGS = 7;
    private static final double THICKNESS = 0.04;

    private static BedInput bed(NumericCase inputs) {
        NumericCase bed = inputs.at("bed");
        NumericCase first = inputs.at("reaches", 0, "states", "s");
        Map<String, BedInput.Sorption> sorption = new HashMap<>();
        for (String form : List.of("HgII", "Hg0", "MeHg")) {
            double binding = bed.at("kdoc_m3_per_kg").has(form) ? bed.number("kdoc_m3_per_kg", form) : 0;
            sorption.put(
                    ours(form),
                    new BedInput.Sorption(bed.number("kd_m3_per_kg", form), binding * bed.number("doc_kg_per_m3")));
        }
        List<BedInput.BedReaction> reactions = new ArrayList<>();
        for (int k = 0; k < bed.at("reactions").size(); k++) {
            NumericCase reaction = bed.at("reactions", k);
            assertThat(reaction.text("acts_on")).isEqualTo("total");
            reactions.add(new BedInput.BedReaction(
                    ours(reaction.text("from")),
                    ours(reaction.text("to")),
                    new FirstOrder(
                            ByStateAndKind.same(reaction.number("rate_20c_per_s")), reaction.number("theta"), false)));
        }
        return new BedInput(
                bed.number("thickness_m"),
                bed.number("porosity"),
                bed.number("solids_density_kg_per_m3"),
                new BedInput.Turnover(BedInput.Given.BURIAL, ByStateAndKind.same(0), 1e-4, 0.5),
                ByStateAndKind.same(first.number("porewater_exchange_m_per_s")),
                sorption,
                reactions,
                ByStateAndKind.same(Double.POSITIVE_INFINITY),
                List.of(inputs.number("states", "s", "temperature_c")),
                1);
    }

    private static BedWater over(TestRiver river, NumericCase inputs, int pieces) {
        TransportInput input = river.input();
        Cells cells = Cells.uncut(input.hydraulics().reaches()).finer(pieces);
        List<StateHydraulics> water = List.of(StateHydraulics.of(input.hydraulics(), cells, 0));
        NumericCase first = inputs.at("reaches", 0, "states", "s");
        double[] width = new double[cells.count()];
        double[] resuspension = new double[cells.count()];
        double[] burial = new double[cells.count()];
        Arrays.fill(width, inputs.number("reaches", 0, "bed_width_m"));
        Arrays.fill(resuspension, first.number("resuspension_m_per_s"));
        Arrays.fill(burial, first.number("burial_m_per_s"));
        BedMotion motion = new BedMotion(new double[][] {resuspension}, burial, width, new double[cells.count()]);
        BedSolids.Outcome solids =
                new BedSolids.Outcome(List.of(SolidsState.sweep(input, cells, water.get(0), Bound.LAID_DOWN)), motion);
        return new BedWater(
                input, bed(inputs), cells, water, List.of(BackgroundSweep.run(input, cells, water.get(0))), solids);
    }

    @Test
    void boxSolids() throws IOException {
        NumericCase numeric = NumericCase.read("06_bed_steady");
        NumericCase inputs = numeric.at("inputs");
        TestRiver river = NumericCasesTest.withAllForms(inputs);
        BedWater over = over(river, inputs, 1);
        BedAnswer answer = BedAnswer.steady(over, 1);
        StateSolution solution = answer.solution(0);
        StateLayout layout = river.input().layout();
        NumericCase reaches = numeric.at("expected", "box_solids", "reaches");
        for (String id : river.ids) {
            int r = river.index(id);
            NumericCase expected = reaches.at(id);
            double largest = expected.number("load_out_kg_per_s", "HgII");
            for (String name : List.of("HgII", "Hg0", "MeHg")) {
                int form = layout.place(ours(name));
                double time = solution.time(r, form, 0);
                close(name, solution.loadIn(r, form, 0), expected.number("load_in_kg_per_s", name), largest, STATED);
                close(name, solution.loadOut(r, form, 0), expected.number("load_out_kg_per_s", name), largest, STATED);
                double settled = solution.settlingRate(r, form) * time;
                close(name, settled, expected.number("settled_kg_per_s", name), largest, STATED);
                double evaded = solution.evasionRate(r, form) * time;
                close(name, evaded, expected.number("evaded_kg_per_s", name), largest, STATED);
                double pores = over.rates(0).toPores(r, form) * time;
                close(name, pores, expected.number("to_pores_kg_per_s", name), largest, STATED);
                double filtered = solution.form(r, StateSolution.Place.END, form, 0) * solution.filteredShare(r, form);
                double most = expected.number("concentration_out_kg_per_m3", "HgII");
                close(name, filtered, expected.number("filtered_out_kg_per_m3", name), most, STATED);
                double volume = THICKNESS * inputs.number("reaches", 0, "bed_width_m") * river.length.get(r);
                double held = answer.stock(r, form, 0) / volume;
                double bulk = expected.number("bed_kg_per_m3_bulk", "HgII");
                close(name, held, expected.number("bed_kg_per_m3_bulk", name), bulk, STATED);
                double buried = over.exchange().buried(r, form) * answer.stock(r, form, 0);
                close(name, buried, expected.number("buried_kg_per_s", name), largest, STATED);
                double back = over.exchange().returned(0, r, form) * answer.stock(r, form, 0);
                close(name, back, expected.number("from_bed_kg_per_s", name), largest, STATED);
            }
        }
        assertThat(answer.worstClosure()).isLessThan(1e-12);
    }

    @Test
    void boxSolidsBudget() throws IOException {
        NumericCase numeric = NumericCase.read("06_bed_steady");
        TestRiver river = NumericCasesTest.withAllForms(numeric.at("inputs"));
        BedAnswer answer = BedAnswer.steady(over(river, numeric.at("inputs"), 1), 1);
        Balance balance = answer.solution(0).balance(0);
        NumericCase water = numeric.at("expected", "box_solids", "balance_kg_per_s");
        double entered = balance.sum(Process.RELEASED) + balance.sum(Process.FROM_BED);
        near(entered, water.number("entered"));
        near(balance.sum(Process.EXPORTED), water.number("exported"));
        near(balance.sum(Process.SETTLED), water.number("settled"));
        near(balance.sum(Process.TO_PORES), water.number("to_pores"));
        near(balance.sum(Process.EVADED), water.number("evaded"));
        NumericCase whole = numeric.at("expected", "box_solids", "balance_whole_kg_per_s");
        double buried = 0;
        for (int form = 0; form < river.input().layout().count(); form++) {
            buried += answer.buried(form, 0);
        }
        near(balance.sum(Process.RELEASED), whole.number("released"));
        near(buried, whole.number("buried"));
    }

    private static void near(double actual, double expected) {
        assertThat(actual / expected).isCloseTo(1, within(STATED));
    }

    /**
     * The case's other reading is a bed in balance at every point. Loads and reach means come to it at order 2: one stock per
     * cell stands for the mean of what changes along it.
     */
    @Test
    void finerCellsApproachTheBedInBalanceAtEveryPoint() throws IOException {
        NumericCase numeric = NumericCase.read("06_bed_steady");
        TestRiver river = NumericCasesTest.withAllForms(numeric.at("inputs"));
        StateLayout layout = river.input().layout();
        NumericCase local = numeric.at("expected", "local_solids", "reaches");
        for (String name : List.of("HgII", "MeHg")) {
            int form = layout.place(ours(name));
            double[] water = new double[HALVINGS + 1];
            double[] bed = new double[HALVINGS + 1];
            for (int k = 0; k <= HALVINGS; k++) {
                int pieces = 1 << k;
                BedAnswer answer = BedAnswer.steady(over(river, numeric.at("inputs"), pieces), 1);
                double held = 0;
                for (int c = 0; c < pieces; c++) {
                    held += answer.stock(c, form, 0);
                }
                double volume = THICKNESS * numeric.number("inputs", "reaches", 0, "bed_width_m") * river.length.get(0);
                water[k] = answer.solution(0).loadOut(river.index("r3"), form, 0)
                        - local.number("r3", "load_out_kg_per_s", name);
                bed[k] = held / volume - local.number("r1", "bed_reach_mean_kg_per_m3_bulk", name);
            }
            for (int k = 1; k <= HALVINGS; k++) {
                assertThat(StrictMath.log(water[k - 1] / water[k]) / StrictMath.log(2))
                        .as("%s in the water, %d pieces", name, 1 << k)
                        .isCloseTo(2, within(ORDER));
                assertThat(StrictMath.log(bed[k - 1] / bed[k]) / StrictMath.log(2))
                        .as("%s in the bed, %d pieces", name, 1 << k)
                        .isCloseTo(2, within(ORDER));
            }
        }
    }
}
