// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.fish.FishRange;
import org.silverwake.model.fish.FishRun;
import org.silverwake.model.fish.TrophicLevel;
import org.silverwake.model.screening.ReachValues.Measure;

/**
 * How fish follow the water: methylmercury in filtered water over the year, averaged over the range of each reach's fish, times
 * the chain's factors. Only where no fish were measured, which would take the chain's place, and where the page shows every
 * reach of the network.
 *
 * @param measure place of the water's measure
 * @param factors of the chain
 * @param weights share of the range's length [-] of each reach in it, range after range
 * @param sizes reaches within the range, by reach
 * @param reaches those reaches, range after range
 */
public record FishRanges(
        int measure, FishRun.Factors factors, Floats weights, List<Integer> sizes, List<Integer> reaches) {
    /** Reaches in all ranges together up to which they are written (chosen: 2 MB). */
    private static final int MOST = 250_000;

    /** Whether fish follow the water by the chain alone. */
    static boolean isChain(Outcome outcome) {
        return outcome.fish()
                        .filter(fish -> fish.isModelled() && fish.measured() == 0)
                        .isPresent()
                && !outcome.result().isMethylationHeldBack();
    }

    /** Why levers do not move fish, where they do not. */
    static String reason(Outcome outcome) {
        if (outcome.result().isMethylationHeldBack()) {
            return "methylation in the bed is held back by its ceiling; levers do not move fish";
        }
        if (outcome.fish().filter(fish -> fish.measured() > 0).isPresent()) {
            return "fish were measured, which takes the place of the estimate; levers do not move them";
        }
        return "fish follow the water of all reaches within their range, single reaches between sites too, which this page"
                + " does not hold; levers do not move them";
    }

    /** The ranges; empty where fish do not follow, or too many reaches would have to be written. */
    static Optional<FishRanges> of(Linear linear) {
        Outcome outcome = linear.outcome();
        int n = outcome.basin().network().size();
        int measure = -1;
        boolean screened = false;
        for (int m = 0; m < linear.measures().size(); m++) {
            screened |= linear.measures().get(m).kind() == Measured.Kind.FISH;
            measure = linear.measures()
                            .get(m)
                            .water()
                            .filter(Measure.FILTERED_METHYL::equals)
                            .isPresent()
                    ? m
                    : measure;
        }
        if (!screened || measure < 0 || !isChain(outcome) || linear.units().count() != n) {
            return Optional.empty();
        }
        return ranges(outcome.fish().orElseThrow(), measure, n);
    }

    private static Optional<FishRanges> ranges(FishRun fish, int measure, int n) {
        FishRange range = fish.range();
        Floats weights = new Floats();
        List<Integer> sizes = new ArrayList<>();
        List<Integer> reaches = new ArrayList<>();
        for (int r = 0; r < n; r++) {
            Map<Integer, Double> lengths = new TreeMap<>(range.lengths(r));
            double all = lengths.values().stream().mapToDouble(length -> length).sum();
            sizes.add(lengths.size());
            lengths.forEach((reach, length) -> {
                reaches.add(reach);
                weights.add((float) (length / all));
            });
            if (reaches.size() > MOST) {
                return Optional.empty();
            }
        }
        return Optional.of(new FishRanges(measure, fish.factors(TrophicLevel.FOUR), weights, sizes, reaches));
    }
}
