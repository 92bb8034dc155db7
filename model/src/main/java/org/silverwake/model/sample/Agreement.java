// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.sample;

/**
 * A sample beside the model's range.
 *
 * <p>The ratio is sample over model, taken to the nearest bound: 1 inside the range, above 1 where the sample is above the
 * high bound (sample / high), below 1 where it is below the low bound (sample / low). A limit is set against the range as a
 * whole: the two contradict each other only where the whole range lies above a "<" or below a ">".
 *
 * @param kind what the sample is
 * @param ratio sample over nearest bound [-]; 1 where a limit is consistent; infinite where the model has 0
 */
public record Agreement(Reported.Kind kind, double ratio) {
    /** Sets a sample beside a range. */
    public static Agreement of(Reported reported, ModelRange model) {
        double value = reported.value();
        boolean over = value > model.high();
        boolean under = value < model.low();
        double ratio = 1;
        if (over && reported.kind() != Reported.Kind.BELOW) {
            ratio = value / model.high();
        } else if (under && reported.kind() != Reported.Kind.ABOVE) {
            ratio = value / model.low();
        }
        return new Agreement(reported.kind(), ratio);
    }

    /** Whether the sample is a number, not a limit. */
    public boolean isDetected() {
        return kind == Reported.Kind.DETECTED || kind == Reported.Kind.ESTIMATED;
    }

    /** Whether the sample lies inside the model's range; for a limit, whether the two may both be true. */
    public boolean isInside() {
        return ratio == 1;
    }

    /** Factor between the sample and the nearest bound, either way [-], at least 1. */
    public double factor() {
        return Math.max(ratio, 1 / ratio);
    }

    /**
     * Whether they differ by at most a factor.
     *
     * @param most the factor [-], at least 1
     */
    public boolean isWithin(double most) {
        return factor() <= most * (1 + 1e-12);
    }

    /** In words. */
    public String words() {
        return switch (kind) {
            case DETECTED, ESTIMATED ->
                isInside()
                        ? "inside the model's range"
                        : ratio > 1 ? "sample above the model's range" : "sample below the model's range";
            case BELOW -> isInside() ? "consistent with the limit" : "model above the limit";
            case ABOVE -> isInside() ? "consistent with the limit" : "model below the limit";
        };
    }
}
