// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.scenario.ScenarioInput.Site;

/** Names that a public page must not hold: those of single sites, and of groups of fewer than three. */
public final class SiteNames {
    private final Pattern names;

    private SiteNames(Set<String> names) {
        this.names = Pattern.compile(
                names.isEmpty()
                        ? "(?!)"
                        : "(?<![\\p{L}\\p{N}])("
                                + String.join(
                                        "|", names.stream().map(Pattern::quote).toList())
                                + ")(?![\\p{L}\\p{N}])",
                Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE);
    }

    /** The names of a scenario. */
    public static SiteNames of(ScenarioInput scenario) {
        Set<String> names = new LinkedHashSet<>();
        Map<String, Set<String>> groups = new HashMap<>();
        List<Site> all = new ArrayList<>(scenario.sites());
        all.addAll(scenario.fieldNotes().sites());
        for (Site site : all) {
            names.add(site.name());
            groups.computeIfAbsent(site.group(), g -> new HashSet<>()).add(site.where());
        }
        groups.forEach((group, rows) -> {
            if (rows.size() < Contributors.A_GROUP) {
                names.add(group);
            }
        });
        names.removeIf(String::isBlank);
        return new SiteNames(names);
    }

    /** Whether a text names one of them. */
    public boolean isNamedIn(String text) {
        return names.matcher(text).find();
    }
}
