// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.BitSet;
import java.util.List;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.release.SiteRelease;

/** How long responses will be at least, told before they are computed. */
public final class ResponseSize {
    /** Characters of a 32-bit float in base64. */
    private static final double CHARACTERS = 16.0 / 3;

    private ResponseSize() {}

    /** Characters of the responses if every reach has one row and no two columns are alike but those of known splits. */
    public static long estimate(Outcome outcome, ReachUnits units, List<Contributor> contributors) {
        List<SiteRelease> sites = outcome.result().input().sites();
        double characters = 0;
        for (Contributor contributor : contributors) {
            BitSet heads = new BitSet();
            contributor.points().forEach(point -> heads.set(sites.get(point).reach()));
            int reached = units.of(outcome.basin().network().below(heads)).cardinality();
            int variants = contributor.points().stream()
                    .mapToInt(point -> sites.get(point).extremes())
                    .max()
                    .orElse(1);
            for (Measured measured : Measured.of(outcome)) {
                if (measured.fixed().isEmpty()) {
                    double columns = (double) measured.columns(outcome.result()).size()
                            / outcome.result().variants()
                            * variants;
                    characters += CHARACTERS * columns * measured.sets(outcome.result()) * reached;
                }
            }
        }
        return Math.round(characters);
    }
}
