// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.mercury.ByStateAndKind;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.Reaction.Part;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.release.SiteRelease;

/**
 * Weak-acid dissociable cyanide, carried down the same river by the same sweep as mercury: dissolved, sorbing nothing, lost
 * at a first-order rate. Its run holds no mercury. Both bounds are the same, since nothing of it settles. Immutable.
 */
public final class Cyanide {
    /** Name of what is carried, as outputs have it. */
    public static final String FORM = "WAD cyanide";

    private final SteadyResult result;
    private final double freeShare;

    private Cyanide(SteadyResult result, double freeShare) {
        this.result = result;
        this.freeShare = freeShare;
    }

    /**
     * What one site releases, by flow state.
     *
     * @param name its name
     * @param reach reach at whose head it enters
     * @param cyanide WAD cyanide as CN [kg/s], at least 0
     * @param water water it adds [m3/s], at least 0; the river's water holds it already
     * @param atBank whether the outfall is at the bank
     */
    public record Release(String name, int reach, List<Double> cyanide, List<Double> water, boolean atBank) {
        /** Copies the lists. */
        public Release {
            cyanide = List.copyOf(cyanide);
            water = List.copyOf(water);
        }
    }

    /**
     * Its fate in water.
     *
     * @param loss rate of loss
     * @param celsius water temperature by flow state [degC]
     * @param freeShare free cyanide as a share of WAD cyanide [-], 0 to 1
     */
    public record Fate(FirstOrder loss, List<Double> celsius, double freeShare) {
        /** Copies the list. */
        public Fate {
            celsius = List.copyOf(celsius);
        }
    }

    /**
     * Carries it down a river.
     *
     * @param river whose water and sections hold; its mercury and solids are left out
     * @throws org.silverwake.model.numerics.NumericalException if the budget does not close
     */
    public static Cyanide run(TransportInput river, List<Release> releases, Fate fate) {
        return new Cyanide(SteadyRun.run(input(river, releases, fate)), fate.freeShare());
    }

    private static TransportInput input(TransportInput river, List<Release> releases, Fate fate) {
        List<Double> none = Collections.nCopies(river.stateCount(), 0.0);
        Form form = new Form(FORM, false, new Partitioned(List.of(), none), false);
        Chemistry chemistry = new Chemistry(
                List.of(form),
                List.of(new Reaction(FORM, Reaction.LOST, fate.loss(), Part.TOTAL)),
                fate.celsius(),
                ByStateAndKind.same(0),
                ByStateAndKind.same(1),
                ByStateAndKind.same(Double.NaN),
                0);
        return new TransportInput(
                river.hydraulics(),
                List.of(),
                river.sediment(),
                river.flood(),
                0,
                none,
                none,
                releases.stream().map(each -> site(each, none)).toList(),
                river.options(),
                chemistry);
    }

    private static SiteRelease site(Release release, List<Double> none) {
        return new SiteRelease(
                release.name(),
                release.reach(),
                release.cyanide(),
                OptionalDouble.of(1),
                List.of(),
                none,
                release.water(),
                release.atBank(),
                Map.of(FORM, 1.0),
                List.of());
    }

    /** What the river carries of it. */
    public SteadyResult result() {
        return result;
    }

    /** All of it in a sample. */
    public static SampledPart wad() {
        return weighing(1);
    }

    /** The free part of it in a sample. */
    public SampledPart free() {
        return weighing(freeShare);
    }

    private static SampledPart weighing(double weight) {
        return (StateLayout layout, int state, double filtered) ->
                layout.name(state).equals(FORM) ? weight : 0;
    }

    /** Its budget in a flow state. */
    public Balance balance(int state) {
        return new Balance(result.solution(Bound.CARRIED_THROUGH, state).balance(0).rows().stream()
                .filter(row -> row.form().equals(FORM))
                .toList());
    }
}
