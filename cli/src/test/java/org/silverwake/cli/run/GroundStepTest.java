// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.report.MapFiles;
import org.silverwake.cli.report.Maps;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.map.MapFormat;

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

    private static final String STYLE = """
            <FeatureTypeStyle version="1.1.0" xmlns="http://www.opengis.net/se" xmlns:ogc="http://www.opengis.net/ogc">
            <Rule><Description><Title>Road to the mills</Title></Description>
            <ogc:Filter><ogc:PropertyIsNotEqualTo><ogc:PropertyName>name</ogc:PropertyName><ogc:Literal>nowhere</ogc:Literal>
            </ogc:PropertyIsNotEqualTo></ogc:Filter>
            <LineSymbolizer><Stroke><SvgParameter name="stroke">#7b1fa2</SvgParameter></Stroke></LineSymbolizer></Rule>
            </FeatureTypeStyle>
            """;

    @Test
    void aStyleOfItsOwnDrawsALayerAndItsTitlesStandInTheLegend() throws IOException {
        Path demo = changed("roads.geojson, kind: roads,", "roads.geojson, kind: roads, style: roads.sld,");
        Files.writeString(demo.resolveSibling("roads.sld"), STYLE);
        var outcome = MainRun.run(demo, step -> {});
        assertThat(outcome.scenario().sourceFiles())
                .extracting(file -> file.file().toString())
                .contains("roads.sld");
        Maps.draw(
                outcome,
                new MapFiles(folder.resolve("maps"), Set.of(MapFormat.SVG), false),
                Optional.empty(),
                false,
                false);
        Path map = folder.resolve("maps").resolve("CCME-FW-iHg-dry.svg");
        assertThat(Files.readString(map))
                .contains("Road to the mills")
                .containsPattern("stroke=\"(#7b1fa2|rgb\\(123,31,162\\))\"");
    }

    @Test
    void whatAStyleCannotDoIsToldWithItsPlace() throws IOException {
        Path demo = changed("roads.geojson, kind: roads,", "roads.geojson, kind: roads, style: roads.sld,");
        replace(demo, "lakes.geojson, kind: lakes,", "lakes.geojson, kind: lakes, style: lakes.sld,");
        String text = "<TextSymbolizer><Label><ogc:PropertyName>name</ogc:PropertyName></Label></TextSymbolizer>";
        Files.writeString(
                demo.resolveSibling("roads.sld"),
                STYLE.replace(">name<", ">surface<").replace("</Rule>", text + "</Rule>"));
        Files.writeString(demo.resolveSibling("lakes.sld"), STYLE.replace("#7b1fa2", "pale"));
        assertThatThrownBy(() -> Basin.of(Scenarios.read(demo)))
                .isInstanceOf(GeoDataException.class)
                .satisfies(e -> assertThat(e.getMessage().lines())
                        .anyMatch(line -> line.matches(
                                "scenario.yaml:\\d+.*style.*there is no column surface; its columns are" + " name.*"))
                        .anyMatch(line ->
                                line.matches("scenario.yaml:\\d+.*roads.sld has a TextSymbolizer; take it out.*"))
                        .anyMatch(line ->
                                line.matches("scenario.yaml:\\d+.*lakes.sld:5: stroke \"pale\" is no color.*")));
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
