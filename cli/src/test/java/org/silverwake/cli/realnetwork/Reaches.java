// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.realnetwork;

import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.run.Outcome;
import org.silverwake.model.water.Column;
import org.silverwake.model.water.Hydraulics;
import org.silverwake.model.water.RoutedWater;

/** Reaches of a run by the layer's own features. */
record Reaches(Outcome outcome) {
    Basin basin() {
        return outcome.basin();
    }

    Hydraulics hydraulics() {
        return outcome.water().hydraulics();
    }

    RoutedWater water() {
        return hydraulics().water(0);
    }

    int size() {
        return basin().network().size();
    }

    String feature(int reach) {
        return basin().reach(reach).part().featureId();
    }

    /** The last reaches of the layer's features, whose lower end is the feature's. */
    IntStream lasts() {
        return IntStream.range(0, size()).filter(basin().table()::isLastOfGroup);
    }

    /** The last reach of a feature. */
    int last(String feature) {
        return lasts().filter(r -> feature(r).equals(feature)).findFirst().orElseThrow();
    }

    /** A number of the layer's table, as it stands there; empty where it is missing. */
    Optional<Double> attribute(int reach, String column) {
        Map<String, Object> row = basin().layer()
                .features()
                .get(basin().reach(reach).part().feature())
                .attributes();
        return Optional.ofNullable((Number) row.get(column)).map(Number::doubleValue);
    }

    /** A mapped column [SI]. */
    Column column(String key) {
        return basin().table().column(key).orElseThrow();
    }

    /** Velocity at a reach's lower end [m/s]. */
    double velocity(int reach) {
        double end = basin().table().length(reach);
        return hydraulics().section(0, reach, end).velocity();
    }
}
