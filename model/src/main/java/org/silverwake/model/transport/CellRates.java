// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.Arrays;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.ElementalMercury;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.Partitioning;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.Reaeration;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.mercury.TwoFilm;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.StateHydraulics;

/**
 * Rates of mercury in one flow state and bound, cell by cell: by process for the budget, and put together for the
 * propagator. Settling acts on the sorbed part of partitioned forms, on grain-bound mercury and on droplets; evasion on the
 * free part; reactions on what they say.
 */
final class CellRates {
    private final StateLayout layout;
    private final int forms;
    private final Turns turns;
    private final double[] settled;
    private final double[] gross;
    private final double[] overbank;
    private final double[] evaded;
    private final double[] filtered;
    private final double[] turned;

    private CellRates(StateLayout layout, Turns turns, int cells) {
        this.layout = layout;
        this.forms = layout.count();
        this.turns = turns;
        this.settled = new double[cells * forms];
        this.gross = new double[cells * forms];
        this.overbank = new double[cells * forms];
        this.evaded = new double[cells * forms];
        this.filtered = new double[cells * forms];
        this.turned = new double[cells * turns.count()];
    }

    static CellRates of(TransportInput input, Cells cells, StateHydraulics water, SolidsState solids) {
        StateLayout layout = input.layout();
        CellRates rates = new CellRates(layout, Turns.of(input, layout), cells.count());
        Settling settling = new Settling(input, water.state());
        for (int c = 0; c < cells.count(); c++) {
            if (water.isWet(c)) {
                rates.divalent(input, water, solids, c, settling.overbank(water.velocity(c)));
                rates.furtherForms(input, water, solids, settling, c);
                rates.reactions(input, water, settling, c);
            }
        }
        return rates;
    }

    private void divalent(TransportInput input, StateHydraulics water, SolidsState solids, int c, double overbankRate) {
        int classes = layout.classCount();
        double[] own = new double[classes];
        double capacity = 0;
        double sediment = solids.sediment(c);
        for (int j = 0; j < classes; j++) {
            own[j] = CellCutter.coefficient(input, j, sediment) * solids.solids(c, j);
            capacity += own[j];
        }
        Partitioning split = Partitioning.of(input.doc().get(water.state()), capacity);
        int exchangeable = c * forms + layout.exchangeable();
        partitioned(input, solids, c, exchangeable, split, own, overbankRate);
        for (int j = 0; j < classes; j++) {
            int grain = c * forms + layout.grainBound(j);
            gross[grain] = solids.rate(c, j);
            settled[grain] = gross[grain] * SolidsState.scale(input, j, solids.beta(c));
            overbank[grain] = overbankRate;
        }
    }

    private void partitioned(
            TransportInput input,
            SolidsState solids,
            int c,
            int at,
            Partitioning split,
            double[] own,
            double overbankRate) {
        filtered[at] = split.filtered();
        for (int j = 0; j < own.length; j++) {
            double rate = solids.rate(c, j);
            double kept = rate * SolidsState.scale(input, j, solids.beta(c));
            double sorbed = split.sorbed(own[j]);
            settled[at] += sorbed * kept;
            gross[at] += sorbed * rate;
            overbank[at] += sorbed * overbankRate;
        }
    }

    private void furtherForms(
            TransportInput input, StateHydraulics water, SolidsState solids, Settling settling, int c) {
        double overbankRate = settling.overbank(water.velocity(c));
        double sediment = solids.sediment(c);
        for (int f = 0; f < layout.forms().size(); f++) {
            Form form = layout.forms().get(f);
            int at = c * forms + layout.form(f);
            if (form.carriage() instanceof Partitioned parts) {
                double[] own = new double[layout.classCount()];
                double capacity = 0;
                for (int j = 0; j < own.length; j++) {
                    own[j] = CellCutter.falling(input, parts.kd().get(j), sediment) * solids.solids(c, j);
                    capacity += own[j];
                }
                Partitioning split = Partitioning.of(parts.docBinding().get(water.state()), capacity);
                partitioned(input, solids, c, at, split, own, overbankRate);
                evaded[at] = form.evades() ? evasion(input.chemistry(), water, c) * split.free() / water.depth(c) : 0;
            } else if (form.carriage() instanceof Droplets droplets) {
                gross[at] = settling.rate(droplets.particles(), Settling.flow(settling, water, c), sediment);
                settled[at] = gross[at] * solids.beta(c);
                overbank[at] = overbankRate;
            }
        }
    }

