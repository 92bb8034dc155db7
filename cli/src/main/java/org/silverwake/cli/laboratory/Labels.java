// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** What the words of one row tell, by what they are about; words that are not known, or speak against each other, are refused. */
final class Labels {
    private final Map<Category, Set<String>> told = new EnumMap<>(Category.class);
    private final Vocabulary words;
    private final List<String> reasons;

    Labels(Vocabulary words, List<String> reasons) {
        this.words = words;
        this.reasons = reasons;
        for (Category category : Category.values()) {
            told.put(category, new TreeSet<>());
        }
    }

    /** Reads every cell that holds a word. */
    void read(RowCells row) {
        for (Category column : Category.values()) {
            for (String cell : row.all(column.column())) {
                Optional<List<Meaning>> found = words.find(column, cell);
                if (found.isEmpty() && column == Category.QUALIFIER) {
                    found = several(cell);
                }
                if (found.isPresent()) {
                    found.get().forEach(m -> told.get(m.category()).add(m.value()));
                } else {
                    reasons.add(
                            column.column() + " \"" + cell + "\" is not known; say under samples.words what it means: "
                                    + String.join(", ", words.meanings(column)));
                }
            }
        }
    }

    /** Flags set together, as "J, DNQ". */
    private Optional<List<Meaning>> several(String cell) {
        List<Meaning> all = new ArrayList<>();
        for (String part : Arrays.asList(cell.split("[,;/\\s]+"))) {
            Optional<List<Meaning>> one = words.find(Category.QUALIFIER, part);
            if (part.isEmpty() || one.isEmpty()) {
                return Optional.empty();
            }
            all.addAll(one.get());
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(all);
    }

    /** Adds what the value cell says. */
    void claim(String qualifier) {
        told.get(Category.QUALIFIER).add(qualifier);
    }

    /** Adds the weight that a unit says. */
    void basis(String basis) {
        told.get(Category.BASIS).add(basis);
    }

    Set<String> all(Category category) {
        return told.get(category);
    }

    boolean has(Category category, String value) {
        return told.get(category).contains(value);
    }

    /** The one thing told; empty where there is none, and with a reason where there are several. */
    Optional<String> one(Category category) {
        Set<String> all = told.get(category);
        if (all.size() > 1) {
            reasons.add(category.name().toLowerCase(Locale.ROOT) + " is told twice and differently: "
                    + String.join(" and ", all));
        }
        return all.stream().findFirst();
    }
}
