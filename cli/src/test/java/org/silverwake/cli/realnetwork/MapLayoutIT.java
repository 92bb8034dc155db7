// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.layout.Drawn;
import org.silverwake.cli.layout.Overlaps;
import org.silverwake.cli.layout.SvgPage;

/**
 * The analyst's maps and the printed sheets of real rivers: nothing lies on what it must not. Sites and places are invented, or lie where
 * the files say.
 */
class MapLayoutIT {
    @TempDir
    private Path folder;

    /** 13 fishing grounds in pairs some tens of meters apart. */
    @Test
    void kampWithPlacesCloseTogether() {
        see(RealScenario.of("kamp", folder), 10);
    }

    /** 333 reaches with names, and places in a row along the river. */
    @Test
    void whiteRiverWithNamesOfRivers() {
        see(
                RealScenario.of("white-river", folder)
                        .plus("places: {file: places.csv, snap-distance: 5 km}")
                        .table(
                                "places.csv",
                                List.of(
                                        "name,use,people,longitude,latitude",
                                        "First Ford,village,10,-93.72,36.55",
                                        "Second Ford,village,20,-93.65,36.52",
                                        "Third Ford,drinking intake,0,-93.60,36.50",
                                        "A Fourth Ford with a long name,village,20,-93.71,36.56",
                                        "Fifth Ford,fishing,0,-93.70,36.55")),
                10);
    }

    private void see(RealScenario scenario, int leastNames) {
        List<Path> files =
                Drawn.maps(scenario.plus("guidelines: {use: [CCME-FW-iHg]}").run(), folder.resolve("maps"));
        assertThat(files).isNotEmpty();
        for (Path file : files) {
            SvgPage page = new SvgPage(file);
            assertThat(page.of("map", "label")).as(file + ": names").hasSizeGreaterThan(leastNames);
            assertThat(page.of("map", "symbol")).as(file + ": symbols").hasSizeGreaterThan(leastNames);
            assertThat(Overlaps.of(page)).as(file.toString()).isEmpty();
        }
    }
}
