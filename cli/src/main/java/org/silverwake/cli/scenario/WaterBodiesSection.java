// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import static org.silverwake.cli.scenario.Key.quantity;
import static org.silverwake.cli.scenario.Key.word;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.WaterBodyPlan.WaterBody;
import org.silverwake.cli.scenario.WaterBodyPlan.WaterPolygons;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.water.ReachKind;

/** Still waters and wetlands: a table and a layer of polygons; whether rivers run through them is seen once their layer is read. */
final class WaterBodiesSection {
    /** Name of the table, its sheet and its section. */
    static final String TABLE = "water-bodies";

    private static final String NONE = "none";
    private static final String POLYGONS = TABLE + ".polygons.";
    private static final List<String> KINDS = List.of(ReachKind.STILL_WATER.word(), ReachKind.WETLAND.word());

    private static final Key AREA =
            quantity("area", Dimension.AREA, "km2", 1e-5, 4e5, "", "area of its surface; of the polygon if blank");
    private static final Key DEPTH = quantity(
            "mean_depth",
            Dimension.LENGTH,
            "m",
            0.01,
            1700,
            "",
            "mean depth: volume over area; of the polygon or the river layer if blank");

    /** Columns of the table. */
    static final List<Key> KEYS = List.of(
            word(
                    "name",
                    Kind.TEXT,
                    "",
                    "required, each once: name of a polygon, or as in column water-body of the river layer, or a feature id"),
            Key.choice("kind", KINDS, "", "as told elsewhere, else still water"),
            AREA,
            DEPTH,
            word("note", Kind.TEXT, "", "free"));

    private WaterBodiesSection() {}

    static void keys(List<Key> keys) {
        keys.add(Key.choice(
                "rivers.kinds.*",
                java.util.Arrays.stream(ReachKind.values()).map(ReachKind::word).toList(),
                "the kinds' own words",
                "what a value of column kind means, such as `artificial path: still water`"));
        keys.add(word(TABLE + ".file", Kind.FILE, NONE, "table of still waters and wetlands: area and mean depth"));
        keys.add(word(
                POLYGONS + "file",
                Kind.FILE,
                "required",
                "layer of polygons of still waters and wetlands; lines that run through one are one body of water"));
        keys.add(word(POLYGONS + "layer", Kind.TEXT, "the only one", "layer of the file"));
        keys.add(word(POLYGONS + "crs", Kind.TEXT, "as in the file", "coordinate system where the file has none"));
        keys.add(word(POLYGONS + "filter", Kind.TEXT, NONE, "ECQL filter to choose polygons"));
        keys.add(word(POLYGONS + "id", Kind.TEXT, "the file's feature id", "column with the feature id"));
        keys.add(word(POLYGONS + "name", Kind.TEXT, "the feature id", "column with the water's name"));
        keys.add(word(
                POLYGONS + "kind", Kind.TEXT, "still water", "column with its kind, in the words of rivers.kinds"));
        keys.add(word(POLYGONS + "depth.column", Kind.TEXT, "from the table", "column with the mean depth"));
        keys.add(word(POLYGONS + "depth.unit", Kind.UNIT, "required", "its unit, such as m or ft"));
        keys.add(word(POLYGONS + "depth.missing", Kind.TEXT, NONE, "value or list of values that mean missing"));
    }

    static WaterBodyPlan read(ScenarioValue section, Sources sources, Problems problems) {
        List<WaterBody> bodies = sources.table(TABLE, section.at("file"))
                .map(table -> table(table, problems))
                .orElse(List.of());
        return new WaterBodyPlan(bodies, polygons(section.at("polygons"), sources));
    }

    private static Optional<WaterPolygons> polygons(ScenarioValue section, Sources sources) {
        if (!section.isPresent()) {
            return Optional.empty();
        }
        if (!section.at("file").isPresent()) {
            section.at("file").missing();
        }
        Optional<String> depth = section.at("depth").at("column").text();
        double factor = section.at("depth").isPresent()
                ? RiversSection.factor(section.at("depth").at("unit"), Dimension.LENGTH)
                : 1;
        if (depth.isEmpty() && section.at("depth").isPresent()) {
            section.at("depth").at("column").missing();
        }
        WaterPolygons.Columns columns = new WaterPolygons.Columns(
                section.at("id").text(),
                section.at("name").text(),
                section.at("kind").text(),
                depth,
                factor,
                section.at("depth").at("missing").texts());
        Optional<String> layer = section.at("layer").text();
        Optional<String> crs = section.at("crs").text();
        Optional<String> filter = section.at("filter").text();
        return sources.find(TABLE, section.at("file"))
                .map(file -> new WaterPolygons(section.where(), file, layer, crs, filter, columns));
    }

    private static List<WaterBody> table(Table table, Problems problems) {
        Set<String> known = new LinkedHashSet<>();
        KEYS.forEach(key -> known.add(key.path()));
        known.addAll(List.of("area_unit", "mean_depth_unit"));
        List<WaterBody> bodies = new ArrayList<>();
        Set<String> seen = new HashSet<>();
        for (TableRow row : table.checkColumns(known, List.of("name"), problems).read(problems)) {
            bodies.add(new WaterBody(
                    row.where(),
                    row.requireName(seen),
                    kind(row),
                    row.quantity("area", AREA, "area_unit"),
                    row.quantity("mean_depth", DEPTH, "mean_depth_unit")));
        }
        return bodies;
    }

    private static Optional<ReachKind> kind(TableRow row) {
        Optional<String> written = row.text("kind");
        Optional<ReachKind> kind = written.flatMap(ReachKind::find).filter(k -> KINDS.contains(k.word()));
        if (written.isPresent() && kind.isEmpty()) {
            row.problem("kind", "\"" + written.get() + "\" is not allowed; give " + String.join(" or ", KINDS));
        }
        return kind;
    }
}
