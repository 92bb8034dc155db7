// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.RiverMap;

/** Sheets for pictures of invented rivers. Values are invented too. */
final class Sheets {
    static final List<LineClass> CLASSES = List.of(
            ReachShade.FAR_ABOVE.withLegend("above: more than 50 times"),
            ReachShade.ABOVE.withLegend("above: 5 to 50 times"),
            ReachShade.LIKELY_ABOVE.withLegend("may be above: low estimate above 1"),
            ReachShade.MAY_BE_ABOVE.withLegend("may be above"),
            ReachShade.BELOW.withLegend("below by this estimate: under 1/5"),
            ReachShade.NOT_ASSESSED.withLegend("not assessed"),
            ReachShade.NO_WATER.withLegend("no water"),
            ReachShade.DOES_NOT_APPLY.withLegend("this value does not apply here"));

    private Sheets() {}

    static MapSheet full(RiverMap map, long seed, Paper paper) {
        Random random = new Random(seed);
        List<ReachMark> marks = new ArrayList<>();
        for (int r = 0; r < map.reachCount(); r++) {
            int look = random.nextInt(CLASSES.size());
            marks.add(new ReachMark(
                    look,
                    look < 4 && random.nextInt(3) == 0,
                    random.nextInt(9) == 0,
                    look < 4 && random.nextInt(8) == 0));
        }
        MapBasis basis = new MapBasis(
                "Lantern River: mercury in river water",
                points(map, random),
                List.of(),
                List.of(
                        "This is a screening estimate from a model. It is no measurement.",
                        "A river drawn thin and pale is below by this estimate only; other metals, cyanide and germs are not on this map.",
                        "Fish gather mercury: this map of water says nothing of fish."),
                "District Office of the Environment",
                LocalDate.of(2026, 11, 25),
                true,
                MapWords.english(),
                paper,
                Ground.bare());
        return new MapSheet(
                basis,
                "Dry season \u2013 inorganic mercury, unfiltered, in surface water",
                "Estimate over guideline",
                CLASSES,
                new MapSheet.Summary(
                        "By this value, in this flow state alone",
                        List.of(
                                "Above: 420 people, 1 intake, 12.5 km",
                                "May be above: 11150 people and 2 places (no number), 0 intakes, 140.3 km",
                                "Below by this estimate: 330 people, 0 intakes, 92 km",
                                "Not assessed: 0 people, 0 intakes, 3.1 km")),
                marks,
                List.of(
                        new GuidelineLine(
                                "CCME freshwater",
                                "26 ng/L inorganic Hg",
                                "Canadian guidelines for aquatic life, 2003",
                                true),
                        new GuidelineLine("Recreation", "1 \u00b5g/L total Hg", "Example source, 2007", false)),
                "Estimates are within a factor of 5 either way, as stated by the program, not shown by measurements.");
    }

    /** Released at one reach far up, thinning out downstream; the rest below or not assessed. */
    static MapSheet downstream(RiverMap map, Paper paper) {
        MapSheet full = full(map, 5, paper);
        int[] look = new int[map.reachCount()];
        java.util.Arrays.fill(look, 4);
        for (int r = 0; r < look.length; r += 7) {
            look[r] = 5;
        }
        for (int start : new int[] {map.reachCount() / 3, map.reachCount() - 4}) {
            int steps = 0;
            int node = map.reach(start).fromNode();
            boolean moved = true;
            while (moved) {
                moved = false;
                for (int r = 0; r < look.length && !moved; r++) {
                    if (map.reach(r).fromNode() == node) {
                        look[r] = Math.min(3, steps++ / 2);
                        node = map.reach(r).toNode();
                        moved = true;
                    }
                }
            }
        }
        List<ReachMark> marks = new ArrayList<>();
        for (int r = 0; r < look.length; r++) {
            marks.add(new ReachMark(look[r], look[r] == 3, look[r] == 0, false));
        }
        return new MapSheet(
                full.basis(),
                full.subtitle(),
                full.legendTitle(),
                full.classes(),
                full.summary(),
                marks,
                full.guidelines(),
                full.factorLine());
    }

    static List<MapPoint> points(RiverMap map, Random random) {
        List<String> names = List.of(
                "Candlewick",
                "Old Ford",
                "Lampblack Landing",
                "Three Mills",
                "Upper Tallow",
                "Glim",
                "Taper's End",
                "North Snuff",
                "Rushlight");
        List<MapPoint> points = new ArrayList<>();
        for (String name : names) {
            points.add(beside(map, random, MapPoint.Kind.VILLAGE, name));
        }
        points.add(beside(map, random, MapPoint.Kind.INTAKE, "Town intake"));
        points.add(beside(map, random, MapPoint.Kind.FISHING, "Long Pool"));
        for (int k = 1; k <= 5; k++) {
            points.add(beside(map, random, MapPoint.Kind.SITE, "Shed " + k));
        }
        points.add(beside(map, random, MapPoint.Kind.GAUGE, "Gauge 7"));
        return points;
    }

    private static MapPoint beside(RiverMap map, Random random, MapPoint.Kind kind, String name) {
        var line = map.reach(random.nextInt(map.reachCount())).line();
        Coordinate at = line.getCoordinateN(random.nextInt(line.getNumPoints()));
        return new MapPoint(kind, name, at.x + 0.004 * random.nextGaussian(), at.y + 0.004 * random.nextGaussian());
    }
}
