// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.Optional;

/** Ground that gives mercury to the river with no practice at work on it. */
public sealed interface Eroded {
    /** The site. */
    String name();

    /** Mercury content of the ground [kg/kg]. */
    Noted content();

    /** Dry ground that goes in the mean of the year [kg/s]. */
    double solids();

    /** Forms of its mercury, where known. */
    Optional<FieldNotes.Forms> forms();

    /** When it goes. */
    Storage storage();

    /**
     * An old tailings heap.
     *
     * @param name the site
     * @param mass dry tailings [kg]
     * @param content mercury content [kg/kg]
     * @param eroding share that the river takes in a year, as a rate [1/s]
     * @param forms forms of its mercury, where known
     * @param storage when it goes
     */
    record LegacyHeap(
            String name, double mass, Noted content, double eroding, Optional<FieldNotes.Forms> forms, Storage storage)
            implements Eroded {
        @Override
        public double solids() {
            return mass * eroding;
        }
    }

    /**
     * Ground laid bare, with its native mercury.
     *
     * @param name the site
     * @param area [m2]
     * @param erosion [kg/m2/s]
     * @param content native mercury content [kg/kg]
     * @param forms forms of its mercury, where known
     * @param storage when it goes
     */
    record DisturbedGround(
            String name, double area, double erosion, Noted content, Optional<FieldNotes.Forms> forms, Storage storage)
            implements Eroded {
        @Override
        public double solids() {
            return area * erosion;
        }
    }
}
