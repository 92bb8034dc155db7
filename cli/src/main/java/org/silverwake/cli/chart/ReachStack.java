// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import java.util.List;

/**
 * Amounts that add up, against distance downstream along one path.
 *
 * @param frame title, axis, gaps and marks; its values are not drawn
 * @param layers from the bottom up
 * @param panels answers to the same question, one above the other on the same scale
 */
public record ReachStack(Profile frame, List<Layer> layers, List<Panel> panels) {
    /** Copies the lists. */
    public ReachStack {
        layers = List.copyOf(layers);
        panels = List.copyOf(panels);
    }

    /** A name, and which of the colors it has in every picture. */
    public record Layer(String name, int color) {}

    /** What it is the answer of; parts of the path without a gap; two points at one distance make a step. */
    public record Panel(String title, List<List<Point>> stretches) {
        /** Copies the lists. */
        public Panel {
            stretches = stretches.stream().map(List::copyOf).toList();
        }
    }

    /** Amounts of the layers at one distance [km], in the frame's unit, each at least 0. */
    public record Point(double kilometers, List<Double> amounts) {
        /** Copies the list. */
        public Point {
            amounts = List.copyOf(amounts);
        }

        double sum() {
            return amounts.stream().mapToDouble(a -> a).sum();
        }
    }

    /** Largest sum of any panel. */
    double most() {
        return panels.stream()
                .flatMap(p -> p.stretches().stream())
                .flatMap(List::stream)
                .mapToDouble(Point::sum)
                .max()
                .orElse(0);
    }
}
