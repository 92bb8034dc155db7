// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.AssemblyOptions.ColumnMapping;
import org.silverwake.geo.assembly.AssemblyOptions.Criterion;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.VectorLayer;
import org.silverwake.geo.terrain.ElevationModel;
import org.silverwake.geo.terrain.ReachHeights;
import org.silverwake.model.network.RiverNetwork;

/**
 * Real networks, read in place. Expected counts are those of the table in the open data's README, section 1, which came
 * from a summary of its own with another library, ends rounded to 1e-8 degrees or 1 mm.
 */
class RealNetworksIT {
    /** DISCRETIZATION: the bound on length. */
    private static final double LENGTH_PERCENT = 0.1;

    /** PRINTED: the heights in the file have one decimal. */
    private static final double HEIGHT_PRINTED = 0.05 + 1e-3;

    private static final Criterion[] ALL = {
        Criterion.OUTLET, Criterion.ELEVATION, Criterion.DRAINAGE_AREA, Criterion.DRAWN
    };

    private static Path open(String name) {
        String shared = System.getProperty("silverwake.shared");
        Path file = Path.of(shared == null ? "." : shared, "data", "open", name);
        assumeTrue(Files.exists(file), "skipped: the open test data is not here");
        return file;
    }

    private static VectorLayer read(String name, String crs, String id) {
        return Layers.read(new LayerSource(
                open("networks/" + name),
                Optional.empty(),
                Optional.ofNullable(crs),
                Optional.empty(),
                Optional.ofNullable(id)));
    }

    private static ElevationModel dem(String name) {
        return ElevationModel.read(open("dem/" + name), 1);
    }

    private static ColumnMapping column(String key, String column, double toSi, String... missing) {
        return new ColumnMapping(key, column, toSi, List.of(missing));
    }

    private static long count(RiverMap map, Defect.Kind kind, boolean repaired) {
        return map.defects().stream()
                .filter(d -> d.kind() == kind && d.repaired() == repaired)
                .count();
    }

    /** Throws where reaches run in circles. */
    private static RiverNetwork network(RiverMap map) {
        return RiverNetwork.of(
                map.ids(),
                map.reaches().stream().mapToInt(RiverMap.Reach::fromNode).toArray(),
                map.reaches().stream().mapToInt(RiverMap.Reach::toNode).toArray());
    }

    @ParameterizedTest
    @CsvSource({
        "nhdplus_white_river_ar.gpkg, '', 333, 9, 128, 9, 0",
        "nhdplus_new_hope_nc.gpkg, '', 746, 1, 307, 1, 84",
        "kamp_at/kamp_streams.gpkg, '', 1249, 57, 590, 57, 0",
        "nc_streams_shp/streams.shp, '', 8288, 108, 1805, 88, 49",
        "methow_shp/Methow_Network.shp, ESRI:102008, 720, 1, 124, 1, 0",
        "ne_10m_rivers_europe.geojson, '', 1715, 840, 49, 833, 0",
        "ne_50m_rivers_world.geojson, '', 895, 519, 58, 436, 7",
        "osm_andorra_waterways.geojson, '', 146, 74, 7, 83, 9",
        "srtm_pyrenees_streams_44k.gpkg, '', 44013, 653, 21156, 653, 0"
    })
    void asDrawnTheCountsAreThoseOfTheReadme(
            String file, String crs, int lines, int outlets, int junctions, int components, int loops) {
        VectorLayer layer = read(file, crs.isEmpty() ? null : crs, null);
        assertThat(rounded(layer)).containsExactly(lines, outlets, junctions, components, loops);
        Topology drawn = Topology.of(layer);
        assertThat(drawn.lines()).isEqualTo(lines);
        if (file.startsWith("nc_")) {
            // ends of this file lie 0.3 to 1 mm apart, so that what is one node depends on the rounding
            return;
        }
        assertThat(List.of(drawn.outlets(), drawn.junctions(), drawn.components(), drawn.loops()))
                .containsExactly(outlets, junctions, components, loops);
    }

