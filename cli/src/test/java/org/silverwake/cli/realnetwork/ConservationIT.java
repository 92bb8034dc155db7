// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.StateSolution;
import org.silverwake.model.transport.SteadyResult;

/** With nothing abstracted and nothing lost on the way, what is released leaves at the outlets, whatever the way of discharge. */
class ConservationIT {
    /** ROUNDING: 1e-12 of the load. */
    private static final double ROUNDING_PERCENT = 1e-10;

    /** ROUNDING: the bound on closure of the project's own rule. */
    private static final double CLOSURE = 1e-9;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "white-river | attribute | |",
                "white-river | specific-discharge | |",
                "white-river | gauges | longitude,latitude | -93.6006320414969,36.6106554837031",
                "white-river | headwaters | |",
                "new-hope | specific-discharge | |",
                "new-hope | gauges | x,y | 1514274.87759287,1552529.55536809",
                "new-hope | headwaters | |",
                "kamp | specific-discharge | |",
                "kamp | gauges | x,y | 4710225,2845954.28932188",
                "kamp | headwaters | |",
                "methow | specific-discharge | |",
                "methow | gauges | x,y | -1663969.46043897,1161536.35344493",
                "methow | headwaters | |",
                "north-carolina | headwaters | |"
            })
    void whatIsReleasedLeavesAtTheOutlets(String network, String method, String columns, String position) {
        RealScenario scenario = RealScenario.of(network, folder).discharge(lines(method));
        if (method.equals("gauges")) {
            scenario.table(
                    "invented-gauge.csv", List.of("name," + columns + ",discharge", "outlet," + position + ",20 m3/s"));
        }
        Reaches reaches = new Reaches(scenario.run());
        SteadyResult result = reaches.outcome().result();
        double released = result.input().sites().stream()
                .mapToDouble((SiteRelease s) -> s.mercury().get(0))
                .sum();
        for (Bound bound : Bound.both()) {
            StateSolution solution = result.solution(bound, 0);
            double out = IntStream.range(0, reaches.size())
                    .filter(reaches.basin().network()::isOutlet)
                    .mapToDouble(r -> solution.loadOut(r, 0))
                    .sum();
            assertThat(out).as(bound + " outlets' load").isCloseTo(released, withinPercentage(ROUNDING_PERCENT));
        }
        assertThat(result.worstClosure()).isLessThanOrEqualTo(CLOSURE);
        List<String> dry = IntStream.range(0, reaches.size())
                .filter(r -> !reaches.water().isWet(r))
                .mapToObj(reaches::feature)
                .toList();
        // New Hope has two headwaters with AreaSqKM 0 (Divergence 0, StartFlag 1), which drain nothing
        boolean byArea = method.equals("specific-discharge") || method.equals("gauges");
        List<String> none = network.equals("new-hope") && byArea ? List.of("8898158", "8894420") : List.of();
        assertThat(dry).as("reaches without water").containsExactlyInAnyOrderElementsOf(none);
    }

    private static String lines(String method) {
        return switch (method) {
            case "attribute" -> "discharge: {method: attribute}";
            case "specific-discharge" ->
                "discharge: {method: specific-discharge, specific-discharge: {mean: 10 L/s/km2}}";
            case "gauges" -> "discharge: {method: gauges}\ngauges: {file: invented-gauge.csv}";
            case "headwaters" ->
                "discharge: {method: headwaters, headwater-discharge: {mean: 1 L/s}, lateral-inflow: {mean: 5 L/s/km}}";
            default -> throw new IllegalArgumentException(method);
        };
    }
}
