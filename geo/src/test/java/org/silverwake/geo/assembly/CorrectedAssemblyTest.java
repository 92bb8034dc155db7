// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.AssemblyOptions.Criterion;
import org.silverwake.geo.assembly.AssemblyOptions.Outlet;
import org.silverwake.geo.assembly.CorrectionOutcome.Status;
import org.silverwake.geo.assembly.NetworkCorrections.At;
import org.silverwake.geo.assembly.NetworkCorrections.End;
import org.silverwake.geo.assembly.NetworkCorrections.Ruling;
import org.silverwake.geo.assembly.NetworkCorrections.Turn;
import org.silverwake.geo.layer.VectorLayer;

/** Each correction on a network small enough to see by hand what it must do. */
class CorrectedAssemblyTest {
    /** MEASUREMENT: the sketch's meters are laid on a plane; 5 cm in 1 km is well above its error. */
    private static final double SKETCH = 0.05;

    private static final AssemblyOptions ONE_METER = AssemblyOptions.drawn(1);
    private static final String ROW = "c.csv:2";

    private static At at(double east, double north) {
        Coordinate at = Sketch.at(east, north);
        return new At(at.x, at.y);
    }

    private static Turn turn(String where, String id, At from, At to) {
        return new Turn(where, id, from, Optional.ofNullable(to));
    }

    private static Ruling ruling(boolean accept, Defect.Kind kind, At at, String... ids) {
        return new Ruling(ROW, accept, kind, List.of(ids), Optional.ofNullable(at));
    }

    private static Assembly.Corrected turned(Sketch sketch, Turn... turns) {
        return Assembly.corrected(
                sketch.layer(),
                ONE_METER.withCorrections(new NetworkCorrections(List.of(turns), List.of(), List.of())));
    }

    private static Assembly.Corrected ruled(VectorLayer layer, AssemblyOptions options, Ruling ruling) {
        return Assembly.corrected(
                layer, options.withCorrections(new NetworkCorrections(List.of(), List.of(), List.of(ruling))));
    }

    private static Assembly.Corrected ruled(Sketch sketch, Ruling ruling) {
        return ruled(sketch.layer(), ONE_METER, ruling);
    }

    private static Status status(Assembly.Corrected corrected) {
        assertThat(corrected.corrections()).hasSize(1);
        assertThat(corrected.corrections().get(0).where()).isEqualTo(ROW);
        return corrected.corrections().get(0).status();
    }

    private static RiverMap.Reach reach(RiverMap map, String id) {
        return map.reach(map.ids().indexOf(id));
    }

    private static boolean follows(RiverMap map, String above, String below) {
        return reach(map, above).toNode() == reach(map, below).fromNode();
    }

    private static List<Defect> of(RiverMap map, Defect.Kind kind) {
        return map.defects().stream().filter(d -> d.kind() == kind).toList();
    }

    /** up runs south to 500; low is drawn from its mouth. */
    private static Sketch drawnUpstream() {
        return new Sketch().line("up", 0, 1000, 0, 500).line("low", 0, 0, 0, 500);
    }

    @Test
    void turnSaysWhereWaterRunsHoweverTheLineIsDrawn() {
        Turn down = turn(ROW, "low", at(0, 500), at(0, 0));
        Assembly.Corrected first = turned(drawnUpstream(), down);
        assertThat(status(first)).isEqualTo(Status.APPLIED);
        assertThat(follows(first.map(), "up", "low")).isTrue();
        assertThat(of(first.map(), Defect.Kind.FLIPPED_LINE)).singleElement().satisfies(d -> {
            assertThat(d.settled()).isTrue();
            assertThat(d.remedy()).contains(ROW);
        });
        Sketch redrawn = new Sketch().line("up", 0, 1000, 0, 500).line("low", 0, 500, 0, 0);
        Assembly.Corrected second = turned(redrawn, down);
        assertThat(status(second)).isEqualTo(Status.NO_LONGER_NEEDED);
        assertThat(follows(second.map(), "up", "low")).isTrue();
    }

    @Test
    void turnOfAWholeLineNamesTheEndWhereWaterEnters() {
        Assembly.Corrected corrected = turned(drawnUpstream(), turn(ROW, "low", at(3, 498), null));
        assertThat(follows(corrected.map(), "up", "low")).isTrue();
    }

