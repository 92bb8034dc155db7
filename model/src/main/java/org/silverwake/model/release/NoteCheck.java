// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Looks over field notes before anything is made of them, and tells everything at once: what cannot be is refused, what is only
 * outside the published range is kept and told.
 */
public final class NoteCheck {
    private static final double PERCENT = 100;
    private static final double MG_PER_KG = 1e6;
    private static final double GRAMS = 1e3;
    private static final double DAYS = 366;
    private static final double ROUNDING = 1e-6;

    private final FieldNotes notes;
    private final FoundInNotes found = new FoundInNotes();

    private NoteCheck(FieldNotes notes) {
        this.notes = notes;
    }

    /** Everything there is to tell of some notes. */
    public static List<NoteFinding> of(FieldNotes notes) {
        NoteCheck check = new NoteCheck(notes);
        check.work();
        check.mercury();
        check.burning();
        check.tailings();
        notes.tank().ifPresent(check::tank);
        return check.found.all();
    }

    private void work() {
        FieldNotes.Work work = notes.work();
        if (!(work.sheds() > 0)) {
            found.refuse("number of sheds", work.sheds(), "", "give more than 0");
        }
        notes.work().gold().ifPresent(g -> found.notBelow("gold produced", g.value(), "kg/s"));
        work.workingDays().ifPresent(days -> {
            if (!(days >= 0 && days <= DAYS)) {
                found.refuse("working days", days, "d/yr", "a year has 366 at most");
            }
        });
        work.cyclesPerDay().ifPresent(c -> found.notBelow("cycles per day", c, "1/d"));
        work.orePerCycle().ifPresent(o -> found.notBelow("ore per cycle", o, "kg"));
        boolean perCycle = notes.mercury().chargedPerCycle().isPresent()
                || notes.mercury().squeezedBackPerCycle().isPresent()
                || notes.burning().amalgamPerCycle().isPresent()
                || notes.burning().retortReturnPerCycle().isPresent()
                || notes.tailingsContent().isPresent();
        if (perCycle && notes.cyclesPerYear().isEmpty()) {
            found.missing("cycles per day, working days", "numbers per cycle are given; give both");
        }
    }

    private void mercury() {
        FieldNotes.Mercury mercury = notes.mercury();
        mercury.chargedPerCycle().ifPresent(c -> found.notBelow("mercury put in per cycle", c.value() * GRAMS, "g"));
        mercury.squeezedBackPerCycle()
                .ifPresent(c -> found.notBelow("mercury squeezed back per cycle", c.value() * GRAMS, "g"));
        mercury.bought().ifPresent(b -> found.notBelow("mercury bought", b.value(), "kg/s"));
        mercury.perGold().ifPresent(ratio -> {
            if (!(ratio.value() > 0)) {
                found.refuse("mercury used per gold", ratio.value(), "", "give more than 0");
            } else {
                found.usual(
                        "mercury used per gold",
                        ratio.value(),
                        "",
                        1,
                        notes.practice().ratio());
            }
        });
        if (mercury.chargedPerCycle().isPresent() && notes.work().orePerCycle().orElse(0) > 0) {
            double perOre = mercury.chargedPerCycle().get().value()
                    / notes.work().orePerCycle().getAsDouble();
            found.usual("mercury put in per kg of ore", perOre * GRAMS, "g/kg", GRAMS, Published.CHARGE);
        }
        moreOutThanIn();
    }

    /** Squeezed back and in the amalgam, against what was put in, beyond the notes' own uncertainty. */
    private void moreOutThanIn() {
        if (notes.mercury().chargedPerCycle().isEmpty()) {
            return;
        }
        Noted in = notes.mercury().chargedPerCycle().get().orRelative(Published.WEIGHED);
        Noted back = notes.mercury().squeezedBackPerCycle().orElse(Noted.of(0)).orRelative(Published.WEIGHED);
        Noted amalgam = notes.burning()
                .amalgamPerCycle()
                .map(mass -> mass.orRelative(Published.WEIGHED)
                        .times(Math.max(
                                0,
                                mercuryShare()
                                        .orElse(Published.AMALGAM_SHARE.value().low()))))
                .orElse(Noted.of(0, 0));
        double out = back.value() + amalgam.value();
        double sd = StrictMath.sqrt(square(in) + square(back) + square(amalgam));
        if (out - in.value() > Reconciliation.IMPROBABLE * sd) {
            found.refuse(
                    "mercury squeezed back and in the amalgam per cycle",
                    out * GRAMS,
                    "g",
                    "more mercury comes out than the " + NoteFinding.show(in.value() * GRAMS) + " g put in");
        }
    }

