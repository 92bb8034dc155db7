// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import org.silverwake.model.screening.Averaging.Compared;
import org.silverwake.model.screening.Averaging.StateValue;
import org.silverwake.model.screening.ReachValues.Estimate;
import org.silverwake.model.screening.ReachValues.Measure;
import org.silverwake.model.screening.ScreeningRow.Values;
import org.silverwake.model.screening.ScreeningRule.Band;
import org.silverwake.model.screening.ScreeningRule.Verdict;

/**
 * Compares reaches with guidelines. Rows are worked out when they are asked for (a few operations each) and not kept, so
 * that a large network with many guidelines takes no room. Each bound is averaged over flow states by itself; the smaller
 * of the two averages is the low bound. Immutable.
 */
public final class Screening {
    private static final int NO_STATE = -1;

    private final ReachValues values;
    private final List<Guideline> compared;
    private final List<Guideline> listed;
    private final List<Receptor> receptors;
    private final Set<Integer> drinkingReaches;
    private final ScreeningRule rule;
    private final GuidelineChoice choice;

    private Screening(
            ReachValues values,
            List<Guideline> guidelines,
            List<Receptor> receptors,
            ScreeningRule rule,
            GuidelineChoice choice) {
        this.values = values;
        this.compared = guidelines.stream().filter(Screening::isCompared).toList();
        this.listed = guidelines.stream().filter(g -> !isCompared(g)).toList();
        this.receptors = List.copyOf(receptors);
        this.rule = rule;
        this.choice = choice;
        this.drinkingReaches = new LinkedHashSet<>();
        for (Receptor receptor : receptors) {
            if (receptor.isDrinkingPlace() && receptor.reach().isPresent()) {
                drinkingReaches.add(receptor.reach().getAsInt());
            }
        }
    }

    /**
     * A screening of the given values, every guideline compared wherever its medium lets it.
     *
     * @param guidelines chosen guidelines; those of media that are never compared with a reach are only {@link #listed}
     * @param receptors places; drinking-water values are compared at intakes and villages alone
     */
    public static Screening of(
            ReachValues values, List<Guideline> guidelines, List<Receptor> receptors, ScreeningRule rule) {
        return of(values, guidelines, receptors, rule, GuidelineChoice.everywhere());
    }

    /**
     * A screening of the given values.
     *
     * @param choice which guidelines are compared at which reaches
     * @see #of(ReachValues, List, List, ScreeningRule)
     */
    public static Screening of(
            ReachValues values,
            List<Guideline> guidelines,
            List<Receptor> receptors,
            ScreeningRule rule,
            GuidelineChoice choice) {
        return new Screening(values, guidelines, receptors, rule, choice);
    }

    private static boolean isCompared(Guideline guideline) {
        return guideline.scope() == Medium.Scope.REACH || guideline.scope() == Medium.Scope.DRINKING_PLACE;
    }

    /** Guidelines that are compared, in the order given. */
    public List<Guideline> compared() {
        return compared;
    }

    /** Guidelines that are listed but not compared; their {@link Guideline#scope} says why. */
    public List<Guideline> listed() {
        return listed;
    }

    /** What is compared. */
    public ReachValues values() {
        return values;
    }

    /** The places, in the order given. */
    public List<Receptor> receptors() {
        return receptors;
    }

    /** The rule, with its stated factors. */
    public ScreeningRule rule() {
        return rule;
    }

    /** Whether this run computes what a guideline is a value of. */
    public boolean isModelled(Guideline guideline) {
        return guideline.observable().isModelled(values.carried());
    }

    /** Whether a guideline is compared with every reach in this run: a value of river reaches that is modelled. */
    public boolean isOfReaches(Guideline guideline) {
        return guideline.scope() == Medium.Scope.REACH && isModelled(guideline);
    }

    /** Number of reaches [-]. */
    public int reaches() {
        return values.reaches();
    }

    /**
     * Whether a guideline is compared at a reach: as the classes of the reach choose; drinking-water values at intakes and
     * villages alone.
     */
    public boolean applies(Guideline guideline, int reach) {
        boolean goes = guideline.scope() == Medium.Scope.REACH
                || guideline.scope() == Medium.Scope.DRINKING_PLACE && drinkingReaches.contains(reach);
        return goes && choice.isChosen(guideline, reach);
    }

    /** Whether a guideline of rivers is not compared at a reach, since the classes of the reach do not choose it. */
    public boolean isLeftOut(Guideline guideline, int reach) {
        return guideline.scope() == Medium.Scope.REACH && !choice.isChosen(guideline, reach);
    }

