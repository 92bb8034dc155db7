// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.Set;

/** What a guideline value is a value of. */
public enum Medium {
    /** Water of the river. */
    SURFACE_WATER("surface water", Scope.REACH, true),
    /** What is on the suspended solids. */
    SUSPENDED_SOLIDS("suspended solids", Scope.REACH, false),
    /** The bed's solids. */
    BED_SEDIMENT("bed sediment", Scope.REACH, false),
    /** Fish tissue. */
    FISH("fish", Scope.REACH, false),
    /** Water people drink; river water is compared with it only where people draw it. */
    DRINKING_WATER("drinking water", Scope.DRINKING_PLACE, true),
    /** Water in the ground. */
    GROUNDWATER("groundwater", Scope.LISTED, true),
    /** Water on fields. */
    IRRIGATION_WATER("irrigation water", Scope.LISTED, true),
    /** Water for animals. */
    LIVESTOCK_WATER("livestock water", Scope.LISTED, true),
    /** Water for bathing. */
    RECREATIONAL_WATER("recreational water", Scope.LISTED, true),
    /** Water of the sea and of estuaries. */
    MARINE_WATER("marine water", Scope.LISTED, true),
    /** Bed of the sea and of estuaries. */
    MARINE_SEDIMENT("marine sediment", Scope.LISTED, false),
    /** What a site lets out. */
    EFFLUENT("effluent", Scope.RELEASE, true),
    /** Water of a tailings pond. */
    TAILINGS_POND("tailings pond", Scope.RELEASE, true),
    /** Soil. */
    SOIL("soil", Scope.LISTED, false);

    private static final Set<Averaging> WATER_AVERAGING =
            Set.of(Averaging.ANY_STATE, Averaging.YEAR, Averaging.SHORT, Averaging.THIRTY_DAY);

    private final String word;
    private final Scope scope;
    private final boolean water;

    Medium(String word, Scope scope, boolean water) {
        this.word = word;
        this.scope = scope;
        this.water = water;
    }

    /** With what of a run a medium's values are compared. */
    public enum Scope {
        /** With every reach. */
        REACH("compared with every reach"),
        /** With raw water at intakes and villages alone. */
        DRINKING_PLACE("compared with raw water at intakes and villages alone"),
        /** With the release itself, never with a reach. */
        RELEASE("compared with the release itself, never with a reach"),
        /** With nothing the program computes. */
        LISTED("listed, never compared with a reach");

        private final String words;

        Scope(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    /** Word used in tables. */
    public String word() {
        return word;
    }

    /** With what its values are compared. */
    public Scope scope() {
        return scope;
    }

    /** Whether values are mass per volume of water; otherwise mass per mass. */
    public boolean isWater() {
        return water;
    }

    /** The basis its values must be given on. */
    public Basis basis() {
        if (water) {
            return Basis.NONE;
        }
        return this == FISH ? Basis.WET_WEIGHT : Basis.DRY_WEIGHT;
    }

    /** The averaging its values may have. */
    public Set<Averaging> averaging() {
        return switch (this) {
            case BED_SEDIMENT -> Set.of(Averaging.BED);
            case FISH -> Set.of(Averaging.FISH);
            case DRINKING_WATER, GROUNDWATER -> Set.of(Averaging.TAP);
            case EFFLUENT, TAILINGS_POND -> Set.of(Averaging.EFFLUENT);
            case SOIL -> Set.of(Averaging.SOIL);
            default -> WATER_AVERAGING;
        };
    }
}
