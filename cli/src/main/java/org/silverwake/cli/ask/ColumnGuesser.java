// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import org.silverwake.cli.ask.ColumnRole.Fit;
import org.silverwake.geo.layer.VectorLayer;

/**
 * Guesses which column is what, from headings and a look at the values. One area column is the land above a reach where
 * its values grow downstream, the reach's own land where they do not.
 */
final class ColumnGuesser {
    private static final double MOSTLY = 0.9;

    /**
     * A column and what it is taken for.
     *
     * @param role what it is
     * @param column its heading
     * @param unit of its values; empty where not known or not needed
     * @param values a look at them
     */
    record Guess(ColumnRole role, String column, Optional<String> unit, ColumnValues values) {
        boolean needsUnit() {
            return role.dimension().isPresent() && !role.dimension().get().isBare() && unit.isEmpty();
        }
    }

    private record Candidate(ColumnRole role, String column, Fit fit) {}

    private final VectorLayer layer;
    private final ToDoubleFunction<String> growth;
    private final List<ColumnRole> roles = ColumnRole.all();
    private final Map<String, ColumnValues> values = new LinkedHashMap<>();

    /**
     * Looks at a layer.
     *
     * @param growth share of steps downstream over which a column of numbers does not fall, 0 to 1 [-]
     */
    ColumnGuesser(VectorLayer layer, ToDoubleFunction<String> growth) {
        this.layer = layer;
        this.growth = growth;
        layer.columns().forEach(column -> values.put(column, ColumnValues.of(layer, column)));
    }

    List<ColumnRole> roles() {
        return roles;
    }

    ColumnValues values(String column) {
        return values.get(column);
    }

    /** The best column for each role, in the order of roles; each column once. */
    List<Guess> guesses() {
        List<Candidate> candidates = new ArrayList<>();
        int features = layer.features().size();
        for (ColumnRole role : roles) {
            for (String column : layer.columns()) {
                role.fit(column)
                        .filter(fit -> role.accepts(values.get(column), features))
                        .filter(fit -> isRightArea(role, column, fit))
                        .ifPresent(fit -> candidates.add(new Candidate(role, column, fit)));
            }
        }
        candidates.sort(Comparator.comparingInt(c -> c.fit.rank()));
        Set<String> taken = new HashSet<>();
        Map<String, Guess> found = new LinkedHashMap<>();
        for (Candidate each : candidates) {
            if (!taken.contains(each.column) && !found.containsKey(each.role.key())) {
                taken.add(each.column);
                found.put(each.role.key(), new Guess(each.role, each.column, each.fit.unit(), values.get(each.column)));
            }
        }
        return roles.stream()
                .map(role -> found.get(role.key()))
                .filter(guess -> guess != null)
                .toList();
    }

    /** A heading that says no more than "area" is decided by the values. */
    private boolean isRightArea(ColumnRole role, String column, Fit fit) {
        boolean total = role.key().equals("drainage-area");
        boolean local = role.key().equals("local-area");
        boolean plain = role.words().get(fit.rank()).matcher("area").matches();
        if (!total && !local || !plain) {
            return true;
        }
        double share = growth.applyAsDouble(column);
        boolean grows = share >= MOSTLY || share <= 1 - MOSTLY;
        return total == grows;
    }
}