    private static double square(Noted noted) {
        double sd = noted.sd().orElse(0);
        return sd * sd;
    }

    /** Mercury's share of the amalgam as stated, or by weight less gold. */
    private OptionalDouble mercuryShare() {
        Optional<Noted> stated = notes.burning().mercuryShare();
        if (stated.isPresent()) {
            return OptionalDouble.of(stated.get().value());
        }
        Optional<Noted> mass = notes.burning().amalgamPerCycle();
        if (mass.isEmpty()
                || notes.work().gold().isEmpty()
                || notes.cyclesPerYear().isEmpty()) {
            return OptionalDouble.empty();
        }
        double amalgam = mass.get().value() * Circuit.perSecond(notes);
        return amalgam > 0
                ? OptionalDouble.of(1 - notes.work().gold().get().value() / amalgam)
                : OptionalDouble.empty();
    }

    private void burning() {
        FieldNotes.Burning burning = notes.burning();
        mercuryShare().ifPresent(share -> {
            String note = "mercury's share of the amalgam"
                    + (burning.mercuryShare().isPresent() ? "" : ", by its weight less gold,");
            if (!(share > 0 && share < 1)) {
                found.refuse(
                        note, share * PERCENT, "%", "it must be between 0 and 100 %", Published.AMALGAM_SHARE, PERCENT);
            } else {
                found.usual(note, share * PERCENT, "%", PERCENT, Published.AMALGAM_SHARE);
            }
        });
        burning.amalgamPerCycle().ifPresent(a -> found.notBelow("amalgam per cycle", a.value() * GRAMS, "g"));
        burning.retortShare().ifPresent(s -> found.share("share of burns in a retort", s));
        burning.retortRecovery().ifPresent(this::retort);
        returned();
        burning.spongeRemainder().ifPresent(q -> {
            if (!(q >= 0 && q < 1)) {
                found.refuse("mercury's share of the sponge gold", q * PERCENT, "%", "it must be 0 to below 100 %");
            } else {
                found.usual(
                        "mercury's share of the sponge gold", q * PERCENT, "%", PERCENT, Published.SPONGE_REMAINDER);
            }
        });
        found.share("share laid down nearby", burning.nearby().laidDown());
        found.share("share of that which runs off", burning.nearby().runoff());
    }

    private void retort(double recovery) {
        if (!(recovery >= 0 && recovery <= 1)) {
            found.refuse(
                    "share that the retort gives back",
                    recovery * PERCENT,
                    "%",
                    "a retort cannot give back more than was in the amalgam",
                    Published.RETORT_RECOVERY,
                    PERCENT);
        } else {
            found.usual(
                    "share that the retort gives back", recovery * PERCENT, "%", PERCENT, Published.RETORT_RECOVERY);
        }
    }

    /** What retorts gave back over what the amalgam held at most. */
    private void returned() {
        FieldNotes.Burning burning = notes.burning();
        if (burning.retortReturnPerCycle().isEmpty()
                || burning.amalgamPerCycle().isEmpty()) {
            return;
        }
        double held = burning.amalgamPerCycle().get().value()
                * mercuryShare().orElse(Published.AMALGAM_SHARE.value().high())
                * burning.retortShare().orElse(1);
        double returned = burning.retortReturnPerCycle().get().value();
        if (returned == 0) {
            return;
        }
        if (!(held > 0)) {
            found.refuse(
                    "mercury that retorts give back per cycle",
                    returned * GRAMS,
                    "g",
                    "by the other notes no amalgam was burned in a retort");
            return;
        }
        double share = returned / held;
        if (!(share <= 1)) {
            retort(share);
        } else if (mercuryShare().isPresent() && burning.retortShare().isPresent()) {
            retort(share);
        }
    }

