// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.silverwake.cli.run.Apportioned;
import org.silverwake.cli.run.SharedValue;
import org.silverwake.cli.run.SharedValue.What;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;

/** What is printed in the end: place by place the highest values, who brings them, and what closing whom would change. */
public final class ApportionSummary {
    private static final int NAMED = 3;
    private static final double PERCENT = 100;
    /** Below this a share is not printed [-]. */
    private static final double LEAST = 0.005;

    private final Apportioned apportioned;
    private final List<ScenarioInput.Site> sites;

    private ApportionSummary(Apportioned apportioned) {
        this.apportioned = apportioned;
        this.sites = apportioned.outcome().scenario().sites();
    }

    /** Prints. */
    public static void print(Apportioned apportioned, Path target, PrintWriter print) {
        ApportionSummary summary = new ApportionSummary(apportioned);
        print.println(apportioned.outcome().scenario().project().title()
                + ": which sites bring the mercury; a screening, not a finding of safety");
        print.println("  highest estimates; in brackets what closing the site changes, its solids and water gone too");
        for (int place : apportioned.places()) {
            summary.lines(place).forEach(line -> print.println("  " + line));
        }
        apportioned.notes().forEach(note -> print.println("  " + note));
        apportioned.outcome().warnings().forEach(w -> print.println("warning: " + w));
        Cautions.of(apportioned.outcome()).forEach(c -> print.println("caution: " + c));
        print.println("caution: " + SharedWords.NO_EVIDENCE);
        print.println("caution: Shares add up, effects of closing do not: each is of closing one site alone.");
        print.println("caution: Tables and pictures name single sites: for office use, not for posting.");
        print.println(String.format(
                java.util.Locale.ROOT,
                "sites and background are off the run's own values by %.1e of them, at worst; at most 1e-10 is allowed",
                apportioned.worstSum()));
        print.println("written to " + target);
        print.flush();
    }

    private List<String> lines(int place) {
        List<String> lines = new ArrayList<>();
        String name = SharedWords.place(apportioned, place);
        List<SharedValue> shown = apportioned.shown(place);
        if (shown.isEmpty()) {
            return List.of(name + ": neither water nor a bed that is assessed");
        }
        boolean reached =
                shown.stream().anyMatch(v -> v.parts().sites().stream().anyMatch(part -> part > 0));
        if (!reached) {
            return List.of(name + ": nothing arrives from any listed site");
        }
        List<String> dry = IntStream.range(
                        0, apportioned.outcome().scenario().states().size())
                .filter(s -> apportioned.highest(place, What.WHOLE, s).isEmpty())
                .mapToObj(s -> apportioned.outcome().scenario().states().get(s).name())
                .toList();
        lines.add(name + (dry.isEmpty() ? ":" : ", no water in " + String.join(", ", dry) + ":"));
        for (What what : What.values()) {
            highest(shown, what).ifPresent(value -> lines.add("  " + line(value)));
        }
        lines.addAll(worse(shown));
        return lines;
    }

    /** What closing a site alone makes worse, the worst first. */
    private List<String> worse(List<SharedValue> shown) {
        record Rise(int site, SharedValue value) {
            double times() {
                return value.closed().get(site) / value.parts().value();
            }
        }
        List<Rise> rises = IntStream.range(0, sites.size())
                .mapToObj(i -> SharedWords.worse(shown, i).map(value -> new Rise(i, value)))
                .flatMap(Optional::stream)
                .sorted(Comparator.comparingDouble(rise -> -rise.times()))
                .toList();
        List<String> lines = new ArrayList<>();
        for (Rise rise : rises.subList(0, Math.min(NAMED, rises.size()))) {
            lines.add("  closing " + sites.get(rise.site()).name() + " alone raises "
                    + SharedWords.of(apportioned, rise.value()) + " by "
                    + SharedWords.change(rise.value(), rise.site()).substring(1)
                    + " %, as its solids and its water go too");
        }
        if (rises.size() > NAMED) {
            lines.add("  so does closing " + (rises.size() - NAMED) + " more, each by less (apportion.csv)");
        }
        return lines;
    }

    /** The highest of a measure over flow states. */
    private static Optional<SharedValue> highest(List<SharedValue> shown, What what) {
        return shown.stream()
                .filter(v -> v.what() == what && v.parts().value() > 0)
                .max(Comparator.comparingDouble(v -> v.parts().value()));
    }

    private String line(SharedValue value) {
        List<Integer> order = IntStream.range(0, sites.size())
                .boxed()
                .filter(i -> share(value, value.parts().sites().get(i)) >= LEAST)
                .sorted(Comparator.comparingDouble(
                        (Integer i) -> -value.parts().sites().get(i)))
                .toList();
        List<Integer> named = order.subList(0, Math.min(NAMED, order.size()));
        List<String> parts = new ArrayList<>();
        double rest = value.parts().sum() - value.parts().background();
        for (int i : named) {
            double part = value.parts().sites().get(i);
            rest -= part;
            parts.add(sites.get(i).name() + " " + percent(share(value, part)) + " (" + SharedWords.change(value, i)
                    + " %)");
        }
        if (share(value, rest) >= LEAST) {
            parts.add((named.isEmpty() ? "sites " : "other sites ") + percent(share(value, rest)));
        }
        parts.add("background " + percent(share(value, value.parts().background())));
        return SharedWords.of(apportioned, value) + ", "
                + Numbers.shown(value.parts().value() * ApportionTable.factor(value), 3) + " "
                + ApportionTable.unit(value) + ": " + String.join(", ", parts);
    }

    private static double share(SharedValue value, double part) {
        return part / value.parts().value();
    }

    private static String percent(double share) {
        return share < LEAST ? "under 0.5 %" : Numbers.shown(PERCENT * share, share < 0.1 ? 1 : 2) + " %";
    }
}
