// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.crs.Geodesy;
import org.silverwake.geo.crs.LayerCrs;

/** The real networks against the figures of the open data's README. */
class RealNetworksTest {
    /** PRINTED: the README gives lengths to 0.1 km, the largest to 1 km. */
    private static final double PRINTED = 0.051;

    /** Well-known text as the metadata of the Methow layer's source has it (ESRI:102008). */
    private static final String METHOW =
            "PROJCS[\"North_America_Albers_Equal_Area_Conic\",GEOGCS[\"GCS_North_American_1983\","
                    + "DATUM[\"D_North_American_1983\",SPHEROID[\"GRS_1980\",6378137.0,298.257222101]],PRIMEM[\"Greenwich\",0.0],"
                    + "UNIT[\"Degree\",0.0174532925199433]],PROJECTION[\"Albers\"],PARAMETER[\"False_Easting\",0.0],"
                    + "PARAMETER[\"False_Northing\",0.0],PARAMETER[\"Central_Meridian\",-96.0],"
                    + "PARAMETER[\"Standard_Parallel_1\",20.0],PARAMETER[\"Standard_Parallel_2\",60.0],"
                    + "PARAMETER[\"Latitude_Of_Origin\",40.0],UNIT[\"Meter\",1.0]]";

    /** README section 1: lines, null shapes, multi-part lines, and kilometers on a sphere of 6371.0088 km (degrees). */
    @ParameterizedTest
    @CsvSource({
        "nhdplus_white_river_ar.gpkg, 333, 0, 0, 507.1",
        "ne_10m_rivers_europe.geojson, 1334, 0, 230, 175123",
        "ne_50m_rivers_world.geojson, 462, 1, 182, 270625",
        "osm_andorra_waterways.geojson, 146, 0, 0, 210.4",
    })
    void layersInDegrees(String file, int lines, int nulls, int multi, double kilometers) {
        VectorLayer layer = OpenData.read("networks/" + file);
        check(layer, lines, nulls, multi);
        double onSphere =
                lines(layer).stream().mapToDouble(RealNetworksTest::haversine).sum() / 1000;
        assertThat(onSphere).isCloseTo(kilometers, within(kilometers > 1000 ? 0.51 : PRINTED));
        // the ellipsoid's radii of curvature lie within 0.6 % of the sphere's radius
        double geodesic = lines(layer).stream().mapToDouble(Geodesy::length).sum() / 1000;
        assertThat(geodesic / kilometers - 1).isCloseTo(0, within(0.006));
    }

    /** README section 1: kilometers on the plane of the layer's own system. */
    @ParameterizedTest
    @CsvSource({
        "nhdplus_new_hope_nc.gpkg, 746, 0, 577.4, 0.001",
        "kamp_at/kamp_streams.gpkg, 1249, 0, 1308, 0.001",
        "nc_streams_shp/streams.shp, 8294, 6, 728.9, 0.0002",
        "methow_shp/Methow_Network.shp, 720, 0, 1189.9, 0.003",
        "srtm_pyrenees_streams_44k.gpkg, 44013, 0, 19422, 0.0004",
    })
    void projectedLayers(String file, int lines, int nulls, double kilometers, double distortion) {
        VectorLayer layer =
                file.contains("methow") ? OpenData.read("networks/" + file, METHOW) : OpenData.read("networks/" + file);
        check(layer, lines, nulls, 0);
        double planar = lines(layer).stream()
                        .mapToDouble(line -> planar(line, layer.crs()))
                        .sum()
                / 1000;
        assertThat(planar).isCloseTo(kilometers, within(kilometers > 1300 ? 0.51 : PRINTED));
        double geodesic = lines(layer).stream().mapToDouble(Geodesy::length).sum() / 1000;
        assertThat(geodesic / kilometers - 1).isCloseTo(0, within(distortion));
    }

    @Test
    void whiteRiverHasACustomSystemAndItsAttributes() {
        VectorLayer layer = OpenData.read("networks/nhdplus_white_river_ar.gpkg");
        assertThat(layer.crs().name()).isEqualTo("GRS 1980(IUGG, 1980) (no code)");
        assertThat(layer.crs().isDegrees()).isTrue();
        assertThat(layer.warnings()).isEmpty();
        assertThat(layer.columns())
                .contains("comid", "totdasqkm", "slope", "q0001e")
                .doesNotContain("geom");
        LayerFeature outlet = Layers.read(
                        OpenData.with(OpenData.source(layer.file()), null, null, "comid = 8585800", "comid"))
                .features()
                .get(0);
        // README: outlet of the largest area, 5287.7 km2, 2484.4 cfs
        assertThat(outlet.id()).isEqualTo("8585800");
        assertThat((Double) outlet.attributes().get("totdasqkm")).isCloseTo(5287.7, within(0.05));
        assertThat((Double) outlet.attributes().get("q0001e")).isCloseTo(2484.4, within(0.05));
        // README: extent
        for (LineString line : lines(layer)) {
            assertThat(line.getEnvelopeInternal().getMinX()).isBetween(-93.91, -93.56);
            assertThat(line.getEnvelopeInternal().getMaxY()).isBetween(36.46, 36.68);
        }
    }