    @Test
    void turnOfOneStretchLeavesTheRestOfTheFeature() {
        Sketch sketch = new Sketch().line("main", 0, 0, 1000, 0).line("side", 500, 400, 500, 0);
        Assembly.Corrected corrected = turned(sketch, turn(ROW, "main", at(1000, 0), at(500, 0)));
        assertThat(corrected.map().reaches())
                .filteredOn(r -> r.part().featureId().equals("main"))
                .extracting(r -> r.part().flipped())
                .containsExactly(false, true);
        assertThat(corrected.corrections().get(0).text()).contains("1 of 1 line");
    }

    @Test
    void turnOfOnePartLeavesTheOthers() {
        Sketch sketch = new Sketch().parts("m", new double[] {0, 0, 0, 500}, new double[] {200, 0, 200, 500});
        Assembly.Corrected corrected = turned(sketch, turn(ROW, "m", at(200, 500), null));
        assertThat(corrected.map().reaches())
                .extracting(r -> r.part().flipped())
                .containsExactly(false, true);
    }

    @Test
    void turnIsStrongerThanOutletAndHeights() {
        AssemblyOptions options = ONE_METER
                .withOrientBy(Criterion.OUTLET, Criterion.ELEVATION, Criterion.DRAWN)
                .withOutlets(Outlet.ofFeature("low"))
                .withElevation((longitude, latitude) ->
                        java.util.OptionalDouble.of(100 + (latitude - Sketch.at(0, 0).y) * 1e5))
                .withCorrections(
                        new NetworkCorrections(List.of(turn(ROW, "low", at(0, 0), at(0, 500))), List.of(), List.of()));
        Assembly.Corrected corrected = Assembly.corrected(drawnUpstream().layer(), options);
        assertThat(reach(corrected.map(), "low").part().flipped()).isFalse();
        assertThat(status(corrected)).isEqualTo(Status.APPLIED);
    }

    @Test
    void circleNamesTheTurnThatMadeIt() {
        Sketch triangle = new Sketch()
                .line("in", 0, -1000, 0, 0)
                .line("p", 0, 0, 1000, 0)
                .line("q", 1000, 0, 500, 800)
                .line("r", 0, 0, 500, 800)
                .line("out", 500, 800, 500, 1500);
        assertThatThrownBy(() -> turned(triangle, turn(ROW, "r", at(500, 800), at(0, 0))))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining(ROW + " makes water run in a circle")
                .hasMessageContaining("p, q, r");
    }

    @Test
    void turnsThatContradictEachOtherAreRefused() {
        assertThatThrownBy(() -> turned(
                        drawnUpstream(),
                        turn("c.csv:2", "low", at(0, 500), null),
                        turn("c.csv:3", "low", at(0, 0), at(0, 500))))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("c.csv:3")
                .hasMessageContaining("c.csv:2");
    }

    @Test
    void unknownFeaturesAreToldTogether() {
        NetworkCorrections wrong = new NetworkCorrections(
                List.of(turn("c.csv:2", "lov", at(0, 0), null)),
                List.of(new End("c.csv:3", "zzzzzzzz", Optional.empty())),
                List.of());
        assertThatThrownBy(() -> Assembly.corrected(drawnUpstream().layer(), ONE_METER.withCorrections(wrong)))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining("c.csv:2 feature: no line of the layer has the id lov; did you mean low?")
                .hasMessageContaining("c.csv:3 feature: no line of the layer has the id zzzzzzzz");
    }

    @Test
    void turnWhoseLineLiesElsewhereByNowDoesNotFit() {
        Assembly.Corrected corrected = turned(drawnUpstream(), turn(ROW, "low", at(900, 500), at(900, 0)));
        assertThat(status(corrected)).isEqualTo(Status.DOES_NOT_FIT);
        assertThat(reach(corrected.map(), "low").part().flipped()).isFalse();
    }

