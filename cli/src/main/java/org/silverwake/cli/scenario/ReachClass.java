// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;

/**
 * A legal class or use of reaches, which chooses the guideline values that are compared there.
 *
 * @param where file and line, or sheet and cell
 * @param name its name
 * @param guidelines guideline ids
 */
public record ReachClass(String where, String name, List<String> guidelines) {
    /** Copies the list. */
    public ReachClass {
        guidelines = List.copyOf(guidelines);
    }
}
