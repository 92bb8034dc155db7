// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Recovery;

/** Reaches, people and river by how long it takes until the high estimate is below a value for good, from the work's date on. */
public final class RecoveryClasses {
    public static final int SOON = 5;
    public static final int LATE = 20;
    private static final double KILOMETER = 1000;

    /** In the order of the legend. */
    static final List<ReachShade> ORDER = List.of(
            ReachShade.FAR_ABOVE,
            ReachShade.ABOVE,
            ReachShade.LIKELY_ABOVE,
            ReachShade.MAY_BE_ABOVE,
            ReachShade.BELOW,
            ReachShade.NOT_ASSESSED,
            ReachShade.DOES_NOT_APPLY);

    private final Outcome outcome;
    private final YearsRun run;
    private final int now;

    public RecoveryClasses(Outcome outcome, YearsRun run) {
        this.outcome = outcome;
        this.run = run;
        this.now = outcome.scenario().project().date().getYear();
    }

    /** Year from which times count. */
    public int now() {
        return now;
    }

    /** The value that maps show, and the first ones of beds, which recover last, and of fish; all on request. */
    public Set<Guideline> drawn(boolean all) {
        List<Guideline> possible = Recoveries.guidelines(outcome, run);
        Set<Guideline> drawn = new LinkedHashSet<>();
        if (all) {
            drawn.addAll(possible);
        } else {
            Shown.guideline(outcome).filter(possible::contains).ifPresent(drawn::add);
            for (Averaging averaging : List.of(Averaging.BED, Averaging.FISH)) {
                possible.stream()
                        .filter(g -> g.observable().averaging() == averaging)
                        .findFirst()
                        .ifPresent(drawn::add);
            }
        }
        return drawn;
    }

    List<LineClass> classes(boolean leftOut) {
        List<LineClass> classes = new ArrayList<>(List.of(
                ReachShade.FAR_ABOVE.withLegend("Still above in " + run.lastYear() + ", the last year run"),
                ReachShade.ABOVE.withLegend("After more than " + LATE + " years"),
                ReachShade.LIKELY_ABOVE.withLegend("In " + SOON + " to " + LATE + " years"),
                ReachShade.MAY_BE_ABOVE.withLegend("Within " + SOON + " years"),
                ReachShade.BELOW.withLegend("Not above from " + now + " on, by this estimate"),
                ReachShade.NOT_ASSESSED.withLegend("Not assessed")));
        if (leftOut) {
            classes.add(ReachShade.DOES_NOT_APPLY.withLegend("This value does not apply here"));
        }
        return classes;
    }

    /** Of all reaches. */
    public List<ReachShade> shades(Guideline guideline) {
        return IntStream.range(0, outcome.basin().network().size())
                .mapToObj(reach -> shade(guideline, reach))
                .toList();
    }

    private ReachShade shade(Guideline guideline, int reach) {
        if (outcome.screening().isLeftOut(guideline, reach)) {
            return ReachShade.DOES_NOT_APPLY;
        }
        Optional<Recoveries.Range> range = Recoveries.of(outcome, run, guideline, reach);
        if (range.isEmpty()) {
            return ReachShade.NOT_ASSESSED;
        }
        Recovery high = range.get().high();
        return switch (high.course()) {
            case NEVER_ABOVE -> ReachShade.BELOW;
            case STILL_ABOVE -> ReachShade.FAR_ABOVE;
            case RECOVERS -> shade(run.firstYear() + high.firstYearBelow().getAsInt() - now);
        };
    }

    private static ReachShade shade(int years) {
        if (years <= 0) {
            return ReachShade.BELOW;
        }
        return years <= SOON ? ReachShade.MAY_BE_ABOVE : years <= LATE ? ReachShade.LIKELY_ABOVE : ReachShade.ABOVE;
    }

    /** People and river by class, a line each, from the classes of all reaches. */
    List<String> summary(List<ReachShade> shades) {
        Map<ReachShade, Double> lengths = new EnumMap<>(ReachShade.class);
        for (int r = 0; r < outcome.basin().network().size(); r++) {
            lengths.merge(shades.get(r), outcome.basin().table().length(r), Double::sum);
        }
        Map<ReachShade, Integer> people = new EnumMap<>(ReachShade.class);
        var places = outcome.basin().points("place");
        for (int i = 0; i < places.size(); i++) {
            int number = outcome.scenario().places().get(i).people().orElse(0);
            people.merge(shades.get(outcome.basin().reachAt(places.get(i))), number, Integer::sum);
        }
        List<String> lines = new ArrayList<>();
        for (LineClass each : classes(lengths.containsKey(ReachShade.DOES_NOT_APPLY))) {
            ReachShade shade = ORDER.get(lines.size());
            String counted = places.isEmpty() ? "" : people.getOrDefault(shade, 0) + " people, ";
            lines.add(each.legend() + ": " + counted + Numbers.shown(lengths.getOrDefault(shade, 0.0) / KILOMETER, 3)
                    + " km");
        }
        return lines;
    }
}
