// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.terrain.ElevationModel;
import org.silverwake.geo.write.Grid;
import org.silverwake.geo.write.GridWriter;
import org.silverwake.model.water.DrainageArea;

/** The demo with areas from its raster, wholly and where the layer's are missing. */
class RasterAreasTest {
    /** PINNED: the demo's raster shows land up to 6 km from its rivers, all of which drains to them [km2]. */
    private static final double LAND = 3455.390;

    private static final double PINNED = 0.005;
    private static final double SQUARE_KILOMETER = 1e6;
    private static final String COLUMN = "    drainage-area: {column: area_km2, unit: km2, missing: -9999}\n";

    @TempDir
    private Path folder;

    private Outcome run(String column) throws IOException {
        return MainRun.run(scenario(column), step -> {});
    }

    private Path scenario(String column) throws IOException {
        DemoCopy.into(folder);
        Path yaml = folder.resolve("scenario.yaml");
        String text = Files.readString(yaml, StandardCharsets.UTF_8);
        assertThat(text).contains(COLUMN).contains("dem.tif, unit: m}");
        Files.writeString(
                yaml,
                text.replace(COLUMN, column).replace("dem.tif, unit: m}", "dem.tif, unit: m, drainage-area: true}"));
        return folder;
    }

    /** The eastern half of the demo's raster, moved to the west by some degrees. */
    private void halve(double moved) {
        Path file = folder.resolve("dem.tif");
        ElevationModel whole = ElevationModel.read(file, 1);
        float[] heights = new float[125 * 150];
        for (int cell = 0; cell < heights.length; cell++) {
            double longitude = -20.02 + (cell % 125 + 0.5) * 0.004;
            double latitude = -29.72 - (cell / 125 + 0.5) * 0.004;
            heights[cell] = (float) whole.elevation(longitude, latitude).orElse(Double.NaN);
        }
        GridWriter.write(file, new Grid(-20.02 - moved, -29.72, 0.004, 125, heights));
    }

    private static int reach(Outcome outcome, String id) {
        for (int r = 0; r < outcome.basin().network().size(); r++) {
            if (outcome.basin().network().id(r).equals(id)) {
                return r;
            }
        }
        throw new AssertionError("no reach " + id);
    }

    @Test
    void withoutAColumnTheRasterGivesAllAreas() throws IOException {
        Outcome outcome = run("");
        DrainageArea areas = outcome.water().areas().orElseThrow();
        assertThat(areas.method()).isEqualTo("elevation raster");
        assertThat(areas.missing()).isEmpty();
        assertThat(areas.total(reach(outcome, "L001")) / SQUARE_KILOMETER).isCloseTo(LAND, within(PINNED));
        assertThat(outcome.warnings())
                .anySatisfy(w -> assertThat(w)
                        .startsWith("drainage area: of 102 of 102 reaches from")
                        .contains("3455 km2 drain to the rivers", "0 km2 of its land run off over its edge"));
    }

    @Test
    void withAColumnTheRasterFillsWhatIsMissing() throws IOException {
        Outcome outcome = run(COLUMN.replace("-9999", "[-9999, 48.2]"));
        DrainageArea areas = outcome.water().areas().orElseThrow();
        assertThat(areas.method()).isEqualTo("attribute, elevation raster where missing");
        List<String> filled =
                areas.filled().stream().map(outcome.basin().network()::id).toList();
        assertThat(filled).allSatisfy(id -> assertThat(id).startsWith("L021"));
        assertThat(filled).isNotEmpty();
        assertThat(areas.total(areas.filled().get(0))).isPositive();
        // the layer's own stay as they are
        assertThat(areas.total(reach(outcome, "L001")) / SQUARE_KILOMETER).isCloseTo(2493.0, within(PINNED));
    }

    @Test
    void withAColumnForAllTheRasterIsNotAsked() throws IOException {
        Outcome outcome = run(COLUMN);
        assertThat(outcome.water().areaMethod()).isEqualTo("attribute");
        assertThat(outcome.warnings()).anySatisfy(w -> assertThat(w).contains("the raster's are not used"));
    }

    @Test
    void whereTheRasterEndsItIsSaidWithThePointsBelow() throws IOException {
        Path scenario = scenario("");
        halve(0);
        Outcome outcome = MainRun.run(scenario, step -> {});
        assertThat(outcome.warnings())
                .anySatisfy(w -> assertThat(w).startsWith("dem.tif: has no height at an end of"))
                .anySatisfy(w -> assertThat(w).contains("reaches have no drainage area; they add no water"))
                .anySatisfy(w -> assertThat(w)
                        .startsWith("drainage area: land at the raster's edge drains to")
                        .contains("may be too small and their discharge wrong; there lie "));
        int outlet = reach(outcome, "L001");
        assertThat(outcome.water().areas().orElseThrow().total(outlet) / SQUARE_KILOMETER)
                .isLessThan(LAND);
    }

    @Test
    void aRasterOfAnotherPlaceIsRefusedAsSuch() throws IOException {
        Path scenario = scenario("");
        halve(5);
        assertThatThrownBy(() -> MainRun.run(scenario, step -> {}))
                .isInstanceOf(GeoDataException.class)
                .hasMessage(
                        "dem.tif: has no height at any reach of the river layer; give a raster that covers it and whose"
                                + " coordinate system is right, or leave rivers.elevation out");
    }
}
