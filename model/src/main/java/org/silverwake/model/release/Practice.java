// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.List;
import java.util.Optional;

/**
 * A change of practice: a named set of effects.
 *
 * @param name its name
 * @param effects what it does, in order
 * @param startYear first year in force
 * @param siteShare share of the sheds that take it up [-], 0 to 1
 * @param cost what it costs per shed that takes it up
 * @param goldGain gold gained over gold produced [-], below 0 where gold is lost
 * @param bleed mercury that contaminated drums go on losing, where use stops
 */
public record Practice(
        String name,
        List<Effect> effects,
        int startYear,
        double siteShare,
        Cost cost,
        double goldGain,
        Optional<DrumBleed> bleed) {
    /** Copies and checks. */
    public Practice {
        effects = List.copyOf(effects);
        Effect.requireShare("siteShare", siteShare);
    }

    /**
     * Cost of one shed.
     *
     * @param once to begin with [money]
     * @param perYear to run it [money/yr]
     * @param life how long what was bought lasts [yr], above 0; then it is bought anew
     */
    public record Cost(Spread once, Spread perYear, double life) {
        /** Checks the life. */
        public Cost {
            if (!(life > 0)) {
                throw new IllegalArgumentException("a practice's life is " + life + " yr; give more than 0");
            }
        }

        /** Cost of a year, what is bought spread evenly over its life [money/yr]. */
        public Spread yearly() {
            return new Spread(
                    perYear.low() + once.low() / life,
                    perYear.middle() + once.middle() / life,
                    perYear.high() + once.high() / life);
        }
    }

    /** The notes of a site that takes it up. */
    public FieldNotes apply(FieldNotes notes) {
        return notes.with(new FieldNotes.Change(this, 0));
    }
}
