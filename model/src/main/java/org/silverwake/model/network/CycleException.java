// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.network;

import java.util.List;

/** The reaches run in a circle, so no downstream order exists. */
public final class CycleException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;
    private final transient List<List<Integer>> cycles;

    CycleException(String message, List<List<Integer>> cycles) {
        super(message);
        this.cycles = cycles;
    }

    /** Input indices of the reaches of each knot of cycles. */
    public List<List<Integer>> cycles() {
        return cycles;
    }
}
