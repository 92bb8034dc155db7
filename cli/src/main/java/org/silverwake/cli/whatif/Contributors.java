// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.Site;

/** Puts discharge points together, as far as the audience or the file's size asks. */
public final class Contributors {
    /** Sites that a group must have for a public page, so that none of them can be told. As on maps without single sites. */
    public static final int A_GROUP = 3;

    private static final String OTHER = "other sources";
    private static final String ALL = "all sources";

    private Contributors() {}

    /** How far sites are put together. */
    public enum Grouping {
        /** Every discharge point by itself. */
        NONE,
        /** By group of sites. */
        GROUPS,
        /** All together. */
        ALL
    }

    /** The contributors; none where a public page would show fewer than three sites. */
    public static List<Contributor> of(ScenarioInput scenario, Audience audience, Grouping grouping) {
        List<Site> sites = scenario.sites();
        List<Contributor> found;
        if (grouping == Grouping.ALL) {
            found = grouped(sites, site -> ALL);
        } else if (grouping == Grouping.GROUPS || audience == Audience.PUBLIC) {
            found = grouped(sites, Site::group);
        } else {
            found = new ArrayList<>();
            for (int i = 0; i < sites.size(); i++) {
                Site site = sites.get(i);
                found.add(new Contributor(site.name(), site.group(), List.of(i), List.of(site.where())));
            }
        }
        return audience == Audience.PUBLIC ? hidden(found, SiteNames.of(scenario)) : List.copyOf(found);
    }

    private static List<Contributor> grouped(List<Site> sites, Function<Site, String> by) {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int i = 0; i < sites.size(); i++) {
            groups.computeIfAbsent(by.apply(sites.get(i)), g -> new ArrayList<>())
                    .add(i);
        }
        List<Contributor> found = new ArrayList<>();
        groups.forEach((name, points) -> found.add(new Contributor(
                name,
                name,
                points,
                points.stream().map(i -> sites.get(i).where()).distinct().toList())));
        return found;
    }

    /** Merges groups of fewer than three sites, with the smallest of the others as long as they are fewer than three together. */
    private static List<Contributor> hidden(List<Contributor> groups, SiteNames names) {
        List<Contributor> large = new ArrayList<>();
        List<Contributor> small = new ArrayList<>();
        groups.forEach(group -> (group.rows().size() < A_GROUP ? small : large).add(group));
        while (!small.isEmpty() && !large.isEmpty() && rows(small) < A_GROUP) {
            Contributor least = large.stream()
                    .min(Comparator.comparingInt(group -> group.rows().size()))
                    .orElseThrow();
            large.remove(least);
            small.add(least);
        }
        if (small.isEmpty()) {
            return List.copyOf(named(large, names));
        }
        if (rows(small) < A_GROUP) {
            return List.of();
        }
        List<Contributor> all = named(large, names);
        String name = large.isEmpty() ? ALL : OTHER;
        List<Integer> points = new ArrayList<>();
        Set<String> rows = new LinkedHashSet<>();
        small.forEach(group -> {
            points.addAll(group.points());
            rows.addAll(group.rows());
        });
        all.add(new Contributor(name, name, points.stream().sorted().toList(), List.copyOf(rows)));
        return List.copyOf(all);
    }

    private static int rows(List<Contributor> groups) {
        return groups.stream().mapToInt(group -> group.rows().size()).sum();
    }

    /** A group named like a site goes by a number. */
    private static List<Contributor> named(List<Contributor> groups, SiteNames names) {
        List<Contributor> named = new ArrayList<>();
        for (Contributor group : groups) {
            String name = names.isNamedIn(group.name()) ? "group " + (named.size() + 1) : group.name();
            named.add(new Contributor(name, name, group.points(), group.rows()));
        }
        return named;
    }
}
