// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

import java.util.List;

/**
 * How many samples lie how near to the model's range. Counts, so that nobody reads a share of three samples as a finding.
 *
 * @param detected samples with a number
 * @param inside of those, inside the model's range
 * @param within2 of those, within a factor of 2 of the nearest bound (inside counts)
 * @param within5 within a factor of 5
 * @param within10 within a factor of 10
 * @param sampleAbove of the detected, above the model's range
 * @param sampleBelow of the detected, below it
 * @param limits samples that are a limit
 * @param consistent of those, consistent with the model
 */
public record AgreementSummary(
        int detected,
        int inside,
        int within2,
        int within5,
        int within10,
        int sampleAbove,
        int sampleBelow,
        int limits,
        int consistent) {
    private static final double FIVE = 5;
    private static final double TEN = 10;

    /** Counts. */
    public static AgreementSummary of(List<Agreement> all) {
        List<Agreement> detected = all.stream().filter(Agreement::isDetected).toList();
        List<Agreement> limits = all.stream().filter(a -> !a.isDetected()).toList();
        return new AgreementSummary(
                detected.size(),
                (int) detected.stream().filter(Agreement::isInside).count(),
                (int) detected.stream().filter(a -> a.isWithin(2)).count(),
                (int) detected.stream().filter(a -> a.isWithin(FIVE)).count(),
                (int) detected.stream().filter(a -> a.isWithin(TEN)).count(),
                (int) detected.stream().filter(a -> a.ratio() > 1).count(),
                (int) detected.stream().filter(a -> a.ratio() < 1).count(),
                limits.size(),
                (int) limits.stream().filter(Agreement::isInside).count());
    }
}
