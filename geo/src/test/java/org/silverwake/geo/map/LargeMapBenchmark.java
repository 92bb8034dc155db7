// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.image.BufferedImage;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.PrintStream;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.silverwake.geo.assembly.ReachPart;
import org.silverwake.geo.assembly.RiverMap;

/**
 * A map of 100,000 reaches of 20 points in all classes, at A3 and 300 dots per inch: prints seconds of drawing, by the clock and of all
 * processors together, and of writing, round after round. No test; run by hand, for instance {@code java -Xmx1g -cp ... org.silverwake.geo.map.LargeMapBenchmark FILE.png}.
 */
final class LargeMapBenchmark {
    private static final int RIVERS = 250;
    private static final int REACHES = 400;
    private static final int POINTS = 20;
    private static final double STEP = 0.0004;
    private static final int ROUNDS = 10;
    private static final double SECOND = 1e9;

    private static final com.sun.management.OperatingSystemMXBean MACHINE =
            ManagementFactory.getPlatformMXBean(com.sun.management.OperatingSystemMXBean.class);

    private LargeMapBenchmark() {}

    public static void main(String[] arguments) {
        System.setProperty("java.awt.headless", "true");
        try (PrintStream print = new PrintStream(new FileOutputStream(FileDescriptor.out), true)) {
            RiverMap map = rivers();
            MapSheet sheet = Sheets.full(map, 5, Paper.A3);
            for (int round = 0; round < ROUNDS; round++) {
                long began = System.nanoTime();
                long busy = MACHINE.getProcessCpuTime();
                BufferedImage image = Picture.image(
                        Paper.A3.width(),
                        Paper.A3.height(),
                        Paper.DOTS_PER_INCH,
                        g -> ConcentrationMap.paint(g, map, sheet, Optional.empty()));
                long drawn = System.nanoTime();
                busy = MACHINE.getProcessCpuTime() - busy;
                PngFile.write(Path.of(arguments[0]), image, Paper.DOTS_PER_INCH);
                print.printf(
                        java.util.Locale.ROOT,
                        "%d reaches: drawn in %.2f s (processors %.2f s), written in %.2f s%n",
                        map.reachCount(),
                        (drawn - began) / SECOND,
                        busy / SECOND,
                        (System.nanoTime() - drawn) / SECOND);
            }
        }
    }

    /** Rivers side by side that wander south; every tenth has a name. */
    private static RiverMap rivers() {
        Random random = new Random(1);
        List<RiverMap.Reach> reaches = new ArrayList<>();
        int nodes = 0;
        for (int river = 0; river < RIVERS; river++) {
            Coordinate at = new Coordinate(-20 + river * 3.2 / RIVERS, -28);
            double middle = at.x;
            nodes++;
            for (int r = 0; r < REACHES; r++) {
                Coordinate[] line = new Coordinate[POINTS];
                double length = 0;
                for (int k = 0; k < POINTS; k++) {
                    line[k] = at;
                    Coordinate next =
                            new Coordinate(at.x + STEP * random.nextGaussian() + 0.02 * (middle - at.x), at.y - STEP);
                    length += k < POINTS - 1 ? at.distance(next) * 111_000 : 0;
                    at = k < POINTS - 1 ? next : at;
                }
                String id = river + "-" + r;
                reaches.add(new RiverMap.Reach(
                        id,
                        new ReachPart(id, reaches.size(), 0, 0, length, false),
                        nodes - 1,
                        nodes++,
                        length,
                        new GeometryFactory().createLineString(line),
                        river % 10 == 0 ? Optional.of("River " + river) : Optional.empty(),
                        Map.of(),
                        Map.of()));
            }
        }
        return new RiverMap(reaches, nodes, List.of());
    }
}
