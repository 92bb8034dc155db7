// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

/** Why a reach gets no answer. */
public enum NotAssessed {
    /** Neither a site nor a background lies upstream. */
    NO_SOURCE_UPSTREAM("no site or background upstream"),
    /** No flow state has water here. */
    NO_WATER("no water"),
    /** The reach ends nearer to a bank outfall than one channel width, where mixing over the width has not begun. */
    NEAR_BANK_OUTFALL("nearer to a bank outfall than one width"),
    /** The river layer has an open gap above, over which mercury may come that was not carried on. */
    GAP_UPSTREAM("an open gap in the river layer above"),
    /** Mercury above runs to an end that is no outlet, so that a line there seems to run the wrong way. */
    LOST_UPSTREAM("water above runs to an end that nobody named an outlet"),
    /** An abstraction takes all water at its head in some flow state. */
    EMPTIED("an abstraction takes all the river's water in a flow state"),
    /** A leach tank lies upstream whose cyanide nobody gave. */
    CYANIDE_NOT_GIVEN("a leach tank above, of which no cyanide is given"),
    /** No site upstream for which cyanide is given. */
    NO_CYANIDE_UPSTREAM("no cyanide given upstream"),
    /** The tide reaches here. */
    TIDAL("tidal"),
    /** The medium or form is not computed. */
    NOT_MODELLED("medium not modelled"),
    /** The bed takes up no solids here. */
    NO_SOLIDS_DEPOSIT("no solids deposit"),
    /** The water carries no solids in any state. */
    NO_SUSPENDED_SOLIDS("no suspended solids"),
    /** Fish hold none, since no methylmercury is released or made within their range. */
    NO_METHYLMERCURY("no methylmercury released or made within the range of the fish"),
    /** Fish measured in the network hold more than the chain would have it, so its "below" is not to be trusted. */
    FISH_HOLD_MORE("measured fish hold more than such an estimate says"),
    /** A place is not on the network. */
    OFF_NETWORK("place is not on the river network");

    private final String words;

    NotAssessed(String words) {
        this.words = words;
    }

    /** Words for legends and tables. */
    public String words() {
        return words;
    }
}
