// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.write.Grid;
import org.silverwake.geo.write.GridWriter;

class ElevationModelTest {
    /** ROUNDING: SRTM heights are whole meters; four products of weights in double. */
    private static final double ROUNDING = 1e-6;

    private static Path dem(String name) {
        String shared = System.getProperty("silverwake.shared");
        Path file = Path.of(shared == null ? "." : shared, "data", "open", "dem", name);
        assumeTrue(Files.exists(file), "skipped: the open test data is not here");
        return file;
    }

    @Test
    void missingAndUnreadableFilesGiveOneLine(@TempDir Path folder) throws IOException {
        assertThatThrownBy(() -> ElevationModel.read(folder.resolve("none.tif"), 1))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("no such elevation file")
                .satisfies(e -> assertThat(e.getMessage().lines()).hasSize(1));
        Path text = Files.writeString(folder.resolve("text.tif"), "this is no raster at all, only words");
        assertThatThrownBy(() -> ElevationModel.read(text, 1))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("cannot be read as a GeoTIFF")
                .satisfies(e -> assertThat(e.getMessage().lines()).hasSize(1));
        Path tiny = Files.write(folder.resolve("tiny.tif"), new byte[] {'I', 'I', 42, 0});
        assertThatThrownBy(() -> ElevationModel.read(tiny, 1)).isInstanceOf(GeoDataException.class);
    }

    @Test
    void heightsLieBetweenThoseOfTheFourCells() {
        ElevationModel model = ElevationModel.read(dem("srtm3_N42E001_wgs84.tif"), 1);
        // README: 1201 x 1201 cells of 3", so that cell centers lie on whole multiples of 3"
        double step = 1.0 / 1200;
        double lon = 1.5;
        double lat = 42.5;
        double[] corner = new double[4];
        for (int k = 0; k < 4; k++) {
            corner[k] = model.elevation(lon + k % 2 * step, lat + k / 2 * step).getAsDouble();
            assertThat(corner[k]).isCloseTo(Math.rint(corner[k]), within(1e-3));
        }
        double middle = model.elevation(lon + step / 2, lat + step / 2).getAsDouble();
        assertThat(middle).isCloseTo((corner[0] + corner[1] + corner[2] + corner[3]) / 4, within(1e-3));
        ElevationModel feet = ElevationModel.read(dem("srtm3_N42E001_wgs84.tif"), 0.3048);
        assertThat(feet.elevation(lon, lat).getAsDouble())
                .isCloseTo(0.3048 * model.elevation(lon, lat).getAsDouble(), within(ROUNDING));
    }

    @Test
    void noHeightOutside() {
        ElevationModel model = ElevationModel.read(dem("srtm3_N42E001_wgs84.tif"), 1);
        assertThat(model.elevation(0.99, 42.5)).isEmpty();
        assertThat(model.elevation(1.5, 43.01)).isEmpty();
        assertThat(model.elevation(-20, -30)).isEmpty();
        assertThat(model.columns()).isEqualTo(1201);
        assertThat(model.rows()).isEqualTo(1201);
    }

    @Test
    void longitudesAreCountedAsTheRasterCountsThem(@TempDir Path folder) {
        float[] heights = {10, 20, 30, 40};
        Path across = folder.resolve("across.tif");
        GridWriter.write(across, new Grid(179.8, -16, 0.1, 4, heights));
        ElevationModel onward = ElevationModel.read(across, 1);
        assertThat(onward.elevation(179.85, -16.05).getAsDouble()).isCloseTo(10, within(ROUNDING));
        assertThat(onward.elevation(-179.85, -16.05).getAsDouble()).isCloseTo(40, within(ROUNDING));
        assertThat(onward.elevation(180.15, -16.05).getAsDouble()).isCloseTo(40, within(ROUNDING));
        assertThat(onward.elevation(180, -16.05).getAsDouble()).isCloseTo(25, within(ROUNDING));
        Path west = folder.resolve("west.tif");
        GridWriter.write(west, new Grid(-180, -16, 0.1, 4, heights));
        ElevationModel plain = ElevationModel.read(west, 1);
        assertThat(plain.elevation(180.15, -16.05).getAsDouble()).isCloseTo(20, within(ROUNDING));
        assertThat(plain.elevation(180, -16.05).getAsDouble()).isCloseTo(10, within(ROUNDING));
        assertThat(plain.elevation(179.85, -16.05)).isEmpty();
    }

    /** Some programs write a raster as one strip; as large as it is, it is read in bands. */
    @Test
    void oneLargeStripIsReadInBands(@TempDir Path folder) {
        RasterFile raster = new RasterFile(2500, 2001, 32721, 500_000, 8_000_000, 10);
        RasterFile.Heights heights =
                (column, row) -> column == row ? Double.NaN : column * 0.5 + (row * 7919 % 2001) * 0.25;
        ElevationModel model = ElevationModel.read(raster.writeAsOneStrip(folder.resolve("strip.tif"), heights), 1);
        int wrong = 0;
        for (int cell = 0; cell < 2500 * 2001; cell++) {
            float expected = (float) heights.at(cell % 2500, cell / 2500);
            wrong += Float.compare((float) model.height(cell), expected) == 0 ? 0 : 1;
        }
        assertThat(wrong).isZero();
    }
}
