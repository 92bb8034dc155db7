// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.GeometryFactory;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.AssemblyOptions.ColumnMapping;
import org.silverwake.geo.assembly.AssemblyOptions.Criterion;
import org.silverwake.geo.assembly.AssemblyOptions.Outlet;
import org.silverwake.geo.layer.VectorLayer;
import org.silverwake.model.network.RiverNetwork;

/** Small networks by hand; the hard cases are those of the project's list of what people report as going wrong. */
class AssemblyTest {
    /** MEASUREMENT: the sketch's meters are laid on a plane; 1 cm in 1 km is well above its error. */
    private static final double SKETCH = 0.01;

    private static final AssemblyOptions ONE_METER = AssemblyOptions.drawn(1);

    private static Sketch fork() {
        return new Sketch()
                .line("a", 0, 1000, 500, 500)
                .line("b", 1000, 1000, 500, 500)
                .line("c", 500, 500, 500, 0);
    }

    private static long count(RiverMap map, Defect.Kind kind) {
        return map.defects().stream().filter(d -> d.kind() == kind).count();
    }

    private static Defect only(RiverMap map, Defect.Kind kind) {
        List<Defect> found =
                map.defects().stream().filter(d -> d.kind() == kind).toList();
        assertThat(found).hasSize(1);
        return found.get(0);
    }

    private static RiverNetwork network(RiverMap map) {
        int[] from = map.reaches().stream().mapToInt(RiverMap.Reach::fromNode).toArray();
        int[] to = map.reaches().stream().mapToInt(RiverMap.Reach::toNode).toArray();
        return RiverNetwork.of(map.ids(), from, to);
    }

    private static RiverMap.Reach reach(RiverMap map, String id) {
        return map.reach(map.ids().indexOf(id));
    }

    @Test
    void cleanForkHasNoDefects() {
        RiverMap map = Assembly.assemble(fork().layer(), ONE_METER);
        assertThat(map.defects()).isEmpty();
        assertThat(map.ids()).containsExactly("a", "b", "c");
        RiverNetwork network = network(map);
        assertThat(network.isOutlet(network.reachOfInput(2))).isTrue();
        assertThat(network.isHeadwater(network.reachOfInput(0))).isTrue();
        assertThat(reach(map, "c").lengthMeters()).isCloseTo(500, within(SKETCH));
    }

