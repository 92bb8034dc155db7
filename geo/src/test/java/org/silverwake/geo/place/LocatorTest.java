// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.Assembly;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.assembly.Sketch;
import org.silverwake.geo.crs.LayerCrs;

class LocatorTest {
    /** MEASUREMENT: the sketch's meters are laid on a plane; 1 cm in 1 km is well above its error. */
    private static final double SKETCH = 0.02;

    private static RiverMap stem() {
        return Assembly.assemble(
                new Sketch().line("stem", Map.of(), 0, 2000, 0, 0).layer(), AssemblyOptions.drawn(1));
    }

    private static PointRequest at(String kind, double east, double north) {
        Coordinate c = Sketch.at(east, north);
        return new PointRequest(kind, "A", "lab.csv:2", c.x, c.y, false, 500, Optional.empty());
    }

    @Test
    void pointIsFoundOnTheCutReachWithoutFurtherCuts() {
        RiverMap cut = Placer.place(stem(), LayerCrs.wgs84(), List.of(at("site", 10, 1500)))
                .map();
        assertThat(cut.reachCount()).isEqualTo(2);
        LocatedPoint.OnReach on = new Locator(cut, LayerCrs.wgs84())
                .locate(at("sample", 40, 1200))
                .at()
                .orElseThrow();
        assertThat(cut.reachCount()).isEqualTo(2);
        assertThat(on.distanceMeters()).isCloseTo(40, within(SKETCH));
        assertThat(on.chainageMeters()).isCloseTo(800, within(SKETCH));
        assertThat(on.reachMeters()).isCloseTo(300, within(SKETCH));
        assertThat(on.featureId()).isEqualTo("stem");
    }

    /** At the site's own cut the reach below it is meant, which has the site's mercury. */
    @Test
    void atACutTheReachBelowIsMeant() {
        Placement placement = Placer.place(stem(), LayerCrs.wgs84(), List.of(at("site", 0, 1500)));
        LocatedPoint.OnReach on = new Locator(placement.map(), LayerCrs.wgs84())
                .locate(at("sample", 0, 1500))
                .at()
                .orElseThrow();
        assertThat(on.reach()).isEqualTo(placement.points().get(0).headReach());
    }

    @Test
    void tooFarIsAReasonAndNoError() {
        LocatedPoint far = new Locator(stem(), LayerCrs.wgs84()).locate(at("sample", 700, 1000));
        assertThat(far.at()).isEmpty();
        assertThat(far.refusal())
                .startsWith("lies 700 m from the nearest reach")
                .contains("at most 500 m is allowed");
        PointRequest zero = new PointRequest("sample", "A", "lab.csv:2", 0, 0, false, 500, Optional.empty());
        assertThat(new Locator(stem(), LayerCrs.wgs84()).locate(zero).refusal()).contains("no position fix");
    }
}
