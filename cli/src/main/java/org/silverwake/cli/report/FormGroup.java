// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.scenario.Outputs.ShownForm;
import org.silverwake.cli.scenario.Outputs.ShownMedium;
import org.silverwake.model.mercury.Form;
import org.silverwake.model.mercury.Form.Droplets;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.transport.SampledPart;

/**
 * A form of mercury as pictures speak of it: one carried state, or all of grain-bound mercury, or droplets of all sizes.
 *
 * @param form which
 * @param states places of its states
 */
record FormGroup(ShownForm form, List<Integer> states) {
    FormGroup {
        states = List.copyOf(states);
    }

    /** Those that a run carries, in the order in which they are stacked. */
    static List<FormGroup> carried(StateLayout layout) {
        List<FormGroup> groups = new ArrayList<>();
        for (ShownForm form : ShownForm.values()) {
            List<Integer> states = new ArrayList<>();
            for (int state = 0; state < layout.count(); state++) {
                if (of(layout, state) == form) {
                    states.add(state);
                }
            }
            if (!states.isEmpty()) {
                groups.add(new FormGroup(form, states));
            }
        }
        return groups;
    }

    private static ShownForm of(StateLayout layout, int state) {
        if (state == layout.exchangeable()) {
            return ShownForm.DIVALENT;
        }
        if (state >= layout.grainBound(0)) {
            return ShownForm.GRAIN_BOUND;
        }
        Form form = layout.forms().get(state - layout.form(0));
        if (form.carriage() instanceof Droplets) {
            return ShownForm.DROPLETS;
        }
        return switch (form.name()) {
            case Form.ELEMENTAL -> ShownForm.ELEMENTAL;
            case Form.METHYL -> ShownForm.METHYL;
            case Form.COMPLEX -> ShownForm.COMPLEX;
            default -> throw new IllegalStateException("no words for form " + form.name());
        };
    }

    /** In words, for titles and legends. */
    String words() {
        return switch (form) {
            case DIVALENT -> "exchangeable Hg(II)";
            case GRAIN_BOUND -> "mercury locked in grains";
            case METHYL -> "methylmercury";
            case ELEMENTAL -> "dissolved Hg(0)";
            case COMPLEX -> "mercury-cyanide complex";
            case DROPLETS -> "mercury droplets";
        };
    }

    /** What a sample of a medium holds of it. */
    SampledPart in(ShownMedium medium) {
        return (layout, state, filtered) -> {
            if (!states.contains(state)) {
                return 0;
            }
            return medium == ShownMedium.FILTERED_WATER ? filtered : layout.isSampled(state) ? 1 : 0;
        };
    }
}
