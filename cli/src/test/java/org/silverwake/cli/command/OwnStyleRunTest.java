// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The demo's maps by a style of the user's own. */
class OwnStyleRunTest {
    private static final String STYLE = """
            <FeatureTypeStyle version="1.1.0" xmlns="http://www.opengis.net/se" xmlns:ogc="http://www.opengis.net/ogc">
            <Rule><Description><Title>Long reaches</Title></Description>
            <ogc:Filter><ogc:PropertyIsGreaterThan><ogc:PropertyName>length_m</ogc:PropertyName><ogc:Literal>5000</ogc:Literal>
            </ogc:PropertyIsGreaterThan></ogc:Filter>
            <LineSymbolizer><Stroke><SvgParameter name="stroke">#7b1fa2</SvgParameter></Stroke></LineSymbolizer></Rule>
            <Rule><Description><Title>Short reaches</Title></Description><ElseFilter/>
            <LineSymbolizer><Stroke><SvgParameter name="stroke">#123abc</SvgParameter></Stroke></LineSymbolizer></Rule>
            </FeatureTypeStyle>
            """;

    @TempDir
    private Path folder;

    private Messy.Said run(String style) throws IOException {
        Path file = Files.writeString(folder.resolve("my.sld"), style);
        return Messy.say(
                "run",
                Messy.LANTERN.toString(),
                "--style",
                file.toString(),
                "--formats",
                "svg",
                "--out",
                folder.resolve("out").toString());
    }

    @Test
    void reachesHaveItsColorsAndTheLegendItsTitles() throws IOException {
        Messy.Said said = run(STYLE);
        assertThat(said.code()).as("%s", said.err()).isZero();
        try (Stream<Path> maps = Files.list(folder.resolve("out/maps"))) {
            assertThat(maps.toList())
                    .hasSize(3)
                    .allSatisfy(map -> assertThat(Files.readString(map))
                            .containsPattern("stroke=\"(#7b1fa2|rgb\\(123,31,162\\))\"")
                            .contains(
                                    "Long reaches",
                                    "Short reaches",
                                    "Drawn by the style file my.sld",
                                    "not a finding of")
                            .doesNotContain("May be above: low estimate"));
        }
    }

    @Test
    void unknownColumnsAndWhatCannotBeDrawnAreUsageErrors() throws IOException {
        run(STYLE.replace("length_m", "length_km")).refuses(2, "my.sld: reaches have no column length_km");
        run(STYLE.replace("#123abc", "pale")).refuses(2, "my.sld:7: stroke \"pale\" is no color");
        assertThat(folder.resolve("out")).doesNotExist();
    }
}