    /** Lines, outlets, junctions, components and loops by the README's own method, in the layer's coordinates. */
    private static List<Integer> rounded(VectorLayer layer) {
        double scale = layer.crs().isDegrees() ? 1e8 : 1e3;
        Map<List<Long>, int[]> degrees = new HashMap<>();
        Map<List<Long>, List<Long>> parent = new HashMap<>();
        int lines = 0;
        for (LineString line : lines(layer)) {
            List<Long> from = key(layer, line.getCoordinateN(0), scale);
            List<Long> to = key(layer, line.getCoordinateN(line.getNumPoints() - 1), scale);
            degrees.computeIfAbsent(from, k -> new int[2])[1]++;
            degrees.computeIfAbsent(to, k -> new int[2])[0]++;
            parent.putIfAbsent(from, from);
            parent.putIfAbsent(to, to);
            parent.put(top(parent, from), top(parent, to));
            lines++;
        }
        Set<List<Long>> tops = new HashSet<>();
        parent.keySet().forEach(k -> tops.add(top(parent, k)));
        int outlets = (int) degrees.values().stream().filter(d -> d[1] == 0).count();
        int junctions =
                (int) degrees.values().stream().filter(d -> d[0] + d[1] >= 3).count();
        return List.of(lines, outlets, junctions, tops.size(), lines - degrees.size() + tops.size());
    }

    private static List<Long> key(VectorLayer layer, Coordinate c, double scale) {
        double[] xy = layer.crs().fromLonLat(c.x, c.y);
        return List.of(Math.round(xy[0] * scale), Math.round(xy[1] * scale));
    }

    private static List<Long> top(Map<List<Long>, List<Long>> parent, List<Long> key) {
        List<Long> k = key;
        while (!parent.get(k).equals(k)) {
            k = parent.get(k);
        }
        return k;
    }

    private static List<LineString> lines(VectorLayer layer) {
        List<LineString> lines = new ArrayList<>();
        for (LayerFeature feature : layer.features()) {
            for (int k = 0; feature.geometry() != null && k < feature.geometry().getNumGeometries(); k++) {
                lines.add((LineString) feature.geometry().getGeometryN(k));
            }
        }
        return lines;
    }

    /** After repair: one node less for each gap joined, one line more for each split, one record for each loop and part. */
    private static void requireListedOneForOne(VectorLayer layer, RiverMap map) {
        Set<Coordinate> ends = new HashSet<>();
        int raw = 0;
        for (LineString line : lines(layer)) {
            ends.add(line.getCoordinateN(0));
            ends.add(line.getCoordinateN(line.getNumPoints() - 1));
            raw++;
        }
        Topology now = Topology.of(map);
        long out = count(map, Defect.Kind.DUPLICATE_LINE, true)
                + count(map, Defect.Kind.ZERO_LENGTH, true)
                + count(map, Defect.Kind.ONE_POINT_LINE, true);
        assertThat(count(map, Defect.Kind.CYCLE, true)).isZero();
        assertThat((long) now.lines()).isEqualTo(raw - out + count(map, Defect.Kind.SPLIT_AT_JUNCTION, true));
        assertThat((long) now.nodes()).isEqualTo(ends.size() - count(map, Defect.Kind.GAP, true));
        assertThat((long) now.loops()).isEqualTo(count(map, Defect.Kind.LOOP, false));
        assertThat((long) now.components()).isEqualTo(1 + count(map, Defect.Kind.ISOLATED_PART, false));
        assertThat(network(map).loopCount()).isEqualTo(now.loops());
        requireLengthKept(layer, map);
    }

    private static void requireLengthKept(VectorLayer layer, RiverMap map) {
        double drawn = 0;
        for (LineString line : lines(layer)) {
            for (int k = 1; k < line.getNumPoints(); k++) {
                drawn += Vincenty.distance(line.getCoordinateN(k - 1), line.getCoordinateN(k));
            }
        }
        assertThat(Topology.of(map).lengthMeters()).isCloseTo(drawn, withinPercentage(LENGTH_PERCENT));
    }

