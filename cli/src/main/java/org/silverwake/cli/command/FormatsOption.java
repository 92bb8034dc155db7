// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.stream.Collectors;
import org.silverwake.geo.map.MapFormat;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;

/** As which kinds of files maps and charts are written. */
final class FormatsOption {
    @Option(
            names = "--formats",
            paramLabel = "FORMAT",
            split = ",",
            defaultValue = "png",
            converter = Format.class,
            description =
                    "What maps and charts are written as, one or more of png, svg, pdf with commas between (default png).")
    private Set<MapFormat> formats = new LinkedHashSet<>();

    Set<MapFormat> formats() {
        return formats;
    }

    /** A word of the option. */
    static final class Format implements ITypeConverter<MapFormat> {
        @Override
        public MapFormat convert(String word) {
            return MapFormat.of(word)
                    .orElseThrow(() -> new TypeConversionException(
                            "\"" + word.strip() + "\" is not a kind of picture file; give one or more of "
                                    + Arrays.stream(MapFormat.values())
                                            .map(MapFormat::ending)
                                            .collect(Collectors.joining(", "))));
        }
    }
}
