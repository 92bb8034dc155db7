// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

/**
 * What a plan does at one limit, by full runs.
 *
 * @param limit what is to be reached
 * @param present value with no option adopted [any], in the limit's unit
 * @param planned value with the plan [any], in the limit's unit
 */
public record Outcome(Limit limit, double present, double planned) {
    /** Value with the plan over the allowed one [-]; above 1 where the limit is not met. */
    public double ratio() {
        return planned / limit.allowed();
    }

    /** Whether the limit is met with the plan. */
    public boolean isMet() {
        return limit.isMetBy(planned);
    }

    /** What remains above the allowed value [any], in the limit's unit; 0 where it is met. */
    public double over() {
        return isMet() ? 0 : planned - limit.allowed();
    }
}
