// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** The door to ojAlgo: a linear problem with some unknowns fixed, no yes-or-no. */
final class Simplex {
    /** An unknown that the solver may choose. */
    static final double FREE = -1;

    /** Coefficients below this share of their row's largest do nothing within the tolerance and are left out. */
    private static final double NEGLIGIBLE = 1e-13;

    static {
        // Else it writes about its hardware profiles to the console of machines that it does not know.
        System.setProperty("shut.up.ojAlgo", "true");
    }

    private Simplex() {}

    /**
     * The cheapest unknowns, or none where the rows contradict one another.
     *
     * @param fixed value of each unknown, or {@link #FREE}
     * @param slack how far rows may be exceeded, in their scale
     */
    static Optional<double[]> solve(LinearProgram program, double[] fixed, double slack) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        Variable[] variables = new Variable[fixed.length];
        double priciest = 0;
        for (int i = 0; i < fixed.length; i++) {
            priciest = Math.max(priciest, Math.abs(program.cost(i)));
        }
        for (int i = 0; i < fixed.length; i++) {
            if (fixed[i] == FREE) {
                variables[i] = model.newVariable("x" + i).lower(0);
                if (Double.isFinite(program.upper(i))) {
                    variables[i].upper(program.upper(i));
                }
                variables[i].weight(priciest > 0 ? program.cost(i) / priciest : 0);
            }
        }
        for (int j = 0; j < program.rows(); j++) {
            if (!addRow(model, variables, program, j, fixed, slack)) {
                return Optional.empty();
            }
        }
        return solve(model, variables, program, fixed);
    }

    /** False where the fixed unknowns alone break the row. */
    private static boolean addRow(
            ExpressionsBasedModel model,
            Variable[] variables,
            LinearProgram program,
            int row,
            double[] fixed,
            double slack) {
        double bound = program.bound(row) + slack;
        double largest = 0;
        for (int i = 0; i < fixed.length; i++) {
            if (variables[i] == null) {
                bound -= program.coefficient(row, i) * fixed[i];
            } else {
                largest = Math.max(largest, Math.abs(program.coefficient(row, i)));
            }
        }
        if (largest == 0) {
            return bound >= -Limit.TOLERANCE;
        }
        Expression expression = model.newExpression("r" + row).upper(bound / largest);
        for (int i = 0; i < fixed.length; i++) {
            if (variables[i] != null) {
                double share = program.coefficient(row, i) / largest;
                if (Math.abs(share) > NEGLIGIBLE) {
                    expression.set(variables[i], share);
                }
            }
        }
        return true;
    }

    private static Optional<double[]> solve(
            ExpressionsBasedModel model, Variable[] variables, LinearProgram program, double[] fixed) {
        double[] x = fixed.clone();
        if (model.countVariables() == 0) {
            return Optional.of(x);
        }
        model.options.time_abort = Long.MAX_VALUE;
        model.options.time_suffice = Long.MAX_VALUE;
        Optimisation.Result result = model.minimise();
        Optimisation.State state = result.getState();
        if (state == Optimisation.State.INFEASIBLE) {
            return Optional.empty();
        }
        if (!state.isOptimal()) {
            throw new IllegalStateException("The simplex stopped without an answer: " + state);
        }
        for (int i = 0, at = 0; i < x.length; i++) {
            if (variables[i] != null) {
                x[i] = Math.max(0, Math.min(program.upper(i), result.doubleValue(at++)));
            }
        }
        return Optional.of(x);
    }
}
