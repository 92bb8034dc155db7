// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import org.silverwake.cli.ask.ColumnGuesser.Guess;
import org.silverwake.geo.layer.VectorLayer;
import org.silverwake.model.quantity.Dimension;

/** Question 2: which column of the river file is what. */
final class ColumnQuestions {
    private final Dialog dialog;
    private final Answers answers;
    private final VectorLayer layer;
    private final ColumnGuesser guesser;
    private final Map<String, Guess> settled = new LinkedHashMap<>();

    ColumnQuestions(Dialog dialog, Answers answers, VectorLayer layer, ColumnGuesser guesser) {
        this.dialog = dialog;
        this.answers = answers;
        this.layer = layer;
        this.guesser = guesser;
    }

    /** Shows the guesses and takes changes; what was settled, by key. */
    Map<String, Guess> ask() {
        dialog.say("2. Which column is what?");
        guesser.guesses().forEach(guess -> settled.put(guess.role().key(), guess));
        String columns = layer.columns().isEmpty() ? "none" : String.join(", ", layer.columns());
        dialog.note("Columns: " + columns + ". From their names and values:");
        show();
        while (true) {
            Optional<Guess> unknown =
                    settled.values().stream().filter(Guess::needsUnit).findFirst();
            String line = dialog.ask(
                    unknown.map(ColumnQuestions::unitWanted)
                            .orElse("Enter if right, else a change such as \"drainage area = AREA_SQKM km2\" or"
                                    + " \"river name = none\""),
                    "");
            if (unknown.isEmpty() && Dialog.isYes(line)) {
                settled.values().forEach(this::put);
                return settled;
            }
            try {
                take(line, unknown);
                show();
            } catch (IllegalArgumentException e) {
                dialog.note(e.getMessage());
            }
        }
    }

    private static String unitWanted(Guess guess) {
        return "unit of " + guess.column() + ", " + guess.role().shown() + " (such as "
                + guess.role().dimension().orElseThrow().units().get(0).name() + "), or none to leave the column out";
    }

    private void show() {
        if (settled.isEmpty()) {
            dialog.note("  nothing that I know");
        }
        for (Guess guess : settled.values()) {
            dialog.note(String.format(
                    Locale.ROOT,
                    "  %-16s = %s%s  (%s)",
                    guess.role().shown(),
                    guess.column(),
                    guess.unit().map(unit -> " " + unit).orElse(""),
                    guess.values().words(layer.features().size())));
        }
    }

    /** A change, or no more than the unit that was asked for. */
    private void take(String line, Optional<Guess> unknown) {
        if (line.isEmpty()) {
            throw new IllegalArgumentException("give a unit, or none");
        }
        if (unknown.isEmpty() || line.contains("=")) {
            change(line);
            return;
        }
        Guess guess = unknown.get();
        if (line.equalsIgnoreCase("none")) {
            settled.remove(guess.role().key());
            return;
        }
        String unit = guess.role().dimension().orElseThrow().requireUnit(line).name();
        settled.put(guess.role().key(), new Guess(guess.role(), guess.column(), Optional.of(unit), guess.values()));
    }

    private void change(String line) {
        List<String> offered = guesser.roles().stream().map(ColumnRole::shown).toList();
        ColumnChange change = ColumnChange.parse(line, offered, layer.columns());
        ColumnRole role = guesser.roles().stream()
                .filter(each -> each.shown().equals(change.what()))
                .findFirst()
                .orElseThrow();
        if (change.column().isEmpty()) {
            settled.remove(role.key());
            return;
        }
        String column = change.column().get();
        ColumnValues values = guesser.values(column);
        role.refusal(column, values, layer.features().size()).ifPresent(words -> {
            throw new IllegalArgumentException(words);
        });
        Optional<String> unit = change.unit().map(word -> unit(role, word));
        if (unit.isEmpty()) {
            unit = role.fit(column).flatMap(ColumnRole.Fit::unit);
        }
        Predicate<Guess> other =
                guess -> guess.column().equals(column) && !guess.role().equals(role);
        settled.values().removeIf(other);
        settled.put(role.key(), new Guess(role, column, unit, values));
    }

    private static String unit(ColumnRole role, String word) {
        Dimension dimension = role.dimension()
                .orElseThrow(() -> new IllegalArgumentException(role.shown() + " has no unit; leave out " + word));
        return dimension.requireUnit(word).name();
    }

    private void put(Guess guess) {
        String key = guess.role().key();
        if (key.equals("id") || key.equals("name")) {
            answers.put("rivers." + key, guess.column());
            return;
        }
        answers.put("rivers.columns." + key + ".column", guess.column());
        guess.unit().ifPresent(unit -> answers.put("rivers.columns." + key + ".unit", unit));
        if (!guess.values().missing().isEmpty()) {
            answers.put(
                    "rivers.columns." + key + ".missing",
                    String.join("; ", guess.values().missing()));
        }
    }
}
