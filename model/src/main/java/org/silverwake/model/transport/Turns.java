// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.StateLayout;

/**
 * Which state turns into which: reactions and droplets that dissolve into Hg(0), whose rates vary from cell to cell, then
 * grain-bound mercury that is set free as Hg(II).
 */
final class Turns {
    private static final int NOWHERE = -1;

    private final int[] from;
    private final int[] to;
    private final int[][] outOf;
    private final int varying;

    private Turns(List<int[]> pairs, int states, int varying) {
        this.from = pairs.stream().mapToInt(pair -> pair[0]).toArray();
        this.to = pairs.stream().mapToInt(pair -> pair[1]).toArray();
        this.outOf = IntStream.range(0, states)
                .mapToObj(state -> IntStream.range(0, from.length)
                        .filter(turn -> from[turn] == state)
                        .toArray())
                .toArray(int[][]::new);
        this.varying = varying;
    }

    /**
     * Of an input.
     *
     * @throws IllegalArgumentException if a reaction names a form that is not carried, or leads to one outside the core
     */
    static Turns of(TransportInput input, StateLayout layout) {
        List<int[]> pairs = new ArrayList<>();
        for (Reaction reaction : input.chemistry().reactions()) {
            if (reaction.to().equals(Reaction.LOST)) {
                pairs.add(new int[] {layout.place(reaction.from()), NOWHERE});
                continue;
            }
            int to = layout.place(reaction.to());
            if (to >= layout.core() || to == layout.place(reaction.from())) {
                throw new IllegalArgumentException("reaction " + reaction.from() + " to " + reaction.to()
                        + " is not allowed; it leads to another of the forms that turn into one another");
            }
            pairs.add(new int[] {layout.place(reaction.from()), to});
        }
        for (int f = 0; f < layout.forms().size(); f++) {
            Form form = layout.forms().get(f);
            if (form.carriage() instanceof Droplets && input.chemistry().passivation() > 0) {
                pairs.add(new int[] {layout.form(f), layout.place(Form.ELEMENTAL)});
            }
        }
        int varying = pairs.size();
        for (int j = 0; j < layout.classCount(); j++) {
            pairs.add(new int[] {layout.grainBound(j), layout.exchangeable()});
        }
        return new Turns(pairs, layout.count(), varying);
    }

    int count() {
        return from.length;
    }

    /** How many come first whose rates vary from cell to cell. */
    int varying() {
        return varying;
    }

    int from(int turn) {
        return from[turn];
    }

    int to(int turn) {
        return to[turn];
    }

    /** Whether a turn leads out of the water for good. */
    boolean isLoss(int turn) {
        return to[turn] == NOWHERE;
    }

    /** The turns by which a state leaves as itself. */
    int[] outOf(int state) {
        return outOf[state];
    }
}
