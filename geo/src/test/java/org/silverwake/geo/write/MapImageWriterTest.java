// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.geom.AffineTransform;
import java.awt.image.Raster;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.geotools.coverage.grid.GridCoverage2D;
import org.geotools.gce.geotiff.GeoTiffReader;
import org.geotools.referencing.CRS;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.silverwake.geo.assembly.ReachPart;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.map.Ground;
import org.silverwake.geo.map.MapBasis;
import org.silverwake.geo.map.MapImage;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.geo.map.MapSheet;
import org.silverwake.geo.map.MapWords;
import org.silverwake.geo.map.Paper;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.ReachShade;

class MapImageWriterTest {
    /** ROUNDING: the same double, written and read. */
    private static final double ROUNDING = 1e-12;
    /** DISCRETIZATION: a pixel, by which an edge may be off. */
    private static final double A_PIXEL = 1;

    private static final double WEST = -20.05;
    private static final double EAST = -19.95;
    private static final double LATITUDE = -30.02;
    /** Of the class "below by this estimate": #6497ce. */
    private static final int[] BLUE = {0x64, 0x97, 0xce};

    @TempDir
    private Path folder;

    /** One reach from west to east, and one far away that makes room. */
    private static RiverMap map() {
        return new RiverMap(
                List.of(reach("A", 0, WEST, LATITUDE, EAST, LATITUDE), reach("B", 1, -20.2, -30.1, -20.2, -29.9)),
                4,
                List.of());
    }

    private static RiverMap.Reach reach(String id, int number, double x0, double y0, double x1, double y1) {
        Coordinate[] ends = {new Coordinate(x0, y0), new Coordinate(x1, y1)};
        return new RiverMap.Reach(
                id,
                new ReachPart(id, number, 0, 0, 1000, false),
                2 * number,
                2 * number + 1,
                1000,
                new GeometryFactory().createLineString(ends),
                Optional.empty(),
                Map.of(),
                Map.of());
    }

    private static MapSheet sheet(boolean notForPosting) {
        MapBasis basis = new MapBasis(
                "Lantern River",
                notForPosting ? List.of(new MapPoint(MapPoint.Kind.SITE, "Shed 1", -20.2, -30)) : List.of(),
                List.of(),
                List.of("This is a screening."),
                "a test",
                LocalDate.of(2026, 11, 25),
                notForPosting,
                MapWords.english(),
                Paper.A4,
                Ground.bare());
        return new MapSheet(
                basis,
                "dry season in Ljóskelda",
                "Estimate over guideline",
                List.of(ReachShade.BELOW.withLegend("below"), ReachShade.NOT_ASSESSED.withLegend("not assessed")),
                MapSheet.Summary.none(),
                List.of(new ReachMark(0, false, false, false), new ReachMark(1, false, false, false)),
                List.of(),
                "A factor of 5.");
    }

    private Path written(boolean notForPosting) {
        Path file = folder.resolve("map.tif");
        MapImageWriter.write(file, MapImage.of(map(), sheet(notForPosting), Optional.empty()));
        return file;
    }

    /** Against an independent reader: the GeoTIFF reader of GeoTools. The line's pixels lie where the line is, its half width around it. */
    @Test
    void geoToolsFindsTheReachWhereTheLayerSaysItIs() throws Exception {
        GeoTiffReader reader = new GeoTiffReader(written(false).toFile());
        GridCoverage2D coverage = reader.read((org.geotools.api.parameter.GeneralParameterValue[]) null);
        assertThat(CRS.lookupEpsgCode(coverage.getCoordinateReferenceSystem(), false))
                .isEqualTo(4326);
        assertThat(coverage.getNumSampleDimensions()).isEqualTo(4);
        Raster pixels = coverage.getRenderedImage().getData();
        List<int[]> blue = new ArrayList<>();
        int[] pixel = new int[4];
        for (int y = 0; y < pixels.getHeight(); y++) {
            for (int x = 0; x < pixels.getWidth(); x++) {
                pixels.getPixel(x, y, pixel);
                // more than half of it covered by the line
                if (pixel[0] == BLUE[0] && pixel[1] == BLUE[1] && pixel[2] == BLUE[2] && pixel[3] > 127) {
                    blue.add(new int[] {x, y});
                }
            }
        }
        var extent = coverage.getEnvelope2D();
        double width = extent.getWidth() / pixels.getWidth();
        double height = extent.getHeight() / pixels.getHeight();
        // a class's line of 2.2 points, at 300 dots per inch, with round ends
        double half = ReachShade.BELOW.withLegend("").width() / 2 * 300 / 72;
        assertThat(blue.stream().mapToInt(at -> at[0]).min().orElseThrow())
                .isCloseTo(edge((WEST - extent.getMinX()) / width - half), within((int) A_PIXEL));
        assertThat(blue.stream().mapToInt(at -> at[0] + 1).max().orElseThrow())
                .isCloseTo(edge((EAST - extent.getMinX()) / width + half), within((int) A_PIXEL));
        double middle = (extent.getMaxY() - LATITUDE) / height;
        assertThat(blue.stream().mapToInt(at -> at[1]).min().orElseThrow())
                .isCloseTo(edge(middle - half), within((int) A_PIXEL));
        assertThat(blue.stream().mapToInt(at -> at[1] + 1).max().orElseThrow())
                .isCloseTo(edge(middle + half), within((int) A_PIXEL));
        reader.dispose();
    }

