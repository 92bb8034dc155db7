// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import org.silverwake.cli.run.Apportioned;
import org.silverwake.cli.run.SharedValue;
import org.silverwake.cli.run.SharedValue.What;
import org.silverwake.cli.scenario.ScenarioInput;

/** Words for shared-out values, the same in table, picture and summary. */
final class SharedWords {
    private SharedWords() {}

    static String place(Apportioned apportioned, int place) {
        return of(apportioned, place).name();
    }

    private static ScenarioInput.Place of(Apportioned apportioned, int place) {
        return apportioned.outcome().scenario().places().get(place);
    }

    static String reach(Apportioned apportioned, int place) {
        var basin = apportioned.outcome().basin();
        return basin.reach(basin.reachAt(basin.points("place").get(place))).id();
    }

    static String state(Apportioned apportioned, SharedValue value) {
        return value.state() == SharedValue.WHOLE_YEAR
                ? "all"
                : apportioned.outcome().scenario().states().get(value.state()).name();
    }

    static String what(What what) {
        return switch (what) {
            case WHOLE -> "whole water";
            case FILTERED -> "filtered water";
            case BED -> "bed";
        };
    }
}
