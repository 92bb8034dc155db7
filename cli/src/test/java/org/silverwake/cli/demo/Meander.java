// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import org.silverwake.cli.demo.Plane.Spot;

/** Bends a path of cells into a river line: smooths it, then swings it from side to side. */
final class Meander {
    private static final int SMOOTHING = 20;
    private static final double SPACING = 0.06;

    private Meander() {}

    /** A path smoothed with its ends held, and its points brought to even distances. */
    static List<Spot> smooth(List<Spot> path) {
        return resample(relax(resample(path, 0.4), SMOOTHING), SPACING);
    }

    /**
     * Swings a line from side to side.
     *
     * @param line from the mouth up, evenly spaced
     * @param wavelength bend length by distance from the mouth [km]
     * @param swing share of the wavelength that bends reach out to a side
     */
    static List<Spot> bend(List<Spot> line, DoubleUnaryOperator wavelength, double swing, Random random) {
        double phase = 2 * StrictMath.PI * random.nextDouble();
        double drift = 0;
        double strength = 0;
        List<Spot> bent = new ArrayList<>();
        double length = length(line);
        double s = 0;
        for (int k = 0; k < line.size(); k++) {
            Spot a = line.get(Math.max(0, k - 10));
            Spot b = line.get(Math.min(line.size() - 1, k + 10));
            double run = Math.max(1e-9, a.distance(b));
            double wave = wavelength.applyAsDouble(s);
            double ends = ease(s / (2 * wave)) * ease((length - s) / wave);
            double reachOut = wave * swing * Math.max(0.25, 1 + strength) * ends * StrictMath.sin(phase);
            bent.add(line.get(k).plus(-(b.y() - a.y()) / run * reachOut, (b.x() - a.x()) / run * reachOut));
            drift += 0.06 * (random.nextGaussian() * 0.9 - drift);
            strength += 0.03 * (random.nextGaussian() * 2.2 - strength);
            phase += 2 * StrictMath.PI * SPACING / wave * Math.max(0.4, 1 + drift * 2.2);
            s += SPACING;
        }
        return relax(bent, 12);
    }

    private static List<Spot> relax(List<Spot> line, int rounds) {
        List<Spot> now = line;
        for (int round = 0; round < rounds; round++) {
            List<Spot> next = new ArrayList<>(now);
            for (int k = 1; k < now.size() - 1; k++) {
                Spot middle = now.get(k - 1).towards(now.get(k + 1), 0.5);
                next.set(k, now.get(k).towards(middle, 0.7));
            }
            now = next;
        }
        return now;
    }

    private static double ease(double share) {
        double x = Math.min(1, Math.max(0, share));
        return x * x * (3 - 2 * x);
    }

    static double length(List<Spot> line) {
        double sum = 0;
        for (int k = 1; k < line.size(); k++) {
            sum += line.get(k - 1).distance(line.get(k));
        }
        return sum;
    }

    /** Points at even distances along a line, its ends among them. */
    static List<Spot> resample(List<Spot> line, double spacing) {
        double length = length(line);
        int pieces = Math.max(1, (int) StrictMath.rint(length / spacing));
        List<Spot> even = new ArrayList<>(List.of(line.get(0)));
        double done = 0;
        int k = 1;
        for (int piece = 1; piece < pieces; piece++) {
            double at = length * piece / pieces;
            double step = line.get(k - 1).distance(line.get(k));
            while (done + step < at) {
                done += step;
                k++;
                step = line.get(k - 1).distance(line.get(k));
            }
            even.add(line.get(k - 1).towards(line.get(k), (at - done) / step));
        }
        even.add(line.get(line.size() - 1));
        return even;
    }
}
