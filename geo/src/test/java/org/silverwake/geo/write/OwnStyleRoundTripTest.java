// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.OwnStyle;

class OwnStyleRoundTripTest {
    /** What we write for a GIS we read back, and know which column it asks for. */
    @Test
    void stylesWrittenForLayersAreRead(@TempDir Path folder) throws Exception {
        ReachStyle style = new ReachStyle(
                "answers",
                "class",
                List.of(
                        new LineClass("far", "Above, by > 50 x", "#2b0a2f", 7, List.of()),
                        new LineClass("may", "May be above & near", "#ea8f4c", 4.2, List.of(6.0, 2.5))));
        Path file = Files.writeString(folder.resolve("layer.sld"), SldWriter.lines("reaches", style));
        OwnStyle read = OwnStyle.read(file);
        assertThat(read.unknown(List.of("reach", "class"))).isEmpty();
        assertThat(read.unknown(List.of("reach"))).containsExactly("class");
    }
}
