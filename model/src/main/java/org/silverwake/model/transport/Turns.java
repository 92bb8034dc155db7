// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.Reaction;
import org.silverwake.model.mercury.StateLayout;

/**
 * Which state turns into which, in the order of their rates: reactions, droplets that dissolve into Hg(0), grain-bound mercury
 * that is set free as Hg(II).
 */
final class Turns {
    private final int[] from;
    private final int[] to;

    private Turns(List<int[]> pairs) {
        this.from = pairs.stream().mapToInt(pair -> pair[0]).toArray();
        this.to = pairs.stream().mapToInt(pair -> pair[1]).toArray();
    }

    /**
     * Of an input.
     *
     * @throws IllegalArgumentException if a reaction names a form that is not carried, or leads to one outside the core
     */
    static Turns of(TransportInput input, StateLayout layout) {
        List<int[]> pairs = new ArrayList<>();
        for (Reaction reaction : input.chemistry().reactions()) {
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
        for (int j = 0; j < layout.classCount(); j++) {
            pairs.add(new int[] {layout.grainBound(j), layout.exchangeable()});
        }
        return new Turns(pairs);
    }

    int count() {
        return from.length;
    }

    int from(int turn) {
        return from[turn];
    }

    int to(int turn) {
        return to[turn];
    }
}
