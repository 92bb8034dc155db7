// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.Reconciliation.Node;

/**
 * The mercury of one shed from drum to gold, kg/s in the mean of the year: a flow sheet of what was noted, and of as few
 * assumptions as determine it. Where notes say more than that, it is reconciled.
 *
 * @param sheet the flow sheet, reconciled
 * @param retortShare share of burns in a retort; empty where only what retorts gave back was noted
 */
record Circuit(Reconciliation sheet, OptionalDouble retortShare) {
    static final String CHARGED = "mercury put in";
    static final String SQUEEZED = "mercury squeezed back";
    static final String USED = "mercury used";
    static final String BOUGHT = "mercury bought";
    static final String AMALGAM = "mercury in the amalgam";
    static final String GOLD = "gold";
    static final String PRODUCT = "mercury left in the gold";
    static final String RETORT = "mercury that retorts give back";
    static final String VAPOR = "mercury to the air";
    static final String TAILINGS = "mercury in the tailings";
    private static final String MASS = "amalgam";
    private static final String BY_SHARE = "mercury in the amalgam by its share";
    private static final double NEGATIVE = 1e-9;
    private static final double ROUNDING = 1e-14;
    private static final double KG_PER_YEAR = Quantity.SECONDS_PER_YEAR;

    /** Cycles of a shed per second in the mean of the year. */
    static double perSecond(FieldNotes notes) {
        return notes.cyclesPerYear().orElse(0) / Quantity.SECONDS_PER_YEAR;
    }

    /**
     * The flow sheet of some notes.
     *
     * @throws NotesException if the notes do not determine it, or contradict one another
     */
    static Circuit of(FieldNotes notes, Assumptions assumptions) {
        FlowSheet sheet = new FlowSheet();
        double perSecond = perSecond(notes);
        FieldNotes.Mercury mercury = notes.mercury();
        FieldNotes.Burning burning = notes.burning();
        Optional<Noted> gold = notes.work().gold().map(g -> g.orRelative(Published.WEIGHED));
        sheet.stream(GOLD, gold);
        sheet.stream(PRODUCT, Optional.empty());
        sheet.stream(AMALGAM, Optional.empty());
        sheet.stream(VAPOR, Optional.empty());
        sheet.stream(TAILINGS, tailings(notes, assumptions, perSecond));
        sheet.stream(USED, used(mercury, gold));
        sheet.node(Node.of("drums", List.of(USED), List.of(AMALGAM, TAILINGS), mercury.held()));
        if (mercury.chargedPerCycle().isPresent()
                || mercury.squeezedBackPerCycle().isPresent()) {
            sheet.stream(CHARGED, weighed(mercury.chargedPerCycle(), perSecond));
            sheet.stream(SQUEEZED, weighed(mercury.squeezedBackPerCycle(), perSecond));
            sheet.node(Node.of("cloth", List.of(CHARGED), List.of(SQUEEZED, USED), 0));
        }
        OptionalDouble retortShare = retort(notes, assumptions, sheet, perSecond);
        sheet.node(Node.of("burning", List.of(AMALGAM), List.of(RETORT, VAPOR, PRODUCT), 0));
        if (mercury.bought().isPresent()) {
            sheet.stream(BOUGHT, weighed(mercury.bought(), 1));
            sheet.node(Node.of("store", List.of(BOUGHT, RETORT), List.of(USED), 0));
        }
        double remainder = burning.spongeRemainder().isPresent()
                ? burning.spongeRemainder().getAsDouble()
                : assumptions.ask(Published.SPONGE_REMAINDER);
        sheet.node(new Node("sponge", Map.of(PRODUCT, 1 - remainder, GOLD, -remainder), 0));
        amalgam(notes, assumptions, sheet, perSecond);
        Reconciliation found = complete(notes, assumptions, sheet);
        if (found.degreesOfFreedom() > 0) {
            assumptions.ask(Published.UNCERTAINTY);
            assumptions.ask(Published.ASSAY_UNCERTAINTY);
        }
        Circuit circuit = new Circuit(found, retortShare);
        circuit.checkSigns(notes);
        return circuit;
    }

