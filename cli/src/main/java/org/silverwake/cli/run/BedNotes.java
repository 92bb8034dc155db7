// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.transport.BedAnswer;
import org.silverwake.model.transport.SteadyResult;

/** What must be known of the beds of a run: how slow they are, and where their solids did not close as stated. */
public final class BedNotes {
    private static final int NAMED = 5;

    private BedNotes() {}

    /** One line each. */
    static List<String> warnings(Basin basin, SteadyResult result) {
        List<String> warnings = new ArrayList<>();
        result.bedAnswer().ifPresent(bed -> {
            listed(
                    warnings,
                    basin,
                    bed::isEaten,
                    "the bed would lose more solids than it gains, so erosion was scaled down to keep its thickness");
            listed(
                    warnings,
                    basin,
                    r -> bed.isShortOfSolids(r) && result.isBedAssessed(r),
                    "less is laid down than the stated burial, so less is buried");
            listed(
                    warnings,
                    basin,
                    r -> bed.isQuiet(r) && result.isBedAssessed(r),
                    "no flow state erodes the bed, so what is laid down goes back in the state that brought it");
        });
        return warnings;
    }

    private static void listed(List<String> warnings, Basin basin, IntPredicate is, String what) {
        List<String> ids = IntStream.range(0, basin.network().size())
                .filter(is)
                .mapToObj(r -> basin.reach(r).id())
                .toList();
        if (!ids.isEmpty()) {
            int more = ids.size() - NAMED;
            warnings.add("bed: in " + ids.size() + (ids.size() == 1 ? " reach " : " reaches ") + what + ": "
                    + String.join(", ", ids.subList(0, Math.min(NAMED, ids.size())))
                    + (more > 0 ? " and " + more + " more (bed.csv)" : ""));
        }
    }

    /** How slow beds are, in a line; empty where there is no bed, or nothing in it. */
    public static Optional<String> slowest(Basin basin, SteadyResult result) {
        if (result.bedAnswer().isEmpty()) {
            return Optional.empty();
        }
        BedAnswer bed = result.bedAnswer().get();
        int slowest = -1;
        double longest = 0;
        for (int r = 0; r < basin.network().size(); r++) {
            if (bed.residence(r) > longest) {
                slowest = r;
                longest = bed.residence(r);
            }
        }
        if (slowest < 0) {
            return Optional.empty();
        }
        String where = " (reach " + basin.reach(slowest).id() + ")";
        String how = Double.isInfinite(longest)
                ? "some mercury never leaves the bed again" + where
                : String.format(
                        Locale.ROOT,
                        "mercury stays in the slowest bed for %.3g years in the mean%s",
                        longest / Quantity.SECONDS_PER_YEAR,
                        where);
        String shown = bed.afterYears().isPresent()
                ? "; river and bed are shown after " + bed.afterYears().getAsInt() + " years at this rate"
                : "";
        return Optional.of(how + shown);
    }
}
