// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** Kinds of files a map can be written as. */
public enum MapFormat {
    /** Pixels, for screens and any printer. */
    PNG,
    /** Lines and letters, for websites and further drawing. */
    SVG,
    /** Lines and letters, for printing. */
    PDF;

    /** The end of a file's name, without the dot; also what users call the format. */
    public String ending() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** By its ending, in capitals or not. */
    public static Optional<MapFormat> of(String ending) {
        return Arrays.stream(values())
                .filter(format -> format.ending().equals(ending.strip().toLowerCase(Locale.ROOT)))
                .findFirst();
    }
}
