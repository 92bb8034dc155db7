// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.geo.assembly.AssemblyOptions;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.VectorLayer;

/** Guesses against what the columns of open river layers are known to be (README of the open data). */
class ColumnGuesserTest {
    @Test
    void demoIsUnderstoodWhole() {
        assertThat(guesses(Path.of("../scenarios/lantern/rivers.gpkg"), ""))
                .containsExactly("id = reach_id", "name = river", "drainage-area = area_km2 km2", "kind = kind");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "nhdplus_new_hope_nc.gpkg||id = COMID|drainage-area = TotDASqKM km2|local-area = AreaSqKM km2",
                "nhdplus_white_river_ar.gpkg||id = comid|drainage-area = totdasqkm km2|local-area = areasqkm km2",
                "methow_shp/Methow_Network.shp|ESRI:102008|id = GridID|drainage-area = usarea_km2 km2|elevation-lower = dselev_m m",
                "kamp_at/kamp_streams.gpkg||id = reach_id|drainage-area = da_km2 km2|elevation-lower = z_dn_m m",
            })
    void realLayers(String file, String crs, String first, String second, String third) {
        String shared = System.getProperty("silverwake.shared", "");
        Path path = Path.of(shared, "data/open/networks", file);
        assumeTrue(Files.isRegularFile(path), "open data is not here: " + path);
        assertThat(guesses(path, crs == null ? "" : crs)).contains(first, second, third);
    }

    private static java.util.List<String> guesses(Path file, String crs) {
        VectorLayer layer = Layers.read(new LayerSource(
                file,
                Optional.empty(),
                crs.isEmpty() ? Optional.empty() : Optional.of(crs),
                Optional.empty(),
                Optional.empty()));
        var drawn = DrawnNetwork.of(layer, AssemblyOptions.drawn(DrawnNetwork.SNAP));
        return new ColumnGuesser(layer, c -> drawn.map(n -> n.growth(c)).orElse(0.5))
                .guesses().stream()
                        .map(g -> g.role().key() + " = " + g.column()
                                + g.unit().map(u -> " " + u).orElse(""))
                        .toList();
    }
}
