// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A UTM zone as it stands on field sheets: its number with north or south, or with the letter of a latitude band (C to X
 * without I and O, each of 8 degrees from 80 S; X of 12).
 *
 * @param number 1 to 60
 * @param south whether northings count from 10,000 km south
 */
record UtmZone(int number, boolean south) {
    private static final Pattern WRITTEN =
            Pattern.compile("(?:(?i:utm|zone|zona|huso|fuso|fuseau)[\\s.:]*)*(\\d{1,2})[\\s-]*(\\p{L}*)\\.?");
    private static final String BANDS = "CDEFGHJKLMNPQRSTUVWX";
    private static final double BAND = 8;
    private static final double HIGHEST = 84;
    /** Length of a degree of latitude on the ellipsoid lies between 110.5 and 111.7 km; times the scale 0.9996 [m]. */
    private static final double DEGREE = 111_000;
    /** Northings tell the latitude to within this by the mean degree [degrees]. */
    private static final double ROUGH = 0.6;

    private static final double FALSE_NORTHING = 1e7;

    /**
     * Reads a zone.
     *
     * @param text of the zone
     * @param hemisphere of its own column, where there is one
     * @param northing beside it [m]; NaN where it could not be read
     * @throws IllegalArgumentException in words for the user, with both readings where there are two
     */
    static UtmZone read(String text, Optional<String> hemisphere, double northing) {
        Matcher matcher = WRITTEN.matcher(text.strip().replaceAll("\\.0+$", ""));
        int number = matcher.matches() ? Integer.parseInt(matcher.group(1)) : 0;
        if (number < 1 || number > 60) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is not a UTM zone; give 1 to 60 and north or south, such as 21 south");
        }
        String letters = matcher.group(2);
        Optional<Boolean> stated = hemisphere.map(UtmZone::half);
        if (letters.isEmpty()) {
            return new UtmZone(
                    number,
                    stated.orElseThrow(() -> new IllegalArgumentException(
                            "zone " + number + " is there north and south of the equator; give " + number + " south or "
                                    + number + " north")));
        }
        boolean south = letters.length() == 1 ? ofLetter(number, letters, stated, northing) : half(letters);
        if (stated.isPresent() && stated.get() != south) {
            throw new IllegalArgumentException("zone \"" + text + "\" and hemisphere \"" + hemisphere.get()
                    + "\" contradict each other; keep the right one");
        }
        return new UtmZone(number, south);
    }

    private static boolean ofLetter(int number, String letter, Optional<Boolean> stated, double northing) {
        int band = BANDS.indexOf(letter.toUpperCase(Locale.ROOT));
        if (band < 0) {
            throw new IllegalArgumentException("zone \"" + number + letter + "\": " + letter
                    + " is no latitude band; give " + number + " south or " + number + " north");
        }
        boolean south = band < BANDS.indexOf('N');
        double low = band * BAND - 80;
        double high = band == BANDS.length() - 1 ? HIGHEST : low + BAND;
        if (letter.equalsIgnoreCase("S")) {
            return ofS(number, stated, northing, low, high);
        }
        double latitude = latitude(northing, south);
        boolean isHalf = letter.equalsIgnoreCase("N");
        if (!isHalf && (latitude < low - ROUGH || latitude > high + ROUGH)) {
            throw new IllegalArgumentException("zone " + number + letter + " lies between latitudes " + Key.show(low)
                    + " and " + Key.show(high) + ", but northing " + Key.show(northing) + " m is at about "
                    + Key.show(Math.rint(latitude * 10) / 10) + "; give " + number + " south or " + number + " north");
        }
        return south;
    }

    /** S may be the hemisphere or the band from 32 to 40 north; the northing often tells. */
    private static boolean ofS(int number, Optional<Boolean> stated, double northing, double low, double high) {
        if (stated.isPresent()) {
            return stated.get();
        }
        double latitude = latitude(northing, false);
        if (latitude < low - ROUGH || latitude > high + ROUGH) {
            return true;
        }
        throw new IllegalArgumentException("zone \"" + number + "S\" could be zone " + number
                + " south (latitude about "
                + Key.show(Math.rint(latitude(northing, true) * 10) / 10) + ") or band S of zone " + number
                + ", north of the equator (latitude about " + Key.show(Math.rint(latitude * 10) / 10) + "); give "
                + number + " south or " + number + " north");
    }

    private static double latitude(double northing, boolean south) {
        return (northing - (south ? FALSE_NORTHING : 0)) / DEGREE;
    }

    private static boolean half(String text) {
        return switch (text.strip().toLowerCase(Locale.ROOT)) {
            case "s", "south", "sur", "sul", "sud", "southern" -> true;
            case "n", "north", "norte", "nord", "northern" -> false;
            default ->
                throw new IllegalArgumentException("\"" + text.strip() + "\" is no hemisphere; give north or south");
        };
    }
}
