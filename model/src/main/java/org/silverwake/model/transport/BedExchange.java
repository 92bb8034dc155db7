// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.List;
import java.util.OptionalInt;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.ReachKind;
import org.silverwake.model.water.StateHydraulics;

/**
 * What the bed does with what it holds: gives back to the water of each flow state, buries, turns into another form. Rates
 * [1/s] of the bed's stock, worked out on the spot from the bed's motion and two shares of each form that are the same
 * everywhere: on solids, and in pore water.
 */
final class BedExchange {
    private final BedInput bed;
    private final Cells cells;
    private final List<StateHydraulics> water;
    private final BedMotion motion;
    private final ReachKind[] kind;
    private final double[] onSolids;
    private final double[] porePerBulk;
    private final boolean[] moves;
    private final int[] from;
    private final int[] to;
    private final boolean[] methylates;
    private final double[][][] turning;

    BedExchange(TransportInput input, BedInput bed, Cells cells, List<StateHydraulics> water, BedMotion motion) {
        StateLayout layout = input.layout();
        this.bed = bed;
        this.cells = cells;
        this.water = water;
        this.motion = motion;
        this.kind = new ReachKind[cells.count()];
        for (int c = 0; c < kind.length; c++) {
            kind[c] = input.hydraulics().reaches().kind(cells.reach(c));
        }
        this.onSolids = new double[layout.count()];
        this.porePerBulk = new double[layout.count()];
        this.moves = new boolean[layout.count()];
        sorption(layout.exchangeable(), StateLayout.EXCHANGEABLE);
        for (int f = 0; f < layout.forms().size(); f++) {
            Form form = layout.forms().get(f);
            if (form.carriage() instanceof Partitioned) {
                sorption(layout.form(f), form.name());
            } else {
                particles(layout.form(f), true);
            }
        }
        for (int j = 0; j < layout.classCount(); j++) {
            particles(layout.grainBound(j), SolidsState.isScaled(input, j));
        }
        int turns = bed.reactions().size();
        this.from = new int[turns];
        this.to = new int[turns];
        this.methylates = new boolean[turns];
        this.turning = new double[water.size()][ReachKind.values().length][turns];
        for (int t = 0; t < turns; t++) {
            reaction(layout, t);
        }
    }

    private void sorption(int form, String name) {
        BedInput.Sorption sorption = bed.sorption().get(name);
        if (sorption == null) {
            throw new IllegalArgumentException("bed: no partition coefficient of " + name);
        }
        double binding = 1 + sorption.docBinding();
        porePerBulk[form] = binding / (bed.porosity() * binding + sorption.kd() * bed.dryDensity());
        onSolids[form] =
                sorption.kd() * bed.dryDensity() / (bed.porosity() * binding + sorption.kd() * bed.dryDensity());
        moves[form] = true;
    }

    private void particles(int form, boolean comesBack) {
        onSolids[form] = 1;
        moves[form] = comesBack;
    }

    private void reaction(StateLayout layout, int t) {
        BedInput.BedReaction reaction = bed.reactions().get(t);
        from[t] = layout.place(reaction.from());
        to[t] = layout.place(reaction.to());
        if (to[t] >= layout.core() || to[t] == from[t]) {
            throw new IllegalArgumentException("bed reaction " + reaction.from() + " to " + reaction.to()
                    + " is not allowed; it leads to another of the forms that turn into one another");
        }
        methylates[t] = reaction.from().equals(StateLayout.EXCHANGEABLE)
                && reaction.to().equals(Form.METHYL);
        for (int s = 0; s < water.size(); s++) {
            for (ReachKind each : ReachKind.values()) {
                turning[s][each.ordinal()][t] =
                        reaction.law().at(s, each, bed.celsius().get(s), 1);
            }
        }
    }

    /** Velocity of pore-water exchange in a flow state at a cell [m/s]. */
    double poreExchange(int state, int cell) {
        return motion.width(cell) > 0 ? bed.poreExchange().at(state, kind[cell]) : 0;
    }

    /** Rate at which the bed gives a form back to the water of a flow state [1/s]. */
    double returned(int state, int cell, int form) {
        StateHydraulics flow = water.get(state);
        double bedWidth = motion.width(cell);
        if (!flow.isWet(cell) || !(bedWidth > 0) || !moves[form]) {
            return 0;
        }
        double velocity =
                motion.resuspension(state, cell) * onSolids[form] + poreExchange(state, cell) * porePerBulk[form];
        return velocity * flow.width(cell) / (bedWidth * bed.thickness());
    }

    /** Rate at which a form is buried [1/s]. */
    double buried(int cell, int form) {
        return motion.burial(cell) * onSolids[form] / bed.thickness();
    }

    /** Number of reactions in the bed [-]. */
    int turns() {
        return from.length;
    }

    int from(int turn) {
        return from[turn];
    }

    int to(int turn) {
        return to[turn];
    }

    /** Rate of a reaction in a flow state [1/s]. */
    double turned(int turn, int state, int cell) {
        return turning[state][kind[cell].ordinal()][turn];
    }

    /** Whether a reaction makes MeHg of Hg(II), so that the ceiling holds it back. */
    boolean methylates(int turn) {
        return methylates[turn];
    }

    /** The reaction that the ceiling holds back, if there is one. */
    OptionalInt methylation() {
        for (int t = 0; t < methylates.length; t++) {
            if (methylates[t]) {
                return OptionalInt.of(t);
            }
        }
        return OptionalInt.empty();
    }

    /** Largest stock of MeHg that methylation keeps up in a cell [kg]. */
    double methylCeiling(int cell) {
        return bed.methylCeiling().at(0, kind[cell]) * solids(cell);
    }

    /** Dry solids of the active layer in a cell [kg]. */
    double solids(int cell) {
        return bed.dryDensity() * bed.thickness() * motion.width(cell) * cells.length(cell);
    }
}
