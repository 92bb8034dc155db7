// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.Water;
import org.silverwake.model.WaterInput;
import org.silverwake.model.WaterInput.AtHead;
import org.silverwake.model.network.RiverNetwork;

/** Step 5: water of all flow states. */
final class WaterStep {
    private WaterStep() {}

    static Water run(ScenarioInput scenario, Basin basin) {
        return run(scenario, basin, siteWater(scenario, basin));
    }

    /** The water when one site adds none. */
    static Water without(ScenarioInput scenario, Basin basin, int site) {
        List<AtHead> others = new ArrayList<>(siteWater(scenario, basin));
        others.remove(site);
        return run(scenario, basin, others);
    }

    private static Water run(ScenarioInput scenario, Basin basin, List<AtHead> siteWater) {
        WaterInput input = new WaterInput(
                scenario.states().stream()
                        .map(s -> new WaterInput.State(s.name(), s.share(), s.temperature()))
                        .toList(),
                WaterInput.DischargeMethod.valueOf(scenario.discharge().method().name()),
                scenario.discharge().specificDischarge(),
                scenario.discharge().areaExponent(),
                scenario.discharge().headwaterDischarge(),
                scenario.discharge().lateralPerLength(),
                gauges(scenario, basin),
                WaterInput.ChannelMethod.valueOf(scenario.channel().method().name()),
                scenario.settings(),
                basinAreas(scenario, basin),
                siteWater,
                abstractions(scenario, basin));
        try {
            return Water.of(basin.table(), input);
        } catch (IllegalArgumentException e) {
            throw new ScenarioException(List.of("scenario: " + e.getMessage()));
        }
    }

    private static List<WaterInput.Gauge> gauges(ScenarioInput scenario, Basin basin) {
        List<PlacedPoint> points = basin.points("gauge");
        List<WaterInput.Gauge> gauges = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            ScenarioInput.Gauge gauge = scenario.gauges().get(i);
            gauges.add(new WaterInput.Gauge(gauge.name(), basin.reachAt(points.get(i)), gauge.discharge()));
        }
        return gauges;
    }

    private static List<WaterInput.BasinArea> basinAreas(ScenarioInput scenario, Basin basin) {
        List<WaterInput.BasinArea> areas = new ArrayList<>();
        RiverNetwork network = basin.network();
        for (ScenarioInput.Outlet outlet : scenario.rivers().outlets()) {
            if (outlet.basinArea().isPresent() && outlet.feature().isPresent()) {
                for (int r = 0; r < network.size(); r++) {
                    if (network.isOutlet(r)
                            && basin.reach(r)
                                    .part()
                                    .featureId()
                                    .equals(outlet.feature().get())) {
                        areas.add(new WaterInput.BasinArea(r, outlet.basinArea().getAsDouble()));
                    }
                }
            }
        }
        return areas;
    }

    private static List<AtHead> siteWater(ScenarioInput scenario, Basin basin) {
        List<AtHead> water = new ArrayList<>();
        for (ScenarioInput.Site site : scenario.sites()) {
            List<Double> added = new ArrayList<>();
            for (int s = 0; s < scenario.states().size(); s++) {
                added.add(MercuryStep.waterOf(site, s));
            }
            water.add(new AtHead(basin.reachOf(site), added));
        }
        return water;
    }

    private static List<AtHead> abstractions(ScenarioInput scenario, Basin basin) {
        List<PlacedPoint> points = basin.points("abstraction");
        List<AtHead> taken = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            taken.add(new AtHead(
                    basin.takenAt(points.get(i)), scenario.abstractions().get(i).discharge()));
        }
        return taken;
    }
}
