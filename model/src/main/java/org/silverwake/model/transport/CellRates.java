// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.FirstOrder;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Partitioned;
import org.silverwake.model.mercury.Partitioning;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.Reaeration;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.mercury.TwoFilm;
import org.silverwake.model.numerics.Propagator;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.water.Cells;
import org.silverwake.model.water.ReachKind;
import org.silverwake.model.water.StateHydraulics;

/**
 * Rates of mercury in one flow state and bound, cell by cell: by process for the budget, and put together for the
 * propagator. Settling acts on the sorbed part of partitioned forms, on grain-bound mercury and on droplets; evasion on the
 * free part; reactions on what they say; nothing happens where still water hands on what enters it. Arrays are by cell and form, those of the filtered share without grain-bound
 * mercury, those of evasion empty where nothing evades.
 */
final class CellRates {
    private final StateLayout layout;
    private final int forms;
    private final int sharing;
    private final Turns turns;
    private final double grainRelease;
    private final double[] settled;
    private final double[] gross;
    private final double[] overbank;
    private final double[] evaded;
    private final double[] filtered;
    private final double[] turned;
    private final double[] toPores;
    private final BitSet through = new BitSet();

    private CellRates(StateLayout layout, Turns turns, double grainRelease, int cells, boolean poresToo) {
        this.layout = layout;
        this.forms = layout.count();
        this.sharing = forms - layout.classCount();
        this.turns = turns;
        this.grainRelease = grainRelease;
        this.settled = new double[cells * forms];
        this.gross = new double[cells * forms];
        this.overbank = new double[cells * forms];
        this.evaded = new double[layout.forms().stream().anyMatch(Form::evades) ? cells * forms : 0];
        this.filtered = new double[cells * sharing];
        this.turned = new double[cells * turns.varying()];
        this.toPores = new double[poresToo ? filtered.length : 0];
    }

    static CellRates of(TransportInput input, Cells cells, StateHydraulics water, SolidsState solids) {
        return of(input, cells, water, solids, false);
    }

    private static CellRates of(
            TransportInput input, Cells cells, StateHydraulics water, SolidsState solids, boolean poresToo) {
        StateLayout layout = input.layout();
        CellRates rates =
                new CellRates(layout, Turns.of(input, layout), input.options().grainRelease(), cells.count(), poresToo);
        rates.new Filling(input, cells, water, solids).fill(cells.count());
        return rates;
    }

    /** Rates over a bed, whose pore water takes up what is filtered at a velocity by cell [m/s]. */
    static CellRates overBed(
            TransportInput input,
            Cells cells,
            StateHydraulics water,
            SolidsState solids,
            IntToDoubleFunction poreExchange) {
        CellRates rates = of(input, cells, water, solids, true);
        for (int c = 0; c < cells.count(); c++) {
            for (int form = 0; form < rates.sharing && water.isWet(c) && !water.isThrough(c); form++) {
                rates.toPores[c * rates.sharing + form] =
                        poreExchange.applyAsDouble(c) * rates.filtered(c, form) / water.depth(c);
            }
        }
        return rates;
    }

    /** Finds the rates of one flow state. */
    private final class Filling {
        private final TransportInput input;
        private final Chemistry chemistry;
        private final Cells cells;
        private final StateHydraulics water;
        private final int state;
        private final SolidsState solids;
        private final Settling settling;
        private final Partitioned divalent;
        private final List<Double> dissolving = new ArrayList<>();
        private final Map<Double, Double> constant = new HashMap<>();

        Filling(TransportInput input, Cells cells, StateHydraulics water, SolidsState solids) {
            this.input = input;
            this.chemistry = input.chemistry();
            this.cells = cells;
            this.water = water;
            this.state = water.state();
            this.solids = solids;
            this.settling = new Settling(input, state);
            this.divalent = new Partitioned(
                    input.classes().stream().map(ParticleClass::log10Kd).toList(), input.doc());
            for (int k = 0; chemistry.passivation() > 0 && k < settling.droplets(); k++) {
                dissolving.add(settling.dissolving(k, chemistry.celsius().get(state)) * chemistry.passivation());
            }
        }

        void fill(int cells) {
            for (int c = 0; c < cells; c++) {
                if (water.isThrough(c)) {
                    through.set(c);
                } else if (water.isWet(c)) {
                    double overbankRate = settling.overbank(water, c);
                    partitioned(c, layout.exchangeable(), divalent, overbankRate);
                    furtherForms(c, overbankRate);
                    grainBound(c, overbankRate);
                    reactions(c);
                }
            }
        }

        private Partitioning partitioned(int c, int form, Partitioned parts, double overbankRate) {
            int classes = layout.classCount();
            double[] own = new double[classes];
            double capacity = 0;
            double sediment = solids.sediment(c);
            for (int j = 0; j < classes; j++) {
                own[j] = coefficient(parts.log10Kd().get(j), sediment) * solids.solids(c, j);
                capacity += own[j];
            }
            Partitioning split = Partitioning.of(parts.docBinding().get(state), capacity);
            filtered[c * sharing + form] = split.filtered();
            int at = c * forms + form;
            for (int j = 0; j < classes; j++) {
                double rate = solids.rate(c, j);
                double kept = rate * SolidsState.scale(input, j, solids.beta(c));
                double sorbed = split.sorbed(own[j]);
                settled[at] += sorbed * kept;
                gross[at] += sorbed * rate;
                overbank[at] += sorbed * overbankRate;
            }
            return split;
        }

