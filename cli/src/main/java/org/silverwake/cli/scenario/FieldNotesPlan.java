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
 * @param trial what the report page's sliders said
 */
public record FieldNotesPlan(
        List<Site> sites,
        List<NotedSite> noted,
        Spread.Level level,
        List<OfferedPractice> practices,
        List<String> inForce,
        int year,
        Optional<Gain.Prices> prices,
        String currency,
        Trial trial) {
    /** Copies the lists. */
    public FieldNotesPlan {
        sites = List.copyOf(sites);
        noted = List.copyOf(noted);
        practices = List.copyOf(practices);
        inForce = List.copyOf(inForce);
    }

    /** The same with the river run at another level. */
    public FieldNotesPlan at(Spread.Level other) {
        return new FieldNotesPlan(sites, noted, other, practices, inForce, year, prices, currency, trial);
    }

    /** The same with something tried. */
    FieldNotesPlan trying(Trial other) {
        return new FieldNotesPlan(sites, noted, level, practices, inForce, year, prices, currency, other);
    }

    /** Between a practice and the site or group at which alone it is in force. */
    static final String AT = " at ";

    /** Practices in force anywhere, those tried among them, in the order of their table. */
    public List<OfferedPractice> practicesInForce() {
        return practices.stream()
                .filter(offered -> inForce.stream()
                                .anyMatch(word -> word.equals(offered.practice().name())
                                        || word.startsWith(offered.practice().name() + AT))
                        || trial.share(offered.practice().name()) > 0)
                .toList();
    }

    /** Whether a practice is in force at a site, everywhere or there by name, or tried there. */
    public boolean isInForce(OfferedPractice offered, Site site) {
        return isGiven(offered, site)
                || offered.isFor(site) && trial.share(offered.practice().name()) > 0;
    }

    /** The practice as the site has it: from its start year where it is given, as in its first year where it is tried. */
    Practice taken(OfferedPractice offered, Site site) {
        return isGiven(offered, site)
                ? offered.practice()
                : inFirstYear(offered.practice(), trial.share(offered.practice().name()), trial.bleeds());
    }

    /**
     * A practice taken up by a share of those who would, in force from the year that is run.
     *
     * @param share of those who would take it up [-], 0 to 1
     * @param bleeds whether its drums go on losing mercury
     */
    public Practice inFirstYear(Practice practice, double share, boolean bleeds) {
        return new Practice(
                practice.name(),
                practice.effects(),
                year,
                practice.siteShare() * share,
                practice.cost(),
                practice.goldGain(),
                bleeds ? practice.bleed() : Optional.empty());
    }

    /** Whether the scenario says that a practice is in force at a site. */
    boolean isGiven(OfferedPractice offered, Site site) {
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
