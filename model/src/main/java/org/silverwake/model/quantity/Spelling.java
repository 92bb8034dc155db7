// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.quantity;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Brings the usual variants of a unit to the one spelling used here. Case counts, except l for L. */
final class Spelling {
    private static final Map<String, String> TOKENS = Map.ofEntries(
            Map.entry("l", "L"),
            Map.entry("ml", "mL"),
            Map.entry("a", "yr"),
            Map.entry("y", "yr"),
            Map.entry("year", "yr"),
            Map.entry("day", "d"),
            Map.entry("hr", "h"),
            Map.entry("sec", "s"),
            Map.entry("tonne", "t"),
            Map.entry("micron", "um"),
            Map.entry("sqkm", "km2"),
            Map.entry("sqmi", "mi2"),
            Map.entry("ft3", "cf"),
            Map.entry("cfs", "cf/s"),
            Map.entry("C", "degC"),
            Map.entry("F", "degF"),
            Map.entry("degree", "deg"),
            Map.entry("degrees", "deg"),
            Map.entry("\u00b0", "deg"));

    private Spelling() {}

    /** The spelling used in {@link Dimension}, or the text itself, tidied, where no variant is known. */
    static String canonical(String text) {
        String plain = text.strip()
                .replace('\u00b5', 'u') // micro sign
                .replace('\u03bc', 'u') // Greek mu
                .replace('\u00b2', '2')
                .replace('\u00b3', '3')
                .replace("^", "")
                .replace("\u00b0C", "degC")
                .replace("\u00baC", "degC")
                .replaceAll("\\s*/\\s*", "/");
        List<String> tokens = new ArrayList<>();
        for (String token : plain.split("/")) {
            tokens.add(TOKENS.getOrDefault(token, token));
        }
        return String.join("/", tokens).replace("cf/s", "cfs");
    }
}
