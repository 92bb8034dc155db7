// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.silverwake.geo.map.MapFormat;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** What the maps of a run are written as: pictures, as charts are too, and files that know where on the ground they lie. */
enum RunFormat {
    PNG(Optional.of(MapFormat.PNG)),
    SVG(Optional.of(MapFormat.SVG)),
    PDF(Optional.of(MapFormat.PDF)),
    /** The map alone as a GeoTIFF. */
    TIF(Optional.empty()),
    /** For map viewers on phones. */
    KMZ(Optional.empty());

    private final Optional<MapFormat> picture;

    RunFormat(Optional<MapFormat> picture) {
        this.picture = picture;
    }

    /** The kind of picture, if it is one. */
    Optional<MapFormat> picture() {
        return picture;
    }

    private String ending() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** A word of the option. */
    static final class Word implements ITypeConverter<RunFormat> {
        @Override
        public RunFormat convert(String word) {
            return Arrays.stream(values())
                    .filter(format -> format.ending().equals(word.strip().toLowerCase(Locale.ROOT)))
                    .findFirst()
                    .orElseThrow(() -> new TypeConversionException("\"" + word.strip()
                            + "\" is not a kind of map file; give one or more of "
                            + Arrays.stream(values()).map(RunFormat::ending).collect(Collectors.joining(", "))));
        }
    }
}
