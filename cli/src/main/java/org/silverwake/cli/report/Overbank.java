// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.MapSheet;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.SteadyResult;

/** What floods lay on the land beside the river, reach by reach: a table and a map; nothing where no share goes overbank. */
final class Overbank {
    private static final double KILOMETER = 1000;
    private static final List<ReachShade> SHADES =
            List.of(ReachShade.FAR_ABOVE, ReachShade.ABOVE, ReachShade.LIKELY_ABOVE, ReachShade.MAY_BE_ABOVE);

    private final Outcome outcome;
    private final double[] low;
    private final double[] high;

    private Overbank(Outcome outcome) {
        this.outcome = outcome;
        SteadyResult result = outcome.result();
        int reaches = outcome.basin().network().size();
        this.low = new double[reaches];
        this.high = new double[reaches];
        for (int r = 0; r < reaches; r++) {
            low[r] = Double.POSITIVE_INFINITY;
            for (Bound bound : result.bounds()) {
                for (int v = 0; v < result.variants(); v++) {
                    double year = result.overbank(bound, v, r) * Quantity.SECONDS_PER_YEAR;
                    low[r] = Math.min(low[r], year);
                    high[r] = Math.max(high[r], year);
                }
            }
        }
    }

    private static boolean isAsked(Outcome outcome) {
        return outcome.result().input().options().overbankPerMeter() > 0;
    }

    private double perKilometer(int reach) {
        return high[reach] / (outcome.basin().table().length(reach) / KILOMETER);
    }

    static void write(Outcome outcome, Path file) {
        if (!isAsked(outcome)) {
            return;
        }
        Overbank overbank = new Overbank(outcome);
        List<String> header = List.of(
                "reach",
                "feature",
                "river",
                "length [m]",
                "released mercury laid on land, low [kg/yr]",
                "released mercury laid on land, high [kg/yr]",
                "high, per length [kg/km/yr]");
        try (CsvTableWriter csv =
                new CsvTableWriter(file, header, outcome.scenario().outputs().tables())) {
            for (int r = 0; r < overbank.high.length; r++) {
                var reach = outcome.basin().reach(r);
                csv.text(reach.id())
                        .text(reach.part().featureId())
                        .text(reach.name().orElse(""))
                        .number(reach.lengthMeters())
                        .number(overbank.low[r])
                        .number(overbank.high[r])
                        .number(overbank.perKilometer(r))
                        .end();
            }
        }
    }

    static void draw(Outcome outcome, MapFiles files, boolean withSites) {
        if (isAsked(outcome)) {
            files.draw(outcome.basin().map(), new Overbank(outcome).sheet(withSites), "overbank");
        }
    }

    private MapSheet sheet(boolean withSites) {
        double most = 0;
        double all = 0;
        for (int r = 0; r < high.length; r++) {
            most = Math.max(most, perKilometer(r));
            all += high[r];
        }
        DecadeClasses decades = new DecadeClasses(most, SHADES.size());
        List<LineClass> classes = new ArrayList<>();
        for (String words : decades.words("kg per km and year")) {
            classes.add(SHADES.get(classes.size()).withLegend(words));
        }
        classes.add(ReachShade.BELOW.withLegend("Less, or none"));
        List<ReachMark> marks = new ArrayList<>();
        for (int i = 0; i < outcome.basin().map().reachCount(); i++) {
            int reach = outcome.basin().network().reachOfInput(i);
            marks.add(new ReachMark(decades.of(perKilometer(reach)), false, false, false));
        }
        return new MapSheet(
                MapBases.basis(outcome, withSites),
                "Mercury that floods lay on the land beside the river",
                "High estimate, mean of the year",
                classes,
                new MapSheet.Summary(
                        "In all",
                        List.of(
                                "At most " + Numbers.shown(all, 3) + " kg of released mercury a year",
                                "How far from the river it lies, and what it does there, is not modelled.")),
                marks,
                List.of(),
                "A stated share of what is suspended goes over the banks in each kilometer of a flood.");
    }
}