    @Test
    void chosenOutletTakesThePlaceOfTheScenariosInItsPart() {
        Sketch sketch =
                new Sketch().line("a", 0, 0, 500, 0).line("b", 500, 0, 1000, 0).line("far", 0, 5000, 500, 5000);
        AssemblyOptions options = ONE_METER
                .withOrientBy(Criterion.OUTLET, Criterion.DRAWN)
                .withOutlets(
                        Outlet.ofFeature("b"),
                        Outlet.ofPoint(at(0, 5000).longitude(), at(0, 5000).latitude()));
        assertThat(follows(Assembly.assemble(sketch.layer(), options), "a", "b"))
                .isTrue();
        for (Optional<At> end : List.of(Optional.<At>empty(), Optional.of(at(0, 0)))) {
            Assembly.Corrected corrected = Assembly.corrected(
                    sketch.layer(),
                    options.withCorrections(
                            new NetworkCorrections(List.of(), List.of(new End(ROW, "a", end)), List.of())));
            assertThat(follows(corrected.map(), "b", "a")).isTrue();
            assertThat(reach(corrected.map(), "far").part().flipped())
                    .as("another part keeps its outlet")
                    .isTrue();
            assertThat(status(corrected)).isEqualTo(Status.APPLIED);
            assertThat(corrected.corrections().get(0).text()).contains("in place of outlet b");
        }
        Assembly.Corrected same = Assembly.corrected(
                sketch.layer(),
                options.withCorrections(
                        new NetworkCorrections(List.of(), List.of(new End(ROW, "b", Optional.empty())), List.of())));
        assertThat(status(same)).isEqualTo(Status.NO_LONGER_NEEDED);
    }

    private static Sketch gap(double gap) {
        return new Sketch().line("up", 0, 1000, 0, 500 + gap).line("down", 0, 500, 0, 0);
    }

    @Test
    void refusedGapStaysOpenAndIsListedOnce() {
        Assembly.Corrected corrected = ruled(gap(0.5), ruling(false, Defect.Kind.GAP, at(0, 500), "down", "up"));
        assertThat(Topology.of(corrected.map()).components()).isEqualTo(2);
        assertThat(status(corrected)).isEqualTo(Status.APPLIED);
        assertThat(of(corrected.map(), Defect.Kind.GAP)).singleElement().satisfies(d -> {
            assertThat(d.repaired()).isFalse();
            assertThat(d.settled()).isTrue();
        });
    }

    @Test
    void refusedPairIsNotJoinedThroughAThirdEnd() {
        Sketch sketch = new Sketch()
                .line("a", 0, 1000, 0, 500.6)
                .line("b", 0, 500, 0, 0)
                .line("c", 900, 500, 0.3, 500.3);
        Assembly.Corrected corrected = ruled(sketch, ruling(false, Defect.Kind.GAP, at(0, 500), "a", "b"));
        assertThat(follows(corrected.map(), "a", "b")).isFalse();
        assertThat(Topology.of(Assembly.assemble(sketch.layer(), ONE_METER)).components())
                .isEqualTo(1);
    }

    @Test
    void verdictOnAnotherPlaceOrFeatureMeetsNothing() {
        Assembly.Corrected elsewhere = ruled(gap(0.5), ruling(false, Defect.Kind.GAP, at(0, 0), "up", "down"));
        assertThat(status(elsewhere)).isEqualTo(Status.NO_LONGER_NEEDED);
        assertThat(Topology.of(elsewhere.map()).components()).isEqualTo(1);
        Assembly.Corrected gone = ruled(gap(0.5), ruling(false, Defect.Kind.GAP, at(0, 500), "up", "gone"));
        assertThat(status(gone)).isEqualTo(Status.DOES_NOT_FIT);
        assertThat(gone.corrections().get(0).text()).contains("gone");
    }

    @Test
    void openGapThatIsRefusedIsSettled() {
        Assembly.Corrected corrected = ruled(gap(30), ruling(false, Defect.Kind.GAP, at(0, 530), "up", "down"));
        assertThat(of(corrected.map(), Defect.Kind.GAP)).singleElement().matches(Defect::settled);
        assertThat(Topology.of(corrected.map()).components()).isEqualTo(2);
        assertThat(status(corrected)).isEqualTo(Status.APPLIED);
    }

    @ParameterizedTest
    @ValueSource(doubles = {5, 30, 400})
    void acceptedGapIsJoined(double gap) {
        Assembly.Corrected corrected = ruled(gap(gap), ruling(true, Defect.Kind.GAP, at(0, 500 + gap), "up", "down"));
        RiverMap map = corrected.map();
        assertThat(follows(map, "up", "down")).isTrue();
        assertThat(status(corrected)).isEqualTo(Status.APPLIED);
        assertThat(reach(map, "up").lengthMeters()).isCloseTo(500, within(SKETCH));
        assertThat(of(map, Defect.Kind.GAP)).singleElement().matches(d -> d.repaired() && d.settled());
    }

