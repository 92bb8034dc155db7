// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.quantity;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiConsumer;
import org.silverwake.model.numerics.EditDistance;

/**
 * Units that people use where they work (sack, tin, flask, drum charge), each defined once as a mass or a volume. They
 * stand wherever a unit of mass or volume may stand, alone or in a compound: "2 sacks/d", "5 g/sack". Names are read
 * without regard to case and to blanks or hyphens between words, in singular or plural. Immutable.
 */
public final class LocalUnits {
    private static final LocalUnits NONE = new LocalUnits(Map.of(), Map.of());
    private static final List<Dimension> OF_A_UNIT = List.of(Dimension.MASS, Dimension.VOLUME);
    private static final String NAME = "\\p{L}[\\p{L}\\p{M}\\p{N} '_.-]*";

    /** Words that mean different amounts in different places, with the usual ones (from memory but for the ounces' definitions). */
    private static final Map<String, String> DOUBTFUL = Map.ofEntries(
            Map.entry("ounce", "the avoirdupois ounce is 28.3495 g, the troy ounce of gold 31.1035 g"),
            Map.entry("oz", "the avoirdupois ounce is 28.3495 g, the troy ounce of gold 31.1035 g"),
            Map.entry("ton", "the metric ton is 1000 kg (t), the short ton 907.185 kg, the long ton 1016.05 kg"),
            Map.entry("gallon", "the US gallon is 3.78541 L, the imperial gallon 4.54609 L"),
            Map.entry("gal", "the US gallon is 3.78541 L, the imperial gallon 4.54609 L"),
            Map.entry("pound", "the avoirdupois pound is 0.453592 kg, the troy pound 0.373242 kg"),
            Map.entry("lb", "the avoirdupois pound is 0.453592 kg, the troy pound 0.373242 kg"),
            Map.entry("quintal", "it is 100 kg in some countries and 46 kg in others"),
            Map.entry("arroba", "it is 11.5 kg in some countries and 15 kg in others"),
            Map.entry("tola", "it is 11.66 g in most places, 10 g in others"));

    private final Map<String, String> definitions;
    private final Map<String, Quantity> amounts;

    private LocalUnits(Map<String, String> definitions, Map<String, Quantity> amounts) {
        this.definitions = Collections.unmodifiableMap(new LinkedHashMap<>(definitions));
        this.amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
    }

    /** None. */
    public static LocalUnits none() {
        return NONE;
    }

    /**
     * Units by name, such as "sack" with "50 kg", or with other local units, "drum charge" with "2 sacks".
     *
     * @param definitions amount of mass or volume by name
     * @param problems hears the name and what is wrong with it, one line each; such a unit is left out
     */
    public static LocalUnits of(Map<String, String> definitions, BiConsumer<String, String> problems) {
        Map<String, String> usable = new LinkedHashMap<>();
        definitions.forEach((name, definition) -> {
            Optional<String> wrong = wrongName(name, usable.keySet());
            wrong.ifPresentOrElse(text -> problems.accept(name, text), () -> usable.put(name, definition));
        });
        Map<String, Quantity> amounts = new LinkedHashMap<>();
        Set<String> open = new LinkedHashSet<>(usable.keySet());
        boolean progress = true;
        while (progress) {
            progress = open.removeIf(name -> define(name, usable, amounts, open, problems));
        }
        for (String name : open) {
            problems.accept(
                    name,
                    "is defined by itself (" + usable.get(name)
                            + "); give a mass such as 50 kg or a volume such as 18 L");
        }
        amounts.keySet().retainAll(usable.keySet());
        usable.keySet().retainAll(amounts.keySet());
        return new LocalUnits(usable, amounts);
    }

    /** Defines a unit, or tells what is wrong with it; false where it waits for another one. */
    private static boolean define(
            String name,
            Map<String, String> definitions,
            Map<String, Quantity> amounts,
            Set<String> open,
            BiConsumer<String, String> problems) {
        String text = definitions.get(name);
        String unit = Quantity.unitOf(text);
        if (open.stream().anyMatch(other -> reads(unit, other))) {
            return false;
        }
        LocalUnits known = new LocalUnits(Map.of(), amounts);
        for (Dimension dimension : OF_A_UNIT) {
            if (!unit.isEmpty() && known.find(unit, dimension).isPresent()) {
                try {
                    Quantity amount = Quantity.parse(text, dimension, DecimalMark.POINT, known);
                    if (amount.si() > 0) {
                        amounts.put(name, amount);
                    } else {
                        problems.accept(name, text + " is not allowed; give an amount above 0");
                    }
                } catch (IllegalArgumentException e) {
                    problems.accept(name, e.getMessage());
                }
                return true;
            }
        }
        problems.accept(name, known.noMassOrVolume(text, unit));
        return true;
    }

    private String noMassOrVolume(String text, String unit) {
        String give =
                "; give a mass (" + Dimension.MASS.accepted() + ") or a volume (" + Dimension.VOLUME.accepted() + ")";
        if (unit.isEmpty()) {
            return "\"" + text + "\" has no unit" + give;
        }
        String doubt = DOUBTFUL.get(singular(unit));
        for (Dimension other : Dimension.values()) {
            if (find(unit, other).isPresent()) {
                return unit + " is a unit of " + other.label() + give;
            }
        }
        return unit + " is not known" + (doubt == null ? "" : " (" + doubt + ")") + give;
    }

