// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.Collections;
import java.util.EnumSet;
import java.util.Set;

/**
 * The practices that countries are to take steps to end: Minamata Convention on Mercury, Annex C, paragraph 1 (b) (from memory).
 */
public enum WorstPractice {
    /** Whole-ore amalgamation. */
    WHOLE_ORE,
    /** Open burning of amalgam or processed amalgam. */
    OPEN_BURNING,
    /** Burning of amalgam where people live. */
    RESIDENTIAL_BURNING,
    /** Cyanide leaching of sediment, ore or tailings to which mercury was added, the mercury not taken out first. */
    CYANIDE_AFTER_MERCURY;

    /** Those in use at a site, as far as practices in force leave any of them. */
    static Set<WorstPractice> of(FieldNotes notes, YearBalance balance) {
        Set<WorstPractice> found = EnumSet.noneOf(WorstPractice.class);
        if (balance.used() == 0) {
            return Collections.unmodifiableSet(found);
        }
        if (notes.practice() == Amalgamation.WHOLE_ORE && wholeOreLeft(notes) > 0) {
            found.add(WHOLE_ORE);
        }
        if (balance.rate(SitePath.AIR_OPEN) > 0 || balance.air() > 0 && balance.rate(SitePath.AIR_RETORT) == 0) {
            found.add(OPEN_BURNING);
        }
        if (notes.burning().nearby().residential() && balance.air() > 0) {
            found.add(RESIDENTIAL_BURNING);
        }
        boolean leached = notes.tailings().fate().map(f -> f.leached() > 0).orElse(false);
        boolean removedFirst =
                notes.tank().map(FieldNotes.Tank::mercuryRemovedFirst).orElse(false);
        if (leached && !removedFirst) {
            found.add(CYANIDE_AFTER_MERCURY);
        }
        return Collections.unmodifiableSet(found);
    }

    private static double wholeOreLeft(FieldNotes notes) {
        double left = 1;
        for (FieldNotes.Change change : notes.changes()) {
            double within = 1;
            for (Effect effect : change.practice().effects()) {
                if (effect instanceof Effect.ConcentrateOnly concentrate) {
                    within *= 1 - concentrate.share();
                } else if (effect instanceof Effect.MercuryFree free) {
                    within *= 1 - free.share();
                }
            }
            double share = change.practice().siteShare();
            left *= share * within + (1 - share);
        }
        return left;
    }
}
