// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.linear.RealVector;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.silverwake.model.release.Reconciliation.Node;
import org.silverwake.model.release.Reconciliation.Stream;

/** Random flow sheets against a plain twin: the Lagrange equations of all streams and multipliers, by LU. */
class ReconciliationPropertiesTest {
    /** ROUNDING: values of order 100, a system of about 20 unknowns. */
    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 17, 18, 19, 20})
    void agreesWithLagrange(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        int nodes = random.nextInt(2, 6);
        List<Stream> streams = new ArrayList<>();
        List<Map<String, Double>> coefficients = new ArrayList<>();
        // a chain, so that each node brings its own condition; one stream of it is not measured
        int open = random.nextInt(nodes);
        for (int i = 0; i < nodes; i++) {
            coefficients.add(new LinkedHashMap<>());
        }
        for (int i = 0; i <= nodes; i++) {
            String name = "chain " + i;
            streams.add(new Stream(
                    name,
                    i == open
                            ? Optional.empty()
                            : Optional.of(Noted.of(random.nextDouble(50, 150), random.nextDouble(0.5, 20)))));
            if (i > 0) {
                coefficients.get(i - 1).put(name, -1.0);
            }
            if (i < nodes) {
                coefficients.get(i).put(name, 1.0);
            }
        }
        for (int k = 0; k < nodes; k++) {
            String name = "side " + k;
            streams.add(new Stream(name, Optional.of(Noted.of(random.nextDouble(0, 20), random.nextDouble(0.5, 5)))));
            coefficients.get(random.nextInt(nodes)).put(name, random.nextDouble(0.2, 1));
        }
        List<Node> all = new ArrayList<>();
        for (int i = 0; i < nodes; i++) {
            all.add(new Node("node " + i, coefficients.get(i), random.nextDouble(-2, 2)));
        }
        Reconciliation found = Reconciliation.of(streams, all);
        RealVector twin = lagrange(streams, all);
        assertThat(found.degreesOfFreedom()).isEqualTo(nodes - 1);
        double objective = 0;
        for (int j = 0; j < streams.size(); j++) {
            double ours = found.value(streams.get(j).name()).value();
            assertThat(ours).as("seed " + seed).isCloseTo(twin.getEntry(j), within(ROUNDING));
            Optional<Noted> measured = streams.get(j).measured();
            if (measured.isPresent()) {
                double z = (twin.getEntry(j) - measured.get().value())
                        / measured.get().sd().orElseThrow();
                objective += z * z;
            }
        }
        assertThat(found.objective()).isCloseTo(objective, within(ROUNDING * Math.max(1, objective)));
    }

    private static RealVector lagrange(List<Stream> streams, List<Node> nodes) {
        int n = streams.size();
        int size = n + nodes.size();
        RealMatrix matrix = new Array2DRowRealMatrix(size, size);
        RealVector right = new ArrayRealVector(size);
        for (int j = 0; j < n; j++) {
            if (streams.get(j).measured().isPresent()) {
                Noted noted = streams.get(j).measured().get();
                double weight = 1 / (noted.sd().orElseThrow() * noted.sd().orElseThrow());
                matrix.setEntry(j, j, weight);
                right.setEntry(j, weight * noted.value());
            }
            for (int i = 0; i < nodes.size(); i++) {
                double c =
                        nodes.get(i).coefficients().getOrDefault(streams.get(j).name(), 0.0);
                matrix.setEntry(n + i, j, c);
                matrix.setEntry(j, n + i, c);
            }
        }
        for (int i = 0; i < nodes.size(); i++) {
            right.setEntry(n + i, nodes.get(i).total());
        }
        return new LUDecomposition(matrix, 1e-30).getSolver().solve(right);
    }
}
