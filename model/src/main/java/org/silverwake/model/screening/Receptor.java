// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.OptionalInt;

/**
 * A place where the answer matters.
 *
 * @param name its name
 * @param reach the reach it lies at; empty where it is not on the network
 * @param people people who depend on it [-], at least 0; empty where nobody knows how many
 * @param kind what it is to drinking water
 */
public record Receptor(String name, OptionalInt reach, OptionalInt people, Kind kind) {
    /** What a place is to drinking water; of several the first. */
    public enum Kind {
        /** Water is drawn from the river for drinking: a piped intake, or a well by the river. */
        INTAKE,
        /** People live here and may drink from the river. */
        VILLAGE,
        /** Fishing, irrigation, livestock, bathing and the like. */
        OTHER
    }

    /** Whether drinking-water values are compared with the raw water here. */
    public boolean isDrinkingPlace() {
        return kind != Kind.OTHER;
    }
}
