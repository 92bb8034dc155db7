// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.Map;
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
     * Of a practice at a site, beside the site as the notes have it. Least and most are over all combinations of what is assumed,
     * each taken alike before and after.
     *
     * @param flowYear the year
     * @throws NotesException if the notes allow no balance
     */
    public static Gain of(Practice practice, FieldNotes notes, FlowYear flowYear, Prices prices) {
        FieldNotes changed = practice.apply(notes);
        SiteBalance before = SiteBalance.of(notes, flowYear);
        Assumptions asked = new Assumptions(Map.of());
        double middle = saved(notes, changed, flowYear, asked);
        double least = middle;
        double most = middle;
        for (Map<String, Spread.Level> corner : asked.corners()) {
            try {
                double saved = saved(notes, changed, flowYear, new Assumptions(corner));
                least = Math.min(least, saved);
                most = Math.max(most, saved);
            } catch (NotesException contradiction) {
                // a combination that the notes rule out says nothing of the site
                continue;
            }
        }
        Spread mercury = new Spread(least, middle, most);
        double takers = notes.work().sheds() * practice.siteShare();
        double gold = practice.goldGain() * practice.siteShare() * before.gold();
        Spread givenBack =
                mercury.map(kg -> (kg * prices.mercury() + gold * prices.gold()) * Quantity.SECONDS_PER_YEAR);
        return new Gain(mercury, givenBack, practice.cost().yearly().map(money -> money * takers));
    }

    private static double saved(FieldNotes notes, FieldNotes changed, FlowYear flowYear, Assumptions assumptions) {
        double before = SiteYear.of(notes, flowYear, assumptions).balance().bought();
        return before - SiteYear.of(changed, flowYear, assumptions).balance().bought();
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
