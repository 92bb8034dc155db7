// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

/** A file that is no workbook that can be read; its message says why, and what to do. */
final class BookException extends RuntimeException {
    private static final long serialVersionUID = 1;

    BookException(String message) {
        super(message);
    }

    BookException(String message, Throwable cause) {
        super(message, cause);
    }
}