    @Test
    void northCarolinasSumOfLengthsIsInFeet() {
        VectorLayer layer = OpenData.read("networks/nc_streams_shp/streams.shp");
        double feet = layer.features().stream()
                .filter(f -> f.geometry() != null)
                .map(f -> f.attributes().get("LENGTH"))
                .filter(Number.class::isInstance)
                .mapToDouble(v -> ((Number) v).doubleValue())
                .sum();
        // README: 2,399,162 ft, of the lines that have a shape; PRINTED to the foot
        assertThat(feet).isCloseTo(2_399_162, within(0.51));
        long withoutShape = layer.features().stream()
                .filter(f -> f.geometry() == null && !f.attributes().isEmpty())
                .count();
        assertThat(withoutShape).isEqualTo(6);
    }

    /** README: at 48 to 49 N, 120 W. The code and the text are the same system. */
    @Test
    void methowLiesWhereItsSystemPutsIt() {
        VectorLayer byText = OpenData.read("networks/methow_shp/Methow_Network.shp", METHOW);
        VectorLayer byCode = OpenData.read("networks/methow_shp/Methow_Network.shp", "ESRI:102008");
        Coordinate first = lines(byText).get(0).getCoordinateN(0);
        assertThat(first.y).isBetween(48.0, 49.0);
        assertThat(first.x).isBetween(-121.0, -119.0);
        assertThat(lines(byCode).get(0).getCoordinateN(0).distance(first)).isCloseTo(0, within(1e-9));
        assertThat(byCode.crs().name()).contains("ESRI:102008");
    }

    @Test
    void multiPartLinesStayWhatTheyAre() {
        VectorLayer layer = OpenData.read("networks/nhdplus_new_hope_nc.gpkg");
        assertThat(layer.features())
                .allMatch(f -> f.geometry().getGeometryType().equals("MultiLineString"));
        assertThat(layer.name()).isEqualTo("nhdplus_flowline");
        assertThat(layer.features().get(0).id()).isEqualTo("1");
    }

    /** README: non-ASCII names, 42 in the one and 7 in the other. */
    @ParameterizedTest
    @CsvSource({"ne_10m_rivers_europe.geojson, 7", "ne_50m_rivers_world.geojson, 42"})
    void namesBeyondAsciiArrive(String file, int names) {
        assertThat(OpenData.read("networks/" + file).features().stream()
                        .map(f -> String.valueOf(f.attributes().get("name")))
                        .filter(name -> name.chars().anyMatch(c -> c > 127)))
                .hasSize(names);
    }

    private static void check(VectorLayer layer, int lines, int nulls, int multi) {
        assertThat(layer.features()).hasSize(lines);
        assertThat(layer.features().stream().filter(f -> f.geometry() == null)).hasSize(nulls);
        assertThat(layer.features().stream()
                        .filter(f -> f.geometry() != null && f.geometry().getNumGeometries() > 1))
                .hasSize(multi);
    }

    private static List<LineString> lines(VectorLayer layer) {
        List<LineString> lines = new ArrayList<>();
        for (LayerFeature feature : layer.features()) {
            for (int i = 0; feature.geometry() != null && i < feature.geometry().getNumGeometries(); i++) {
                lines.add((LineString) feature.geometry().getGeometryN(i));
            }
        }
        return lines;
    }

    private static double planar(LineString line, LayerCrs crs) {
        double sum = 0;
        double[] before = null;
        for (Coordinate c : line.getCoordinates()) {
            double[] at = crs.fromLonLat(c.x, c.y);
            sum += before == null ? 0 : Math.hypot(at[0] - before[0], at[1] - before[1]);
            before = at;
        }
        return sum;
    }

    private static double haversine(LineString line) {
        double sum = 0;
        for (int i = 1; i < line.getNumPoints(); i++) {
            Coordinate a = line.getCoordinateN(i - 1);
            Coordinate b = line.getCoordinateN(i);
            double dy = Math.sin(Math.toRadians(b.y - a.y) / 2);
            double dx = Math.sin(Math.toRadians(b.x - a.x) / 2);
            double h = dy * dy + Math.cos(Math.toRadians(a.y)) * Math.cos(Math.toRadians(b.y)) * dx * dx;
            sum += 2 * 6_371_008.8 * Math.asin(Math.sqrt(h));
        }
        return sum;
    }
}
