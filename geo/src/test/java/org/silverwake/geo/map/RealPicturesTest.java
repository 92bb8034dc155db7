// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.imageio.ImageIO;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.assembly.ReachPart;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;

/** Maps of real lines with invented looks, for the eye, in target/pictures. Lines are taken as drawn, each as a reach of its own. */
class RealPicturesTest {
    @ParameterizedTest
    @ValueSource(strings = {"nhdplus_new_hope_nc", "nhdplus_white_river_ar"})
    void realNetworksCanBeDrawn(String name) throws Exception {
        Path file = Path.of(System.getProperty("silverwake.shared", ""), "data/open/networks", name + ".gpkg");
        assumeTrue(Files.exists(file), "no shared data here: real networks are not drawn");
        List<RiverMap.Reach> reaches = new ArrayList<>();
        var source = new LayerSource(file, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
        for (LayerFeature feature : Layers.read(source).features()) {
            for (int k = 0; feature.geometry() != null && k < feature.geometry().getNumGeometries(); k++) {
                LineString line = (LineString) feature.geometry().getGeometryN(k);
                int n = reaches.size();
                Object river = feature.attributes().getOrDefault("gnis_name", "");
                reaches.add(new RiverMap.Reach(
                        "r" + n,
                        new ReachPart(feature.id(), n, k, 0, 1, false),
                        2 * n,
                        2 * n + 1,
                        line.getLength() * 1e5,
                        line,
                        Optional.of(river.toString()),
                        Map.of(),
                        Map.of()));
            }
        }
        RiverMap map = new RiverMap(reaches, 2 * reaches.size(), List.of());
        Path png = Files.createDirectories(Path.of("target/pictures")).resolve(name + ".png");
        ConcentrationMap.draw(map, Sheets.full(map, 3, Paper.A4), png);
        assertThat(ImageIO.read(png.toFile()).getHeight()).isEqualTo(2480);
    }
}