    /** By samples or a table test, low and high by their uncertainty. */
    private static Optional<Noted> tailings(FieldNotes notes, Assumptions assumptions, double perSecond) {
        return notes.tailingsContent().map(content -> {
            double value = assumptions.noted(Published.TAILINGS_CONTENT.what(), content, "kg/kg");
            Noted shifted =
                    Noted.of(value, content.orRelative(Published.ASSAYED).sd().orElse(0));
            return shifted.times(perSecond * notes.tailingsPerCycle().orElse(0));
        });
    }

    private static Optional<Noted> weighed(Optional<Noted> note, double perSecond) {
        return note.map(n -> n.orRelative(Published.WEIGHED).times(perSecond));
    }

    /** By a stated ratio and the gold; their relative variances add. */
    private static Optional<Noted> used(FieldNotes.Mercury mercury, Optional<Noted> gold) {
        if (mercury.perGold().isEmpty() || gold.isEmpty()) {
            return Optional.empty();
        }
        Noted ratio = mercury.perGold().get().orRelative(Published.WEIGHED);
        double byRatio = ratio.sd().orElse(0) * gold.get().value();
        double byGold = ratio.value() * gold.get().sd().orElse(0);
        return Optional.of(
                Noted.of(ratio.value() * gold.get().value(), StrictMath.sqrt(byRatio * byRatio + byGold * byGold)));
    }

    private static OptionalDouble retort(FieldNotes notes, Assumptions assumptions, FlowSheet sheet, double perSecond) {
        FieldNotes.Burning burning = notes.burning();
        Optional<Noted> returned = weighed(burning.retortReturnPerCycle(), perSecond);
        sheet.stream(RETORT, returned);
        if (returned.isPresent()) {
            return burning.retortShare();
        }
        double share = burning.retortShare().isPresent()
                ? burning.retortShare().getAsDouble()
                : assumptions.ask(new Assumed("share of burns in a retort", Spread.exact(0), "-", "none unless noted"));
        double back = share == 0 ? 0 : share * recovery(notes, assumptions);
        sheet.node(new Node("retort", Map.of(RETORT, 1.0, AMALGAM, -back, PRODUCT, back), 0));
        return OptionalDouble.of(share);
    }

    private static double recovery(FieldNotes notes, Assumptions assumptions) {
        OptionalDouble noted = notes.burning().retortRecovery();
        return noted.isPresent() ? noted.getAsDouble() : assumptions.ask(Published.RETORT_RECOVERY);
    }

    /** What is noted of the amalgam: its mass, its mercury's share, or both. */
    private static void amalgam(FieldNotes notes, Assumptions assumptions, FlowSheet sheet, double perSecond) {
        Optional<Noted> mass = weighed(notes.burning().amalgamPerCycle(), perSecond);
        Optional<Noted> share = notes.burning().mercuryShare();
        if (mass.isPresent()) {
            sheet.stream(MASS, mass);
            sheet.node(Node.of("amalgam", List.of(MASS), List.of(AMALGAM, GOLD), 0));
        }
        if (share.isPresent() && mass.isPresent() && notes.work().gold().isPresent()) {
            sheet.stream(
                    BY_SHARE,
                    Optional.of(share.get()
                            .orRelative(Published.WEIGHED)
                            .times(mass.get().value())));
            sheet.node(Node.of("amalgam by its share", List.of(BY_SHARE), List.of(AMALGAM), 0));
        } else if (share.isPresent()) {
            sheet.node(byShare(assumptions.noted(Published.AMALGAM_SHARE.what(), share.get(), "-")));
        } else if (mass.isPresent()
                && notes.work().gold().isEmpty()
                && !sheet.solve().isDetermined(AMALGAM)) {
            sheet.node(byShare(assumptions.ask(Published.AMALGAM_SHARE)));
        }
    }

    private static Node byShare(double share) {
        return new Node("composition", Map.of(AMALGAM, 1 - share, GOLD, -share), 0);
    }

