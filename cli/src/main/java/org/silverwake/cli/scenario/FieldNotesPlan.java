// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;
import java.util.Optional;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.model.release.Eroded;
import org.silverwake.model.release.FieldNotes;
import org.silverwake.model.release.FlowYear;
import org.silverwake.model.release.Gain;
import org.silverwake.model.release.Practice;
import org.silverwake.model.release.SiteBalance;
import org.silverwake.model.release.Spread;

/**
 * Sites of which field notes are given in place of numbers of release, and changes of practice.
 *
 * @param sites as in the table of sites, those with notes not yet divided by path
 * @param noted sites with notes, old heaps and disturbed ground
 * @param level which of a balance's low, middle and high the river is run with
 * @param practices practices that there are
 * @param inForce names of those in force; "ponds at Sconce sheds" where at one site or group alone
 * @param year calendar year that is run: practices that begin later are not yet in force
 * @param prices prices of mercury and gold; empty where none are given
 * @param currency what money is counted in
 */
public record FieldNotesPlan(
        List<Site> sites,
        List<NotedSite> noted,
        Spread.Level level,
        List<OfferedPractice> practices,
        List<String> inForce,
        int year,
        Optional<Gain.Prices> prices,
        String currency) {
    /** Copies the lists. */
    public FieldNotesPlan {
        sites = List.copyOf(sites);
        noted = List.copyOf(noted);
        practices = List.copyOf(practices);
        inForce = List.copyOf(inForce);
    }

    /** The same with the river run at another level. */
    public FieldNotesPlan at(Spread.Level other) {
        return new FieldNotesPlan(sites, noted, other, practices, inForce, year, prices, currency);
    }

    /** Between a practice and the site or group at which alone it is in force. */
    static final String AT = " at ";

    /** Practices in force anywhere, in the order of their table. */
    public List<OfferedPractice> practicesInForce() {
        return practices.stream()
                .filter(offered -> inForce.stream()
                        .anyMatch(word -> word.equals(offered.practice().name())
                                || word.startsWith(offered.practice().name() + AT)))
                .toList();
    }

    /** Whether a practice is in force at a site, everywhere or there by name. */
    public boolean isInForce(OfferedPractice offered, Site site) {
        String name = offered.practice().name();
        return offered.isFor(site)
                && (inForce.contains(name)
                        || inForce.contains(name + AT + site.name())
                        || inForce.contains(name + AT + site.group()));
    }

    /**
     * A site with notes.
     *
     * @param where its row
     * @param site its name, as in the table of sites
     * @param notes of a working site
     * @param eroded an old heap or disturbed ground
     * @param year how its work spreads over the flow states
     */
    public record NotedSite(
            String where, String site, Optional<FieldNotes> notes, Optional<Eroded> eroded, FlowYear year) {
        /**
         * Its balance with some practices.
         *
         * @throws org.silverwake.model.release.NotesException if the notes allow none
         */
        public SiteBalance balance(List<Practice> practices, int calendarYear) {
            if (eroded.isPresent()) {
                return SiteBalance.of(eroded.get(), year);
            }
            FieldNotes changed = notes.orElseThrow();
            for (Practice practice : practices) {
                changed = practice.apply(changed);
            }
            return SiteBalance.of(changed.in(calendarYear), year);
        }
    }

    /**
     * A practice and for whom it is.
     *
     * @param where its row
     * @param practice the practice
     * @param sites sites or groups; empty for all
     */
    public record OfferedPractice(String where, Practice practice, List<String> sites) {
        /** Copies the list. */
        public OfferedPractice {
            sites = List.copyOf(sites);
        }

        /** Whether it is for a site. */
        public boolean isFor(Site site) {
            return sites.isEmpty() || sites.contains(site.name()) || sites.contains(site.group());
        }
    }
}
