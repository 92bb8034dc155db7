// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.model.quantity.DecimalMark;

class ScenarioWriterTest {
    @TempDir
    private Path folder;

    private String written(ScenarioInput input) throws IOException {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            ScenarioWriter.write(input, json);
        }
        return text.toString();
    }

    @Test
    void defaultsAreFilledInAndNoPathOfThisMachineIsLeft() throws IOException {
        String text = written(
                new ScenarioFolder(folder).plus("mercury: {log10-kd: 5.1}").read());
        assertThat(text)
                .contains("\"rivers\":{\"file\":\"rivers.gpkg\"")
                .contains("\"mercury.log10-kd [log10 L/kg]\":{\"value\":5.1,\"given\":true}")
                .contains("\"background.solids-mercury-content [mg/kg]\":{\"value\":0.05,\"given\":false}")
                .contains("\"density [kg/m3]\":2650.0")
                .contains("\"temperature [degC]\":21.0")
                .contains("\"path\":\"slurry\",\"release [kg/s]\":[")
                .contains("\"use\":[\"village\",\"fishing\"],\"people\":420")
                .doesNotContain(folder.toString())
                .doesNotContain("NaN");
    }

    @Test
    void classesAndFieldsAreThereWithTheirDefaults() throws IOException {
        String text = written(new ScenarioFolder(folder)
                .plus("""
                        reach-classes:
                          canal: {column: use, values: [a, b], guidelines: [WHO-DW-iHg], legal: by-law}
                          middle: {ranges: [{from: L2, from-chainage: 2 km}], guidelines: WHO-DW-iHg}
                          park: {polygons: {file: rivers.gpkg, layer: parks}, guidelines: WHO-DW-iHg}
                          rest: {default: true, guidelines: WHO-DW-iHg}
                        abstractions: {file: abstractions.csv}
                        """)
                .file("abstractions.csv", """
                        name,longitude,latitude,discharge,use,area
                        Canal,-20.1,-30.1,50 L/s,irrigation,3 ha
                        """)
                .read());
        assertThat(text)
                .contains("\"people\":420,\"people_source\":\"head count\"")
                .contains("\"area [m2]\":30000.0,\"plough_depth [m]\":0.2,\"soil_density [kg/m3]\":1300.0")
                .contains("\"legal\":\"by-law\",\"column\":\"use\",\"values\":[\"a\",\"b\"]")
                .contains("\"ranges\":[{\"from\":\"L2\",\"from-chainage [m]\":2000.0}]")
                .contains("\"polygons\":{\"file\":\"rivers.gpkg\",\"layer\":\"parks\"}")
                .contains("\"default\":true");
    }

    @Test
    void twoReadingsWriteTheSameBytes() throws IOException {
        assertThat(written(new ScenarioFolder(folder).read())).isEqualTo(written(new ScenarioFolder(folder).read()));
    }

    @Test
    void sitesMayComeFromAPointLayer() {
        // the seam for point layers: anything but .csv is asked of the caller's reader
        new ScenarioFolder(folder)
                .with("sites.csv", "sites.geojson")
                .file("sites.geojson", "{}")
                .problems();
        Table table = new Table(
                "sites.geojson",
                Set.of("name", "path", "release", "x", "y"),
                List.of(new Table.Line(
                        1, Map.of("name", "Pond", "path", "seepage", "release", "2 g/d", "x", "5", "y", "6"))),
                DecimalMark.POINT);
        ScenarioInput input = ScenarioReader.read(folder, file -> table);
        assertThat(input.sites()).extracting(s -> s.where()).containsExactly("sites.geojson:1");
        assertThat(input.sites().get(0).position().inLayerCrs()).isTrue();
    }
}
