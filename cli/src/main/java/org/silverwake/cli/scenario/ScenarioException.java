// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;

/** A scenario that cannot be run as it stands, with everything that is wrong with it, one line each. */
public final class ScenarioException extends RuntimeException {
    private static final long serialVersionUID = 1;

    private final List<String> problems;

    /**
     * Holds the problems in the order found.
     *
     * @param problems lines "file:line key: what was found; what to give"
     */
    public ScenarioException(List<String> problems) {
        super(String.join(System.lineSeparator(), problems));
        this.problems = List.copyOf(problems);
    }

    /** One line each. */
    public List<String> problems() {
        return problems;
    }
}
