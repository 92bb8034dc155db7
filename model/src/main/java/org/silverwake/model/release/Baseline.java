// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Mercury use by practice, summed over sites: the table of a national action plan (Minamata Convention, Annex C, paragraph 1 (e),
 * baseline estimates, from memory). Ranges add up low with low and high with high.
 *
 * @param rows by practice
 */
public record Baseline(List<Row> rows) {
    /** Copies the rows. */
    public Baseline {
        rows = List.copyOf(rows);
    }

    /**
     * One practice.
     *
     * @param practice how gold and mercury are brought together
     * @param retorts whether any amalgam is burned in retorts
     * @param sites number of sites
     * @param sheds number of sheds [-]
     * @param gold [kg/s]
     * @param used mercury used [kg/s], before what retorts and tables give back
     * @param recovered got back by retorts, sluices and tables [kg/s]
     * @param air to the air [kg/s], a vapor hazard to whoever is near
     * @param river to the river [kg/s]
     * @param kept in tailings kept [kg/s]
     */
    public record Row(
            Amalgamation practice,
            boolean retorts,
            int sites,
            double sheds,
            double gold,
            Spread used,
            Spread recovered,
            Spread air,
            Spread river,
            Spread kept) {
        private Row plus(Row other) {
            return new Row(
                    practice,
                    retorts,
                    sites + other.sites,
                    sheds + other.sheds,
                    gold + other.gold,
                    sum(used, other.used),
                    sum(recovered, other.recovered),
                    sum(air, other.air),
                    sum(river, other.river),
                    sum(kept, other.kept));
        }

        private static Spread sum(Spread a, Spread b) {
            return new Spread(a.low() + b.low(), a.middle() + b.middle(), a.high() + b.high());
        }
    }

    /** Of sites that have notes, in the order in which practices first appear; whole ore as long as any of it is left. */
    public static Baseline of(List<SiteBalance> sites) {
        Map<List<Object>, Row> rows = new LinkedHashMap<>();
        for (SiteBalance site : sites) {
            if (site.notes().isPresent()) {
                Row row = row(site.notes().get(), site);
                rows.merge(List.of(row.practice(), row.retorts()), row, Row::plus);
            }
        }
        return new Baseline(new ArrayList<>(rows.values()));
    }

    /** The practice that is left once changes are in force. */
    private static Amalgamation practice(FieldNotes notes, SiteBalance balance) {
        if (balance.middle().used() == 0) {
            return Amalgamation.NONE;
        }
        return balance.worst().contains(WorstPractice.WHOLE_ORE) ? Amalgamation.WHOLE_ORE : Amalgamation.CONCENTRATE;
    }

    private static Row row(FieldNotes notes, SiteBalance balance) {
        return new Row(
                practice(notes, balance),
                balance.middle().rate(SitePath.RETORT_RECOVERED) > 0,
                1,
                notes.work().sheds(),
                balance.gold(),
                balance.range(YearBalance::used),
                balance.range(year -> year.sum(SitePath::isRecovered)),
                balance.range(YearBalance::air),
                balance.range(YearBalance::river),
                balance.range(SitePath.KEPT));
    }
}
