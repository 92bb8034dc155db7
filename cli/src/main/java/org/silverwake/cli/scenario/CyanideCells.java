// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.silverwake.model.quantity.Dimension;

/** Cells of a site that tell its release of weak-acid dissociable cyanide, as CN. */
final class CyanideCells {
    private static final String RELEASE = "cyanide";
    private static final String CONCENTRATION = "cyanide_concentration";

    private static final Key RELEASE_KEY = Key.quantity(
            RELEASE,
            Dimension.MASS_FLOW,
            "kg/yr",
            0,
            1e6,
            "",
            "weak-acid dissociable (WAD) cyanide released, as CN; not assessed if blank, 0 if there is none");
    private static final Key CONCENTRATION_KEY = Key.quantity(
            CONCENTRATION,
            Dimension.CONCENTRATION,
            "mg/L",
            0,
            1e5,
            "",
            "in place of cyanide: WAD cyanide, as CN, in the site's effluent or water");

    /** The columns, for the reference page. */
    static final List<Key> KEYS = List.of(RELEASE_KEY, CONCENTRATION_KEY);

    private CyanideCells() {}

    /** Columns that the table may have. */
    static Set<String> columns(StateNames states) {
        Set<String> columns = new LinkedHashSet<>(List.of(RELEASE, RELEASE + "_unit"));
        columns.addAll(states.columns(RELEASE));
        columns.addAll(List.of(CONCENTRATION, CONCENTRATION + "_unit"));
        return columns;
    }

    /**
     * WAD cyanide released [kg/s] by state; empty where nothing is told.
     *
     * @param water water that the site adds [m3/s], by state
     * @param spread from a rate over the year to rates by state
     */
    static Optional<List<Double>> read(
            TableRow row, StateNames states, List<Double> water, UnaryOperator<List<Double>> spread) {
        Optional<List<Double>> released =
                row.byState(RELEASE, RELEASE_KEY, states).map(spread);
        OptionalDouble concentration = row.quantity(CONCENTRATION, CONCENTRATION_KEY, CONCENTRATION + "_unit");
        if (!row.has(CONCENTRATION)) {
            return released;
        }
        if (released.isPresent()) {
            row.problem(CONCENTRATION, "stands beside " + RELEASE + "; keep one of them");
        } else if (concentration.orElse(0) > 0 && water.stream().allMatch(w -> w == 0)) {
            row.problem(
                    CONCENTRATION,
                    "is given while the site adds no water; give effluent or water too, or " + RELEASE
                            + " as a mass per time");
        }
        List<Double> rates = new ArrayList<>();
        water.forEach(w -> rates.add(w * concentration.orElse(0)));
        return Optional.of(rates);
    }
}
