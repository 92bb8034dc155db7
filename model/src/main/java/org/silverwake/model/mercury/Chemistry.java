// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import java.util.List;

/**
 * What is carried beside exchangeable Hg(II) and grain-bound mercury, and what turns into what.
 *
 * @param forms further forms
 * @param reactions first-order reactions
 * @param celsius water temperature by flow state [degC]
 * @param lightAttenuation of the water by flow state and kind of reach [1/m], at least 0
 * @param airFilm velocity of transfer through the air's film, k_g, by flow state and kind of reach [m/s], above 0
 * @param evasionVelocity measured velocity of evasion, by flow state and kind of reach [m/s]; NaN where the two films
 *     hold
 * @param passivation share of the clean surface's rate at which droplets dissolve [-], 0 to 1; 0: they don't
 */
public record Chemistry(
        List<Form> forms,
        List<Reaction> reactions,
        List<Double> celsius,
        ByStateAndKind lightAttenuation,
        ByStateAndKind airFilm,
        ByStateAndKind evasionVelocity,
        double passivation) {
    private static final Chemistry NONE = new Chemistry(
            List.of(),
            List.of(),
            List.of(),
            ByStateAndKind.same(0),
            ByStateAndKind.same(1),
            ByStateAndKind.same(Double.NaN),
            0);

    /** Copies the lists. */
    public Chemistry {
        forms = List.copyOf(forms);
        reactions = List.copyOf(reactions);
        celsius = List.copyOf(celsius);
    }

    /** Nothing more is carried and nothing reacts. */
    public static Chemistry none() {
        return NONE;
    }
}
