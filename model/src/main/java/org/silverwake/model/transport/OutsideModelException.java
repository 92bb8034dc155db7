// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

/** What was asked lies outside what this model holds for; the message names the place and what to do. */
public final class OutsideModelException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final int state;

    OutsideModelException(int state, String message) {
        super(message);
        this.state = state;
    }

    /** The flow state it happens in [-], from 0. */
    public int state() {
        return state;
    }
}
