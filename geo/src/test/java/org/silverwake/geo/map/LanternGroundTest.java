// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;

/**
 * Makes the invented layers under the maps of the demo, and sees that the files in its folder are the ones made here. Written anew with
 * {@code -Dsilverwake.rewrite=true}. Places are rough points of the map, joined or rounded by seeded random bends.
 */
class LanternGroundTest {
    private static final Path DEMO = Path.of("..", "scenarios", "lantern");
    private static final int HALVINGS = 4;
    private static final int CORNERS = 48;
    /** A degree of longitude is so much shorter there than one of latitude [-]: cos 30 degrees. */
    private static final double NARROW = 0.866;

    private final List<String> features = new ArrayList<>();

    @Test
    void filesAreTheOnesMadeHere() throws IOException {
        for (Map.Entry<String, String> file : files().entrySet()) {
            Path path = DEMO.resolve(file.getKey());
            if (Boolean.getBoolean("silverwake.rewrite")) {
                Files.writeString(path, file.getValue());
            }
            assertThat(Files.readString(path)).isEqualToNormalizingNewlines(file.getValue());
        }
    }

    @Test
    void lakesKeepOffTheRivers() {
        List<LayerFeature> rivers = read(DEMO.resolve("rivers.gpkg"));
        for (LayerFeature lake : read(DEMO.resolve("lakes.geojson"))) {
            assertThat(rivers).noneMatch(river -> river.geometry().intersects(lake.geometry()));
        }
    }

    private static List<LayerFeature> read(Path file) {
        return Layers.read(
                        new LayerSource(file, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()))
                .features();
    }

    private Map<String, String> files() {
        Map<String, String> files = new LinkedHashMap<>();
        road(
                "Wick Road",
                1,
                -20.40,
                -30.055,
                -20.3676,
                -30.0293,
                -20.25,
                -30.015,
                -20.0702,
                -30.0276,
                -20.0045,
                -30.0598);
        road("Wick Road", 2, -20.0045, -30.0598, -19.8737, -30.0494, -19.7581, -30.0452, -19.6335, -30.0731);
        road(
                "Lamplighters' Way",
                3,
                -20.3676,
                -30.0293,
                -20.29,
                -29.95,
                -20.1609,
                -29.8825,
                -20.03,
                -29.85,
                -19.9391,
                -29.7975);
        road("Ember Track", 4, -19.8737, -30.0494, -19.86, -29.98, -19.8195, -29.9126, -19.7636, -29.8811);
        road("Clay Track", 5, -20.0702, -30.0276, -20.04, -29.98, -20.0149, -29.9432, -20.0, -29.88, -20.03, -29.85);
        files.put("roads.geojson", collected());
        area("Mirror Tarn", 11, -20.28, -29.848, 0.015);
        area("Still Tarn", 12, -19.70, -29.985, 0.005);
        files.put("lakes.geojson", collected());
        area("Lucernhaven", 21, -20.362, -30.026, 0.012);
        area("Mwangurobe", 22, -20.069, -30.022, 0.008);
        area("Candelhas Novas", 23, -19.874, -30.046, 0.007);
        point("Cinderfold", -20.29, -29.95);
        point("Smolder End", -19.86, -29.98);
        point("Ashholt", -20.03, -29.85);
        point("Tallow Cross", -19.69, -30.052);
        files.put("settlements.geojson", collected());
        area("Snuffer Wood", 31, -20.17, -29.965, 0.035);
        area("Beeswax Wood", 32, -19.69, -29.88, 0.045);
        area("", 33, -19.93, -30.105, 0.024);
        area("", 34, -20.10, -29.835, 0.022);
        area("Dimming Wood", 35, -19.94, -29.975, 0.026);
        files.put("forest.geojson", collected());
        return files;
    }

    private String collected() {
        String all = features.stream().collect(Collectors.joining(",\n"));
        features.clear();
        return "{\"type\": \"FeatureCollection\", \"features\": [\n" + all + "\n]}\n";
    }

    private void feature(String name, String type, String coordinates) {
        features.add(
                "{\"type\": \"Feature\", \"properties\": {\"name\": " + (name.isEmpty() ? "null" : "\"" + name + "\"")
                        + "}, \"geometry\": {\"type\": \"" + type + "\", \"coordinates\": " + coordinates + "}}");
    }

    private void point(String name, double longitude, double latitude) {
        feature(name, "Point", at(new Coordinate(longitude, latitude)));
    }

    /** A line whose middles are moved aside again and again. */
    private void road(String name, long seed, double... places) {
        Random random = new Random(seed);
        List<Coordinate> line = new ArrayList<>();
        for (int k = 0; k < places.length; k += 2) {
            line.add(new Coordinate(places[k], places[k + 1]));
        }
        for (int round = 0; round < HALVINGS; round++) {
            List<Coordinate> finer = new ArrayList<>(List.of(line.get(0)));
            for (int k = 1; k < line.size(); k++) {
                Coordinate a = line.get(k - 1);
                Coordinate b = line.get(k);
                double aside = 0.2 * (random.nextDouble() - 0.5);
                finer.add(new Coordinate(
                        (a.x + b.x) / 2 - aside * (b.y - a.y) / NARROW,
                        (a.y + b.y) / 2 + aside * (b.x - a.x) * NARROW));
                finer.add(b);
            }
            line = finer;
        }
        feature(name, "LineString", listed(line));
    }

    /** A circle with dents. */
    private void area(String name, long seed, double longitude, double latitude, double radius) {
        Random random = new Random(seed);
        double[] phases = random.doubles(4, 0, 2 * Math.PI).toArray();
        List<Coordinate> ring = new ArrayList<>();
        for (int k = 0; k <= CORNERS; k++) {
            double angle = 2 * Math.PI * (k % CORNERS) / CORNERS;
            double far = radius;
            for (int wave = 0; wave < phases.length; wave++) {
                far += radius * 0.28 / (wave + 1) * StrictMath.cos((wave + 2) * angle + phases[wave]);
            }
            ring.add(new Coordinate(
                    longitude + 1.3 * far * StrictMath.cos(angle) / NARROW, latitude + far * StrictMath.sin(angle)));
        }
        feature(name, "Polygon", "[" + listed(ring) + "]");
    }

    private static String listed(List<Coordinate> places) {
        return places.stream().map(LanternGroundTest::at).collect(Collectors.joining(", ", "[", "]"));
    }

    private static String at(Coordinate place) {
        return String.format(Locale.ROOT, "[%.5f, %.5f]", place.x, place.y);
    }
}
