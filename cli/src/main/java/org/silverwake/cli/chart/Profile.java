// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * A reach profile as it is drawn: a value against distance downstream along one path, in the unit it is shown in.
 *
 * @param title what and where, in a few words
 * @param subtitle flow state, averaging and the like
 * @param quantity what is drawn, without its unit, as "whole inorganic Hg in surface water"
 * @param unit unit of all values, as "ng/L"
 * @param start name of where the path begins; the axis reads "distance downstream from {start} [km]"
 * @param ofBounds whether low and high are the two bounds, else estimates of one answer
 * @param stretches parts of the path with values, in order; between them are gaps
 * @param gaps parts without values, and why
 * @param marks sites, tributaries and places along the path
 * @param guidelines values to compare with
 * @param samples field samples along the path
 * @param caution what a reader must know before using the chart
 * @param imprint date and maker
 */
public record Profile(
        String title,
        String subtitle,
        String quantity,
        String unit,
        String start,
        boolean ofBounds,
        List<Stretch> stretches,
        List<Gap> gaps,
        List<Mark> marks,
        List<GuidelineValue> guidelines,
        List<Sample> samples,
        String caution,
        String imprint) {
    /** A millimeter [km]: distances are summed along the path. */
    private static final double SAME_PLACE = 1e-6;

    /** Copies the lists. */
    public Profile {
        stretches = List.copyOf(stretches);
        gaps = joined(gaps);
        marks = List.copyOf(marks);
        guidelines = List.copyOf(guidelines);
        samples = List.copyOf(samples);
        if (stretches.stream().allMatch(s -> s.points().isEmpty()) && gaps.isEmpty()) {
            throw new IllegalArgumentException("profile " + title + ": nothing to draw");
        }
    }

    /** A profile of the two bounds without samples. */
    public Profile(
            String title,
            String subtitle,
            String quantity,
            String unit,
            String start,
            List<Stretch> stretches,
            List<Gap> gaps,
            List<Mark> marks,
            List<GuidelineValue> guidelines,
            String caution,
            String imprint) {
        this(
                title,
                subtitle,
                quantity,
                unit,
                start,
                true,
                stretches,
                gaps,
                marks,
                guidelines,
                List.of(),
                caution,
                imprint);
    }

    /** The same without samples, of which the high estimates of several scenarios are drawn. */
    public Profile ofScenarios() {
        return new Profile(
                title,
                subtitle + ", high estimate",
                quantity,
                unit,
                start,
                ofBounds,
                stretches,
                gaps,
                marks,
                guidelines,
                List.of(),
                caution,
                imprint);
    }

    /** A part of the path without a gap: points in downstream order; two at one distance make a step, as at a confluence. */
    public record Stretch(List<Point> points) {
        /** Copies the list. */
        public Stretch {
            points = List.copyOf(points);
        }
    }

    /**
     * Values at one distance, all in the profile's unit.
     *
     * @param kilometers distance downstream [km]
     * @param low lower bound, at least 0
     * @param high higher bound, at least {@code low}
     * @param background background alone, at least 0
     * @param withBed lowest and highest of the bed's own answer; empty where no bed is modelled
     */
    public record Point(double kilometers, double low, double high, double background, Optional<Range> withBed) {
        /** A point without a bed. */
        public Point(double kilometers, double low, double high, double background) {
            this(kilometers, low, high, background, Optional.empty());
        }

        /** Refuses what is negative, not finite or the wrong way round. */
        public Point {
            boolean ordered = low >= 0 && high >= low && background >= 0;
            if (!ordered || !Double.isFinite(kilometers + high + background)) {
                throw new IllegalArgumentException("at " + kilometers + " km: bounds " + low + " to " + high
                        + ", background " + background + "; must be finite, not negative, low to high");
            }
        }
    }

    /** Lowest and highest of some values, in the profile's unit. */
    public record Range(double low, double high) {}

    /** Whether the bed's own answer is there. */
    boolean hasBed() {
        return stretches.stream()
                .flatMap(s -> s.points().stream())
                .anyMatch(p -> p.withBed().isPresent());
    }

    /** A part without values [km], and why: "no water". */
    public record Gap(double fromKilometers, double toKilometers, String words) {}

    /** Something along the path [km]. */
    public record Mark(double kilometers, String name, Kind kind) {
        /** What it is. */
        public enum Kind {
            /** A discharge point. */
            SITE("discharge point"),
            /** A village, intake or other receptor. */
            PLACE("village, intake or other place"),
            /** A river that joins. */
            TRIBUTARY("tributary");

            private final String words;

            Kind(String words) {
                this.words = words;
            }

            /** Words for the legend. */
            public String words() {
                return words;
            }
        }
    }

    /** A value to compare with, in the profile's unit; {@code valueWords} as "26 ng/L, whole, mean over the year". */
    public record GuidelineValue(String name, String valueWords, double value) {}

    /**
     * A field sample.
     *
     * @param kilometers distance downstream [km]
     * @param value its value or limit, in the profile's unit, above 0
     * @param kind whether it is a value or a limit
     * @param name its code
     */
    public record Sample(double kilometers, double value, Kind kind, String name) {
        /** What the number is. */
        public enum Kind {
            /** The value itself. */
            VALUE("sample (measured)"),
            /** A limit that the value lies below. */
            BELOW("sample: not found, below the limit drawn"),
            /** A limit that the value lies above. */
            ABOVE("sample: above the end of the range drawn");

            private final String words;

            Kind(String words) {
                this.words = words;
            }

            /** Words for the legend. */
            public String words() {
                return words;
            }
        }
    }

    /** Gaps that follow one another for the same reason are one. */
    private static List<Gap> joined(List<Gap> gaps) {
        List<Gap> joined = new ArrayList<>();
        for (Gap gap : gaps) {
            Gap before = joined.isEmpty() ? null : joined.get(joined.size() - 1);
            if (before != null
                    && before.words().equals(gap.words())
                    && gap.fromKilometers() - before.toKilometers() <= SAME_PLACE) {
                joined.set(joined.size() - 1, new Gap(before.fromKilometers(), gap.toKilometers(), gap.words()));
            } else {
                joined.add(gap);
            }
        }
        return List.copyOf(joined);
    }

    /** Distance at which the path ends [km]. */
    double length() {
        double ends = stretches.stream()
                .flatMap(s -> s.points().stream())
                .mapToDouble(Point::kilometers)
                .max()
                .orElse(0);
        return Math.max(ends, gaps.stream().mapToDouble(Gap::toKilometers).max().orElse(0));
    }
}