    @ParameterizedTest
    @CsvSource({"1e-9, true", "0.5, true", "0.999, true", "5, false", "50, false"})
    void gapsWithinToleranceAreJoinedAndAllAreListed(double gap, boolean joined) {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .line("up", 0, 1000, 0, 500 + gap)
                        .line("down", 0, 500, 0, 0)
                        .layer(),
                ONE_METER);
        assertThat(Topology.of(map).components()).isEqualTo(joined ? 1 : 2);
        Defect defect = only(map, Defect.Kind.GAP);
        assertThat(defect.repaired()).isEqualTo(joined);
        assertThat(defect.featureIds()).containsExactlyInAnyOrder("up", "down");
        assertThat(defect.latitude()).isCloseTo(Sketch.at(0, 500).y, within(0.001));
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 10, 37, 1000})
    void endsOnEitherSideOfAGridLineMeet(int k) {
        double tolerance = 1;
        double edge = k * tolerance;
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .line("up", edge - 1e-10, 1000, edge - 1e-10, 0)
                        .line("down", edge + 1e-10, 0, edge + 1e-10, -900)
                        .layer(),
                AssemblyOptions.drawn(tolerance));
        assertThat(Topology.of(map).components()).isEqualTo(1);
        assertThat(reach(map, "up").toNode()).isEqualTo(reach(map, "down").fromNode());
    }

    @Test
    void shortLineKeepsItsTwoEnds() {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .line("up", 0, 100, 0, 0.4)
                        .line("short", 0, 0.4, 0, 0)
                        .line("down", 0, 0, 0, -100)
                        .layer(),
                ONE_METER);
        assertThat(map.ids()).containsExactly("up", "short", "down");
        assertThat(Topology.of(map).nodes()).isEqualTo(4);
        assertThat(map.defects()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void parallelReachesDoNotBecomeACircle(boolean opposite) {
        Sketch sketch = new Sketch().line("a", 0, 0, 1000, 0);
        VectorLayer layer =
                (opposite ? sketch.line("b", 1000, 0.5, 0, 0.5) : sketch.line("b", 0, 0.5, 1000, 0.5)).layer();
        RiverMap map = Assembly.assemble(layer, ONE_METER);
        assertThat(network(map).size()).isGreaterThanOrEqualTo(2);
        if (opposite) {
            assertThat(Topology.of(map).components()).isEqualTo(2);
            assertThat(count(map, Defect.Kind.GAP)).isPositive();
        }
    }

    @Test
    void lineSplitWhereATributaryEndsOnItsInside() {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .line("main", 0, 1000, 0, 0)
                        .line("trib", 500, 600, 0.3, 600)
                        .layer(),
                ONE_METER);
        assertThat(map.ids()).containsExactlyInAnyOrder("main.1", "main.2", "trib");
        assertThat(only(map, Defect.Kind.SPLIT_AT_JUNCTION).featureIds()).containsExactly("main", "trib");
        assertThat(reach(map, "main.1").part().toMeters()).isCloseTo(400, within(SKETCH));
        assertThat(reach(map, "main.2").part().fromMeters()).isCloseTo(400, within(SKETCH));
        assertThat(reach(map, "trib").toNode()).isEqualTo(reach(map, "main.2").fromNode());
    }

    @Test
    void idsRunInFlowDirectionWhereALineIsTurned() {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .line("main", 0, 0, 0, 1000)
                        .line("trib", 500, 600, 0, 600)
                        .layer(),
                ONE_METER
                        .withOrientBy(Criterion.OUTLET, Criterion.DRAWN)
                        .withOutlets(Outlet.ofPoint(Sketch.at(0, 0).x, Sketch.at(0, 0).y)));
        RiverMap.Reach upper = reach(map, "main.1");
        assertThat(upper.part().flipped()).isTrue();
        assertThat(upper.lengthMeters()).isCloseTo(400, within(SKETCH));
        assertThat(upper.part().fromMeters()).isCloseTo(600, within(SKETCH));
        assertThat(upper.toNode()).isEqualTo(reach(map, "main.2").fromNode());
    }

    @Test
    void crossingWithoutNodeIsListedNotJoined() {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .line("a", 0, 0, 1000, 1000)
                        .line("b", 0, 1000, 1000, 0)
                        .layer(),
                ONE_METER);
        assertThat(map.reachCount()).isEqualTo(2);
        Defect defect = only(map, Defect.Kind.CROSSING_WITHOUT_NODE);
        assertThat(defect.longitude()).isCloseTo(Sketch.at(500, 0).x, within(1e-6));
        assertThat(defect.repaired()).isFalse();
    }

    @Test
    void badShapesAreLeftOutAndListed() {
        GeometryFactory factory = new GeometryFactory();
        RiverMap map = Assembly.assemble(
                fork().shape("null", null, Map.of())
                        .shape("point", factory.createPoint(Sketch.at(0, 0)), Map.of())
                        .line("one", 5, 5, 5, 5)
                        .line("zero", 5, 5, 5, 5, 5, 5)
                        .line("again", 500, 0, 500, 500)
                        .line("repeat", 500, 0, 500, -10, 500, -10, 500, -20)
                        .layer(),
                ONE_METER);
        assertThat(map.ids()).containsExactly("a", "b", "c", "repeat");
        assertThat(only(map, Defect.Kind.NULL_SHAPE).featureIds()).containsExactly("null");
        assertThat(only(map, Defect.Kind.NOT_A_LINE).featureIds()).containsExactly("point");
        assertThat(only(map, Defect.Kind.ONE_POINT_LINE).featureIds()).containsExactly("one");
        assertThat(only(map, Defect.Kind.ZERO_LENGTH).featureIds()).containsExactly("zero");
        assertThat(only(map, Defect.Kind.DUPLICATE_LINE).featureIds()).containsExactly("c", "again");
        assertThat(only(map, Defect.Kind.REPEATED_POINT).featureIds()).containsExactly("repeat");
        assertThat(map.defects()).allMatch(Defect::repaired);
    }

    @Test
    void idsThatLookAlikeStayApartAndDuplicatesAreNamed() {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .line("001", 0, 300, 0, 200)
                        .line("1", 0, 200, 0, 100)
                        .line("7", 0, 100, 0, 50)
                        .line("7", 0, 50, 0, 0)
                        .layer(),
                ONE_METER);
        assertThat(map.ids()).containsExactly("001", "1", "7.1", "7.2");
        assertThat(only(map, Defect.Kind.DUPLICATE_ID).text()).contains("7").contains("2 features");
    }

    @Test
    void partsOfAFeatureAreReachesOfTheirOwn() {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .parts("m", new double[] {0, 300, 0, 200}, new double[] {0, 200, 0, 0})
                        .layer(),
                ONE_METER);
        assertThat(map.ids()).containsExactly("m.1", "m.2");
        assertThat(map.reach(1).part().part()).isEqualTo(1);
        assertThat(Topology.of(map).components()).isEqualTo(1);
    }

    @Test
    void wholeLayerDrawnUpstreamIsNeverComputedSilently() {
        VectorLayer turned = fork().turned();
        assertThatThrownBy(() -> Assembly.assemble(turned, ONE_METER))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("2 outlets but 1 headwaters")
                .hasMessageContaining("rivers.outlets")
                .hasMessageContaining("orient-by");
        RiverMap map = Assembly.assemble(
                turned,
                ONE_METER.withOrientBy(Criterion.OUTLET, Criterion.DRAWN).withOutlets(Outlet.ofFeature("c")));
        assertThat(only(map, Defect.Kind.LAYER_REVERSED).repaired()).isTrue();
        assertThat(map.reaches()).allMatch(r -> r.part().flipped());
        assertThat(Topology.of(map).outlets()).isEqualTo(1);
    }

    @Test
    void heightsTurnALayerDrawnUpstream() {
        ElevationSource slope = (lon, lat) -> OptionalDouble.of(100 + (lat + 30) * 5000);
        RiverMap map = Assembly.assemble(
                fork().turned(), ONE_METER.withElevation(slope).withOrientBy(Criterion.ELEVATION, Criterion.DRAWN));
        assertThat(map.reaches()).allMatch(r -> r.part().flipped());
        assertThat(count(map, Defect.Kind.LAYER_REVERSED)).isEqualTo(1);
        assertThat(count(map, Defect.Kind.UPHILL_REACH)).isZero();
    }

    private static VectorLayer withAreas(boolean turned) {
        Sketch sketch = new Sketch()
                .line("a", Map.of("area", 10.0), 0, 1000, 500, 500)
                .line("b", Map.of("area", 20.0), 1000, 1000, 500, 500)
                .line("c", Map.of("area", 35.0), 500, 500, 500, 0);
        return turned ? sketch.turned() : sketch.layer();
    }

    @Test
    void drainageAreaTurnsALayerDrawnUpstream() {
        AssemblyOptions options = ONE_METER
                .withColumns(new ColumnMapping("drainage-area", "area", 1e6, List.of()))
                .withOrientBy(Criterion.DRAINAGE_AREA, Criterion.DRAWN);
        RiverMap map = Assembly.assemble(withAreas(true), options);
        assertThat(map.reaches()).allMatch(r -> r.part().flipped());
        assertThat(reach(map, "c").number("drainage-area").getAsDouble()).isCloseTo(35e6, within(1e-3));
        assertThatThrownBy(() -> Assembly.assemble(withAreas(true), options.withOrientBy(Criterion.DRAWN)))
                .hasMessageContaining("drainage areas shrink");
    }

    @Test
    void oneLineDrawnTheWrongWayIsTurnedByOutletAndByHeights() {
        Sketch sketch = new Sketch()
                .line("a", 0, 1000, 500, 500)
                .line("b", 1000, 1000, 500, 500)
                .line("c", 500, 300, 500, 500)
                .line("d", 500, 300, 500, 0);
        RiverMap byOutlet = Assembly.assemble(
                sketch.layer(),
                ONE_METER.withOrientBy(Criterion.OUTLET, Criterion.DRAWN).withOutlets(Outlet.ofFeature("d")));
        assertThat(only(byOutlet, Defect.Kind.FLIPPED_LINE).featureIds()).containsExactly("c");
        ElevationSource slope = (lon, lat) -> OptionalDouble.of(100 + (lat + 30) * 5000);
        RiverMap byHeight = Assembly.assemble(
                sketch.layer(), ONE_METER.withElevation(slope).withOrientBy(Criterion.ELEVATION, Criterion.DRAWN));
        assertThat(only(byHeight, Defect.Kind.FLIPPED_LINE).featureIds()).containsExactly("c");
        assertThat(network(byHeight).size()).isEqualTo(4);
    }

    @Test
    void noiseInHeightsTurnsNothing() {
        ElevationSource noisy = (lon, lat) -> OptionalDouble.of(lat < -29.9960 ? 104 : 100);
        RiverMap map = Assembly.assemble(
                fork().layer(), ONE_METER.withElevation(noisy).withOrientBy(Criterion.ELEVATION, Criterion.DRAWN));
        assertThat(map.reaches()).noneMatch(r -> r.part().flipped());
        assertThat(count(map, Defect.Kind.UPHILL_REACH)).isPositive();
    }

    @Test
    void diamondIsOneLoop() {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .line("in", 0, 1000, 0, 800)
                        .line("left", 0, 800, -200, 500, 0, 200)
                        .line("right", 0, 800, 200, 500, 0, 200)
                        .line("out", 0, 200, 0, 0)
                        .layer(),
                ONE_METER);
        assertThat(only(map, Defect.Kind.LOOP).featureIds()).containsExactlyInAnyOrder("left", "right");
        assertThat(network(map).loopCount()).isEqualTo(1);
    }

    private static Sketch circle() {
        return new Sketch()
                .line("in", 0, 1000, 0, 800)
                .line("left", 0, 800, -200, 500, 0, 200)
                .line("right", 0, 200, 200, 500, 0, 800)
                .line("out", 0, 200, 0, 0);
    }

    @Test
    void circleIsAnErrorThatNamesItsFeatures() {
        assertThatThrownBy(() -> Assembly.assemble(circle().layer(), ONE_METER))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("left, right run in a circle")
                .hasMessageContaining("orient-by");
    }

    @Test
    void circleIsBrokenByHeights() {
        ElevationSource gentle = (lon, lat) -> OptionalDouble.of(100 + (lat + 30) * 300);
        RiverMap map = Assembly.assemble(circle().layer(), ONE_METER.withElevation(gentle));
        assertThat(only(map, Defect.Kind.FLIPPED_LINE).featureIds()).containsExactly("right");
        assertThat(network(map).size()).isEqualTo(4);
    }

    @Test
    void ringIsLeftOut() {
        RiverMap map = Assembly.assemble(
                fork().line("ring", 500, 0, 600, 0, 600, -100, 500, 0).layer(), ONE_METER);
        assertThat(map.ids()).containsExactly("a", "b", "c");
        assertThat(only(map, Defect.Kind.CYCLE).featureIds()).containsExactly("ring");
    }

    @Test
    void isolatedPartIsListed() {
        RiverMap map = Assembly.assemble(fork().line("far", 5000, 0, 6000, 0).layer(), ONE_METER);
        assertThat(only(map, Defect.Kind.ISOLATED_PART).featureIds()).containsExactly("far");
    }

    @Test
    void missingColumnNamesTheNearest() {
        assertThatThrownBy(() -> Assembly.assemble(
                        withAreas(false),
                        ONE_METER.withColumns(new ColumnMapping("drainage-area", "aera", 1, List.of()))))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("aera")
                .hasMessageContaining("did you mean area?");
    }

    @Test
    void unknownOutletNamesTheNearest() {
        assertThatThrownBy(() -> Assembly.assemble(
                        new Sketch().line("L001", 0, 0, 0, 100).layer(),
                        ONE_METER.withOrientBy(Criterion.OUTLET).withOutlets(Outlet.ofFeature("L01"))))
                .hasMessageContaining("did you mean L001?");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ';',
            value = {"0.5;0.5", "0,5;0.5", "12,25;12.25", "0,500;0.5", "1.234,5;1234.5", "1,234.5;1234.5", "1e3;1000"})
    void textsThatCanOnlyMeanOneNumber(String text, double number) {
        RiverMap map = Assembly.assemble(
                new Sketch().line("a", Map.of("q", text), 0, 100, 0, 0).layer(),
                ONE_METER.withColumns(new ColumnMapping("discharge", "q", 1, List.of())));
        assertThat(map.reach(0).number("discharge").getAsDouble()).isCloseTo(number, within(1e-12));
    }

    @Test
    void textsThatAreNoNumberAreAllNamed() {
        Sketch sketch = new Sketch();
        List<String> bad = List.of("1,234", "much", "5d");
        for (int k = 0; k < bad.size(); k++) {
            sketch.line("f" + k, Map.of("q", bad.get(k)), 0, 100 * k, 0, 100 * k + 100);
        }
        assertThatThrownBy(() -> Assembly.assemble(
                        sketch.layer(), ONE_METER.withColumns(new ColumnMapping("discharge", "q", 1, List.of()))))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("feature f0")
                .hasMessageContaining("\"1,234\"")
                .hasMessageContaining("feature f1")
                .hasMessageContaining("feature f2");
    }

    @Test
    void missingValuesAreAbsentAndTextsKept() {
        RiverMap map = Assembly.assemble(
                new Sketch()
                        .line("a", Map.of("s", -9998.0, "t", "canal", "n", "Río"), 0, 100, 0, 0)
                        .layer(),
                ONE_METER
                        .withColumns(
                                new ColumnMapping("slope", "s", 1, List.of("-9998")),
                                new ColumnMapping("kind", "t", 1, List.of()))
                        .withNameColumn("n"));
        assertThat(map.reach(0).number("slope")).isEmpty();
        assertThat(map.reach(0).texts()).containsEntry("kind", "canal");
        assertThat(map.reach(0).name()).contains("Río");
    }

    @Test
    void negativeAreaIsAnError() {
        assertThatThrownBy(() -> Assembly.assemble(
                        new Sketch().line("a", Map.of("s", -9998), 0, 100, 0, 0).layer(),
                        ONE_METER.withColumns(new ColumnMapping("slope", "s", 1, List.of()))))
                .hasMessageContaining("negative")
                .hasMessageContaining("missing");
    }

    @Test
    void emptyLayerIsAnError() {
        assertThatThrownBy(() -> Assembly.assemble(new Sketch().layer(), ONE_METER))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("no usable line");
    }

    @Test
    void directionOfARandomTreeIsFoundAgainFromItsOutlet() {
        for (int seed = 0; seed < 20; seed++) {
            java.util.Random random = new java.util.Random(seed);
            Sketch sketch = new Sketch();
            List<double[]> nodes = new ArrayList<>(List.of(new double[] {0, 0}));
            int flips = 0;
            for (int k = 1; k <= 40; k++) {
                double[] down = nodes.get(k == 1 ? 0 : 1 + random.nextInt(nodes.size() - 1));
                double[] up = {k * 1000.0, random.nextInt(1_000_000)};
                nodes.add(up);
                boolean flip = random.nextBoolean();
                flips += flip ? 1 : 0;
                if (flip) {
                    sketch.line("r" + k, down[0], down[1], up[0], up[1]);
                } else {
                    sketch.line("r" + k, up[0], up[1], down[0], down[1]);
                }
            }
            RiverMap map = Assembly.assemble(
                    sketch.layer(),
                    AssemblyOptions.drawn(0)
                            .withOrientBy(Criterion.OUTLET, Criterion.DRAWN)
                            .withOutlets(Outlet.ofFeature("r1")));
            long turned = map.reaches().stream().filter(r -> r.part().flipped()).count();
            if (turned == flips) {
                assertThat(Topology.of(map).outlets()).as("seed %d", seed).isEqualTo(1);
            } else {
                // crossing lines touched a junction by chance and were split there
                assertThat(count(map, Defect.Kind.SPLIT_AT_JUNCTION))
                        .as("seed %d", seed)
                        .isPositive();
            }
        }
    }
}
