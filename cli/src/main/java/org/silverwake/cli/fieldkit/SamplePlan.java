// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.silverwake.cli.fieldkit.Bottle.Role;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.model.screening.Fraction;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;
import org.silverwake.model.screening.Substance;

/**
 * Which bottles are taken where. The guideline values that are compared with a reach, or with water at places where people draw
 * it, say what for; duplicates and field blanks are counted in, one of each for every so many samples begun.
 *
 * @param stops places in their order
 * @param bottles by place, then kind, then role
 */
record SamplePlan(List<Stop> stops, List<Bottle> bottles) {
    private static final int PREFIX = 4;
    private static final Set<PlaceUse> DRINKING =
            EnumSet.of(PlaceUse.VILLAGE, PlaceUse.DRINKING_INTAKE, PlaceUse.RIVERSIDE_WELL, PlaceUse.SCHOOL);

    /** Where no guideline value asks for a sample. */
    private static final List<Analysis> USUAL = List.of(
            new Analysis(Medium.SURFACE_WATER, Substance.TOTAL_MERCURY, Fraction.WHOLE),
            new Analysis(Medium.SURFACE_WATER, Substance.TOTAL_MERCURY, Fraction.FILTERED),
            new Analysis(Medium.BED_SEDIMENT, Substance.TOTAL_MERCURY, Fraction.NONE));

    /** Copies the lists. */
    SamplePlan {
        stops = List.copyOf(stops);
        bottles = List.copyOf(bottles);
    }

    /**
     * Counts.
     *
     * @param title of the scenario, from whose letters the codes begin
     * @param stops places
     * @param guidelines values the scenario is compared with
     * @param every samples of a kind for which one duplicate and one blank are taken, at least 1
     */
    static SamplePlan of(String title, List<Stop> stops, List<Guideline> guidelines, int every) {
        String prefix = prefix(title);
        String pattern = stops.size() > 99 ? "%s-%03d-%s%s" : "%s-%02d-%s%s";
        List<Bottle> bottles = new ArrayList<>();
        wanted(stops, guidelines).forEach((analysis, where) -> {
            for (Role role : Role.values()) {
                for (int stop : chosen(where, role, analysis, every)) {
                    String code =
                            String.format(Locale.ROOT, pattern, prefix, stop + 1, analysis.letters(), role.ending());
                    bottles.add(new Bottle(code, stop, analysis, role));
                }
            }
        });
        bottles.sort(Comparator.comparingInt(Bottle::stop)
                .thenComparing(Bottle::analysis)
                .thenComparing(Bottle::role));
        return new SamplePlan(stops, bottles);
    }

    private static Map<Analysis, List<Integer>> wanted(List<Stop> stops, List<Guideline> guidelines) {
        Map<Analysis, Set<Integer>> wanted = new TreeMap<>();
        for (Guideline guideline : guidelines) {
            Medium medium = guideline.observable().medium();
            if (medium.scope() == Medium.Scope.REACH || medium.scope() == Medium.Scope.DRINKING_PLACE) {
                wanted.computeIfAbsent(Analysis.of(guideline.observable()), a -> new java.util.TreeSet<>())
                        .addAll(where(medium, stops));
            }
        }
        if (wanted.isEmpty()) {
            USUAL.forEach(a -> wanted.put(a, new java.util.TreeSet<>(where(a.medium(), stops))));
        }
        Map<Analysis, List<Integer>> lists = new TreeMap<>();
        wanted.forEach((analysis, where) -> lists.put(analysis, List.copyOf(where)));
        return lists;
    }

    /** Water to drink where people draw it; fish where people fish, or everywhere if no place says so; all else everywhere. */
    private static List<Integer> where(Medium medium, List<Stop> stops) {
        List<Integer> all = new ArrayList<>();
        List<Integer> some = new ArrayList<>();
        for (int i = 0; i < stops.size(); i++) {
            List<PlaceUse> uses = stops.get(i).uses();
            all.add(i);
            boolean fits = medium == Medium.FISH
                    ? uses.contains(PlaceUse.FISHING)
                    : uses.stream().anyMatch(DRINKING::contains);
            if (fits) {
                some.add(i);
            }
        }
        boolean narrow = medium == Medium.DRINKING_WATER || medium == Medium.FISH && !some.isEmpty();
        return narrow ? some : all;
    }

    /** Places for a role: all for samples; for the others evenly spread. A blank makes sense in water alone. */
    private static List<Integer> chosen(List<Integer> where, Role role, Analysis analysis, int every) {
        if (role == Role.SAMPLE) {
            return where;
        }
        if (role == Role.BLANK && !analysis.medium().isWater()) {
            return List.of();
        }
        int n = where.size();
        int count = (n + every - 1) / every;
        List<Integer> chosen = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            // duplicates at the middle of each stretch of the list, blanks at its end
            int at = role == Role.DUPLICATE ? (2 * k + 1) * n / (2 * count) : (k + 1) * n / count - 1;
            chosen.add(where.get(at));
        }
        return chosen;
    }

    /** Up to four capital letters of the title. */
    private static String prefix(String title) {
        String plain = Normalizer.normalize(title, Normalizer.Form.NFD)
                .toUpperCase(Locale.ROOT)
                .replaceAll("[^A-Z0-9]", "");
        return plain.isEmpty() ? "S" : plain.substring(0, Math.min(PREFIX, plain.length()));
    }

    /** Analyses, in their order. */
    List<Analysis> analyses() {
        return bottles.stream().map(Bottle::analysis).distinct().sorted().toList();
    }

    /** Bottles of a place. */
    List<Bottle> at(int stop) {
        return bottles.stream().filter(b -> b.stop() == stop).toList();
    }

    /** How many bottles of a kind there are in a role. */
    long count(Analysis analysis, Role role) {
        return bottles.stream()
                .filter(b -> b.analysis().equals(analysis) && b.role() == role)
                .count();
    }
}
