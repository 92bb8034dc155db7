// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

/** The full model, asked what a plan does at the limits. The same shares have the same answer. */
public interface Evaluator {
    /**
     * Values at all limits by a full run with the plan.
     *
     * @param shares share of each option [-], 0 to 1, in their order
     * @return value at each limit [any], ≥ 0, in its unit, by the estimate that the limit asks for
     */
    double[] values(double[] shares);

    /**
     * What each option does when solids and water stay as they are with the plan.
     *
     * @param shares share of each option [-], 0 to 1, in their order
     * @return by limit, then by option: change of the value from none to all of the option [any], negative where it helps
     */
    double[][] slopes(double[] shares);
}
