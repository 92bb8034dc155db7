// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.laboratory;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.silverwake.cli.text.Names;
import org.silverwake.model.table.CsvTable;

/**
 * Words of laboratories and what they mean: those of words.csv beside this class, the scenario's flow states, and the
 * scenario's own words, which come first. Case, accents, blanks, hyphens and full stops do not count.
 */
public final class Vocabulary {
    private static final String ANY = "*";

    private final Map<Category, Map<String, String>> known = new EnumMap<>(Category.class);
    private final Map<String, List<Meaning>> own = new LinkedHashMap<>();

    private Vocabulary(List<String> states) {
        for (Category category : Category.values()) {
            known.put(category, new LinkedHashMap<>());
        }
        for (CsvTable.Row row :
                CsvTable.ofResource(Vocabulary.class, "words.csv").rows()) {
            Category category = Category.valueOf(row.value("column").toUpperCase(Locale.ROOT));
            known.get(category).put(plain(row.value("word")), row.value("meaning"));
        }
        states.forEach(state -> known.get(Category.STATE).put(plain(state), state));
    }

    /** The words known without a scenario, and its flow states. */
    public static Vocabulary of(List<String> states) {
        return new Vocabulary(states);
    }

    /** Usual words of a column by what they mean, for the reference page. */
    public static Map<String, List<String>> usual(Category column) {
        Map<String, List<String>> usual = new LinkedHashMap<>();
        for (CsvTable.Row row :
                CsvTable.ofResource(Vocabulary.class, "words.csv").rows()) {
            if (row.value("column").equals(column.column())) {
                usual.computeIfAbsent(row.value("meaning"), m -> new ArrayList<>())
                        .add(row.value("word"));
            }
        }
        return usual;
    }

    /**
     * Adds a word of the laboratory; a star at its end stands for anything.
     *
     * @param word as the laboratory writes it
     * @param meanings known words, separated by commas; where one is known in two columns, with the column before it
     * @throws IllegalArgumentException in words for the user, if a meaning is not known or not clear
     */
    public void add(String word, String meanings) {
        List<Meaning> list = new ArrayList<>();
        for (String part : meanings.split(",")) {
            list.add(meaning(part.strip()));
        }
        own.put(plain(word), List.copyOf(list));
    }

    private Meaning meaning(String text) {
        List<Meaning> found = new ArrayList<>();
        for (Category category : Category.values()) {
            if (plain(text).startsWith(category.column() + " ")) {
                String rest = plain(text).substring(category.column().length()).strip();
                Optional.ofNullable(known.get(category).get(rest)).ifPresent(v -> found.add(new Meaning(category, v)));
            }
        }
        if (found.isEmpty()) {
            known.forEach((category, words) ->
                    Optional.ofNullable(words.get(plain(text))).ifPresent(v -> found.add(new Meaning(category, v))));
        }
        if (found.isEmpty()) {
            throw new IllegalArgumentException(
                    "\"" + text + "\" is not a word known here; give one or more of: " + all());
        }
        if (found.size() > 1) {
            throw new IllegalArgumentException("\"" + text + "\" could be "
                    + found.stream()
                            .map(m -> m.category().column() + " " + text)
                            .collect(Collectors.joining(" or "))
                    + "; give one of these");
        }
        return found.get(0);
    }

    private String all() {
        return known.entrySet().stream()
                .filter(e -> !e.getValue().isEmpty())
                .map(e -> e.getKey().column() + " ("
                        + e.getValue().values().stream().distinct().collect(Collectors.joining(", ")) + ")")
                .collect(Collectors.joining(", "));
    }

    /** What a cell of a column tells; empty where the word is not known. */
    Optional<List<Meaning>> find(Category column, String cell) {
        String word = plain(cell);
        Optional<List<Meaning>> ours = ownWord(word);
        if (ours.isPresent()) {
            return ours;
        }
        return Optional.ofNullable(known.get(column).get(word)).map(v -> List.of(new Meaning(column, v)));
    }

    private Optional<List<Meaning>> ownWord(String word) {
        if (own.containsKey(word)) {
            return Optional.of(own.get(word));
        }
        return own.entrySet().stream()
                .filter(e -> e.getKey().endsWith(ANY)
                        && word.startsWith(e.getKey().substring(0, e.getKey().length() - 1)))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** Whether a cell of a column would be understood. */
    public boolean isKnown(Category column, String cell) {
        return find(column, cell).isPresent();
    }

    /** Words of a column with a meaning, for messages. */
    public List<String> meanings(Category column) {
        return known.get(column).values().stream().distinct().toList();
    }

    /** The word as it is compared. */
    static String plain(String text) {
        return Arrays.stream(Names.fold(text).replace(".", "").split("[\\s\\u00a0_-]+"))
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(" "));
    }
}
