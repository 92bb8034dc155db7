// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.geo.GeoDataException;

/** Methow: a Shapefile without .prj, its true system given as code or as text. */
class MethowIT {
    private static final String CODE = "crs: ESRI:102008";

    /** ESRI:102008 from memory: North America Albers Equal Area Conic. */
    private static final String TEXT = "crs: 'PROJCS[\"North_America_Albers_Equal_Area_Conic\","
            + "GEOGCS[\"GCS_North_American_1983\",DATUM[\"D_North_American_1983\","
            + "SPHEROID[\"GRS_1980\",6378137,298.257222101]],PRIMEM[\"Greenwich\",0],UNIT[\"Degree\",0.0174532925199433]],"
            + "PROJECTION[\"Albers\"],PARAMETER[\"False_Easting\",0],PARAMETER[\"False_Northing\",0],"
            + "PARAMETER[\"Central_Meridian\",-96],PARAMETER[\"Standard_Parallel_1\",20],"
            + "PARAMETER[\"Standard_Parallel_2\",60],PARAMETER[\"Latitude_Of_Origin\",40],UNIT[\"Meter\",1]]'";

    /** ROUNDING: lengths and sums of some hundred terms. */
    private static final double ROUNDING_PERCENT = 1e-7;

    /** ROUNDING: the slope is written with six decimals. */
    private static final double ROUNDING = 1e-9;

    /** PRINTED: the README gives the area to 0.1 km2. */
    private static final double PRINTED = 0.05;

    private static final double SQUARE_KILOMETER = 1e6;

    /** 8 L/s/km2 [m/s]. */
    private static final double SPECIFIC = 8e-9;

    @TempDir
    private Path folder;

    @Test
    void withoutASystemItIsRefused() {
        RealScenario scenario = RealScenario.of("methow", folder).with(CODE, "# none");
        assertThatThrownBy(scenario::run)
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("Methow_Network")
                .hasMessageContaining("states no coordinate system; give rivers.crs");
    }

    @Test
    void asTextItIsTheSameAsByCode(@TempDir Path second) {
        Reaches code = new Reaches(RealScenario.of("methow", folder).run());
        Reaches text =
                new Reaches(RealScenario.of("methow", second).with(CODE, TEXT).run());
        assertThat(text.size()).isEqualTo(code.size());
        for (int r = 0; r < code.size(); r++) {
            assertThat(text.feature(r)).isEqualTo(code.feature(r));
            assertThat(text.basin().table().length(r))
                    .isCloseTo(code.basin().table().length(r), withinPercentage(ROUNDING_PERCENT));
        }
        // README: 720 lines, one outlet, its area the largest, 4650.8 km2; slope 0.001 floor
        assertThat(code.lasts().count()).isEqualTo(720);
        int outlet = code.last("10");
        assertThat(code.basin().network().isOutlet(outlet)).isTrue();
        assertThat(code.water().end(outlet) / SPECIFIC / SQUARE_KILOMETER).isCloseTo(4650.8, within(PRINTED));
        assertThat(code.lasts().mapToDouble(code.hydraulics()::slope).min().orElseThrow())
                .isCloseTo(0.001, within(ROUNDING));
    }
}
