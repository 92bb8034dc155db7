// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import org.silverwake.model.mercury.StateLayout;

/** What a sample holds of each carried form: the weights of one linear functional of the carried states. */
public interface SampledPart {
    /**
     * Weight of a carried state, an affine function of its filtered share.
     *
     * @param layout the carried states
     * @param state place of the state in it
     * @param filteredShare share of the state that passes a filter, here and now [-], 0 to 1
     * @return weight [-], 0 to 1
     */
    double weight(StateLayout layout, int state, double filteredShare);
}
