// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * Drainage areas on a made-up raster of 10,000 x 10,000 cells: prints seconds and the heap after each step. No test; run by hand with the
 * launcher's options, for instance {@code java -Xmx1g -cp ... org.silverwake.geo.terrain.LargeRasterBenchmark FILE}.
 */
final class LargeRasterBenchmark {
    private static final int SIDE = 10_000;
    private static final double MEGABYTE = 1e6;

    private final PrintStream print;
    private long before = System.nanoTime();

    private LargeRasterBenchmark(PrintStream print) {
        this.print = print;
    }

    /** Valleys every 400 cells with a rough surface full of pits; rivers along them. */
    public static void main(String[] arguments) throws IOException {
        Path file = Path.of(arguments[0]);
        int side = arguments.length > 1 ? Integer.parseInt(arguments[1]) : SIDE;
        try (PrintStream print = new PrintStream(new java.io.FileOutputStream(java.io.FileDescriptor.out), true)) {
            LargeRasterBenchmark benchmark = new LargeRasterBenchmark(print);
            Land land = land(side);
            if (!Files.exists(file)) {
                land.write(file, LargeRasterBenchmark::height);
                benchmark.tell("raster written");
            }
            ElevationModel model = ElevationModel.read(file, 1);
            benchmark.tell("raster read");
            TerrainAreas areas = TerrainAreas.of(land.map(), model);
            benchmark.tell("areas found: " + areas.drained() / MEGABYTE + " km2 to rivers, " + areas.edge() / MEGABYTE
                    + " km2 over the edge");
        }
    }

    private static Land land(int side) {
        Land land = Land.meters(side, side);
        for (int column = 200; column < side; column += 400) {
            for (int row = 0; row + 100 < side; row += 100) {
                land.reach(
                        column + "-" + row,
                        column + "-" + (row + 100),
                        column,
                        row,
                        column + 3,
                        row + 50,
                        column,
                        row + 100);
            }
        }
        return land;
    }

    private static double height(int column, int row) {
        int noise = (column * 73_856_093 ^ row * 19_349_663) * 0x9E3779B9 >>> 22;
        return 1500 - 0.1 * row + Math.abs(column % 400 - 200) * 0.5 + noise * 0.01;
    }

    private void tell(String what) {
        long heap = java.lang.management.ManagementFactory.getMemoryPoolMXBeans().stream()
                .filter(pool -> pool.getType() == java.lang.management.MemoryType.HEAP)
                .mapToLong(pool -> pool.getPeakUsage().getUsed())
                .sum();
        long now = System.nanoTime();
        print.printf(
                java.util.Locale.ROOT,
                "%-12s %6.1f s, heap at most %.0f MB%n",
                what,
                (now - before) / 1e9,
                heap / MEGABYTE);
        before = now;
    }
}
