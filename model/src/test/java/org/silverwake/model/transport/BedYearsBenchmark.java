// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Form.Partitioned;

/**
 * Times 50 years of 12 flow states on 10,000 reaches with all forms; not a test. Run by hand: {@code java -cp
 * model/target/classes:model/target/test-classes org.silverwake.model.transport.BedYearsBenchmark} with the libraries.
 */
final class BedYearsBenchmark {
    private static final int STATES = 12;
    private static final int ROUNDS = 3;

    private BedYearsBenchmark() {}

    public static void main(String[] arguments) {
        int reaches = arguments.length > 0 ? Integer.parseInt(arguments[0]) : 10_000;
        for (int round = 0; round < ROUNDS; round++) {
            long start = System.nanoTime();
            TestRiver river = river(reaches);
            TestBed bed = new TestBed();
            bed.burial = 1e-3 / TestBed.YEAR;
            bed.ceiling = 2e-8;
            bed.kd(Form.METHYL, 8).kd(Form.ELEMENTAL, 0).kd(Form.COMPLEX, 0);
            bed.reaction("Hg(II)", Form.METHYL, 0.001 / 86400).reaction(Form.METHYL, "Hg(II)", 0.1 / 86400);
            SteadyResult steady = SteadyRun.run(river.input().over(bed.input(STATES)));
            double solved = (System.nanoTime() - start) / 1e9;
            List<Integer> order = new ArrayList<>();
            for (int s = 0; s < STATES; s++) {
                order.add(s);
            }
            History history = new History(
                    50,
                    List.of(
                            new History.Era(0, steady.input().sites()),
                            new History.Era(25, List.of(steady.input().sites().get(0)))),
                    order,
                    Optional.empty());
            double before = processor();
            long begin = System.nanoTime();
            YearsResult years = BedYears.run(steady, history, List.of(SteadyResult.Fraction.values()));
            double taken = (System.nanoTime() - begin) / 1e9;
            System.out.printf(
                    "steady %.1f s, years %.1f s (processor %.1f s), %d cells, closure %.1e, memory %d MB%n",
                    solved,
                    taken,
                    processor() - before,
                    steady.cells().count(),
                    years.worstClosure(),
                    (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) / 1_000_000);
        }
    }

    /** Time that all threads have worked so far, those of the Java machine included [s]. */
    private static double processor() {
        return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis() / 1e3;
    }

    private static TestRiver river(int reaches) {
        TestRiver river = new TestRiver();
        for (int k = 0; k < reaches; k++) {
            // a comb: every second reach is a tributary
            boolean tributary = k % 2 == 1;
            int node = tributary ? reaches + k : k / 2;
            int below = tributary ? k / 2 + 1 : k / 2 + 1;
            river.reach("r" + k, node, below, 2000, tributary || k == 0 ? 0.5 : 0, 0);
        }
        river.sediment = 0.08;
        river.flow = new double[STATES];
        river.share = new double[STATES];
        for (int s = 0; s < STATES; s++) {
            river.flow[s] = 1 + s;
            river.share[s] = 1.0 / STATES;
        }
        river.flood = Collections.nCopies(STATES, false);
        river.shape = Optional.of(TestRiver.geometry());
        river.slope = OptionalDouble.of(2e-5);
        river.cohesive("wash", 2e-5, 0.3, 200, 0.5);
        river.cohesive("silt", 2e-4, 0.3, 100, 0.4);
        river.cohesive("sand", 5e-3, 0.3, 10, 0.1);
        river.content = 5e-8;
        List<Double> none = Collections.nCopies(STATES, 0.0);
        List<Form> forms = new ArrayList<>(List.of(
                new Form(Form.METHYL, true, new Partitioned(List.of(5.4, 5.4, 5.4), none), false),
                new Form(Form.ELEMENTAL, true, new Partitioned(List.of(-300.0, -300.0, -300.0), none), true),
                new Form(Form.COMPLEX, false, new Partitioned(List.of(-300.0, -300.0, -300.0), none), false)));
        for (double diameter : new double[] {3e-6, 2e-5, 1e-4}) {
            forms.add(new Form("droplets " + diameter, false, Droplets.of(diameter), false));
        }
        river.chemistry = new Chemistry(
                forms,
                List.of(),
                Collections.nCopies(STATES, 22.0),
                ByStateAndKind.same(0),
                ByStateAndKind.same(1e-2),
                ByStateAndKind.same(Double.NaN),
                1);
        for (int k = 0; k < 20; k++) {
            river.site("r" + k * (reaches / 40), 1e-7, 0.4);
            river.furtherShares.put("site " + (k + 1), Map.of(Form.COMPLEX, 0.1, "droplets 2.0E-5", 0.3));
        }
        return river;
    }
}