    private static double evasion(Chemistry chemistry, StateHydraulics water, int c) {
        if (chemistry.evasionVelocity().isPresent()) {
            return chemistry.evasionVelocity().getAsDouble();
        }
        double celsius = chemistry.celsius().get(water.state());
        double velocity = water.velocity(c);
        double depth = water.depth(c);
        double oxygen = Reaeration.at(velocity, depth).filmVelocity(velocity, depth, celsius);
        return TwoFilm.velocity(oxygen, chemistry.airFilm(), celsius);
    }

    private void reactions(TransportInput input, StateHydraulics water, Settling settling, int c) {
        int at = c * turns.count();
        Chemistry chemistry = input.chemistry();
        int state = water.state();
        for (int t = 0; t < chemistry.reactions().size(); t++) {
            Reaction reaction = chemistry.reactions().get(t);
            double light = FirstOrder.meanLight(chemistry.lightAttenuation().get(state), water.depth(c));
            double rate = reaction.law().get(state).at(chemistry.celsius().get(state), light);
            boolean all = reaction.actsOn() == Reaction.Part.TOTAL;
            turned[at++] = rate * (all ? 1 : filtered[c * forms + turns.from(t)]);
        }
        for (Form form : layout.forms()) {
            if (form.carriage() instanceof Droplets droplets && chemistry.passivation() > 0) {
                turned[at++] = settling.dissolving(
                                droplets.particles(), chemistry.celsius().get(state), ElementalMercury.SOLUBILITY)
                        * chemistry.passivation();
            }
        }
        for (int j = 0; j < layout.classCount(); j++) {
            turned[at++] = input.options().grainRelease();
        }
    }

    /** Puts a cell's rates together for a propagator of this layout; {@code spread} is a loss shared by all [1/s]. */
    void fill(int cell, double spread, double[] into) {
        Arrays.fill(into, 0);
        int core = layout.core();
        for (int form = 0; form < forms; form++) {
            double leaving = lossRate(cell, form) + spread;
            if (form < core) {
                into[form * core + form] = -leaving;
            } else {
                into[feeder(form)] = leaving;
            }
        }
        for (int t = 0; t < turns.count(); t++) {
            int from = turns.from(t);
            int at = from < core ? turns.to(t) * core + from : feeder(from) + 1 + turns.to(t);
            into[at] += turned[cell * turns.count() + t];
        }
    }

    private int feeder(int form) {
        int core = layout.core();
        return core * core + (form - core) * (core + 1);
    }

    /** A propagator that fits. */
    Propagator propagator() {
        return new Propagator(layout.core(), layout.feeders());
    }

    /** Settling rate of a form as the bound has it [1/s]. */
    double settled(int cell, int form) {
        return settled[cell * forms + form];
    }

    /** Gross settling rate of a form [1/s]. */
    double gross(int cell, int form) {
        return gross[cell * forms + form];
    }

    /** Overbank loss rate of a form [1/s]. */
    double overbank(int cell, int form) {
        return overbank[cell * forms + form];
    }

    /** Rate at which a form escapes to the air [1/s]. */
    double evaded(int cell, int form) {
        return evaded[cell * forms + form];
    }

    /** Rate at which a form leaves as itself [1/s], the diagonal of the rates with its sign turned. */
    double lossRate(int cell, int form) {
        double out = 0;
        for (int t = 0; t < turns.count(); t++) {
            out += turns.from(t) == form ? turned[cell * turns.count() + t] : 0;
        }
        return settled(cell, form) + overbank(cell, form) + out + evaded(cell, form);
    }

    /** Share of a form that passes a filter [-]. */
    double filtered(int cell, int form) {
        return filtered[cell * forms + form];
    }

    /** Scales one settling rate, to show that the budget notices. */
    CellRates perturbed(int cell, int form, double factor) {
        CellRates copy = new CellRates(layout, turns, settled.length / forms);
        System.arraycopy(settled, 0, copy.settled, 0, settled.length);
        System.arraycopy(gross, 0, copy.gross, 0, gross.length);
        System.arraycopy(overbank, 0, copy.overbank, 0, overbank.length);
        System.arraycopy(evaded, 0, copy.evaded, 0, evaded.length);
        System.arraycopy(filtered, 0, copy.filtered, 0, filtered.length);
        System.arraycopy(turned, 0, copy.turned, 0, turned.length);
        copy.settled[cell * forms + form] *= factor;
        return copy;
    }
}
