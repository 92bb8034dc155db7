// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong and what deserves a warning while a scenario is read; nothing is thrown before the end. */
final class Problems {
    private final List<String> problems = new ArrayList<>();
    private final List<String> warnings = new ArrayList<>();

    /** Notes a problem at a place such as "scenario.yaml:41 release". */
    void add(String where, String text) {
        problems.add(where + ": " + text);
    }

    void warn(String where, String text) {
        warnings.add(where + ": " + text);
    }

    List<String> warnings() {
        return List.copyOf(warnings);
    }

    boolean isEmpty() {
        return problems.isEmpty();
    }

    /** Throws everything collected, if anything. */
    void requireNone() {
        if (!problems.isEmpty()) {
            throw new ScenarioException(problems);
        }
    }
}
