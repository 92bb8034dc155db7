// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.Defect;

/** North Carolina: a Shapefile with gaps, flipped lines, null shapes, loops and circles. */
class NorthCarolinaIT {
    @TempDir
    private Path folder;

    @Test
    void asDrawnItEndsWithTheFeaturesThatRunInACircle() {
        RealScenario scenario = RealScenario.of("north-carolina", folder)
                .with(
                        "  elevation: {file: \""
                                + RealScenario.open().toString().replace('\\', '/')
                                + "/dem/elev_ned_30m.tif\", unit: m}",
                        "");
        assertThatThrownBy(scenario::run)
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("features 76955, 76962 run in a circle")
                .hasMessageContaining("orient-by");
    }

    /** PINNED, but null shapes, which the README counts too. */
    @Test
    void withHeightsItRunsAndListsWhatIsWrong() {
        Reaches reaches = new Reaches(RealScenario.of("north-carolina", folder).run());
        assertThat(reaches.lasts().count()).isPositive();
        Map<Defect.Kind, Integer> repaired = new EnumMap<>(Defect.Kind.class);
        Map<Defect.Kind, Integer> found = new EnumMap<>(Defect.Kind.class);
        for (Defect defect : reaches.basin().map().defects()) {
            (defect.repaired() ? repaired : found).merge(defect.kind(), 1, Integer::sum);
            assertThat(defect.featureIds()).as(defect.text()).isNotEmpty();
            assertThat(defect.remedy()).as(defect.text()).isNotBlank();
        }
        assertThat(repaired)
                .containsOnly(
                        Map.entry(Defect.Kind.NULL_SHAPE, 6),
                        Map.entry(Defect.Kind.GAP, 30),
                        Map.entry(Defect.Kind.SPLIT_AT_JUNCTION, 7),
                        Map.entry(Defect.Kind.FLIPPED_LINE, 7));
        assertThat(found)
                .containsOnly(
                        Map.entry(Defect.Kind.GAP, 378),
                        Map.entry(Defect.Kind.CROSSING_WITHOUT_NODE, 1),
                        Map.entry(Defect.Kind.ISOLATED_PART, 79),
                        Map.entry(Defect.Kind.LOOP, 55),
                        Map.entry(Defect.Kind.UPHILL_REACH, 213),
                        Map.entry(Defect.Kind.ROUGHNESS_OUT_OF_RANGE, 1686));
    }
}
