// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.List;
import java.util.Optional;

/**
 * What the user corrected in a river layer. {@code where} is the file and line that gave a correction. Positions are WGS 84.
 *
 * @param turns directions of flow
 * @param outlets where the network ends
 * @param rulings repairs refused, defects accepted
 */
public record NetworkCorrections(List<Turn> turns, List<End> outlets, List<Ruling> rulings) {
    /** Copies the lists. */
    public NetworkCorrections {
        turns = List.copyOf(turns);
        outlets = List.copyOf(outlets);
        rulings = List.copyOf(rulings);
    }

    /** None. */
    public static NetworkCorrections none() {
        return new NetworkCorrections(List.of(), List.of(), List.of());
    }

    /** A position: longitude and latitude [degrees]. */
    public record At(double longitude, double latitude) {}

    /**
     * Water in a feature runs from one position to another.
     *
     * @param from where water enters the stretch
     * @param to where it leaves; empty for the whole line that ends nearest to {@code from}
     */
    public record Turn(String where, String featureId, At from, Optional<At> to) {}

    /**
     * A feature that flows out of the network.
     *
     * @param at its end where water leaves; empty for its free end
     */
    public record End(String where, String featureId, Optional<At> at) {}

    /**
     * A verdict on a defect.
     *
     * @param accept whether it is accepted; else refused
     * @param at where the defect lies; empty for any place
     */
    public record Ruling(String where, boolean accept, Defect.Kind kind, List<String> featureIds, Optional<At> at) {
        /** Copies the list. */
        public Ruling {
            featureIds = List.copyOf(featureIds);
        }
    }
}
