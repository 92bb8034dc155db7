// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.geo.place.PointRequest;

class CheckPictureTest {
    private static final RiverMap MAP = InventedRivers.tree(4, 7);
    private static final int BELOW_HEADING = 420;
    private static final int MAP_COLUMNS = 2200;

    @TempDir
    Path folder;

    private BufferedImage drawn(RiverMap map, List<PlacedPoint> points) throws Exception {
        Path file = folder.resolve("check.png");
        CheckPicture.draw(map, points, "Lantern River", file);
        return ImageIO.read(file.toFile());
    }

    private static PlacedPoint point(String kind, int reach) {
        Coordinate at = MAP.reach(reach).line().getCoordinateN(1);
        var request = new PointRequest(kind, kind, "points.csv:2", at.x, at.y, false, 500, Optional.empty());
        return new PlacedPoint(request, at.x, at.y, at.x, at.y, 0, "L1", 0, 0);
    }

    /** The upper left corner is the band's, or the paper's. */
    @Test
    void singleSitesAreNotForPosting() throws Exception {
        int paper = 0xffffffff;
        assertThat(drawn(MAP, List.of(point("place", 3))).getRGB(5, 5)).isEqualTo(paper);
        assertThat(drawn(MAP, List.of(point("place", 3), point("site", 9))).getRGB(5, 5))
                .isNotEqualTo(paper);
    }

    /** A null shape has no place: the map is the same as without it, the list is longer. */
    @Test
    void defectWithoutPlaceIsListedOnly() throws Exception {
        Defect none = new Defect(
                Defect.Kind.NULL_SHAPE,
                Double.NaN,
                Double.NaN,
                List.of("L9"),
                "feature L9 has no shape",
                "left out",
                true);
        BufferedImage with = drawn(new RiverMap(MAP.reaches(), MAP.nodeCount(), List.of(none)), List.of());
        BufferedImage without = drawn(new RiverMap(MAP.reaches(), MAP.nodeCount(), List.of()), List.of());
        assertThat(differing(with, without, 0, MAP_COLUMNS)).isZero();
        assertThat(differing(with, without, MAP_COLUMNS, with.getWidth())).isPositive();
    }

    private static int differing(BufferedImage a, BufferedImage b, int from, int to) {
        int count = 0;
        for (int y = BELOW_HEADING; y < a.getHeight(); y++) {
            for (int x = from; x < to; x++) {
                count += a.getRGB(x, y) == b.getRGB(x, y) ? 0 : 1;
            }
        }
        return count;
    }
}
