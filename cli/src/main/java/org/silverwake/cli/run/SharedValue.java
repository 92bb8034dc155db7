// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.List;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SiteShares.Parts;

/**
 * One value at a place, shared out, and what is left of it when each site is closed.
 *
 * @param place its place in the scenario's list of places
 * @param what what is measured
 * @param state the flow state [-]; that of a bed, which all states share, is {@link #WHOLE_YEAR}
 * @param bound the bound
 * @param variant which extreme of unknown splits
 * @param parts sites and background [kg/m3 in water, kg/kg dry in beds]
 * @param closed the value with each site closed in turn, in the order of sites [as the value]; NaN where there is none then
 */
public record SharedValue(int place, What what, int state, Bound bound, int variant, Parts parts, List<Double> closed) {
    /** In place of a flow state where all are taken together. */
    public static final int WHOLE_YEAR = -1;

    /** Copies the list. */
    public SharedValue {
        closed = List.copyOf(closed);
    }

    /** What is shared out. */
    public enum What {
        /** Total mercury in whole water. */
        WHOLE,
        /** Total mercury in filtered water. */
        FILTERED,
        /** All mercury in the bed. */
        BED
    }
}