    /** Adds published ratios, as few as will do, until amalgam, tailings and gold are determined. */
    private static Reconciliation complete(FieldNotes notes, Assumptions assumptions, FlowSheet sheet) {
        Reconciliation found = sheet.solve();
        boolean gold = notes.work().gold().isPresent();
        if (isComplete(found)) {
            return found;
        }
        if (!found.isDetermined(GOLD)
                && notes.burning().mercuryShare().isEmpty()
                && notes.burning().amalgamPerCycle().isEmpty()) {
            sheet.node(byShare(assumptions.ask(Published.AMALGAM_SHARE)));
        } else if (gold && found.isDetermined(TAILINGS) && !found.isDetermined(AMALGAM)) {
            sheet.node(byShare(assumptions.ask(Published.AMALGAM_SHARE)));
        }
        if (!isComplete(sheet.solve())) {
            toAir(notes, assumptions, sheet);
        }
        found = sheet.solve();
        if (!isComplete(found)) {
            throw new NotesException(
                    notes.name(),
                    List.of(NoteFinding.missing(
                            "mercury",
                            "the notes do not determine it; give the gold produced, or the amalgam of a cycle, or mercury"
                                    + " bought, or put in and squeezed back")));
        }
        return found;
    }

    /** The share to air by open burning; where that will not do, mercury lost of the charge or used per gold as well. */
    private static void toAir(FieldNotes notes, Assumptions assumptions, FlowSheet sheet) {
        sheet.node(burned(notes.practice().toAir().value().middle()));
        boolean enough = isComplete(sheet.solve());
        sheet.dropLast();
        boolean charge = notes.practice() == Amalgamation.WHOLE_ORE
                && notes.mercury().chargedPerCycle().isPresent();
        if (!enough && charge) {
            double lost = assumptions.ask(Published.LOST_OF_CHARGE);
            sheet.node(new Node("lost", Map.of(USED, 1.0, CHARGED, -lost), 0));
        } else if (!enough && notes.work().gold().isPresent()) {
            double ratio = assumptions.ask(notes.practice().ratio());
            sheet.node(new Node("ratio", Map.of(USED, 1.0, GOLD, -ratio), 0));
        }
        sheet.node(burned(assumptions.ask(notes.practice().toAir())));
    }

    private static boolean isComplete(Reconciliation found) {
        return found.isDetermined(AMALGAM) && found.isDetermined(TAILINGS) && found.isDetermined(GOLD);
    }

    /** Burned in the open, this share of the mercury used goes to the air. */
    private static Node burned(double share) {
        return new Node("share to air", Map.of(AMALGAM, 1.0, PRODUCT, -1.0, USED, -share), 0);
    }

    /** The largest stream. */
    private double scale() {
        double scale = 0;
        for (Reconciliation.Value value : sheet.values()) {
            scale = Math.max(scale, Math.abs(value.value()));
        }
        return scale;
    }

    private void checkSigns(FieldNotes notes) {
        double scale = scale();
        List<NoteFinding> negative = new ArrayList<>();
        for (Reconciliation.Value value : sheet.values()) {
            if (value.value() < -NEGATIVE * scale) {
                negative.add(NoteFinding.refused(
                        value.stream().name(),
                        value.value() * KG_PER_YEAR,
                        "kg/yr",
                        "below 0 by the balance of the other notes: more mercury comes out than goes in"));
            }
        }
        if (retortShare.isPresent() && value(RETORT) > retortShare.getAsDouble() * burnt() + NEGATIVE * scale) {
            negative.add(NoteFinding.refused(
                    RETORT,
                    value(RETORT) * KG_PER_YEAR,
                    "kg/yr",
                    "more than the "
                            + NoteFinding.show(retortShare.getAsDouble() * burnt() * KG_PER_YEAR)
                            + " kg/yr that burns in retorts drive off"));
        }
        if (!negative.isEmpty()) {
            throw new NotesException(notes.name(), negative);
        }
    }

    /** Value of a stream [kg/s]; what is rounding beside the largest stream is none. */
    double value(String stream) {
        double value = sheet.isDetermined(stream) ? sheet.value(stream).value() : 0;
        return Math.abs(value) > ROUNDING * scale() ? value : 0;
    }

    /** Mercury driven off the amalgam. */
    private double burnt() {
        return value(AMALGAM) - value(PRODUCT);
    }

    /** Mercury of amalgam burned in the open. */
    double openVapor() {
        return retortShare.isPresent() ? (1 - retortShare.getAsDouble()) * burnt() : burnt() - value(RETORT);
    }

    /** Mercury that escapes from retorts. */
    double retortVapor() {
        return retortShare.isPresent() ? Math.max(0, retortShare.getAsDouble() * burnt() - value(RETORT)) : 0;
    }

    /** Whether charge and what was squeezed back are known. */
    boolean isChargeKnown() {
        return sheet.isDetermined(CHARGED) && sheet.isDetermined(SQUEEZED);
    }
}
