// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Names;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.transport.SteadyResult;
import org.silverwake.model.water.RoutedWater;

/** Abstractions that take all of a river, or more water than a field can be given: slips of the unit, mostly. */
final class TakenWater {
    private static final double LITERS = 1000;
    private static final int NAMED = 5;
    private static final double HECTARE = 1e4;
    /** Depth of water on a field over a year that is asked about [m]; common practice, no source. */
    private static final double DEEP = 10;

    private final ScenarioInput scenario;
    private final Basin basin;
    private final SteadyResult result;

    private TakenWater(ScenarioInput scenario, Basin basin, SteadyResult result) {
        this.scenario = scenario;
        this.basin = basin;
        this.result = result;
    }

    static List<String> warnings(ScenarioInput scenario, Basin basin, SteadyResult result) {
        TakenWater taken = new TakenWater(scenario, basin, result);
        List<String> warnings = new ArrayList<>();
        List<PlacedPoint> points = basin.points("abstraction");
        for (int i = 0; i < points.size(); i++) {
            taken.all(scenario.abstractions().get(i), basin.takenAt(points.get(i)), warnings);
            taken.deep(scenario.abstractions().get(i), warnings);
        }
        return warnings;
    }

    /** Reaches at whose head an abstraction takes all water in a state, and those below until another river joins. */
    static boolean[] emptied(RiverNetwork network, RoutedWater water) {
        boolean[] emptied = new boolean[network.size()];
        for (int r = 0; r < emptied.length; r++) {
            int node = network.fromNode(r);
            boolean below = network.inCount(node) > 0;
            for (int k = 0; k < network.inCount(node); k++) {
                below &= emptied[network.in(node, k)];
            }
            emptied[r] = below || water.emptied().contains(r) && water.abstracted(r) > 0;
        }
        return emptied;
    }

    private void all(ScenarioInput.Abstraction asked, int reach, List<String> warnings) {
        List<String> states = new ArrayList<>();
        for (int s = 0; s < scenario.states().size(); s++) {
            RoutedWater water = result.input().hydraulics().water(s);
            if (asked.discharge().get(s) > 0 && water.emptied().contains(reach)) {
                states.add(scenario.states().get(s).name() + ": asked "
                        + liters(asked.discharge().get(s)) + ", the river has " + liters(water.abstracted(reach)));
            }
        }
        if (!states.isEmpty()) {
            List<String> places = placesBelow(reach);
            warnings.add(asked.where() + " " + asked.name() + ": it takes all the water, and the mercury in it, out of "
                    + basin.reach(reach).id() + " (" + String.join("; ", states) + ")"
                    + (places.isEmpty()
                            ? ""
                            : "; answers for " + Names.first(places, NAMED) + " further down rest on that")
                    + "; check the discharge and its unit");
        }
    }

    private static String liters(double discharge) {
        return Numbers.shown(discharge * LITERS, 4) + " L/s";
    }

    private List<String> placesBelow(int reach) {
        BitSet own = new BitSet();
        own.set(reach);
        BitSet below = basin.network().below(own);
        List<PlacedPoint> places = basin.points("place");
        return IntStream.range(0, places.size())
                .filter(i -> below.get(basin.reachAt(places.get(i))))
                .mapToObj(i -> scenario.places().get(i).name())
                .toList();
    }

    private void deep(ScenarioInput.Abstraction asked, List<String> warnings) {
        if (asked.field().isEmpty()) {
            return;
        }
        double year = 0;
        for (int s = 0; s < scenario.states().size(); s++) {
            year += scenario.states().get(s).share() * asked.discharge().get(s) * Quantity.SECONDS_PER_YEAR;
        }
        double depth = year / asked.field().get().area();
        if (depth > DEEP) {
            warnings.add(asked.where() + " " + asked.name() + ": asks for " + Numbers.shown(depth, 3)
                    + " m of water a year on its "
                    + Numbers.shown(asked.field().get().area() / HECTARE, 4)
                    + " ha; fields are seldom given more than " + Numbers.shown(DEEP, 2)
                    + " m (common practice, no source); check discharge, area and their units");
        }
    }
}
