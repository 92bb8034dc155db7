// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.SolidsClass;

/** The columns that the workbook offers are those that the table is read with. */
class TableListTest {
    @Test
    void sites() {
        SolidsClass silt = new SolidsClass(
                "silt", 2e-5, 2650, "stokes", OptionalDouble.empty(), true, 0.1, 5, 5.4, OptionalDouble.empty(), 1, 1);
        SitesTable table =
                new SitesTable(new StateNames(List.of("dry"), List.of(1.0)), List.of(silt), List.of(), new Problems());
        Set<String> offered = new TreeSet<>();
        for (Key key : TableList.all().get("sites")) {
            offered.add(key.path().replace("STATE", "dry").replace("CLASS", "silt"));
            if (key.kind() == Kind.QUANTITY
                    && !key.dimension().isBare()
                    && !key.path().contains("STATE")) {
                offered.add(key.path() + "_unit");
            }
        }
        assertThat(offered).isEqualTo(new TreeSet<>(table.columns()));
    }
}
