// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.screening;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import org.silverwake.model.table.CsvTable;

/**
 * All guideline values, and the countries known to have none. Values are chosen by id, or by jurisdiction; superseded
 * ones by id alone. Immutable.
 */
public final class GuidelineLibrary {
    private static final String NAME_SEPARATORS = "[/,]";

    private final Map<String, Guideline> byId;
    private final Map<String, String> whereGiven;
    private final List<NoNationalValue> none;

    private GuidelineLibrary(Map<String, Guideline> byId, Map<String, String> whereGiven, List<NoNationalValue> none) {
        this.byId = byId;
        this.whereGiven = whereGiven;
        this.none = none;
    }

    /**
     * What a jurisdiction has: values in force or advisory, and media for which it is known to have none.
     *
     * @param jurisdiction the name asked for
     * @param guidelines values, in table order
     * @param none media without a national value
     */
    public record Selection(String jurisdiction, List<Guideline> guidelines, List<NoNationalValue> none) {
        /** Copies the lists. */
        public Selection {
            guidelines = List.copyOf(guidelines);
            none = List.copyOf(none);
        }

        /** What is missing, in words, as "Ghana, surface water: no national value (...)"; empty where nothing is known to be. */
        public List<String> gaps() {
            return none.stream().map(NoNationalValue::words).toList();
        }
    }

    /** The project's own library. */
    public static GuidelineLibrary builtIn() {
        CsvTable gaps = CsvTable.ofResource(GuidelineLibrary.class, "no-national-value.csv");
        return new GuidelineLibrary(Map.of(), Map.of(), noNationalValues(gaps))
                .with(CsvTable.ofResource(GuidelineLibrary.class, "guidelines.csv"));
    }

    /** Tolerable intakes and levels in blood, as printed; not compared with anything the program computes. */
    public static CsvTable intakeLimits() {
        return CsvTable.ofResource(GuidelineLibrary.class, "intake-limits.csv");
    }

    /** Limits in air, as printed; not compared with anything the program computes. */
    public static CsvTable airLimits() {
        return CsvTable.ofResource(GuidelineLibrary.class, "air-limits.csv");
    }

    /**
     * This library and the rows of a user's table, which has the same columns.
     *
     * @throws org.silverwake.model.table.TableException with every problem of the table: unknown or missing columns, an
     *     id that is taken, a unit of the wrong dimension, an unknown word, a fraction or basis that does not go with the
     *     medium
     */
    public GuidelineLibrary with(CsvTable table) {
        List<Guideline> added = GuidelineTable.read(table, whereGiven);
        Map<String, Guideline> all = new LinkedHashMap<>(byId);
        Map<String, String> where = new HashMap<>(whereGiven);
        for (int i = 0; i < added.size(); i++) {
            all.put(added.get(i).id(), added.get(i));
            where.put(added.get(i).id(), table.rows().get(i).where());
        }
        return new GuidelineLibrary(all, where, none);
    }

    /** All values, superseded ones included, in table order. */
    public List<Guideline> all() {
        return List.copyOf(byId.values());
    }

    /** All media for which countries are known to have no value. */
    public List<NoNationalValue> noNationalValues() {
        return none;
    }

    /** The value with an id, superseded ones included. */
    public Optional<Guideline> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * The value with an id, superseded ones included.
     *
     * @throws IllegalArgumentException if there is none; the message names the nearest id
     */
    public Guideline require(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException("guideline " + id + " is not known"
                + Words.meant(id, byId.keySet()) + "; \"silverwake guidelines\" lists all of them"));
    }

    /**
     * What a jurisdiction has. Names of states and provinces stand in brackets and are asked for in full, as "Canada (BC)";
     * a row for several countries counts for each of them.
     *
     * @throws IllegalArgumentException if the name stands in neither table; the message names the nearest one
     */
    public Selection forJurisdiction(String jurisdiction) {
        List<Guideline> all = byId.values().stream()
                .filter(g -> names(g.source().jurisdiction()).stream().anyMatch(jurisdiction::equalsIgnoreCase))
                .toList();
        List<NoNationalValue> gaps = none.stream()
                .filter(n -> n.jurisdictions().stream().anyMatch(jurisdiction::equalsIgnoreCase))
                .toList();
        if (all.isEmpty() && gaps.isEmpty()) {
            TreeSet<String> known = jurisdictions();
            throw new IllegalArgumentException("jurisdiction " + jurisdiction + " is not in the library"
                    + Words.meant(jurisdiction, known) + "; that does not mean it has no value. Known are "
                    + String.join(", ", known));
        }
        List<Guideline> inForce = all.stream()
                .filter(g -> g.status() != Guideline.Status.SUPERSEDED)
                .toList();
        return new Selection(jurisdiction, inForce, gaps);
    }

    /** Names under which {@link #forJurisdiction} finds something, sorted. */
    public TreeSet<String> jurisdictions() {
        TreeSet<String> known = new TreeSet<>();
        byId.values().forEach(g -> known.addAll(names(g.source().jurisdiction())));
        none.forEach(n -> known.addAll(n.jurisdictions()));
        return known;
    }

    private static List<String> names(String text) {
        return Arrays.stream(text.split(NAME_SEPARATORS)).map(String::strip).toList();
    }

    private static List<NoNationalValue> noNationalValues(CsvTable table) {
        List<NoNationalValue> list = new ArrayList<>();
        for (CsvTable.Row row : table.rows()) {
            String word = row.value("medium").toLowerCase(Locale.ROOT);
            Medium medium = Arrays.stream(Medium.values())
                    .filter(m -> m.word().equals(word))
                    .findFirst()
                    .orElseThrow(
                            () -> new IllegalArgumentException(row.where() + " medium: " + word + " is not known"));
            list.add(new NoNationalValue(
                    names(row.value("jurisdiction")), medium, row.value("reason"), row.value("note")));
        }
        return List.copyOf(list);
    }
}
