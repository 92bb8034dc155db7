// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.BitSet;
import java.util.OptionalInt;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.ElementalMercury;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Reaeration;
import org.silverwake.model.transport.StateSolution.Place;
import org.silverwake.model.water.StateHydraulics;

/**
 * What must be looked at after a sweep that carries further forms, by flow state: where dissolved Hg(0) comes so near to its
 * solubility that droplets dissolve more slowly than computed, and where Hg(0) escapes by a formula used beyond what it was
 * made from. Reaches that nothing is wrong with are in none of the sets.
 */
public final class FormChecks {
    /** Share of the solubility from which on the missing saturation term shows [-]. */
    public static final double SATURATION = 0.1;

    private final SteadyResult result;
    private final Chemistry chemistry;
    private final OptionalInt elemental;

    /** Checks of a result. */
    public FormChecks(SteadyResult result) {
        this.result = result;
        this.chemistry = result.input().chemistry();
        this.elemental = result.input().layout().find(Form.ELEMENTAL);
    }

    private interface CellClaim {
        boolean isTrueOf(int cell);
    }

    private BitSet reaches(int state, CellClaim claim) {
        BitSet reaches = new BitSet();
        for (int c = 0; c < result.cells().count(); c++) {
            if (result.isWet(state, result.cells().reach(c)) && claim.isTrueOf(c)) {
                reaches.set(result.cells().reach(c));
            }
        }
        return reaches;
    }

    /** Whether droplets are carried that dissolve. */
    public boolean hasDissolvingDroplets() {
        return chemistry.passivation() > 0
                && chemistry.forms().stream().anyMatch(form -> form.carriage() instanceof Droplets);
    }

    /** Reaches in which dissolved Hg(0) is at or above a tenth of its solubility while droplets dissolve. */
    public BitSet nearlySaturated(int state) {
        if (!hasDissolvingDroplets() || elemental.isEmpty()) {
            return new BitSet();
        }
        return reaches(
                state,
                c -> result.bounds().stream().anyMatch(bound -> isNearlySaturated(result.solution(bound, state), c)));
    }

    private boolean isNearlySaturated(StateSolution solution, int cell) {
        double share = solution.filteredShare(cell, elemental.getAsInt());
        return most(solution, cell) * share >= SATURATION * ElementalMercury.SOLUBILITY;
    }

    /** Most Hg(0) at a cell's ends, over unknown splits [kg/m3]. */
    private double most(StateSolution solution, int cell) {
        double most = 0;
        for (Place place : Place.values()) {
            for (int v = 0; v < result.variants() && solution.hasWater(cell, place); v++) {
                most = Math.max(most, solution.form(cell, place, elemental.getAsInt(), v));
            }
        }
        return most;
    }

    /** Reaches whose depth the formula of evasion holds within its own range. */
    public BitSet heldDepth(int state) {
        StateHydraulics water = solution(state).water();
        return reaches(
                state,
                c -> isByFormula(state, c)
                        && !Reaeration.at(water.velocity(c), water.depth(c)).isWithin(water.depth(c)));
    }

    /** Reaches whose velocity lies outside the range of the formula of evasion, which is used there all the same. */
    public BitSet strangeVelocity(int state) {
        StateHydraulics water = solution(state).water();
        return reaches(
                state,
                c -> isByFormula(state, c)
                        && !Reaeration.at(water.velocity(c), water.depth(c)).isWithinVelocities(water.velocity(c)));
    }

    private StateSolution solution(int state) {
        return result.solution(Bound.LAID_DOWN, state);
    }

    /** Whether there is Hg(0) that escapes by a formula. */
    private boolean isByFormula(int state, int cell) {
        var kind = result.input().hydraulics().reaches().kind(result.cells().reach(cell));
        return elemental.isPresent()
                && Double.isNaN(chemistry.evasionVelocity().at(state, kind))
                && result.bounds().stream().anyMatch(bound -> most(result.solution(bound, state), cell) > 0);
    }

    /** Whether there is anything to check: Hg(0) is carried. */
    public boolean apply() {
        return elemental.isPresent();
    }
}
