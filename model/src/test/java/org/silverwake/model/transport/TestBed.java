// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.StateLayout;

/** A bed to test with: 3 cm of silt whose solids go back in the state that is strong enough or, if none is, that brought them. */
final class TestBed {
    static final double YEAR = 365.25 * 86400;

    double thickness = 0.03;
    double porosity = 0.6;
    double density = 2650;
    BedInput.Given given = BedInput.Given.BURIAL;
    double burial;
    double horizon = 1e4 * YEAR;
    double erosionRate = 1e-4;
    double criticalShear = 0.5;
    double poreExchange = 0.01 / 86400;
    double celsius = 20;
    double ceiling = Double.POSITIVE_INFINITY;
    final Map<String, BedInput.Sorption> sorption =
            new HashMap<>(Map.of(StateLayout.EXCHANGEABLE, new BedInput.Sorption(StrictMath.pow(10, 4.9) / 1000, 0)));
    final List<BedInput.BedReaction> reactions = new ArrayList<>();

    /** Adds a reaction of this rate at 20 degC [1/s]. */
    TestBed reaction(String from, String to, double rate) {
        reactions.add(new BedInput.BedReaction(from, to, new FirstOrder(ByStateAndKind.same(rate), 1, false)));
        return this;
    }

    /** Adds a form's partition coefficient [m3/kg]. */
    TestBed kd(String form, double kd) {
        sorption.put(form, new BedInput.Sorption(kd, 0));
        return this;
    }

    BedInput input(int states) {
        return new BedInput(
                thickness,
                porosity,
                density,
                new BedInput.Turnover(given, ByStateAndKind.same(burial), erosionRate, criticalShear),
                ByStateAndKind.same(poreExchange),
                sorption,
                reactions,
                ByStateAndKind.same(ceiling),
                Collections.nCopies(states, celsius),
                horizon);
    }
}
