// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.table;

import java.util.List;

/** A table that cannot be used. Holds all its problems, one line each, each saying where. */
public final class TableException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    private final transient List<String> problems;

    /** With one or more problems, in the order of the table. */
    public TableException(List<String> problems) {
        super(String.join("\n", problems));
        this.problems = List.copyOf(problems);
    }

    /** The problems, one line each. */
    public List<String> problems() {
        return problems;
    }
}