    @Test
    void acceptedGapToTheInsideOfALineSplitsIt() {
        Sketch sketch = new Sketch().line("main", 0, 0, 1000, 0).line("side", 300, 400, 300, 40);
        Assembly.Corrected corrected = ruled(sketch, ruling(true, Defect.Kind.GAP, at(300, 40), "side", "main"));
        assertThat(follows(corrected.map(), "side", "main.2")).isTrue();
        assertThat(follows(corrected.map(), "main.1", "main.2")).isTrue();
        assertThat(reach(corrected.map(), "main.1").lengthMeters()).isCloseTo(300, within(SKETCH));
    }

    @Test
    void acceptedGapAtTheStartOfALine() {
        Sketch sketch = new Sketch().line("up", 0, 1000, 0, 500).line("down", 0, 460, 0, 0);
        Assembly.Corrected corrected = ruled(sketch, ruling(true, Defect.Kind.GAP, at(0, 460), "down", "up"));
        assertThat(follows(corrected.map(), "up", "down")).isTrue();
        assertThat(reach(corrected.map(), "down").lengthMeters()).isCloseTo(500, within(SKETCH));
    }

    @Test
    void gapThatBecameTooWideIsNotJoined() {
        Sketch wide = new Sketch().line("up", 0, 5000, 0, 2000).line("down", 0, 500, 0, 0);
        assertThat(status(ruled(wide, ruling(true, Defect.Kind.GAP, at(0, 2000), "up", "down"))))
                .isEqualTo(Status.DOES_NOT_FIT);
    }

    @Test
    void acceptedRepairIsKeptAndSettled() {
        Assembly.Corrected corrected = ruled(gap(0.5), ruling(true, Defect.Kind.GAP, at(0, 500), "up", "down"));
        assertThat(of(corrected.map(), Defect.Kind.GAP)).singleElement().matches(d -> d.repaired() && d.settled());
        assertThat(Topology.of(corrected.map()).components()).isEqualTo(1);
    }

    @Test
    void refusedSplitLeavesTheLineWhole() {
        Sketch sketch = new Sketch().line("main", 0, 0, 1000, 0).line("side", 500, 400, 500, 0.3);
        Assembly.Corrected corrected =
                ruled(sketch, ruling(false, Defect.Kind.SPLIT_AT_JUNCTION, at(500, 0.3), "main", "side"));
        assertThat(corrected.map().ids()).containsExactly("main", "side");
        assertThat(corrected.map().defects())
                .as("no second line for it as a gap or crossing")
                .filteredOn(d -> d.kind() != Defect.Kind.ISOLATED_PART)
                .singleElement()
                .matches(Defect::settled);
    }

    @Test
    void refusedDuplicateIsKept() {
        Sketch sketch = new Sketch().line("a", 0, 0, 500, 0).line("twin", 0, 0, 500, 0);
        Assembly.Corrected corrected =
                ruled(sketch, ruling(false, Defect.Kind.DUPLICATE_LINE, at(500, 0), "a", "twin"));
        assertThat(corrected.map().ids()).containsExactly("a", "twin");
        assertThat(status(corrected)).isEqualTo(Status.APPLIED);
        assertThat(of(corrected.map(), Defect.Kind.CROSSING_WITHOUT_NODE)).isEmpty();
    }

    @Test
    void refusedTurnRunsAsDrawn() {
        AssemblyOptions options =
                ONE_METER.withOrientBy(Criterion.OUTLET, Criterion.DRAWN).withOutlets(Outlet.ofFeature("low"));
        Sketch sketch = drawnUpstream().line("top", 0, 1500, 0, 1000);
        RiverMap plain = Assembly.assemble(sketch.layer(), options);
        Defect found = of(plain, Defect.Kind.FLIPPED_LINE).get(0);
        At place = new At(found.longitude(), found.latitude());
        Assembly.Corrected corrected =
                ruled(sketch.layer(), options, ruling(false, Defect.Kind.FLIPPED_LINE, place, "low"));
        assertThat(reach(plain, "low").part().flipped()).isTrue();
        assertThat(reach(corrected.map(), "low").part().flipped()).isFalse();
        assertThat(of(corrected.map(), Defect.Kind.FLIPPED_LINE))
                .singleElement()
                .matches(d -> d.settled() && !d.repaired());
    }

