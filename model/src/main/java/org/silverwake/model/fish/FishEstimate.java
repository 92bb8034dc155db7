// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.fish;

import java.util.Optional;

/**
 * Fish of one trophic level in one reach.
 *
 * @param content what they hold
 * @param basis what that rests on
 * @param station reach in which fish were measured; empty where none tell of it
 * @param measured fish of this level measured in this reach [-]
 * @param background middle estimate of background alone [kg/kg wet]; empty where methylmercury is not carried
 */
public record FishEstimate(
        FishContent content, Basis basis, Optional<Integer> station, int measured, Optional<Double> background) {
    /** What an estimate rests on. */
    public enum Basis {
        /** Fish of this level measured within their range; a little upstream of the reach, they are carried down by the ratio method. */
        MEASURED("fish measured here"),
        /** Fish measured of the other level, or farther upstream, carried over by the ratio method. */
        RATIO("fish measured of another kind or upstream, by the ratio method"),
        /** Dissolved methylmercury times a bioaccumulation factor. */
        MODELLED("dissolved MeHg times a bioaccumulation factor");

        private final String words;

        Basis(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }
}
