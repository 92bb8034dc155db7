// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.Collections;
import java.util.EnumMap;
import java.util.Map;
import java.util.function.Predicate;
import org.silverwake.model.numerics.CompensatedSum;

/**
 * A site's mercury in a year by path, each found on its own, and the dry tailings that go to the river with it.
 *
 * @param rates mean of the year by path [kg/s], at least 0
 * @param solids dry tailings to the river, mean of the year [kg/s]
 */
public record YearBalance(Map<SitePath, Double> rates, double solids) {
    /** Copies the rates. */
    public YearBalance {
        Map<SitePath, Double> copy = new EnumMap<>(SitePath.class);
        copy.putAll(rates);
        rates = Collections.unmodifiableMap(copy);
    }

    /** Mean rate of a path [kg/s]. */
    public double rate(SitePath path) {
        return rates.getOrDefault(path, 0.0);
    }

    /** Mean rate of some paths together [kg/s]. */
    public double sum(Predicate<SitePath> which) {
        CompensatedSum sum = new CompensatedSum();
        rates.forEach((path, rate) -> sum.add(which.test(path) ? rate : 0));
        return sum.value();
    }

    /** Mercury to the river [kg/s], without the upper-bound runoff of what the air laid down. */
    public double river() {
        return sum(SitePath::isRiver);
    }

    /** Mercury to the air [kg/s], come down nearby or not. A vapor hazard to whoever is near. */
    public double air() {
        return sum(SitePath::isVapor);
    }

    /** Mercury used [kg/s]: put in, less what was squeezed back; before what retorts and tables give back. */
    public double used() {
        return rate(SitePath.CHARGED) + rate(SitePath.USED) - rate(SitePath.SQUEEZED_BACK);
    }

    /** Mercury that must be bought [kg/s]: used, less what retorts and tables give back. */
    public double bought() {
        return used() - sum(SitePath::isRecovered);
    }

    /** Relative closure |in - out|/in [-]; 0 where nothing enters and nothing leaves. */
    public double closure() {
        CompensatedSum difference = new CompensatedSum();
        rates.forEach((path, rate) -> difference.add(path.isIncoming() ? rate : -rate));
        double in = sum(SitePath::isIncoming);
        double out = sum(path -> !path.isIncoming());
        return in == 0 ? (out == 0 ? 0 : Double.POSITIVE_INFINITY) : Math.abs(difference.value()) / in;
    }

    /** The same, so many times, in [-]. */
    YearBalance times(double factor) {
        return scaled(path -> true, factor).withSolids(solids * factor);
    }

    /** Some paths so many times. */
    YearBalance scaled(Predicate<SitePath> which, double factor) {
        Map<SitePath, Double> scaled = new EnumMap<>(SitePath.class);
        rates.forEach((path, rate) -> scaled.put(path, which.test(path) ? rate * factor : rate));
        return new YearBalance(scaled, solids);
    }

    /** A share of some paths turned into another. */
    YearBalance moved(Predicate<SitePath> from, SitePath to, double share) {
        Map<SitePath, Double> moved = new EnumMap<>(SitePath.class);
        CompensatedSum sum = new CompensatedSum();
        rates.forEach((path, rate) -> {
            boolean leaves = from.test(path) && path != to;
            moved.put(path, leaves ? rate * (1 - share) : rate);
            sum.add(leaves ? rate * share : 0);
        });
        moved.merge(to, sum.value(), Double::sum);
        return new YearBalance(moved, solids);
    }

    /** With more on a path. */
    YearBalance plus(SitePath path, double rate) {
        Map<SitePath, Double> more = new EnumMap<>(SitePath.class);
        more.putAll(rates);
        more.merge(path, rate, Double::sum);
        return new YearBalance(more, solids);
    }

    YearBalance withSolids(double other) {
        return new YearBalance(rates, other);
    }

    /** Part of this and the rest of another. */
    YearBalance mixed(double share, YearBalance other) {
        Map<SitePath, Double> mixed = new EnumMap<>(SitePath.class);
        rates.forEach((path, rate) -> mixed.merge(path, rate * share, Double::sum));
        other.rates.forEach((path, rate) -> mixed.merge(path, rate * (1 - share), Double::sum));
        return new YearBalance(mixed, solids * share + other.solids * (1 - share));
    }
}
