// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.silverwake.geo.map.MapFormat;
import picocli.CommandLine.Option;

/** As which kinds of files a run's maps and charts are written. */
final class RunFormatsOption {
    @Option(
            names = "--formats",
            paramLabel = "FORMAT",
            split = ",",
            defaultValue = "png",
            converter = RunFormat.Word.class,
            description =
                    "What maps and charts are written as, one or more of png, svg, pdf, tif, kmz with commas between"
                            + " (default png). tif (GeoTIFF) and kmz (for phones) are of maps alone.")
    private Set<RunFormat> formats = new LinkedHashSet<>();

    /** Kinds of pictures. */
    Set<MapFormat> pictures() {
        return formats.stream()
                .map(RunFormat::picture)
                .flatMap(Optional::stream)
                .collect(Collectors.toCollection(() -> EnumSet.noneOf(MapFormat.class)));
    }

    /** Whether one is asked for. */
    boolean has(RunFormat format) {
        return formats.contains(format);
    }
}