    private static Optional<String> wrongName(String name, Set<String> before) {
        if (!name.matches(NAME)) {
            return Optional.of(
                    "cannot be the name of a unit; give letters first, then letters, digits, blanks or hyphens");
        }
        for (Dimension dimension : Dimension.values()) {
            for (Unit unit : dimension.units()) {
                boolean same = unit.name().equalsIgnoreCase(name);
                if (same || dimension.findUnit(name).isPresent()) {
                    return Optional.of("is a unit already, of " + dimension.label()
                            + (same && !unit.name().equals(name) ? " but for its case" : "")
                            + "; give your unit another name");
                }
            }
        }
        return before.stream()
                .filter(other -> reads(name, other))
                .findFirst()
                .map(other -> "reads like " + other + "; keep one of them");
    }

    /** The definitions as they were written, by name, for the record of a run. */
    public Map<String, String> definitions() {
        return definitions;
    }

    /** The unit of a spelling, standard or local or of both, if it measures this dimension. */
    public Optional<Unit> find(String spelling, Dimension dimension) {
        Optional<Unit> standard = dimension.findUnit(spelling);
        return standard.isPresent() || amounts.isEmpty()
                ? standard
                : compound(spelling, spelling.strip().split("\\s*/\\s*"), 0, 1, dimension);
    }

    /** Puts kilograms, liters ... in the place of local names, part by part, until the dimension knows the compound. */
    private Optional<Unit> compound(String spelling, String[] parts, int from, double factor, Dimension dimension) {
        for (int i = from; i < parts.length; i++) {
            Optional<Quantity> amount = amount(parts[i]);
            if (amount.isEmpty()) {
                continue;
            }
            for (Unit base : amount.get().dimension().units()) {
                String[] replaced = parts.clone();
                replaced[i] = base.name();
                double ratio = amount.get().si() / base.toSi();
                Optional<Unit> found =
                        compound(spelling, replaced, i + 1, i == 0 ? factor * ratio : factor / ratio, dimension);
                if (found.isPresent()) {
                    return found;
                }
            }
            return Optional.empty();
        }
        return dimension.findUnit(String.join("/", parts)).map(unit -> new Unit(spelling, unit.toSi() * factor, 0));
    }

    /**
     * The unit of a spelling.
     *
     * @throws IllegalArgumentException if it is none of this dimension: with the nearest local name, or with the amounts of
     *     a word that means several, and with what is accepted
     */
    public Unit require(String spelling, Dimension dimension) {
        Optional<Unit> unit = find(spelling, dimension);
        if (unit.isPresent()) {
            return unit.get();
        }
        for (Dimension other : Dimension.values()) {
            if (other.findUnit(spelling).isEmpty() && find(spelling, other).isPresent()) {
                throw new IllegalArgumentException(spelling + " is a unit of " + other.label() + ", not of "
                        + dimension.label() + "; give one of " + dimension.accepted());
            }
        }
        hint(spelling).ifPresent(text -> {
            throw new IllegalArgumentException(text);
        });
        return dimension.requireUnit(spelling);
    }

    private Optional<String> hint(String spelling) {
        for (String part : spelling.strip().split("\\s*/\\s*")) {
            String doubt = DOUBTFUL.get(singular(part));
            if (doubt != null && amount(part).isEmpty()) {
                return Optional.of(part + " is not one amount everywhere: " + doubt
                        + "; define it under units, or give the value in another unit");
            }
            Optional<String> near = amount(part).isPresent() || isStandard(part) ? Optional.empty() : nearest(part);
            if (near.isPresent()) {
                return near.map(
                        name -> part + " is not known as a unit; the nearest one defined under units is " + name);
            }
        }
        return Optional.empty();
    }

    /** The name that differs least, within half its letters; the s of a plural does not count. */
    private Optional<String> nearest(String part) {
        String word = plain(part).replaceAll("s$", "");
        String best = null;
        int least = Integer.MAX_VALUE;
        for (String name : amounts.keySet()) {
            String known = plain(name).replaceAll("s$", "");
            int distance = EditDistance.between(word, known);
            if (distance <= known.length() / 2 && distance < least) {
                best = name;
                least = distance;
            }
        }
        return Optional.ofNullable(best);
    }

    private static boolean isStandard(String part) {
        for (Dimension dimension : Dimension.values()) {
            if (dimension.findUnit(part).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private Optional<Quantity> amount(String spelling) {
        return amounts.entrySet().stream()
                .filter(entry -> reads(spelling, entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    /** Whether a spelling is this name, word by word, in singular or plural. */
    private static boolean reads(String spelling, String name) {
        List<String> one = words(spelling);
        List<String> other = words(name);
        for (int i = 0; one.size() == other.size() && i < one.size(); i++) {
            if (!isPlural(one.get(i), other.get(i)) && !isPlural(other.get(i), one.get(i))) {
                return false;
            }
        }
        return one.size() == other.size();
    }

    /** English, Spanish, Portuguese and French plurals that only add letters, and -y to -ies. */
    private static boolean isPlural(String word, String singular) {
        return word.equals(singular)
                || word.equals(singular + "s")
                || word.equals(singular + "es")
                || word.equals(singular + "x")
                || singular.endsWith("y") && word.equals(singular.substring(0, singular.length() - 1) + "ies");
    }

    private static String singular(String word) {
        String plain = plain(word);
        return DOUBTFUL.keySet().stream()
                .filter(known -> isPlural(plain, known) || plain.startsWith(known + " "))
                .findFirst()
                .orElse(plain);
    }

    private static List<String> words(String text) {
        return new ArrayList<>(List.of(plain(text).split(" ")));
    }

    private static String plain(String text) {
        return text.strip().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
    }

    @Override
    public String toString() {
        return definitions.toString();
    }
}
