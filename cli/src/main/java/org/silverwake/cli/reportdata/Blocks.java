// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Set;
import org.silverwake.cli.whatif.Floats;

/** Binary blocks, each written once. */
final class Blocks {
    /** In place of an index: all zero. */
    private static final int ZERO = -1;

    private final Map<String, Integer> indices = new LinkedHashMap<>();

    /** The index of a block. */
    int of(Floats floats) {
        return floats.isZero() ? ZERO : indices.computeIfAbsent(floats.text(), text -> indices.size());
    }

    /** The texts in order. */
    Set<String> texts() {
        return indices.keySet();
    }
}