    @Test
    void refusedExceptionInAReversedLayerIsTurnedWithTheRest() {
        Sketch sketch = new Sketch()
                .line("a", 0, 4000, 0, 5000)
                .line("b", 0, 3000, 0, 4000)
                .line("c", 0, 2000, 0, 3000)
                .line("d", 0, 1000, 0, 2000)
                .line("e", 0, 1000, 0, 0);
        AssemblyOptions options =
                ONE_METER.withOrientBy(Criterion.OUTLET, Criterion.DRAWN).withOutlets(Outlet.ofFeature("e"));
        assertThat(reach(Assembly.assemble(sketch.layer(), options), "e").part().flipped())
                .isFalse();
        Assembly.Corrected corrected =
                ruled(sketch.layer(), options, ruling(false, Defect.Kind.FLIPPED_LINE, null, "e"));
        assertThat(reach(corrected.map(), "e").part().flipped()).isTrue();
        assertThat(status(corrected)).isEqualTo(Status.APPLIED);
    }

    @Test
    void circleNamesTheRefusalThatMadeIt() {
        Sketch triangle = new Sketch()
                .line("in", 0, -1000, 0, 0)
                .line("p", 0, 0, 1000, 0)
                .line("q", 1000, 0, 500, 800)
                .line("r", 500, 800, 0, 0)
                .line("out", 500, 800, 500, 1500);
        // heights fall from the inflow over p and q to the mouth, and r is drawn against them
        AssemblyOptions options = ONE_METER
                .withOrientBy(Criterion.ELEVATION, Criterion.DRAWN)
                .withElevation((longitude, latitude) ->
                        java.util.OptionalDouble.of(200 - (latitude - Sketch.at(0, 0).y) * 1e4));
        assertThat(reach(Assembly.assemble(triangle.layer(), options), "r")
                        .part()
                        .flipped())
                .isTrue();
        assertThatThrownBy(() -> ruled(triangle.layer(), options, ruling(false, Defect.Kind.FLIPPED_LINE, null, "r")))
                .isInstanceOf(GeoDataException.class)
                .hasMessageContaining(ROW + " makes water run in a circle");
    }

    @Test
    void refusedReversalLeavesAllLinesAsDrawn() {
        Sketch sketch = new Sketch()
                .line("a", 0, 1000, 500, 500)
                .line("b", 1000, 1000, 500, 500)
                .line("c", 500, 500, 500, 0);
        AssemblyOptions options =
                ONE_METER.withOrientBy(Criterion.OUTLET, Criterion.DRAWN).withOutlets(Outlet.ofFeature("c"));
        RiverMap plain = Assembly.assemble(sketch.turned(), options);
        assertThat(of(plain, Defect.Kind.LAYER_REVERSED)).hasSize(1);
        Assembly.Corrected corrected = ruled(sketch.turned(), options, ruling(false, Defect.Kind.LAYER_REVERSED, null));
        assertThat(corrected.map().reaches()).noneMatch(r -> r.part().flipped());
        assertThat(status(corrected)).isEqualTo(Status.APPLIED);
    }

    @Test
    void openDefectCanBeSeen() {
        Sketch cross = new Sketch().line("a", 0, 0, 1000, 0).line("b", 500, -500, 500, 500);
        Assembly.Corrected corrected =
                ruled(cross, ruling(true, Defect.Kind.CROSSING_WITHOUT_NODE, at(500, 0), "a", "b"));
        assertThat(of(corrected.map(), Defect.Kind.CROSSING_WITHOUT_NODE))
                .singleElement()
                .matches(d -> d.settled() && !d.repaired());
    }

    @Test
    void withoutCorrectionsNothingChanges() {
        RiverMap plain = Assembly.assemble(gap(0.5).layer(), ONE_METER);
        Assembly.Corrected none = Assembly.corrected(gap(0.5).layer(), ONE_METER);
        assertThat(none.map().reaches()).isEqualTo(plain.reaches());
        assertThat(none.map().defects()).isEqualTo(plain.defects()).noneMatch(Defect::settled);
        assertThat(none.corrections()).isEmpty();
    }
}