    @Test
    void whiteRiver() {
        VectorLayer layer = read("nhdplus_white_river_ar.gpkg", null, "comid");
        RiverMap map = Assembly.assemble(
                layer,
                AssemblyOptions.drawn(1)
                        .withOrientBy(ALL)
                        .withNameColumn("gnis_name")
                        .withColumns(
                                column("drainage-area", "totdasqkm", 1e6),
                                column("slope", "slope", 1, "-9998"),
                                column("elevation-upper", "maxelevsmo", 0.01, "-9998"),
                                column("elevation-lower", "minelevsmo", 0.01, "-9998")));
        requireListedOneForOne(layer, map);
        assertThat(map.reaches()).noneMatch(r -> r.part().flipped());
        assertThat(map.defects()).allMatch(d -> d.kind() == Defect.Kind.ISOLATED_PART);
        RiverMap.Reach outlet = map.reach(map.ids().indexOf("8585800"));
        // README: the outlet of the largest area has 5287.7 km2
        assertThat(outlet.number("drainage-area").getAsDouble()).isCloseTo(5287.7e6, within(0.05e6));
        assertThat(map.reaches().stream().filter(r -> r.number("slope").isEmpty()))
                .as("README: 4 rows without slope")
                .hasSize(4);
        requireNodesOfTheFile(layer, map, "fromnode", "tonode");
    }

    /** README: the file's own node numbers agree with its geometry. */
    private static void requireNodesOfTheFile(VectorLayer layer, RiverMap map, String from, String to) {
        Map<Integer, Object> node = new HashMap<>();
        for (RiverMap.Reach reach : map.reaches()) {
            Map<String, Object> row =
                    layer.features().get(reach.part().feature()).attributes();
            node.putIfAbsent(reach.fromNode(), number(row.get(from)));
            node.putIfAbsent(reach.toNode(), number(row.get(to)));
            assertThat(number(row.get(from))).isEqualTo(node.get(reach.fromNode()));
            assertThat(number(row.get(to))).isEqualTo(node.get(reach.toNode()));
        }
    }

    private static long number(Object value) {
        return ((Number) value).longValue();
    }

    @Test
    void newHopeIsBraided() {
        VectorLayer layer = read("nhdplus_new_hope_nc.gpkg", null, "COMID");
        RiverMap map = Assembly.assemble(
                layer,
                AssemblyOptions.drawn(1).withOrientBy(ALL).withColumns(column("drainage-area", "TotDASqKM", 1e6)));
        requireListedOneForOne(layer, map);
        Topology now = Topology.of(map);
        assertThat(now.loops()).isEqualTo(84);
        assertThat(now.bifurcations()).isEqualTo(83);
        assertThat(map.reaches()).noneMatch(r -> r.part().flipped());
    }

    @Test
    void newHopeTurnedRoundIsRefusedOrTurnedBack() {
        VectorLayer layer = turned(read("nhdplus_new_hope_nc.gpkg", null, "COMID"));
        assertThatThrownBy(() -> Assembly.assemble(layer, AssemblyOptions.drawn(1)))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("mouth to source");
        RiverMap map = Assembly.assemble(
                layer,
                AssemblyOptions.drawn(1).withOrientBy(ALL).withColumns(column("drainage-area", "TotDASqKM", 1e6)));
        assertThat(count(map, Defect.Kind.LAYER_REVERSED, true)).isEqualTo(1);
        assertThat(map.reaches()).allMatch(r -> r.part().flipped());
    }

    private static VectorLayer turned(VectorLayer layer) {
        List<LayerFeature> turned = layer.features().stream()
                .map(f -> new LayerFeature(f.id(), f.attributes(), f.geometry().reverse()))
                .toList();
        return new VectorLayer(layer.file(), layer.name(), layer.crs(), layer.columns(), turned, layer.warnings());
    }

