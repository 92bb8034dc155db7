// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.silverwake.cli.chart.ShareBars;
import org.silverwake.cli.chart.ShareBarsChart;
import org.silverwake.cli.run.Apportioned;
import org.silverwake.cli.run.SharedValue;
import org.silverwake.cli.run.SharedValue.What;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;

/** A picture for each place: the highest estimates of its water and bed, each divided among sites and background. */
public final class ShareCharts {
    /** A site with less than this of every value shown goes with the others [-]. */
    private static final double SMALL = 0.02;

    private static final int MOST_STATES = 4;

    private final Apportioned apportioned;
    private final ScenarioInput scenario;

    private ShareCharts(Apportioned apportioned) {
        this.apportioned = apportioned;
        this.scenario = apportioned.outcome().scenario();
    }

    /** Draws all; places with neither water nor bed have none. */
    public static void draw(Apportioned apportioned, MapFiles files) {
        ShareCharts charts = new ShareCharts(apportioned);
        for (int place : apportioned.places()) {
            List<SharedValue> shown = apportioned.shown(place);
            if (!shown.isEmpty()) {
                ShareBars bars = charts.bars(place, shown);
                files.each(
                        Profiles.fileName(SharedWords.place(apportioned, place)),
                        file -> ShareBarsChart.write(bars, file));
            }
        }
    }

    private ShareBars bars(int place, List<SharedValue> shown) {
        List<Integer> own = own(shown);
        List<SharedValue> columns = own.isEmpty() ? List.of() : columns(place);
        boolean others = own.size() < scenario.sites().size();
        List<ShareBars.Source> sources = new ArrayList<>();
        for (int i : own) {
            sources.add(
                    new ShareBars.Source(scenario.sites().get(i).name(), ShareBars.Kind.SITE, line(columns, shown, i)));
        }
        if (others) {
            sources.add(new ShareBars.Source(others(shown, own), ShareBars.Kind.OTHER_SITES, ""));
        }
        sources.add(new ShareBars.Source("background, without any site", ShareBars.Kind.BACKGROUND, ""));
        ScenarioInput.Project project = scenario.project();
        return new ShareBars(
                "Which sites bring the mercury: " + SharedWords.place(apportioned, place) + ", " + project.title(),
                "shares of what arrives; total mercury, highest estimates; the others are in apportion.csv",
                sources,
                listHead(columns),
                groups(shown, own, others),
                Profiles.caution(true) + " " + SharedWords.NO_EVIDENCE,
                project.preparedBy() + ", " + project.date());
    }

    private String others(List<SharedValue> shown, List<Integer> own) {
        int count = scenario.sites().size() - own.size();
        String name = count + (own.isEmpty() ? "" : " other") + (count == 1 ? " site" : " sites");
        boolean nothing = IntStream.range(0, scenario.sites().size())
                .filter(i -> !own.contains(i))
                .allMatch(i -> most(shown, i) == 0);
        return name + (nothing ? ": nothing arrives from there" : "");
    }

    /** What closing a site changes, and what it makes worse. */
    private String line(List<SharedValue> columns, List<SharedValue> shown, int site) {
        String worse = SharedWords.worse(shown, site)
                .filter(value -> !columns.contains(value))
                .map(value ->
                        "; but " + SharedWords.of(apportioned, value) + " " + SharedWords.change(value, site) + " %")
                .orElse("");
        return SharedWords.closing(columns, site) + worse;
    }

    /** Values whose change by closing stands beside a site: whole water in each flow state, or the highest of many. */
    private List<SharedValue> columns(int place) {
        List<SharedValue> whole = IntStream.range(0, scenario.states().size())
                .mapToObj(s -> apportioned.highest(place, What.WHOLE, s))
                .flatMap(Optional::stream)
                .toList();
        return whole.size() <= MOST_STATES
                ? whole
                : List.of(whole.stream()
                        .max(Comparator.comparingDouble(v -> v.parts().value()))
                        .orElseThrow());
    }

    private String listHead(List<SharedValue> columns) {
        if (columns.isEmpty()) {
            return "";
        }
        return "Closed, its solids and water gone too, whole water changes by ("
                + columns.stream().map(v -> SharedWords.state(apportioned, v)).collect(Collectors.joining(" | "))
                + "):";
    }

    /** Sites with a part of their own: those with the largest shares of any bar, in the order of their shares of the first bars. */
    private List<Integer> own(List<SharedValue> shown) {
        return IntStream.range(0, scenario.sites().size())
                .boxed()
                .filter(i -> most(shown, i) >= SMALL)
                .sorted(Comparator.comparingDouble((Integer i) -> -most(shown, i)))
                .limit(ShareBarsChart.MOST)
                .sorted(Comparator.comparingDouble(
                        (Integer i) -> -mean(shown.get(0).what(), shown, i)))
                .toList();
    }

    private static double share(SharedValue value, int site) {
        return value.parts().value() > 0
                ? value.parts().sites().get(site) / value.parts().value()
                : 0;
    }

    private static double most(List<SharedValue> shown, int site) {
        return shown.stream().mapToDouble(v -> share(v, site)).max().orElse(0);
    }

    private static double mean(What what, List<SharedValue> shown, int site) {
        return shown.stream()
                .filter(v -> v.what() == what)
                .mapToDouble(v -> share(v, site))
                .average()
                .orElse(0);
    }

    private List<ShareBars.Group> groups(List<SharedValue> shown, List<Integer> own, boolean others) {
        List<ShareBars.Group> groups = new ArrayList<>();
        for (What what : What.values()) {
            List<ShareBars.Bar> bars = shown.stream()
                    .filter(v -> v.what() == what && v.parts().value() > 0)
                    .map(v -> bar(v, own, others))
                    .toList();
            if (!bars.isEmpty()) {
                groups.add(new ShareBars.Group(title(what), bars));
            }
        }
        return groups;
    }

    private static String title(What what) {
        return switch (what) {
            case WHOLE -> "Whole water";
            case FILTERED -> "Filtered water";
            case BED -> "Bed, dry solids";
        };
    }

    private ShareBars.Bar bar(SharedValue value, List<Integer> own, boolean others) {
        List<Double> shares = new ArrayList<>();
        double rest = 0;
        for (int i : own) {
            shares.add(share(value, i));
        }
        for (int i = 0; i < scenario.sites().size(); i++) {
            rest += own.contains(i) ? 0 : share(value, i);
        }
        if (others) {
            shares.add(rest);
        }
        shares.add(value.parts().background() / value.parts().value());
        return new ShareBars.Bar(
                value.what() == What.BED ? "all flow states" : SharedWords.state(apportioned, value),
                Numbers.shown(value.parts().value() * ApportionTable.factor(value), 3) + " "
                        + ApportionTable.unit(value),
                shares);
    }
}