    /** Names of the classes a reach lies in; empty where it lies in none. */
    public List<String> classes(int reach) {
        return choice.groups(reach);
    }

    /** Rows of a guideline, for every reach it applies to, in downstream order. */
    public List<ScreeningRow> rows(Guideline guideline) {
        List<ScreeningRow> rows = new ArrayList<>();
        for (int reach = 0; reach < values.reaches(); reach++) {
            if (applies(guideline, reach)) {
                rows.add(row(guideline, reach));
            }
        }
        return rows;
    }

    /**
     * The answer for a reach, flow states averaged as the guideline asks.
     *
     * @throws IllegalArgumentException if the guideline does not apply there
     */
    public ScreeningRow row(Guideline guideline, int reach) {
        requireApplies(guideline, reach);
        if (guideline.observable().medium() == Medium.BED_SEDIMENT) {
            return bedRow(guideline, reach);
        }
        if (guideline.observable().medium() == Medium.FISH) {
            return fishRow(guideline, reach);
        }
        List<Integer> all = new ArrayList<>();
        for (int state = 0; state < values.states(); state++) {
            all.add(state);
        }
        return waterRow(guideline, reach, guideline.observable().averaging(), all);
    }

    /**
     * The answer for a reach in one flow state alone, for maps of that state. The bed and fish have one value for all states.
     *
     * @throws IllegalArgumentException if the guideline does not apply there
     */
    public ScreeningRow inState(Guideline guideline, int reach, int state) {
        requireApplies(guideline, reach);
        if (guideline.observable().medium() == Medium.BED_SEDIMENT) {
            return bedRow(guideline, reach);
        }
        if (guideline.observable().medium() == Medium.FISH) {
            return fishRow(guideline, reach);
        }
        return waterRow(guideline, reach, Averaging.ANY_STATE, List.of(state));
    }

    /** The answer at a place; empty where the guideline does not apply to such a place or its reach. */
    public Optional<Verdict> verdict(Guideline guideline, Receptor receptor) {
        return verdict(guideline, receptor, reach -> row(guideline, reach));
    }

    /** The answer at a place in one flow state alone; empty where the guideline does not apply there. */
    public Optional<Verdict> verdict(Guideline guideline, Receptor receptor, int state) {
        return verdict(guideline, receptor, reach -> inState(guideline, reach, state));
    }

    private Optional<Verdict> verdict(Guideline guideline, Receptor receptor, IntFunction<ScreeningRow> rows) {
        if (!isCompared(guideline) || guideline.scope() == Medium.Scope.DRINKING_PLACE && !receptor.isDrinkingPlace()) {
            return Optional.empty();
        }
        if (receptor.reach().isEmpty()) {
            return Optional.of(Verdict.notAssessed(NotAssessed.OFF_NETWORK));
        }
        int reach = receptor.reach().getAsInt();
        return applies(guideline, reach) ? Optional.of(rows.apply(reach).verdict()) : Optional.empty();
    }

    private void requireApplies(Guideline guideline, int reach) {
        if (!applies(guideline, reach)) {
            String why = isLeftOut(guideline, reach)
                    ? "not chosen by the classes of reach "
                    : guideline.scope().words() + ", not with reach ";
            throw new IllegalArgumentException(guideline.id() + ": " + why + reach);
        }
    }

    private ScreeningRow waterRow(Guideline guideline, int reach, Averaging averaging, List<Integer> states) {
        Optional<Measure> modelled = values.measure(guideline.observable());
        if (modelled.isPresent() && isWithoutWater(reach)) {
            return notAssessed(guideline, reach, NotAssessed.NO_WATER, List.of());
        }
        Optional<Measure> measure = modelled.filter(values::has);
        if (measure.isEmpty()) {
            return notAssessed(guideline, reach, NotAssessed.NOT_MODELLED, List.of());
        }
        if (values.notAssessed(reach).isPresent()) {
            return notAssessed(guideline, reach, values.notAssessed(reach).get(), List.of());
        }
        List<Integer> used =
                states.stream().filter(s -> values.has(measure.get(), s, reach)).toList();
        List<Integer> leftOut = states.stream().filter(s -> !used.contains(s)).toList();
        if (used.isEmpty()) {
            boolean wet = states.stream().anyMatch(s -> values.hasWater(s, reach));
            NotAssessed reason = wet ? NotAssessed.NO_SUSPENDED_SOLIDS : NotAssessed.NO_WATER;
            return notAssessed(guideline, reach, reason, leftOut);
        }
        Compared laid = compare(averaging, measure.get(), Estimate.LAID_DOWN, reach, used);
        Compared carried = compare(averaging, measure.get(), Estimate.CARRIED_THROUGH, reach, used);
        double background = compare(averaging, measure.get(), Estimate.BACKGROUND, reach, used)
                .value();
        Compared high = carried.value() >= laid.value() ? carried : laid;
        Band band = new Band(Math.min(laid.value(), carried.value()), high.value(), background);
        return assessed(guideline, reach, new Values(band, high.worst(), high.worstState()), leftOut);
    }

