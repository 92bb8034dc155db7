// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.release.SiteRelease;

/** Releases of all sites as flat arrays at the heads of reaches. */
final class Releases {
    private Releases() {}

    /** Tailings solids [kg/s], reach by class. */
    static double[] solids(TransportInput input, int state) {
        int classes = input.classes().size();
        double[] solids = new double[input.hydraulics().reaches().size() * classes];
        for (SiteRelease site : input.sites()) {
            for (int j = 0; j < classes; j++) {
                solids[site.reach() * classes + j] +=
                        site.solids().get(state) * site.classShares().get(j);
            }
        }
        return solids;
    }

    /** Mercury [kg/s], reach by form, the variants side by side: index (reach x forms + form) x variants + variant. */
    static double[] mercury(TransportInput input, int state, int variants) {
        StateLayout layout = input.layout();
        double[] mercury = new double[input.hydraulics().reaches().size() * layout.count() * variants];
        for (SiteRelease site : input.sites()) {
            for (int v = 0; v < variants; v++) {
                add(layout, site, state, v, mercury, site.reach() * layout.count() * variants + v, variants);
            }
        }
        return mercury;
    }

    /** Adds one site's mercury [kg/s], form i at {@code offset + i x stride}. */
    static void add(
            StateLayout layout, SiteRelease site, int state, int variant, double[] into, int offset, int stride) {
        double all = site.mercury().get(state);
        site.further(variant).forEach((form, share) -> into[offset + layout.place(form) * stride] += all * share);
        double mercury = all * site.divalent(variant);
        double exchangeable = site.exchangeable(variant);
        into[offset + layout.exchangeable() * stride] += mercury * exchangeable;
        for (int j = 0; j < layout.classCount(); j++) {
            into[offset + layout.grainBound(j) * stride] +=
                    mercury * (1 - exchangeable) * site.classShares().get(j);
        }
    }
}
