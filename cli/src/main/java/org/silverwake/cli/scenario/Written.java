// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.Map;

/**
 * A scenario as it was written, by whichever door it came.
 *
 * @param place of the whole, for what stands nowhere, such as "scenario.yaml:1"
 * @param root keys and values
 * @param tables tables that stand in the scenario file itself, by name such as "sites"; those that have rows
 */
public record Written(String place, ScenarioNode root, Map<String, Table> tables) {
    /** Copies the tables. */
    public Written {
        tables = Map.copyOf(tables);
    }
}
