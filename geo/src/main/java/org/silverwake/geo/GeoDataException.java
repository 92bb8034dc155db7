// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo;

/** The user's geodata cannot be used as it is. The message says where, what, what is allowed and what to do. Exit code 3. */
public final class GeoDataException extends RuntimeException {
    private static final long serialVersionUID = 1L;

    /** With a message for the user. */
    public GeoDataException(String message) {
        super(message);
    }

    /** With a message for the user and the cause. */
    public GeoDataException(String message, Throwable cause) {
        super(message, cause);
    }
}
