// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.Arrays;
import org.silverwake.model.quantity.Quantity;

/**
 * What a practice gives back and costs in a year, at one site with all its sheds. Mercury that need not be bought counts whether it
 * is recovered or not used at all. Health and fish are not in it.
 *
 * @param mercury mercury that need not be bought any more [kg/s]
 * @param givenBack worth of that mercury and of gold gained [money/yr]
 * @param cost of the sheds that take it up [money/yr], what is bought spread over its life
 */
public record Gain(Spread mercury, Spread givenBack, Spread cost) {
    /** What the numbers say of its paying for itself. */
    public enum Verdict {
        PAYS,
        MAY_PAY,
        DOES_NOT_PAY
    }

    /**
     * Prices.
     *
     * @param mercury [money/kg]
     * @param gold [money/kg]
     */
    public record Prices(double mercury, double gold) {}

    /**
     * Of a practice at a site, beside the site as the notes have it.
     *
     * @param flowYear the year
     * @throws NotesException if the notes allow no balance
     */
    public static Gain of(Practice practice, FieldNotes notes, FlowYear flowYear, Prices prices) {
        SiteBalance before = SiteBalance.of(notes, flowYear);
        SiteBalance after = SiteBalance.of(practice.apply(notes), flowYear);
        double[] saved = new double[Spread.Level.values().length];
        for (Spread.Level level : Spread.Level.values()) {
            saved[level.ordinal()] = before.at(level).bought() - after.at(level).bought();
        }
        Arrays.sort(saved);
        Spread mercury = new Spread(saved[0], saved[1], saved[2]);
        double takers = notes.work().sheds() * practice.siteShare();
        double gold = practice.goldGain() * practice.siteShare() * before.gold();
        Spread givenBack =
                mercury.map(kg -> (kg * prices.mercury() + gold * prices.gold()) * Quantity.SECONDS_PER_YEAR);
        return new Gain(mercury, givenBack, practice.cost().yearly().map(money -> money * takers));
    }

    /** What is left after cost [money/yr]; low with the least given back and the highest cost. */
    public Spread net() {
        return new Spread(
                givenBack.low() - cost.high(), givenBack.middle() - cost.middle(), givenBack.high() - cost.low());
    }

    /** Whether it pays for itself over the whole range, over part of it, or nowhere in it. */
    public Verdict verdict() {
        Spread net = net();
        return net.low() >= 0 ? Verdict.PAYS : net.high() >= 0 ? Verdict.MAY_PAY : Verdict.DOES_NOT_PAY;
    }
}