        /** Kd [m3/kg]; where it does not vary with sediment it is worked out once for each log10 Kd, since a power is dear. */
        private double coefficient(double log10, double sediment) {
            double slope = input.options().kdSlope();
            double reference = input.options().kdReference();
            return slope == 0
                    ? constant.computeIfAbsent(log10, log -> Partitioning.coefficient(log, 0, 0, reference))
                    : Partitioning.coefficient(log10, slope, sediment, reference);
        }

        private void furtherForms(int c, double overbankRate) {
            int droplets = 0;
            for (int f = 0; f < layout.forms().size(); f++) {
                Form form = layout.forms().get(f);
                int at = c * forms + layout.form(f);
                if (form.carriage() instanceof Partitioned parts) {
                    Partitioning split = partitioned(c, layout.form(f), parts, overbankRate);
                    if (form.evades()) {
                        evaded[at] = evasion(c) * split.free() / water.depth(c);
                    }
                } else {
                    gross[at] = settling.rateOfDroplets(droplets++, settling.flow(water, c), solids.sediment(c));
                    settled[at] = gross[at] * solids.beta(c);
                    overbank[at] = overbankRate;
                }
            }
        }

        private void grainBound(int c, double overbankRate) {
            for (int j = 0; j < layout.classCount(); j++) {
                int grain = c * forms + layout.grainBound(j);
                gross[grain] = solids.rate(c, j);
                settled[grain] = gross[grain] * SolidsState.scale(input, j, solids.beta(c));
                overbank[grain] = overbankRate;
            }
        }

        private double evasion(int c) {
            double measured = chemistry.evasionVelocity().at(state, kind(c));
            if (!Double.isNaN(measured)) {
                return measured;
            }
            double celsius = chemistry.celsius().get(state);
            double velocity = water.velocity(c);
            double depth = water.depth(c);
            double oxygen = Reaeration.at(velocity, depth).filmVelocity(velocity, depth, celsius);
            return TwoFilm.velocity(oxygen, chemistry.airFilm().at(state, kind(c)), celsius);
        }

        private ReachKind kind(int c) {
            return input.hydraulics().reaches().kind(cells.reach(c));
        }

        private void reactions(int c) {
            if (turns.varying() == 0) {
                return;
            }
            double celsius = chemistry.celsius().get(state);
            ReachKind kind = kind(c);
            double light = FirstOrder.meanLight(chemistry.lightAttenuation().at(state, kind), water.depth(c));
            int turn = 0;
            for (Reaction reaction : chemistry.reactions()) {
                double rate = reaction.law().at(state, kind, celsius, light);
                boolean all = reaction.actsOn() == Reaction.Part.TOTAL;
                turned[c * turns.varying() + turn] = rate * (all ? 1 : filtered(c, turns.from(turn)));
                turn++;
            }
            for (double rate : dissolving) {
                turned[c * turns.varying() + turn++] = rate;
            }
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
            if (turns.isLoss(t)) {
                continue;
            }
            int from = turns.from(t);
            int at = from < core ? turns.to(t) * core + from : feeder(from) + 1 + turns.to(t);
            into[at] += turned(cell, t);
        }
    }

    private int feeder(int form) {
        int core = layout.core();
        return core * core + (form - core) * (core + 1);
    }

    private double turned(int cell, int turn) {
        if (turn < turns.varying()) {
            return turned[cell * turns.varying() + turn];
        }
        return through.get(cell) ? 0 : grainRelease;
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
        return evaded.length == 0 ? 0 : evaded[cell * forms + form];
    }

    /** Rate at which a form is lost for good by reactions [1/s]. */
    double lost(int cell, int form) {
        double rate = 0;
        for (int turn : turns.outOf(form)) {
            rate += turns.isLoss(turn) ? turned(cell, turn) : 0;
        }
        return rate;
    }

    /** Rate at which the bed's pore water takes up a form [1/s]. */
    double toPores(int cell, int form) {
        return toPores.length == 0 || form >= sharing ? 0 : toPores[cell * sharing + form];
    }

    /** Rate at which a form leaves as itself [1/s], the diagonal of the rates with its sign turned. */
    double lossRate(int cell, int form) {
        double out = 0;
        for (int turn : turns.outOf(form)) {
            out += turned(cell, turn);
        }
        return settled(cell, form) + overbank(cell, form) + out + evaded(cell, form) + toPores(cell, form);
    }

    /** Share of a form that passes a filter [-]. */
    double filtered(int cell, int form) {
        return form < sharing ? filtered[cell * sharing + form] : 0;
    }

    /** Scales one settling rate, to show that the budget notices. */
    CellRates perturbed(int cell, int form, double factor) {
        CellRates copy = new CellRates(layout, turns, grainRelease, settled.length / forms, toPores.length > 0);
        System.arraycopy(settled, 0, copy.settled, 0, settled.length);
        System.arraycopy(gross, 0, copy.gross, 0, gross.length);
        System.arraycopy(overbank, 0, copy.overbank, 0, overbank.length);
        System.arraycopy(evaded, 0, copy.evaded, 0, evaded.length);
        System.arraycopy(filtered, 0, copy.filtered, 0, filtered.length);
        System.arraycopy(turned, 0, copy.turned, 0, turned.length);
        System.arraycopy(toPores, 0, copy.toPores, 0, toPores.length);
        copy.through.or(through);
        copy.settled[cell * forms + form] *= factor;
        return copy;
    }
}
