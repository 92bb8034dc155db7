// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.Optional;
import java.util.OptionalDouble;

/** How long the scale bar takes on foot and by boat, and that real ways take longer. */
final class Travel {
    private static final double SECONDS_PER_MINUTE = 60;
    private static final long MINUTES_PER_HOUR = 60;
    /** Up to so many minutes, times are told to a number of minutes [min]; chosen: nobody walks more exactly. */
    private static final double[][] STEPS = {{15, 1}, {60, 5}, {180, 15}, {360, 30}, {Double.POSITIVE_INFINITY, 60}};

    private Travel() {}

    /**
     * The sentences; empty where no speed is given.
     *
     * @param length the bar's, as written
     * @param meters the same [m], above 0
     */
    static Optional<String> line(String length, double meters, Ground ground, GroundWords words) {
        StringBuilder line = new StringBuilder();
        append(line, words.onFoot(), length, meters, ground.walking(), words);
        append(line, words.byBoat(), length, meters, ground.boat(), words);
        return line.length() == 0
                ? Optional.empty()
                : Optional.of(line.append(words.longer()).toString());
    }

    private static void append(
            StringBuilder line, String pattern, String length, double meters, OptionalDouble speed, GroundWords words) {
        if (speed.isPresent()) {
            line.append(pattern.replace("{0}", length).replace("{1}", time(meters / speed.getAsDouble(), words)))
                    .append(' ');
        }
    }

    /** A time [s] in words, rounded as one would say it. */
    static String time(double seconds, GroundWords words) {
        double exact = seconds / SECONDS_PER_MINUTE;
        int step = 0;
        while (exact > STEPS[step][0]) {
            step++;
        }
        long minutes = Math.max(1, Math.round(exact / STEPS[step][1]) * (long) STEPS[step][1]);
        long hours = minutes / MINUTES_PER_HOUR;
        long rest = minutes % MINUTES_PER_HOUR;
        if (hours == 0) {
            return words.minutes().replace("{0}", Long.toString(rest));
        }
        return rest == 0
                ? words.hours().replace("{0}", Long.toString(hours))
                : words.hoursMinutes().replace("{0}", Long.toString(hours)).replace("{1}", Long.toString(rest));
    }
}