    private Compared compare(Averaging averaging, Measure measure, Estimate estimate, int reach, List<Integer> states) {
        return averaging.compare(states.stream()
                .map(s -> new StateValue(s, values.share(s), values.value(measure, estimate, s, reach)))
                .toList());
    }

    private boolean isWithoutWater(int reach) {
        return values.notAssessed(reach)
                .filter(why -> why == NotAssessed.NO_WATER)
                .isPresent();
    }

    private ScreeningRow bedRow(Guideline guideline, int reach) {
        if (isModelled(guideline) && isWithoutWater(reach)) {
            return notAssessed(guideline, reach, NotAssessed.NO_WATER, List.of());
        }
        if (!isModelled(guideline) || !values.hasBed()) {
            return notAssessed(guideline, reach, NotAssessed.NOT_MODELLED, List.of());
        }
        if (values.notAssessed(reach).isPresent()) {
            return notAssessed(guideline, reach, values.notAssessed(reach).get(), List.of());
        }
        double laid = values.bed(Estimate.LAID_DOWN, reach);
        if (Double.isNaN(laid)) {
            return notAssessed(guideline, reach, NotAssessed.NO_SOLIDS_DEPOSIT, List.of());
        }
        double carried = values.bed(Estimate.CARRIED_THROUGH, reach);
        double high = Math.max(laid, carried);
        Band band = new Band(Math.min(laid, carried), high, values.bed(Estimate.BACKGROUND, reach));
        return assessed(guideline, reach, new Values(band, high, NO_STATE), List.of());
    }

    /** Fish swim: a reach with no source above has fish that feed below one, so only want of water leaves it out. */
    private ScreeningRow fishRow(Guideline guideline, int reach) {
        if (!isModelled(guideline) || !values.hasFish()) {
            return notAssessed(guideline, reach, NotAssessed.NOT_MODELLED, List.of());
        }
        double high = values.fish(Estimate.CARRIED_THROUGH, reach);
        if (Double.isNaN(high)) {
            return notAssessed(guideline, reach, NotAssessed.NO_WATER, List.of());
        }
        double low = values.fish(Estimate.LAID_DOWN, reach);
        Band band = new Band(low, high, values.fish(Estimate.BACKGROUND, reach));
        Optional<NotAssessed> doubt = values.fishNeverBelow(reach);
        if (high == 0) {
            return notAssessed(guideline, reach, doubt.orElse(NotAssessed.NO_METHYLMERCURY), List.of());
        }
        return judged(guideline, reach, new Values(band, high, NO_STATE), List.of(), doubt);
    }

    /** A band of nothing but zeros is no finding: nothing upstream was stated. */
    private ScreeningRow assessed(Guideline guideline, int reach, Values found, List<Integer> leftOut) {
        Substance substance = guideline.observable().substance();
        if (found.band().high() == 0) {
            NotAssessed nothing =
                    substance.isCyanide() ? NotAssessed.NO_CYANIDE_UPSTREAM : NotAssessed.NO_SOURCE_UPSTREAM;
            return notAssessed(
                    guideline, reach, values.neverBelow(reach, substance).orElse(nothing), leftOut);
        }
        return judged(guideline, reach, found, leftOut, values.neverBelow(reach, substance));
    }

    /** Where there is a doubt, not assessed takes the place of below. */
    private ScreeningRow judged(
            Guideline guideline, int reach, Values found, List<Integer> leftOut, Optional<NotAssessed> doubt) {
        ScreeningRule.Verdict verdict = rule.judge(found.band(), guideline);
        return doubt.isPresent() && verdict.answer() == Answer.BELOW_BY_THIS_ESTIMATE
                ? notAssessed(guideline, reach, doubt.get(), leftOut)
                : new ScreeningRow(reach, guideline, verdict, Optional.of(found), leftOut);
    }

    private static ScreeningRow notAssessed(Guideline guideline, int reach, NotAssessed reason, List<Integer> leftOut) {
        return new ScreeningRow(reach, guideline, Verdict.notAssessed(reason), Optional.empty(), leftOut);
    }
}
