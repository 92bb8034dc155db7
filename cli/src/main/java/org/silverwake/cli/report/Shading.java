// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.model.screening.NotAssessed;
import org.silverwake.model.screening.ScreeningRow;

/** From answers to looks, the same on maps and in layers. */
public final class Shading {
    /** Times the stated factor beyond which "above" is far above [-]. */
    public static final double FAR = 10;

    private Shading() {}

    /** Classes in the order of the legend, with the one of reaches to which a value does not apply, if there are any. */
    public static List<LineClass> classes(double factor, boolean isSomewhereLeftOut) {
        List<LineClass> classes = new ArrayList<>(classes(factor));
        if (isSomewhereLeftOut) {
            classes.add(ReachShade.DOES_NOT_APPLY.withLegend("This value does not apply here"));
        }
        return classes;
    }

    /** Classes in the order of the legend, for a stated factor [-]. */
    private static List<LineClass> classes(double factor) {
        String f = Numbers.shown(factor, 3);
        return List.of(
                ReachShade.FAR_ABOVE.withLegend("Above, by more than " + Numbers.shown(FAR * factor, 3) + " x"),
                ReachShade.ABOVE.withLegend("Above, by more than " + f + " x"),
                ReachShade.LIKELY_ABOVE.withLegend("May be above: low estimate is over it"),
                ReachShade.MAY_BE_ABOVE.withLegend("May be above: only the high estimate is near or over it"),
                ReachShade.BELOW.withLegend("Below by this estimate, under 1/" + f),
                ReachShade.NOT_ASSESSED.withLegend("Not assessed"),
                ReachShade.NO_WATER.withLegend("No water"));
    }

    /** The look of an answer. */
    static ReachShade of(ScreeningRow row, double factor) {
        return switch (row.answer()) {
            case ABOVE -> row.ratioLow().orElseThrow() > FAR * factor ? ReachShade.FAR_ABOVE : ReachShade.ABOVE;
            case MAY_BE_ABOVE -> row.verdict().leansAbove() ? ReachShade.LIKELY_ABOVE : ReachShade.MAY_BE_ABOVE;
            case BELOW_BY_THIS_ESTIMATE -> ReachShade.BELOW;
            case NOT_ASSESSED ->
                row.verdict().reason().filter(r -> r == NotAssessed.NO_WATER).isPresent()
                        ? ReachShade.NO_WATER
                        : ReachShade.NOT_ASSESSED;
        };
    }
}
