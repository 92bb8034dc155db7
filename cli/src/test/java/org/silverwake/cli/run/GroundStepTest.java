// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.geo.GeoDataException;

class GroundStepTest {
    @TempDir
    private Path folder;

    @Test
    void everyProblemHasItsLineTogetherWithThoseOfTheRiver() throws IOException {
        Path demo = changed("roads.geojson, kind: roads, label: name", "roads.geojson, kind: roads, label: nome");
        replace(demo, "forest.geojson, kind", "rivers.gpkg, layer: woods, kind");
        replace(demo, "drainage-area: {column: area_km2", "drainage-area: {column: area_mi2");
        assertThatThrownBy(() -> Basin.of(Scenarios.read(demo)))
                .isInstanceOf(GeoDataException.class)
                .satisfies(e -> assertThat(e.getMessage().lines())
                        .anyMatch(line -> line.contains("area_mi2"))
                        .anyMatch(line -> line.matches(
                                "scenario.yaml:\\d+.*label.*there is no column nome; its columns" + " are name"))
                        .anyMatch(line -> line.matches("scenario.yaml:\\d+.*there is no layer \"woods\".*")));
    }

    @Test
    void aGreenIsRefused() throws IOException {
        Path demo = changed("kind: forest,", "kind: forest, color: \"#3a8a4a\",");
        assertThatThrownBy(() -> Scenarios.read(demo))
                .isInstanceOf(ScenarioException.class)
                .hasMessageContaining("is a green");
    }

    @Test
    void layersAreInputsOfTheRun() {
        assertThat(Scenarios.read(DemoCopy.LANTERN.resolve("scenario.yaml")).sourceFiles())
                .extracting(file -> file.file().toString())
                .contains("roads.geojson", "lakes.geojson", "settlements.geojson", "forest.geojson");
    }

    private Path changed(String from, String to) throws IOException {
        Path demo = DemoCopy.into(folder.resolve("demo")).resolve("scenario.yaml");
        replace(demo, from, to);
        return demo;
    }

    private static void replace(Path file, String from, String to) throws IOException {
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
    }
}
