// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.Optional;

/**
 * A test of tailings on a shaking table or sluice: how much went over it, how much mercury it gave, and what an assay found in
 * what it left. A table misses flour below about 50 um (common practice, no source), so without that assay the content is a
 * lower bound.
 *
 * @param mass dry tailings processed [kg], above 0
 * @param recovered mercury given [kg], at least 0
 * @param remainder mercury content of what was left [kg/kg]; empty where it was not assayed
 */
public record TableTest(Noted mass, Noted recovered, Optional<Noted> remainder) {
    /**
     * Mercury content of the tailings [kg/kg], (recovered + remainder (mass - recovered))/mass, with its standard deviation by
     * first-order propagation; scales 10 % and assays 30 % where none is stated (common practice, no source).
     */
    public Noted content() {
        Noted m = mass.orRelative(Published.WEIGHED);
        Noted r = recovered.orRelative(Published.WEIGHED);
        Noted a = remainder.orElse(Noted.of(0)).orRelative(Published.ASSAYED);
        double share = r.value() / m.value();
        double content = share + a.value() * (1 - share);
        double byRecovered = (1 - a.value()) / m.value() * r.sd().orElse(0);
        double byMass = (1 - a.value()) * share / m.value() * m.sd().orElse(0);
        double byAssay = (1 - share) * a.sd().orElse(0);
        double variance = byRecovered * byRecovered + byMass * byMass + byAssay * byAssay;
        return Noted.of(content, StrictMath.sqrt(variance));
    }

    /** Whether the content is only known to be at least this. */
    public boolean isLowerBound() {
        return remainder.isEmpty();
    }
}
