// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.function.Predicate;

/** What practices do to a balance. Every step moves mercury from path to path or scales all, so what closed still closes. */
final class Effects {
    private static final Predicate<SitePath> OPEN = path -> path == SitePath.AIR_OPEN;

    private final FieldNotes notes;
    private final double gold;
    private final Assumptions assumptions;

    /** Of a site with its gold [kg/s], all sheds. */
    Effects(FieldNotes notes, double gold, Assumptions assumptions) {
        this.notes = notes;
        this.gold = gold;
        this.assumptions = assumptions;
    }

    /** The balance with one practice more, but for what drums go on losing. */
    YearBalance with(Practice practice, YearBalance before) {
        YearBalance after = before;
        for (Effect effect : practice.effects()) {
            after = on(effect, after);
        }
        return after.mixed(practice.siteShare(), before);
    }

    /** What contaminated drums go on losing: droplets, to the river as tailings do, else kept with them. */
    YearBalance bleeding(FieldNotes.Change change, YearBalance before, double riverShare) {
        Practice practice = change.practice();
        double sheds = notes.work().sheds() * practice.siteShare();
        double bleed = practice.bleed().map(b -> b.rate(change.yearsSince())).orElse(0.0) * sheds;
        return before.plus(SitePath.FROM_DRUMS, bleed)
                .plus(SitePath.SLURRY_DROPLETS, bleed * riverShare)
                .plus(SitePath.KEPT, bleed * (1 - riverShare));
    }

    private YearBalance on(Effect effect, YearBalance before) {
        if (effect instanceof Effect.Retorts retorts) {
            return retorts(retorts, before);
        }
        if (effect instanceof Effect.Contained contained) {
            return before.moved(SitePath::isSlurry, SitePath.KEPT, contained.share())
                    .withSolids(before.solids() * (1 - contained.share()));
        }
        if (effect instanceof Effect.Reprocessed reprocessed) {
            return before.moved(
                    SitePath::isFromTailings,
                    SitePath.TAILINGS_RECOVERED,
                    reprocessed.share() * reprocessed.recovery());
        }
        if (effect instanceof Effect.MercuryFree free) {
            return before.scaled(path -> true, 1 - free.share());
        }
        if (effect instanceof Effect.Detoxified detoxified) {
            return before.moved(path -> path == SitePath.TANK_COMPLEX, SitePath.KEPT, detoxified.share());
        }
        double share = ((Effect.ConcentrateOnly) effect).share();
        return notes.practice() == Amalgamation.WHOLE_ORE ? concentrate(before).mixed(share, before) : before;
    }

    private static YearBalance retorts(Effect.Retorts retorts, YearBalance before) {
        double back = retorts.share() * retorts.recovery();
        double escaping = retorts.share() * (1 - retorts.recovery());
        YearBalance after = before.moved(OPEN, SitePath.RETORT_RECOVERED, back);
        return back < 1 ? after.moved(OPEN, SitePath.AIR_RETORT, escaping / (1 - back)) : after;
    }

    /** The published use of concentrate amalgamation for the same gold, never more than the site's own. */
    private YearBalance concentrate(YearBalance before) {
        double used = before.used();
        double wanted = gold * assumptions.ask(Amalgamation.CONCENTRATE.ratio());
        double toAir = assumptions.ask(Amalgamation.CONCENTRATE.toAir());
        double product = before.rate(SitePath.PRODUCT);
        double burned = toAir * wanted;
        double vapor = before.air() + before.rate(SitePath.RETORT_RECOVERED);
        double tailings = before.sum(SitePath::isFromTailings);
        if (!(wanted < used) || burned + product > wanted || vapor == 0 || tailings == 0) {
            return before;
        }
        double factor = wanted / used;
        return before.scaled(path -> path.isVapor() || path == SitePath.RETORT_RECOVERED, burned / vapor)
                .scaled(SitePath::isFromTailings, (wanted - burned - product) / tailings)
                .scaled(path -> path.isIncoming() || path == SitePath.SQUEEZED_BACK, factor)
                .scaled(path -> path == SitePath.HELD, 0);
    }
}
