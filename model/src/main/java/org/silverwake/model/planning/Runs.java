// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Full runs, each made once. */
final class Runs {
    private final Evaluator evaluator;
    private final int options;
    private final int limits;
    private final Map<List<Double>, double[]> values = new HashMap<>();
    private final Map<List<Double>, LinearResponse> responses = new HashMap<>();

    Runs(Evaluator evaluator, int options, int limits) {
        this.evaluator = evaluator;
        this.options = options;
        this.limits = limits;
    }

    static List<Double> key(double[] shares) {
        return Arrays.stream(shares).map(s -> s + 0.0).boxed().toList();
    }

    double[] values(double[] shares) {
        return values.computeIfAbsent(key(shares), k -> checked(evaluator.values(shares.clone())));
    }

    /** The linear problem's view from these shares: it agrees with the full run there. */
    LinearResponse around(double[] shares) {
        return responses.computeIfAbsent(
                key(shares), k -> LinearResponse.around(shares, values(shares), evaluator.slopes(shares.clone())));
    }

    double[] present() {
        return values(new double[options]);
    }

    private double[] checked(double[] answer) {
        if (answer.length != limits) {
            throw new IllegalArgumentException(limits + " limits, but the run has values at " + answer.length);
        }
        for (double value : answer) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("A run's value is not a number: " + value);
            }
        }
        return answer.clone();
    }
}