    private void tailings() {
        FieldNotes.Tailings tailings = notes.tailings();
        tailings.content().ifPresent(c -> content("mercury content of tailings", c.value()));
        tailings.tableTest().ifPresent(this::tableTest);
        if (notes.tailingsContent().isPresent() && notes.tailingsPerCycle().isEmpty()) {
            found.missing("tailings per cycle", "their mercury content is given; give how much of them there is");
        }
        if (tailings.fate().isEmpty() && notes.practice() != Amalgamation.NONE) {
            found.missing("where tailings go", "is not noted; give the shares stored, leached and given to the river");
        }
        tailings.fate().ifPresent(fate -> {
            found.share("share of tailings reprocessed", fate.reprocessed());
            found.share("share that reprocessing gives back", fate.recovery());
            found.share("share of tailings stored", fate.stored());
            found.share("share of tailings leached", fate.leached());
            found.share("share of tailings to the river", fate.river());
            double sum = fate.stored() + fate.leached() + fate.river();
            if (Math.abs(sum - 1) > ROUNDING) {
                found.refuse("stored, leached and river together", sum * PERCENT, "%", "give shares that sum to 100 %");
            }
            if (fate.leached() > 0 && notes.tank().isEmpty()) {
                found.missing("leach tank", "tailings are leached; give the tank's volume and cycles");
            }
        });
        tailings.forms().ifPresent(forms -> {
            found.share("share in droplets", forms.droplets());
            found.share("share exchangeable", forms.exchangeable());
            found.share("share bound in grains", forms.grainBound());
            double sum = forms.droplets() + forms.exchangeable() + forms.grainBound();
            if (Math.abs(sum - 1) > ROUNDING) {
                found.refuse(
                        "droplets, exchangeable and grain-bound together",
                        sum * PERCENT,
                        "%",
                        "give shares that sum to 100 %");
            }
        });
    }

    private void tableTest(TableTest test) {
        if (!(test.mass().value() > 0)
                || test.recovered().value() < 0
                || test.recovered().value() > test.mass().value()) {
            found.refuse(
                    "mercury that the table test gave",
                    test.recovered().value(),
                    "kg",
                    "it cannot be below 0, nor above the "
                            + NoteFinding.show(test.mass().value()) + " kg processed");
            return;
        }
        double content = test.content().value();
        content("mercury content by table test", content);
        if (notes.mercury().chargedPerCycle().isPresent()
                && notes.tailingsPerCycle().isPresent()) {
            double most = notes.mercury().chargedPerCycle().get().value()
                    / notes.tailingsPerCycle().getAsDouble();
            if (content > most) {
                found.refuse(
                        "mercury content by table test",
                        content * MG_PER_KG,
                        "mg/kg",
                        "more mercury would come out than was put in, " + NoteFinding.show(most * MG_PER_KG) + " mg/kg",
                        Published.TAILINGS_CONTENT,
                        MG_PER_KG);
            }
        }
    }

    private void content(String note, double content) {
        if (!(content >= 0 && content < 1)) {
            found.refuse(note, content * MG_PER_KG, "mg/kg", "it must be 0 to below 1000000 mg/kg");
        } else {
            found.usual(note, content * MG_PER_KG, "mg/kg", MG_PER_KG, Published.TAILINGS_CONTENT);
        }
    }

    private void tank(FieldNotes.Tank tank) {
        found.notBelow("volume of the leach tank", tank.volume(), "m3");
        found.notBelow("cycles of the leach tank", tank.cyclesPerYear(), "1/yr");
        found.share("share detoxified", tank.detoxified());
        found.share("share of the solution to the river", tank.solutionToRiver());
        found.share("share of the residue to the river", tank.residueToRiver());
        tank.dissolved().ifPresent(c -> {
            found.notBelow("mercury dissolved in leach solution", c.value(), "kg/m3");
            found.usual("mercury dissolved in leach solution", c.value() * GRAMS, "mg/L", GRAMS, Published.DISSOLVED);
        });
    }
}
