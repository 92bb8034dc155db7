// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.cli.scenario.FieldNotesPlan.NotedSite;
import org.silverwake.model.release.Amalgamation;
import org.silverwake.model.release.Eroded;
import org.silverwake.model.release.FieldNotes;
import org.silverwake.model.release.FlowYear;
import org.silverwake.model.release.Noted;
import org.silverwake.model.release.Storage;
import org.silverwake.model.release.TableTest;

/** The table of field notes: drums, kilograms of ore, grams of mercury, a row for each site that has no numbers of release. */
final class FieldNotesTable {
    private static final List<Amalgamation> PRACTICES = List.of(Amalgamation.values());

    private final StateNames states;
    private final Problems problems;

    FieldNotesTable(StateNames states, Problems problems) {
        this.states = states;
        this.problems = problems;
    }

    /** All rows; those of which nothing can be made have their problems noted. */
    List<NotedSite> read(Table table) {
        Set<String> known = new LinkedHashSet<>();
        for (Key key : FieldNotesKeys.ALL) {
            String stem = key.path().replace("_" + TableList.STATE, "");
            if (!stem.equals(key.path())) {
                known.addAll(states.columns(stem));
            } else {
                known.add(key.path());
                known.add(key.path() + "_unit");
            }
        }
        List<NotedSite> noted = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (TableRow row : table.checkColumns(known, List.of("site"), problems).read(problems)) {
            new Row(row).read(seen).ifPresent(noted::add);
        }
        return noted;
    }

    /** One row while it is read. */
    private final class Row {
        private final TableRow row;
        private final OptionalDouble relative;

        Row(TableRow row) {
            this.row = row;
            this.relative = number("relative_sd");
        }

        Optional<NotedSite> read(Set<String> seen) {
            String site = row.requireText("site", "the name of a site");
            if (!site.isEmpty() && !seen.add(site)) {
                row.problem("site", "\"" + site + "\" is there twice; give each site one row");
            }
            FlowYear year = year();
            Storage storage = storage();
            boolean heap = row.has("heap_mass");
            boolean ground = row.has("disturbed_area");
            if ((heap ? 1 : 0) + (ground ? 1 : 0) + (row.has("practice") ? 1 : 0) != 1) {
                row.problem(
                        "practice",
                        "give exactly one of practice (a working site), heap_mass (an old heap) and disturbed_area (ground laid bare)");
                return Optional.empty();
            }
            if (heap || ground) {
                return Optional.of(new NotedSite(
                        row.where(), site, Optional.empty(), Optional.of(eroded(site, heap, storage)), year));
            }
            Optional<Amalgamation> practice = practice();
            return practice.map(p ->
                    new NotedSite(row.where(), site, Optional.of(notes(site, p, storage)), Optional.empty(), year));
        }

        private Optional<Amalgamation> practice() {
            String word = Table.columnName(row.text("practice").orElse(""));
            int index = FieldNotesKeys.PRACTICES.indexOf(word.replace('_', '-'));
            if (index < 0) {
                row.problem(
                        "practice",
                        "\"" + row.text("practice").orElse("") + "\" is not known; give "
                                + String.join(" or ", FieldNotesKeys.PRACTICES));
                return Optional.empty();
            }
            return Optional.of(PRACTICES.get(index));
        }

        private OptionalDouble number(String column) {
            return row.quantity(column, FieldNotesKeys.require(column), column + "_unit");
        }

        /** A weighed or assayed number, with the row's relative standard deviation where it states one. */
        private Optional<Noted> noted(String column) {
            OptionalDouble value = number(column);
            if (value.isEmpty() || Double.isNaN(value.getAsDouble())) {
                return Optional.empty();
            }
            double v = value.getAsDouble();
            return Optional.of(relative.isPresent() ? Noted.of(v, Math.abs(v) * relative.getAsDouble()) : Noted.of(v));
        }

        private boolean isYes(String column) {
            String word = row.text(column).orElse("no").strip().toLowerCase(java.util.Locale.ROOT);
            if (!FieldNotesKeys.FLAGS.contains(word)) {
                row.problem(column, "\"" + word + "\" is not known; give yes or no");
            }
            return word.equals("yes");
        }

        private FlowYear year() {
            Optional<List<Double>> work = row.byState("work_share", FieldNotesKeys.WORK_SHARE, states);
            try {
                return work.isPresent() ? new FlowYear(states.shares(), work.get()) : FlowYear.even(states.shares());
            } catch (IllegalArgumentException e) {
                row.problem("work_share", e.getMessage());
                return FlowYear.even(states.shares());
            }
        }

        private Storage storage() {
            String word =
                    row.text("storage").orElse(FieldNotesKeys.STORAGES.get(0)).strip();
            int index = FieldNotesKeys.STORAGES.indexOf(Table.columnName(word).replace('_', '-'));
            try {
                if (index == 1) {
                    Optional<List<Double>> washed = row.byState("washed_share", FieldNotesKeys.WASHED_SHARE, states);
                    return washed.isPresent() ? new Storage.Heap(washed.get()) : new Storage.HeapByLength(dry());
                }
                if (index == 2) {
                    return new Storage.Pond(number("pond_escaping").orElse(0));
                }
            } catch (IllegalArgumentException e) {
                row.problem("storage", e.getMessage());
            }
            if (index < 0) {
                row.problem(
                        "storage",
                        "\"" + word + "\" is not known; give " + String.join(" or ", FieldNotesKeys.STORAGES));
            }
            return new Storage.Straight();
        }