    @Test
    void kampWithItsRaster() {
        VectorLayer layer = read("kamp_at/kamp_streams.gpkg", null, "reach_id");
        ElevationModel raster = dem("kamp_eudem_100m_3035.tif");
        RiverMap map = Assembly.assemble(
                layer,
                AssemblyOptions.drawn(1)
                        .withOrientBy(ALL)
                        .withElevation(raster)
                        .withColumns(
                                column("drainage-area", "da_km2", 1e6),
                                column("elevation-upper", "z_up_m", 1),
                                column("elevation-lower", "z_dn_m", 1)));
        requireListedOneForOne(layer, map);
        assertThat(map.reaches()).noneMatch(r -> r.part().flipped());
        long uphill = layer.features().stream()
                .filter(f -> (Double) f.attributes().get("z_dn_m")
                        > (Double) f.attributes().get("z_up_m"))
                .count();
        assertThat(count(map, Defect.Kind.UPHILL_REACH, false)).isEqualTo(uphill);
        // the file's heights were taken from the same raster by another program
        for (RiverMap.Reach reach : ReachHeights.sample(map, raster).reaches()) {
            assertThat(reach.number(ReachHeights.UPPER).getAsDouble())
                    .isCloseTo(reach.number("elevation-upper").getAsDouble(), within(HEIGHT_PRINTED));
            assertThat(reach.number(ReachHeights.LOWER).getAsDouble())
                    .isCloseTo(reach.number("elevation-lower").getAsDouble(), within(HEIGHT_PRINTED));
        }
    }

    @Test
    void kampTurnedRoundIsTurnedBackByItsRaster() {
        VectorLayer layer = turned(read("kamp_at/kamp_streams.gpkg", null, "reach_id"));
        assertThatThrownBy(() -> Assembly.assemble(layer, AssemblyOptions.drawn(1)))
                .hasMessageContaining("mouth to source");
        RiverMap map = Assembly.assemble(
                layer,
                AssemblyOptions.drawn(1)
                        .withElevation(dem("kamp_eudem_100m_3035.tif"))
                        .withOrientBy(Criterion.ELEVATION, Criterion.DRAWN));
        assertThat(count(map, Defect.Kind.LAYER_REVERSED, true)).isEqualTo(1);
        assertThat(map.reaches().stream().filter(r -> !r.part().flipped()).count())
                .isEqualTo(count(map, Defect.Kind.FLIPPED_LINE, true))
                .isLessThan(10);
    }

    @Test
    void northCarolinaNeedsItsRaster() {
        VectorLayer layer = read("nc_streams_shp/streams.shp", null, null);
        assertThatThrownBy(() -> Assembly.assemble(layer, AssemblyOptions.drawn(1)))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("features 3215, 3222 run in a circle");
        RiverMap map = Assembly.assemble(layer, AssemblyOptions.drawn(1).withElevation(dem("elev_ned_30m.tif")));
        requireListedOneForOne(layer, map);
        assertThat(count(map, Defect.Kind.NULL_SHAPE, true)).isEqualTo(6);
        long turned = map.reaches().stream().filter(r -> r.part().flipped()).count();
        assertThat(count(map, Defect.Kind.FLIPPED_LINE, true)).isEqualTo(turned).isPositive();
    }

    @Test
    void methowInItsTrueSystem() {
        VectorLayer layer = read("methow_shp/Methow_Network.shp", "ESRI:102008", "GridID");
        RiverMap map = Assembly.assemble(
                layer,
                AssemblyOptions.drawn(1)
                        .withOrientBy(ALL)
                        .withColumns(
                                column("drainage-area", "usarea_km2", 1e6),
                                column("elevation-upper", "uselev_m", 1),
                                column("elevation-lower", "dselev_m", 1)));
        requireListedOneForOne(layer, map);
        Coordinate first = map.reach(0).line().getCoordinateN(0);
        // README: 48-49 N, 120 W
        assertThat(first.y).isBetween(47.5, 49.5);
        assertThat(first.x).isBetween(-121.5, -119.0);
        Map<Integer, String> below = new HashMap<>();
        map.reaches().forEach(r -> below.put(r.fromNode(), r.id()));
        int agree = 0;
        for (RiverMap.Reach reach : map.reaches()) {
            Object next =
                    layer.features().get(reach.part().feature()).attributes().get("ToLink");
            agree += next != null && String.valueOf(number(next)).equals(below.get(reach.toNode())) ? 1 : 0;
        }
        assertThat(agree).as("README: ToLink agrees with geometry in 719").isEqualTo(719);
    }

