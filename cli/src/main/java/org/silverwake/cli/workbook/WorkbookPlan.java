// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.silverwake.cli.scenario.Key;
import org.silverwake.cli.scenario.KeyTable;
import org.silverwake.cli.scenario.TableList;
import org.silverwake.cli.workbook.SheetPlan.Kind;
import org.silverwake.model.input.SettingList;

/** Which sheets the workbook has and what they ask for, made from the keys and columns that the reader knows. */
final class WorkbookPlan {
    static final String STATES = "flow-states";
    static final String CLASSES = "solids.classes";
    static final String RIVER_COLUMNS = "rivers.columns";

    /** Keys that take a list; in a cell its items are separated by semicolons. */
    private static final Set<String> LISTS = Set.of(
            "rivers.orient-by",
            "guidelines.use",
            "mercury.forms",
            "outputs.forms",
            "outputs.form-media",
            "sheets.kinds",
            "sheets.what-to-do",
            "sheets.whom-to-ask",
            RIVER_COLUMNS + ".missing",
            STATES + ".*.months",
            "history.order",
            "practices.in-force",
            "tried.closed",
            "fish.dams",
            "history.changes.*.sites",
            "reach-classes.*.guidelines",
            "reach-classes.*.values",
            "samples.file",
            "samples.columns.*",
            "samples.more.*.file",
            "samples.more.*.columns.*");

    /** Lists of maps: their rows have no name. */
    private static final Set<String> ITEMS = Set.of("rivers.outlets", "outputs.profiles", "backdrop.layers");

    /** Given in another way: outlets row by row, sites on their own sheet. */
    private static final Set<String> OTHERWISE = Set.of("rivers.outlets", "sites.more");

    /** Sheet where any other key may be written out. */
    static final String MORE = "more";

    /** What few people need: how to read files that laboratories send, sizes of droplets, what a page saves as tried. */
    private static final Set<String> SELDOM = Set.of(
            "samples.columns",
            "samples.words",
            "samples.fixed",
            "samples.more",
            "mercury.droplets",
            "fish.species",
            "tried.practices",
            "tried.sites",
            "tried.closed");

    private static final List<String> ORDER = List.of(
            "project",
            "rivers",
            RIVER_COLUMNS,
            STATES,
            CLASSES,
            "sites",
            "places",
            "guidelines",
            "gauges",
            "samples",
            "rivers.outlets",
            "abstractions",
            "rivers.kinds",
            "water-bodies",
            "reach-classes",
            "outputs.profiles",
            "backdrop.layers",
            "units",
            "history.changes",
            "field-notes",
            "practices",
            "settings",
            MORE);

    /** Sheets without which there is no result. */
    private static final Set<String> NEEDED = Set.of("project", "rivers", STATES, CLASSES);

    /** Sheets that most scenarios fill in. */
    private static final Set<String> USUAL = Set.of(RIVER_COLUMNS, "sites", "places", "guidelines", "gauges");

    private static final Map<String, String> SHEET_OF_KEY = Map.of(
            "title", "project",
            "prepared-by", "project",
            "date", "project",
            "language", "project",
            "outputs", "project",
            "sheets", "project",
            "backdrop", "project",
            "guidelines", "guidelines");

    /** Positions in other ways than degrees, shares of forms that are seldom carried, what few field notes hold. */
    private static final Set<String> RARE = Set.of(
            "share_droplets",
            "share_complex",
            "share_elemental",
            "share_methyl",
            "easting",
            "northing",
            "zone",
            "hemisphere",
            "datum",
            "x",
            "y",
            "accuracy",
            "accuracy_unit",
            "mercury_bought",
            "mercury_per_gold",
            "held_in_drums",
            "sponge_mercury_share",
            "laid_down_nearby",
            "runoff_share",
            "droplet_share",
            "grain_bound_share",
            "pond_escaping",
            "detoxified_share",
            "solution_to_river",
            "residue_to_river",
            "heap_mass",
            "heap_eroding",
            "disturbed_area",
            "erosion",
            "relative_sd",
            "cost_once_low",
            "cost_once_high",
            "cost_per_year_low",
            "cost_per_year_high",
            "drums_hold",
            "drums_decay");

    private static final Set<String> RIVER_KEYS = Set.of("discharge.method", "channel.method");

    private WorkbookPlan() {}

    /** All sheets in their order. */
    static List<SheetPlan> sheets() {
        Map<String, List<Field>> fields = new LinkedHashMap<>();
        Map<String, Kind> kinds = new LinkedHashMap<>();
        ORDER.forEach(id -> fields.put(id, new ArrayList<>()));
        KeyTable.all().forEach(key -> place(key, fields, kinds));
        kinds.put(RIVER_COLUMNS, Kind.RIVER_COLUMNS);
        kinds.put(MORE, Kind.MORE);
        fields.put(RIVER_COLUMNS, riverColumns());
        TableList.all().forEach((table, columns) -> {
            kinds.put(table, Kind.ROWS);
            fields.put(table, sorted(columns));
        });
        List<SheetPlan> sheets = new ArrayList<>();
        fields.forEach((id, list) -> {
            if (!list.isEmpty() || id.equals(MORE)) {
                sheets.add(new SheetPlan(id, kinds.getOrDefault(id, Kind.KEYS), list));
            }
        });
        return sheets;
    }

