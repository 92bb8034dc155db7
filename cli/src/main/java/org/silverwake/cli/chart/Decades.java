// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.awt.geom.Rectangle2D;
import java.util.stream.DoubleStream;

/**
 * A logarithmic axis over whole decades.
 *
 * @param lowest exponent of the lower end [-]
 * @param highest exponent of the upper end [-], above {@code lowest}
 */
record Decades(int lowest, int highest) {
    /** More decades than this and nothing can be read from across a hall. */
    private static final int MOST = 6;

    /**
     * Decades that hold all values of a profile, but no more than {@value #MOST} below the largest; smaller values are drawn on
     * the lower edge. Guideline values are always within.
     */
    static Decades of(Profile profile) {
        double[] guidelines = profile.guidelines().stream()
                .mapToDouble(Profile.GuidelineValue::value)
                .toArray();
        double[] values = DoubleStream.concat(
                        profile.samples().stream().mapToDouble(Profile.Sample::value),
                        profile.stretches().stream()
                                .flatMap(s -> s.points().stream())
                                .flatMapToDouble(p -> DoubleStream.of(p.low(), p.high(), p.background())))
                .toArray();
        return of(values, guidelines);
    }

    /** Decades that hold values and guideline values in the same way. */
    static Decades of(double[] values, double[] guidelines) {
        double[] all = DoubleStream.concat(DoubleStream.of(guidelines), DoubleStream.of(values))
                .filter(v -> v > 0)
                .toArray();
        int highest = (int) Math.ceil(Math.log10(DoubleStream.of(all).max().orElse(1)));
        int lowest = (int) Math.floor(Math.log10(DoubleStream.of(all).min().orElse(1)));
        int wanted =
                (int) Math.floor(Math.log10(DoubleStream.of(guidelines).min().orElse(Double.MAX_VALUE)));
        lowest = Math.max(lowest, highest - MOST);
        lowest = Math.min(lowest, wanted);
        return new Decades(Math.min(lowest, highest - 1), highest);
    }

    /** Whether no value lies below the axis. */
    boolean holdsAll(Profile profile) {
        return profile.samples().stream().allMatch(s -> s.value() >= from())
                && profile.stretches().stream()
                        .flatMap(s -> s.points().stream())
                        .allMatch(p -> Math.min(p.low(), p.background()) >= from());
    }

    /** Decades from one number of the axis to the next, so that no more than six are written. */
    int labelStep() {
        return (highest - lowest + MOST - 2) / (MOST - 1);
    }

    double from() {
        return Math.pow(10, lowest);
    }

    double to() {
        return Math.pow(10, highest);
    }

    /** Height of a value within an area of the page, never below the axis. */
    double y(double value, Rectangle2D area) {
        double part = (Math.log10(drawn(value)) - lowest) / (highest - lowest);
        return area.getMaxY() - part * area.getHeight();
    }

    /** A value as it is drawn: never below the axis. */
    double drawn(double value) {
        return Math.max(value, from());
    }
}