    @Test
    void andorraWithItsRaster() {
        VectorLayer layer = read("osm_andorra_waterways.geojson", null, "osm_id");
        RiverMap map = Assembly.assemble(
                layer,
                AssemblyOptions.drawn(1)
                        .withElevation(dem("srtm3_N42E001_wgs84.tif"))
                        .withNameColumn("name")
                        .withColumns(column("kind", "waterway", 1)));
        // README: 41 line ends on the middle of another line
        assertThat(count(map, Defect.Kind.SPLIT_AT_JUNCTION, true)).isGreaterThanOrEqualTo(41);
        assertThat(count(map, Defect.Kind.CYCLE, true)).isPositive();
        assertThat(network(map).size()).isEqualTo(map.reachCount());
    }

    @Test
    void pyrenees() {
        VectorLayer layer = read("srtm_pyrenees_streams_44k.gpkg", null, "reach_id");
        RiverMap map = Assembly.assemble(layer, AssemblyOptions.drawn(1));
        requireListedOneForOne(layer, map);
    }

    /** Vincenty (1975), Survey Review 23 (176), equations 3 to 19 of the inverse, on GRS 80's twin WGS 84. */
    private static final class Vincenty {
        static double distance(Coordinate p, Coordinate q) {
            double a = 6378137;
            double f = 1 / 298.257223563;
            double b = a * (1 - f);
            double u1 = Math.atan((1 - f) * Math.tan(Math.toRadians(p.y)));
            double u2 = Math.atan((1 - f) * Math.tan(Math.toRadians(q.y)));
            double l = Math.toRadians(q.x - p.x);
            double lambda = l;
            for (int k = 0; k < 50; k++) {
                double s = Math.hypot(
                        Math.cos(u2) * Math.sin(lambda),
                        Math.cos(u1) * Math.sin(u2) - Math.sin(u1) * Math.cos(u2) * Math.cos(lambda));
                if (s == 0) {
                    return 0;
                }
                double c = Math.sin(u1) * Math.sin(u2) + Math.cos(u1) * Math.cos(u2) * Math.cos(lambda);
                double sigma = Math.atan2(s, c);
                double sinAlpha = Math.cos(u1) * Math.cos(u2) * Math.sin(lambda) / s;
                double cos2 = 1 - sinAlpha * sinAlpha;
                double cm = cos2 == 0 ? 0 : c - 2 * Math.sin(u1) * Math.sin(u2) / cos2;
                double big = f / 16 * cos2 * (4 + f * (4 - 3 * cos2));
                double next = l + (1 - big) * f * sinAlpha * (sigma + big * s * (cm + big * c * (2 * cm * cm - 1)));
                if (Math.abs(next - lambda) < 1e-13 || k == 49) {
                    double uu = cos2 * (a * a - b * b) / (b * b);
                    double aa = 1 + uu / 16384 * (4096 + uu * (-768 + uu * (320 - 175 * uu)));
                    double bb = uu / 1024 * (256 + uu * (-128 + uu * (74 - 47 * uu)));
                    double d = bb
                            * s
                            * (cm
                                    + bb
                                            / 4
                                            * (c * (2 * cm * cm - 1)
                                                    - bb / 6 * cm * (4 * s * s - 3) * (4 * cm * cm - 3)));
                    return b * aa * (sigma - d);
                }
                lambda = next;
            }
            throw new IllegalStateException("no end");
        }
    }
}
