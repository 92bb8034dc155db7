// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.List;
import org.silverwake.model.release.Spread;

/**
 * How far a value of whole water at a place swings with what is not known of each site's release.
 *
 * @param place its place in the scenario's list of places
 * @param state the flow state [-]
 * @param middle the highest estimate with all sites at the middle of their balances [kg/m3]
 * @param bars one for each site with field notes, or for each group of them, the widest first
 */
public record Swing(int place, int state, double middle, List<Bar> bars) {
    /** Copies the list. */
    public Swing {
        bars = List.copyOf(bars);
    }

    /**
     * One site or group.
     *
     * @param name its name
     * @param release mercury to the river in its low, middle and high balance, mean of the year [kg/s]
     * @param low the value when it is at its low, all others at the middle [kg/m3]
     * @param high the value when it is at its high [kg/m3]
     */
    public record Bar(String name, Spread release, double low, double high) {
        /** How much of the value is open on its account [kg/m3]. */
        public double width() {
            return high - low;
        }
    }
}