    private static int edge(double pixels) {
        return (int) Math.round(pixels);
    }

    /** Where nothing is drawn the picture is transparent, but for the strip that says what it shows. */
    @Test
    void paperIsTransparentAndTheStripBelowIsNot() {
        MapImage image = MapImage.of(map(), sheet(false), Optional.empty());
        assertThat(image.isOpaque()).isFalse();
        assertThat(image.argb(0, 0)).isZero();
        assertThat(image.argb(0, image.rows() - 1)).isEqualTo(0xffffffff);
        int inked = 0;
        for (int x = 0; x < image.columns(); x++) {
            inked += (image.argb(x, image.rows() - 40) & 0xff) < 128 ? 1 : 0;
        }
        assertThat(inked).as("letters of the caution").isPositive();
    }

    @Test
    void whereSingleSitesShowABandSaysSoAndTheMapStaysWhereItIs() {
        MapImage with = MapImage.of(map(), sheet(true), Optional.empty());
        MapImage without = MapImage.of(map(), sheet(false), Optional.empty());
        assertThat(with.argb(with.columns() - 1, 0)).isEqualTo(0xff2b0a2f);
        assertThat(with.description()).startsWith("NOT FOR POSTING");
        assertThat(without.description()).doesNotContain("NOT FOR POSTING").contains("This is a screening.");
        assertThat(with.north()).isGreaterThan(without.north());
    }

    /** Against an independent program, where the machine has it: gdalinfo and gdallocationinfo of GDAL. */
    @Test
    void gdalFindsSystemAndReach() {
        Programs.require("gdalinfo");
        Path file = written(true);
        MapImage image = MapImage.of(map(), sheet(true), Optional.empty());
        String told = Programs.says("gdalinfo", "-json", file.toString());
        assertThat(told).contains("ID[\\\"EPSG\\\",4326]").doesNotContain("Warning", "ERROR");
        assertThat(told).contains("\"COMPRESSION\":\"DEFLATE\"", "\"colorInterpretation\":\"Alpha\"", "Ljóskelda");
        Matcher numbers = Pattern.compile("\"geoTransform\":\\s*\\[([^]]*)]").matcher(told);
        assertThat(numbers.find()).isTrue();
        String[] transform = numbers.group(1).split(",");
        AffineTransform to = new AffineTransform(
                Double.parseDouble(transform[1]),
                Double.parseDouble(transform[4]),
                Double.parseDouble(transform[2]),
                Double.parseDouble(transform[5]),
                Double.parseDouble(transform[0]),
                Double.parseDouble(transform[3]));
        assertThat(to.getTranslateX()).isCloseTo(image.west(), within(ROUNDING));
        assertThat(to.getTranslateY()).isCloseTo(image.north(), within(ROUNDING));
        assertThat(to.getScaleX()).isCloseTo(image.degreesEastPerPixel(), within(ROUNDING));
        assertThat(to.getScaleY()).isCloseTo(-image.degreesNorthPerPixel(), within(ROUNDING));
        for (double longitude : new double[] {WEST, EAST}) {
            String value = Programs.says(
                    "gdallocationinfo", "-valonly", "-wgs84", file.toString(), "" + longitude, "" + LATITUDE);
            assertThat(value.strip().split("\\s+")).containsExactly("100", "151", "206", "255");
        }
    }

    @Test
    void samePictureGivesSameBytes() throws Exception {
        byte[] first = Files.readAllBytes(written(true));
        assertThat(Files.readAllBytes(written(true))).isEqualTo(first);
        try (var files = Files.list(folder)) {
            assertThat(files).hasSize(1);
        }
    }
}
