// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.YearsRun;
import org.silverwake.cli.scenario.ScenarioInput.Change;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Recovery;
import org.silverwake.model.transport.YearBand;

/** When a reach comes below a value for good, by the low and by the high estimate of the years. */
final class Recoveries {
    private Recoveries() {}

    /**
     * Both estimates.
     *
     * @param fromBackground whether background alone is above the value, so that no change at a site helps
     */
    record Range(Recovery low, Recovery high, boolean fromBackground) {}

    /** Values of reaches of which the years hold what they are values of. */
    static List<Guideline> guidelines(Outcome outcome, YearsRun run) {
        return Shown.drawable(outcome).stream()
                .filter(guideline -> run.band(guideline).isPresent())
                .toList();
    }

    /** Of a reach; empty where the value does not apply or the reach is not assessed at all. */
    static Optional<Range> of(Outcome outcome, YearsRun run, Guideline guideline, int reach) {
        if (!outcome.screening().applies(guideline, reach)) {
            return Optional.empty();
        }
        var row = outcome.screening().row(guideline, reach);
        if (row.values().isEmpty() || !run.isKnown(guideline.observable().medium(), reach)) {
            return Optional.empty();
        }
        YearBand band = run.band(guideline).orElseThrow();
        int years = run.result().years();
        double value = guideline.value();
        return Optional.of(new Range(
                Recovery.of(years, year -> band.low(year, reach), value),
                Recovery.of(years, year -> band.high(year, reach), value),
                row.verdict().aboveFromBackground()));
    }

    /** What the history supposes, in a sentence. */
    static String supposed(Outcome outcome) {
        Map<Integer, List<String>> changes = new TreeMap<>();
        for (Change change : outcome.scenario().history().orElseThrow().changes()) {
            String who = change.sites().isEmpty() ? "all sites" : String.join(", ", change.sites());
            changes.computeIfAbsent(change.year(), y -> new ArrayList<>())
                    .add(who + " at " + Numbers.shown(100 * change.factor(), 3) + " %");
        }
        String told = changes.entrySet().stream()
                .map(e -> "from " + e.getKey() + " " + String.join(" and ", e.getValue()))
                .collect(Collectors.joining("; "));
        String practices = outcome.scenario().fieldNotes().practicesInForce().stream()
                .sorted(Comparator.comparingInt(offered -> offered.practice().startYear()))
                .map(offered -> offered.practice().name()
                        + (offered.practice().startYear() > 0
                                ? " from " + offered.practice().startYear()
                                : ""))
                .collect(Collectors.joining("; "));
        List<String> sentences = new ArrayList<>();
        if (!practices.isEmpty()) {
            sentences.add("Practices: " + practices + ".");
        }
        if (!told.isEmpty()) {
            sentences.add("Supposed, in percent of what is released as stated: " + told + ".");
        }
        return sentences.isEmpty() ? "Releases stay as stated." : String.join(" ", sentences);
    }
}