    private static void place(Key key, Map<String, List<Field>> fields, Map<String, Kind> kinds) {
        String path = key.path();
        int star = path.indexOf(".*");
        String start = star < 0 ? path : path.substring(0, star);
        boolean outlets = OTHERWISE.contains(start) && star < 0;
        if (start.startsWith(RIVER_COLUMNS)
                || start.equals("sites.more")
                || outlets
                || SELDOM.contains(start)
                || isOfSetting(path)) {
            return;
        }
        if (star < 0) {
            fields.get(sheet(path)).add(new Field(path, key));
            return;
        }
        boolean ofStates = start.startsWith("discharge.") && path.endsWith(".*");
        String id = ofStates ? STATES : start;
        String column = ofStates
                ? start.substring(start.indexOf('.') + 1)
                : path.length() > star + 2 ? path.substring(star + 3) : "value";
        kinds.put(id, ITEMS.contains(id) ? Kind.ITEMS : Kind.NAMED);
        fields.computeIfAbsent(id, i -> new ArrayList<>()).add(new Field(column, key));
    }

    private static String sheet(String path) {
        if (isSetting(path)) {
            return "settings";
        }
        if (RIVER_KEYS.contains(path) || path.startsWith("rivers.") || path.startsWith("water-bodies.polygons.")) {
            return "rivers";
        }
        if ((path.endsWith(".file") || path.equals("samples.stations")) && !path.startsWith("guidelines")) {
            return "project";
        }
        return SHEET_OF_KEY.getOrDefault(path.split("\\.")[0], "settings");
    }

    /** Whether a scenario needs a sheet: "needed", "usual" or "seldom", ends of the words that say so. */
    static String need(String id) {
        return NEEDED.contains(id) ? "needed" : USUAL.contains(id) ? "usual" : "seldom";
    }

    /** Whether a column is one that few people fill in. */
    static boolean isSeldom(String column) {
        return RARE.contains(column.replaceFirst(Field.UNIT + "$", "")) || isRepeated(column);
    }

    /** The pattern that a written-out key fits, such as "units.*" for "units.sack". */
    static Optional<Key> key(String written) {
        return KeyTable.all().stream()
                .filter(k -> written.matches(k.path().replace(".", "\\.").replace("*", "[^.]+")))
                .findFirst();
    }

    /** Whether a key takes several values, which stand in one cell with semicolons between them. */
    static boolean isList(String pattern) {
        return LISTS.contains(pattern);
    }

    private static boolean isSetting(String path) {
        return SettingList.all().stream().anyMatch(s -> s.path().equals(path));
    }

    /** Whether it is a number of a setting by flow state or kind of reach; few people need those. */
    private static boolean isOfSetting(String path) {
        return SettingList.all().stream().anyMatch(s -> path.startsWith(s.path() + "."));
    }

    private static List<Field> riverColumns() {
        String what = String.join(", ", KeyTable.riverColumns().keySet());
        return List.of(
                new Field("name", Key.word("name", Key.Kind.TEXT, "", "what the column holds: " + what)),
                new Field(
                        "state",
                        Key.word(
                                "state",
                                Key.Kind.TEXT,
                                "",
                                "flow state, where each has its own column; blank otherwise. For "
                                        + String.join(
                                                ", ",
                                                KeyTable.BY_STATE.stream()
                                                        .sorted()
                                                        .toList()))),
                new Field("column", Key.word("column", Key.Kind.TEXT, "", "name of the column in the river layer")),
                new Field("unit", Key.word("unit", Key.Kind.UNIT, "", "its unit, where it has one")),
                new Field(
                        "missing",
                        Key.word("missing", Key.Kind.TEXT, "", "value that means missing; several separated by ;")));
    }

    /** The usual columns first, then those that few need, then those for each state and class. */
    private static List<Field> sorted(List<Key> columns) {
        List<Field> fields = new ArrayList<>();
        for (int rank = 0; rank <= 2; rank++) {
            for (Key key : columns) {
                if (rank == (isRepeated(key.path()) ? 2 : RARE.contains(key.path()) ? 1 : 0)) {
                    fields.add(new Field(key.path(), key));
                }
            }
        }
        return fields;
    }

    /** Whether there is one such column for each flow state or particle class. */
    static boolean isRepeated(String column) {
        return repeated(column).isPresent();
    }

    /** STATE or CLASS where the column's name ends in it. */
    static Optional<String> repeated(String column) {
        return List.of(TableList.STATE, TableList.CLASS).stream()
                .filter(word -> column.endsWith("_" + word))
                .findFirst();
    }
}
