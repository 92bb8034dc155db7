// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.geotools.api.feature.simple.SimpleFeature;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

/** Samples stand above their place, so that village and site stay seen, and on one another where there are several. */
class SamplePointsTest {
    private static final double SIZE = MapStyles.size(MapPoint.Kind.SAMPLE);

    private static SimpleFeature sample(MapPoint.Kind kind, String color) {
        return MapFeatures.points(List.of(new MapPoint(kind, "W-1", 10, 20, color)))
                .get(0);
    }

    private static BufferedImage painted(MapPoint.Kind kind, SimpleFeature feature) {
        BufferedImage image = new BufferedImage(100, 100, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.GRAY);
        g.fillRect(0, 0, 100, 100);
        new SymbolPainter(g, new LabelInk(new Rectangle2D.Double(0, 0, 100, 100)))
                .paint(
                        MapStyles.point(kind, MapStyles.mark(kind)),
                        feature,
                        new GeometryFactory().createPoint(new Coordinate(50, 60)));
        g.dispose();
        return image;
    }

    private static Color at(BufferedImage image, double x, double y) {
        return new Color(image.getRGB((int) Math.round(x), (int) Math.round(y)));
    }

    @Test
    void sampleHasTheColorOfItsClassAboveItsPlace() {
        BufferedImage image = painted(MapPoint.Kind.SAMPLE, sample(MapPoint.Kind.SAMPLE, "#a3213e"));
        assertThat(at(image, 50, 60 - SIZE + 0.25 * SIZE)).isEqualTo(Color.decode("#a3213e"));
        assertThat(at(image, 50, 62)).isEqualTo(Color.GRAY); // its own place stays free
    }

    @Test
    void belowTheLimitIsHollowAndCannotTellIsCrossed() {
        double y = 60 - SIZE + 0.25 * SIZE;
        MapPoint.Kind below = MapPoint.Kind.SAMPLE_BELOW_LIMIT;
        MapPoint.Kind untold = MapPoint.Kind.SAMPLE_CANNOT_TELL;
        assertThat(at(painted(below, sample(below, "")), 50, y)).isEqualTo(Color.WHITE);
        assertThat(at(painted(untold, sample(untold, "")), 50, y)).isNotEqualTo(Color.WHITE);
    }

    @Test
    void samplesOfOnePlaceStandOnOneAnother() {
        MapPoint one = new MapPoint(MapPoint.Kind.SAMPLE, "a", 10, 20, "#a3213e");
        MapPoint other = new MapPoint(MapPoint.Kind.SAMPLE, "b", 10, 20.5, "#a3213e");
        MapPoint village = new MapPoint(MapPoint.Kind.VILLAGE, "c", 10, 20);
        List<Object> up = MapFeatures.points(List.of(village, one, one, other, one, one)).stream()
                .map(feature -> feature.getAttribute("up"))
                .toList();
        assertThat(up).containsExactly(1.0, 1.0, 2.5, 1.0, 4.0, 4.0);
    }
}
