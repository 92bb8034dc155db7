// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import java.util.Arrays;

/** Computed over observed: what is usual, how far it scatters, and the worst. */
record Ratios(
        double median, double tenth, double ninetieth, double lowest, double highest, int count, double logSpread) {
    static Ratios of(double[] ratios) {
        double[] sorted = ratios.clone();
        Arrays.sort(sorted);
        return new Ratios(
                quantile(sorted, 0.5),
                quantile(sorted, 0.1),
                quantile(sorted, 0.9),
                sorted[0],
                sorted[sorted.length - 1],
                sorted.length,
                logSpread(sorted));
    }

    /** Standard deviation of the ratios' decimal logarithms. */
    private static double logSpread(double[] ratios) {
        double[] logs = Arrays.stream(ratios).map(Math::log10).toArray();
        double mean = Arrays.stream(logs).average().orElse(Double.NaN);
        return Math.sqrt(
                Arrays.stream(logs).map(log -> (log - mean) * (log - mean)).sum() / (logs.length - 1));
    }

    /** The larger of a ratio and its inverse. */
    static double factor(double ratio) {
        return Math.max(ratio, 1 / ratio);
    }

    /** Linear between order statistics. */
    private static double quantile(double[] sorted, double p) {
        double at = p * (sorted.length - 1);
        int below = (int) at;
        return below + 1 < sorted.length
                ? sorted[below] + (at - below) * (sorted[below + 1] - sorted[below])
                : sorted[below];
    }
}
