// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.TransportInput;

/** The full run again when mercury and nothing else is scaled at its sites: what levers are held against. */
public final class ScaledRun {
    private ScaledRun() {}

    /** Runs; factors by discharge point [-]. */
    public static Rerun of(Outcome outcome, double[] factors) {
        TransportInput input = outcome.result().input();
        List<SiteRelease> sites = new ArrayList<>(input.sites());
        for (int i = 0; i < factors.length; i++) {
            double factor = factors[i];
            sites.set(
                    i,
                    sites.get(i)
                            .withMercury(sites.get(i).mercury().stream()
                                    .map(rate -> rate * factor)
                                    .toList()));
        }
        return Rerun.of(outcome, input.withSites(sites));
    }
}
