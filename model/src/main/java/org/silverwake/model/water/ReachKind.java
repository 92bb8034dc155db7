// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import java.util.Arrays;
import java.util.Optional;

/** What sort of water a reach is; rates in water and bed may differ by it. */
public enum ReachKind {
    /** A river or brook in its bed. */
    CHANNEL("channel"),
    /** A lake, reservoir or pond. */
    STILL_WATER("still water"),
    /** A marsh or swamp with water moving through it. */
    WETLAND("wetland"),
    /** A canal, ditch or culvert. */
    CANAL("canal");

    private final String word;

    ReachKind(String word) {
        this.word = word;
    }

    /** Word used in tables and files. */
    public String word() {
        return word;
    }

    /** The kind with a word, in any case and with - or _ for a space; empty if there is none. */
    public static Optional<ReachKind> find(String text) {
        String plain = text.strip().replace('-', ' ').replace('_', ' ');
        return Arrays.stream(values())
                .filter(kind -> kind.word.equalsIgnoreCase(plain))
                .findFirst();
    }
}
