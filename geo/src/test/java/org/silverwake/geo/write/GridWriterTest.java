// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import org.geotools.coverage.grid.GridCoverage2D;
import org.geotools.gce.geotiff.GeoTiffReader;
import org.geotools.geometry.Position2D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class GridWriterTest {
    /** ROUNDING: corners are sums of a few doubles near 30, 4 x 4e-15. */
    private static final double ROUNDING = 2e-14;

    @TempDir
    Path folder;

    private static Grid grid() {
        float[] values = new float[7 * 5];
        for (int k = 0; k < values.length; k++) {
            values[k] = k * 1.25f;
        }
        values[8] = Float.NaN;
        return new Grid(-20.5, -29.5, 0.01, 7, values);
    }

    /** Against an independent reader: the GeoTIFF reader of GeoTools. */
    @Test
    void geoToolsReadsWhatWasWritten() throws Exception {
        Path file = folder.resolve("dem.tif");
        GridWriter.write(file, grid());
        GeoTiffReader reader = new GeoTiffReader(file.toFile());
        GridCoverage2D coverage = reader.read((org.geotools.api.parameter.GeneralParameterValue[]) null);
        var extent = coverage.getEnvelope2D();
        assertThat(extent.getMinX()).isCloseTo(-20.5, within(ROUNDING));
        assertThat(extent.getMaxY()).isCloseTo(-29.5, within(ROUNDING));
        assertThat(extent.getMaxX()).isCloseTo(-20.43, within(ROUNDING));
        assertThat(extent.getMinY()).isCloseTo(-29.55, within(ROUNDING));
        assertThat(org.geotools.referencing.CRS.lookupEpsgCode(coverage.getCoordinateReferenceSystem(), false))
                .isEqualTo(4326);
        // row 3, column 2 from the north-west: value 1.25 x (3 x 7 + 2)
        Position2D middle = new Position2D(coverage.getCoordinateReferenceSystem(), -20.5 + 0.025, -29.5 - 0.035);
        assertThat(((float[]) coverage.evaluate(middle))[0]).isEqualTo(28.75f);
        assertThat(coverage.getRenderedImage().getData().getSampleFloat(1, 1, 0))
                .isEqualTo(GridWriter.NO_VALUE);
        reader.dispose();
    }

    @Test
    void sameGridGivesSameBytes() throws Exception {
        GridWriter.write(folder.resolve("a.tif"), grid());
        GridWriter.write(folder.resolve("b.tif"), grid());
        assertThat(Files.mismatch(folder.resolve("a.tif"), folder.resolve("b.tif")))
                .isEqualTo(-1);
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(2);
        }
    }

    @Test
    void refusesRaggedRows() {
        assertThatThrownBy(() -> new Grid(0, 0, 1, 4, new float[7])).hasMessageContaining("give whole rows");
    }
}