        /** Without a word of it, the first flow state fills heaps and the others wash them. */
        private List<Boolean> dry() {
            List<Boolean> dry = new ArrayList<>();
            for (int s = 0; s < states.size(); s++) {
                dry.add(s == 0 && states.size() > 1);
            }
            return dry;
        }

        private Eroded eroded(String site, boolean heap, Storage storage) {
            Optional<Noted> content = noted("tailings_content");
            if (content.isEmpty()) {
                row.problem("tailings_content", "is blank; give the mercury content of the heap or the ground");
            }
            String mass = heap ? "heap_mass" : "disturbed_area";
            String rate = heap ? "heap_eroding" : "erosion";
            if (!row.has(rate)) {
                row.problem(rate, "is blank while " + mass + " is given; give both");
            }
            double first = number(mass).orElse(0);
            double second = number(rate).orElse(0);
            Noted known = content.orElse(Noted.of(0));
            return heap
                    ? new Eroded.LegacyHeap(site, first, known, second, forms(), storage)
                    : new Eroded.DisturbedGround(site, first, second, known, forms(), storage);
        }

        private FieldNotes notes(String site, Amalgamation practice, Storage storage) {
            FieldNotes notes = FieldNotes.of(site, practice)
                    .with(new FieldNotes.Work(
                            number("ore_per_cycle"),
                            number("cycles_per_day"),
                            number("working_days"),
                            noted("gold"),
                            number("sheds").orElse(1)))
                    .with(new FieldNotes.Mercury(
                            noted("mercury_per_cycle"),
                            noted("squeezed_back_per_cycle"),
                            noted("mercury_bought"),
                            noted("mercury_per_gold"),
                            number("held_in_drums").orElse(0)))
                    .with(new FieldNotes.Burning(
                            noted("amalgam_per_cycle"),
                            noted("amalgam_mercury_share"),
                            number("retort_share"),
                            number("retort_recovery"),
                            noted("retort_return_per_cycle"),
                            number("sponge_mercury_share"),
                            new FieldNotes.Nearby(
                                    number("laid_down_nearby").orElse(0),
                                    number("runoff_share").orElse(0),
                                    isYes("burned_among_homes"))))
                    .with(new FieldNotes.Tailings(
                            number("tailings_per_cycle"),
                            noted("tailings_content"),
                            tableTest(),
                            fate(),
                            forms(),
                            storage,
                            number("slurry_water_per_cycle").orElse(0)));
            return tank().map(notes::with).orElse(notes);
        }

        private Optional<TableTest> tableTest() {
            Optional<Noted> mass = noted("table_test_mass");
            Optional<Noted> mercury = noted("table_test_mercury");
            if (mass.isPresent() != mercury.isPresent()) {
                row.problem(
                        mass.isPresent() ? "table_test_mercury" : "table_test_mass",
                        "is blank while the other is given; give both, or neither");
            }
            return mass.isPresent() && mercury.isPresent()
                    ? Optional.of(new TableTest(mass.get(), mercury.get(), noted("table_test_remainder")))
                    : Optional.empty();
        }

        private Optional<FieldNotes.Fate> fate() {
            if (!row.has("stored_share") && !row.has("leached_share") && !row.has("river_share")) {
                return Optional.empty();
            }
            return Optional.of(new FieldNotes.Fate(
                    number("reprocessed_share").orElse(0),
                    number("reprocessed_recovery").orElse(0),
                    number("stored_share").orElse(0),
                    number("leached_share").orElse(0),
                    number("river_share").orElse(0)));
        }

        private Optional<FieldNotes.Forms> forms() {
            if (!row.has("droplet_share") && !row.has("exchangeable_share") && !row.has("grain_bound_share")) {
                return Optional.empty();
            }
            return Optional.of(new FieldNotes.Forms(
                    number("droplet_share").orElse(0),
                    number("exchangeable_share").orElse(0),
                    number("grain_bound_share").orElse(0)));
        }

        private Optional<FieldNotes.Tank> tank() {
            if (!row.has("tank_volume") && !row.has("tank_cycles")) {
                return Optional.empty();
            }
            for (String column : List.of("tank_volume", "tank_cycles")) {
                if (!row.has(column)) {
                    row.problem(column, "is blank while there is a leach tank; give volume and cycles");
                }
            }
            return Optional.of(new FieldNotes.Tank(
                    number("tank_volume").orElse(0),
                    number("tank_cycles").orElse(0),
                    noted("tank_mercury"),
                    number("detoxified_share").orElse(0),
                    number("solution_to_river").orElse(1),
                    number("residue_to_river").orElse(1),
                    isYes("mercury_removed_first")));
        }
    }
}
