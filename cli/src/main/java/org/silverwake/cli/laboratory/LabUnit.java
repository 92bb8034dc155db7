// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.quantity.Unit;
import org.silverwake.model.screening.Basis;

/**
 * A unit as laboratories write it, with the weight it refers to where the unit says so.
 *
 * @param unit the unit
 * @param isWater mass per volume; otherwise mass per mass
 * @param basis wet or dry weight if the unit's own words say so
 * @param said how an unclear spelling was understood, if it was one
 */
record LabUnit(Unit unit, boolean isWater, Optional<Basis> basis, Optional<String> said) {
    private static final Pattern DRY =
            Pattern.compile("(?i)[\\s,(-]+(dry|dw|d\\.w\\.|dry[ -]?w(eigh)?t\\.?|dry basis)\\)?$");
    private static final Pattern WET = Pattern.compile(
            "(?i)[\\s,(-]+(wet|ww|w\\.w\\.|wet[ -]?w(eigh)?t\\.?|wet basis|fw|fresh|fresh[ -]?w(eigh)?t\\.?)\\)?$");
    private static final Pattern MINUS_ONE =
            Pattern.compile("([A-Za-z]+)[ .\u00b7]+([A-Za-z]+)(?:\\^?-1|\u207b\u00b9)");

    private static final Map<String, String> PARTS_IN_WATER = Map.of("ppm", "mg/L", "ppb", "ug/L");
    private static final Map<String, String> PARTS_IN_SOLIDS = Map.of("ppm", "mg/kg", "ppb", "ug/kg");

    /**
     * The unit.
     *
     * @param water whether the sample is water, which settles what parts per billion are
     * @throws IllegalArgumentException in words for the user
     */
    static LabUnit of(String text, boolean water) {
        String rest = tidy(text);
        Optional<Basis> basis = Optional.empty();
        if (DRY.matcher(rest).find()) {
            basis = Optional.of(Basis.DRY_WEIGHT);
            rest = DRY.matcher(rest).replaceAll("");
        } else if (WET.matcher(rest).find()) {
            basis = Optional.of(Basis.WET_WEIGHT);
            rest = WET.matcher(rest).replaceAll("");
        }
        String word = rest.strip().toLowerCase(Locale.ROOT);
        if (word.matches("ppt|ppq")) {
            throw new IllegalArgumentException(
                    "unit " + text + " has two meanings; give ng/L, ug/L, ug/kg or the like");
        }
        Map<String, String> parts = water ? PARTS_IN_WATER : PARTS_IN_SOLIDS;
        Optional<String> said = Optional.ofNullable(parts.get(word))
                .map(u -> word + " in " + (water ? "water" : "solids") + " understood as " + u);
        Unit unit = find(text, parts.getOrDefault(word, rest.strip()), water);
        return new LabUnit(unit, water, basis, said);
    }

    private static Unit find(String written, String text, boolean water) {
        Dimension wanted = water ? Dimension.CONCENTRATION : Dimension.MASS_CONTENT;
        Dimension other = water ? Dimension.MASS_CONTENT : Dimension.CONCENTRATION;
        String spelling = text.equals(text.toUpperCase(Locale.ROOT)) ? text.toLowerCase(Locale.ROOT) : text;
        Optional<Unit> found = wanted.findUnit(spelling);
        if (found.isPresent()) {
            return found.get();
        }
        if (other.findUnit(spelling).isPresent()) {
            throw new IllegalArgumentException("unit " + written + " is mass per " + (water ? "mass" : "volume")
                    + ", which does not go with " + (water ? "water" : "solids or tissue"));
        }
        throw new IllegalArgumentException("unit " + written + " is not known; give one of " + wanted.accepted());
    }

    private static String tidy(String text) {
        String plain = text.replace('\u00a0', ' ')
                .replaceAll("[\u00b5\u03bc]", "u")
                .replaceAll("(?i)mcg", "ug")
                .replaceAll("(?i)[\\s(]+as hg\\)?", "")
                .strip();
        Matcher inverse = MINUS_ONE.matcher(plain);
        return inverse.find() ? inverse.replaceFirst("$1/$2") : plain;
    }
}
