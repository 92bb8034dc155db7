// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;
import org.silverwake.geo.map.ConcentrationMap;
import org.silverwake.geo.map.GuidelineLine;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.MapSheet;
import org.silverwake.geo.map.MapWords;
import org.silverwake.geo.map.Paper;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.model.screening.Averaging;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Recovery;

/** Maps of how long recovery takes: years from the work's date until the high estimate is below a value for good. */
final class RecoveryMaps {
    private static final int SOON = 5;
    private static final int LATE = 20;
    private static final double KILOMETER = 1000;

    private final Outcome outcome;
    private final YearsRun run;
    private final boolean withSites;
    private final int now;

    private RecoveryMaps(Outcome outcome, YearsRun run, boolean withSites) {
        this.outcome = outcome;
        this.run = run;
        this.withSites = withSites;
        this.now = outcome.scenario().project().date().getYear();
    }

    static void draw(Outcome outcome, Path folder, boolean all, boolean withSites) {
        if (outcome.years().isEmpty()) {
            return;
        }
        RecoveryMaps maps = new RecoveryMaps(outcome, outcome.years().get(), withSites);
        for (Guideline guideline : maps.drawn(all)) {
            ConcentrationMap.draw(
                    outcome.basin().map(),
                    maps.sheet(guideline),
                    folder.resolve("recovery-" + guideline.id() + ".png"));
        }
    }

    /** The value that maps show, and the first one of beds, which recover last; all on request. */
    private Set<Guideline> drawn(boolean all) {
        List<Guideline> possible = Recoveries.guidelines(outcome, run);
        Set<Guideline> drawn = new LinkedHashSet<>();
        if (all) {
            drawn.addAll(possible);
        } else {
            Shown.guideline(outcome).filter(possible::contains).ifPresent(drawn::add);
            possible.stream()
                    .filter(g -> g.observable().averaging() == Averaging.BED)
                    .findFirst()
                    .ifPresent(drawn::add);
        }
        return drawn;
    }

    private List<LineClass> classes(boolean leftOut) {
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

    private static final List<ReachShade> ORDER = List.of(
            ReachShade.FAR_ABOVE,
            ReachShade.ABOVE,
            ReachShade.LIKELY_ABOVE,
            ReachShade.MAY_BE_ABOVE,
            ReachShade.BELOW,
            ReachShade.NOT_ASSESSED,
            ReachShade.DOES_NOT_APPLY);

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

    private MapSheet sheet(Guideline guideline) {
        ScenarioInput.Project project = outcome.scenario().project();
        List<ReachMark> marks = new ArrayList<>();
        boolean leftOut = false;
        Map<ReachShade, Double> lengths = new EnumMap<>(ReachShade.class);
        for (int i = 0; i < outcome.basin().map().reachCount(); i++) {
            int reach = outcome.basin().network().reachOfInput(i);
            ReachShade shade = shade(guideline, reach);
            leftOut |= shade == ReachShade.DOES_NOT_APPLY;
            lengths.merge(shade, outcome.basin().table().length(reach), Double::sum);
            boolean fromBackground = Recoveries.of(outcome, run, guideline, reach)
                    .filter(Recoveries.Range::fromBackground)
                    .isPresent();
            marks.add(new ReachMark(ORDER.indexOf(shade), false, false, fromBackground));
        }
        double factor = outcome.screening().rule().factor(guideline.observable().medium());
        return new MapSheet(
                project.title(),
                "How long until below the guideline: " + guideline.observable().words(),
                "Years from " + now + " until the high estimate is below",
                classes(leftOut),
                new MapSheet.Summary("People and river by this estimate", summary(guideline, lengths)),
                marks,
                MapPoints.of(outcome, withSites),
                List.of(new GuidelineLine(
                        guideline.id(),
                        guideline.printed() + ", " + guideline.observable().words() + ", protects "
                                + guideline.protects(),
                        guideline.source().words(),
                        guideline.checked() == Guideline.Checked.SEEN)),
                Recoveries.supposed(outcome) + " The estimate may be wrong by a factor of " + Numbers.shown(factor, 3)
                        + " either way, and these times with it.",
                Cautions.of(outcome),
                project.preparedBy(),
                project.date(),
                withSites,
                MapWords.english(),
                Paper.A4);
    }

    private List<String> summary(Guideline guideline, Map<ReachShade, Double> lengths) {
        Map<ReachShade, Integer> people = new EnumMap<>(ReachShade.class);
        var places = outcome.basin().points("place");
        for (int i = 0; i < places.size(); i++) {
            int number = outcome.scenario().places().get(i).people().orElse(0);
            people.merge(shade(guideline, outcome.basin().reachAt(places.get(i))), number, Integer::sum);
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
