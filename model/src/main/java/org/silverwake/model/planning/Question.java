// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Options and limits put as linear problems. The unknowns are shares of options, in their order; others follow. */
final class Question {
    /**
     * What each option costs on top, in units of the dearest one, so that of sets that cost the same the one with fewer and
     * earlier options is chosen.
     */
    private static final double TIE = 1e-7;

    private final List<Option> options;
    private final List<Limit> limits;
    private final Adoption adoption;
    private final double[] prices;

    Question(List<Option> options, List<Limit> limits, Adoption adoption, Level level) {
        this.options = options;
        this.limits = limits;
        this.adoption = adoption;
        this.prices = prices(options, level);
    }

    private static double[] prices(List<Option> options, Level level) {
        double dearest = options.stream()
                .mapToDouble(o -> Math.abs(o.cost().at(level)))
                .max()
                .orElse(0);
        double[] prices = new double[options.size()];
        for (int i = 0; i < prices.length; i++) {
            double rank = 1 + (double) i / prices.length;
            double share = dearest > 0 ? options.get(i).cost().at(level) / dearest : 0;
            prices[i] = share + TIE * rank / prices.length;
        }
        return prices;
    }

    /** Cost in units of the dearest option, ties decided. */
    double price(double[] shares) {
        double sum = 0;
        for (int i = 0; i < prices.length; i++) {
            sum += prices[i] * shares[i];
        }
        return sum;
    }

    /** Cheapest shares; only groups bind. */
    LinearProgram cheapest(int moreUnknowns) {
        LinearProgram program = free(moreUnknowns);
        for (int i = 0; i < prices.length; i++) {
            program.setCost(i, prices[i]);
        }
        return program;
    }

    /** Shares without a cost; only groups bind. */
    LinearProgram free(int moreUnknowns) {
        int n = options.size();
        LinearProgram program = new LinearProgram(n + moreUnknowns, adoption == Adoption.ALL_OR_NOTHING ? n : 0);
        Map<String, double[]> groups = new LinkedHashMap<>();
        for (int i = 0; i < n; i++) {
            if (!options.get(i).group().isEmpty()) {
                groups.computeIfAbsent(options.get(i).group(), g -> new double[n])[i] = 1;
            }
        }
        groups.values().forEach(row -> program.addRow(row, 1, 1));
        return program;
    }

    /** Cheapest shares that meet all limits. */
    LinearProgram under(LinearResponse response) {
        double[] ones = new double[limits.size()];
        Arrays.fill(ones, 1);
        return under(response, ones);
    }

    /** Cheapest shares that bring each value under {@code ceilings} times its allowed one. */
    LinearProgram under(LinearResponse response, double[] ceilings) {
        LinearProgram program = cheapest(0);
        for (int j = 0; j < limits.size(); j++) {
            double allowed = limits.get(j).allowed();
            program.addRow(slopes(response, j, 0), allowed * ceilings[j] - response.none(j), allowed * ceilings[j]);
        }
        return program;
    }

    /** Shares with the least worst ratio of a value to its allowed one, which is the last unknown. */
    LinearProgram leastWorst(LinearResponse response) {
        LinearProgram program = free(1);
        int ratio = options.size();
        program.setUpper(ratio, Double.POSITIVE_INFINITY);
        program.setCost(ratio, 1);
        for (int j = 0; j < limits.size(); j++) {
            double[] row = slopes(response, j, 1);
            row[ratio] = -limits.get(j).allowed();
            program.addRow(row, -response.none(j), limits.get(j).allowed());
        }
        return program;
    }

    /** Cheapest shares that meet at least so many limits; one yes-or-no unknown per limit follows the shares. */
    LinearProgram meeting(LinearResponse response, int atLeast) {
        int n = options.size();
        int m = limits.size();
        LinearProgram program = cheapest(m);
        double[] count = new double[n + m];
        for (int j = 0; j < m; j++) {
            double[] row = slopes(response, j, m);
            double allowed = limits.get(j).allowed();
            double highest = response.none(j);
            for (int i = 0; i < n; i++) {
                highest += Math.max(0, row[i]);
            }
            row[n + j] = Math.max(0, highest - allowed);
            program.setBinary(n + j);
            program.addRow(row, allowed + row[n + j] - response.none(j), allowed);
            count[n + j] = -1;
        }
        program.addRow(count, -atLeast, 1);
        return program;
    }

    /** Forbids one yes-or-no set. */
    static void exclude(LinearProgram program, double[] set) {
        double[] row = new double[set.length];
        double chosen = 0;
        for (int i = 0; i < set.length; i++) {
            row[i] = 2 * set[i] - 1;
            chosen += set[i];
        }
        program.addRow(row, chosen - 1, 1);
    }

    private double[] slopes(LinearResponse response, int limit, int moreUnknowns) {
        double[] row = new double[options.size() + moreUnknowns];
        for (int i = 0; i < options.size(); i++) {
            row[i] = response.slope(limit, i);
        }
        return row;
    }
}
