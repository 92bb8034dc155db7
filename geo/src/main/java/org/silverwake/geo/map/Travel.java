// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

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
        List<String> times = new ArrayList<>();
        if (ground.walking().isPresent()) {
            double seconds = meters / ground.walking().getAsDouble();
            times.add(words.onFoot().replace("{0}", time(seconds, words)));
        }
        if (ground.boat().isPresent()) {
            double seconds = meters / ground.boat().getAsDouble();
            times.add(words.byBoat().replace("{0}", time(seconds, words)));
        }
        return times.isEmpty()
                ? Optional.empty()
                : Optional.of(words.straight().replace("{0}", length).replace("{1}", String.join(", ", times)) + " "
                        + words.longer());
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
