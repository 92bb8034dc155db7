// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.List;
import java.util.Optional;

/**
 * The answer for one reach and one guideline.
 *
 * @param reach index of the reach
 * @param guideline the guideline
 * @param verdict the answer with its marks
 * @param values what was compared; empty where not assessed
 * @param statesLeftOut flow states that do not enter, since they have no water (for suspended solids: no solids)
 */
public record ScreeningRow(
        int reach,
        Guideline guideline,
        ScreeningRule.Verdict verdict,
        Optional<Values> values,
        List<Integer> statesLeftOut) {
    /** Copies the list. */
    public ScreeningRow {
        statesLeftOut = List.copyOf(statesLeftOut);
    }

    /**
     * What was compared.
     *
     * @param band low and high bound and background, averaged as the guideline asks
     * @param worst largest value of a flow state, by the high bound [kg/m3 or kg/kg]; the band's high for the bed
     * @param worstState that state; -1 for the bed
     */
    public record Values(ScreeningRule.Band band, double worst, int worstState) {}

    /** The answer. */
    public Answer answer() {
        return verdict.answer();
    }

    /** Low bound over the guideline [-]; empty where not assessed. */
    public Optional<Double> ratioLow() {
        return values.map(v -> v.band().low() / guideline.value());
    }

    /** High bound over the guideline [-], the one that is drawn; empty where not assessed. */
    public Optional<Double> ratioHigh() {
        return values.map(v -> v.band().high() / guideline.value());
    }

    /** Background alone over the guideline [-]; empty where not assessed. */
    public Optional<Double> ratioBackground() {
        return values.map(v -> v.band().background() / guideline.value());
    }
}
