// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.silverwake.geo.assembly.AssemblyOptions.ColumnMapping;
import org.silverwake.geo.crs.Geodesy;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.VectorLayer;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.water.Column;
import org.silverwake.model.water.DrainageArea;
import org.silverwake.model.water.ReachTable;

/** What the pieces of a cut feature get of its numbers. */
class ReachNumbersTest {
    /** ROUNDING: shares of one number, by lengths summed over some hundred segments. */
    private static final double ROUNDING_PERCENT = 1e-6;

    /** PRINTED: the length of the feature is given to 0.01 m. */
    private static final double LENGTH_PRINTED = 0.005;

    /** PRINTED: the two lengths to 0.01 m of some kilometers. */
    private static final double PRINTED_PERCENT = 1e-3;

    private static final double SQUARE_KILOMETER = 1e6;

    /** 10 L/s/km2 [m/s]. */
    private static final double SPECIFIC = 1e-8;

    private static final String CUT = "8894160";
    private static final double CUT_AT = 4060.59;

    @Test
    void areaGoesByLengthAndHeightsAreInterpolated() {
        Map<String, Double> numbers =
                Map.of("local-area", 8e6, "elevation-upper", 100.0, "elevation-lower", 60.0, "drainage-area", 9e6);
        Map<String, Double> piece = ReachNumbers.piece(numbers, 0.25, 0.75);
        assertThat(piece.get("local-area")).isCloseTo(4e6, withinPercentage(ROUNDING_PERCENT));
        assertThat(piece.get("elevation-upper")).isCloseTo(90, withinPercentage(ROUNDING_PERCENT));
        assertThat(piece.get("elevation-lower")).isCloseTo(70, withinPercentage(ROUNDING_PERCENT));
        assertThat(piece).containsEntry("drainage-area", 9e6);
        assertThat(ReachNumbers.piece(numbers, 0, 1)).isEqualTo(numbers);
    }

    /**
     * Crooked Creek in the New Hope layer of NHDPlus: AreaSqKM 8.0793; its length is checked against GeographicLib. Geo shares the
     * area out once, at the cut; the model must take the pieces' areas as they come and not share them out again.
     */
    @Test
    void geoAndModelAgreeOnTheLocalAreaOfACutFeature() {
        RiverMap map = newHope();
        RiverMap.Reach whole = map.reach(map.ids().indexOf(CUT));
        assertThat(whole.lengthMeters()).isCloseTo(7254.54, within(LENGTH_PRINTED));
        assertThat(whole.lengthMeters()).isCloseTo(Geodesy.length(whole.line()), within(LENGTH_PRINTED));
        List<List<Double>> cuts = new ArrayList<>();
        map.ids().forEach(id -> cuts.add(id.equals(CUT) ? List.of(CUT_AT) : List.of()));
        RiverMap cut = ReachCutting.cut(map, cuts);
        double above = 8.0793 * 4060.59 / 7254.54 * SQUARE_KILOMETER;
        double below = 8.0793 * SQUARE_KILOMETER - above;
        int upper = cut.ids().indexOf(CUT + ".1");
        int lower = cut.ids().indexOf(CUT + ".2");
        assertThat(cut.reach(upper).number("local-area").getAsDouble())
                .isCloseTo(above, withinPercentage(PRINTED_PERCENT));
        assertThat(cut.reach(lower).number("local-area").getAsDouble())
                .isCloseTo(below, withinPercentage(PRINTED_PERCENT));

        ReachTable table = table(cut);
        DrainageArea areas = DrainageArea.fromLocalAttribute(table);
        // 10 L/s/km2 on 4.5223 km2: 45.22 L/s come in sideways above the cut
        assertThat(areas.local(table.network().reachOfInput(upper)) * SPECIFIC)
                .isCloseTo(above * SPECIFIC, withinPercentage(PRINTED_PERCENT));
        assertThat(areas.local(table.network().reachOfInput(lower)) * SPECIFIC)
                .isCloseTo(below * SPECIFIC, withinPercentage(PRINTED_PERCENT));
    }

    private static RiverMap newHope() {
        Path file = Path.of(
                System.getProperty("silverwake.shared", "absent"), "data/open/networks/nhdplus_new_hope_nc.gpkg");
        assumeTrue(Files.exists(file), "skipped: the open test data is not here");
        VectorLayer layer = Layers.read(
                new LayerSource(file, Optional.empty(), Optional.empty(), Optional.empty(), Optional.of("COMID")));
        return Assembly.assemble(
                layer,
                AssemblyOptions.drawn(1)
                        .withColumns(new ColumnMapping("local-area", "AreaSqKM", SQUARE_KILOMETER, List.of())));
    }

    /** The model's table of a map: the pieces of a feature are one group. */
    private static ReachTable table(RiverMap map) {
        RiverNetwork network = RiverNetwork.of(
                map.ids(),
                map.reaches().stream().mapToInt(RiverMap.Reach::fromNode).toArray(),
                map.reaches().stream().mapToInt(RiverMap.Reach::toNode).toArray());
        int n = map.reachCount();
        double[] lengths = new double[n];
        int[] features = new int[n];
        Column areas = new Column(n);
        for (int r = 0; r < n; r++) {
            RiverMap.Reach reach = map.reach(network.inputIndex(r));
            lengths[r] = reach.lengthMeters();
            features[r] = reach.part().feature();
            int at = r;
            reach.number("local-area").ifPresent(area -> areas.put(at, area));
        }
        return new ReachTable(network, lengths, features, Map.of("local-area", areas));
    }
}
