// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.silverwake.cli.scenario.ScenarioInput.Column;
import org.silverwake.cli.scenario.ScenarioInput.Elevation;
import org.silverwake.cli.scenario.ScenarioInput.Outlet;
import org.silverwake.cli.scenario.ScenarioInput.Position;
import org.silverwake.cli.scenario.ScenarioInput.Rivers;
import org.silverwake.model.input.Settings;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.water.ReachKind;

/** The river layer and how to read it. */
final class RiversSection {
    private static final Set<String> OF_A_COLUMN = Set.of("column", "unit", "missing");

    private RiversSection() {}

    static Rivers read(ScenarioValue rivers, Sources sources, Settings settings, StateNames states) {
        if (!rivers.at("file").isPresent()) {
            rivers.at("file").missing();
        }
        return new Rivers(
                sources.find("rivers", rivers.at("file")).orElse(Path.of("")),
                rivers.at("layer").text(),
                rivers.at("crs").text(),
                rivers.at("filter").text(),
                rivers.at("id").text(),
                rivers.at("name").text(),
                columns(rivers.at("columns"), states),
                elevation(rivers.at("elevation"), sources),
                settings.value("rivers.snap-tolerance"),
                outlets(rivers.at("outlets")),
                orientBy(rivers.at("orient-by")),
                kinds(rivers));
    }

    /** What the layer's own words for kinds of reach mean. */
    private static Map<String, ReachKind> kinds(ScenarioValue rivers) {
        ScenarioValue section = rivers.at("kinds");
        Map<String, ReachKind> kinds = new LinkedHashMap<>();
        for (String word : section.names()) {
            ScenarioValue value = section.at(word);
            Optional<String> text = value.text();
            Optional<ReachKind> kind = text.flatMap(ReachKind::find);
            kind.ifPresent(found -> kinds.put(word, found));
            if (text.isPresent() && kind.isEmpty()) {
                value.problem("\"" + text.get() + "\" is not known; give "
                        + String.join(" or ", KeyTable.require("rivers.kinds.*").choices()));
            }
        }
        if (!section.names().isEmpty() && !rivers.atPath("columns.kind").isPresent()) {
            section.problem("says what values mean, but rivers.columns.kind, the column that holds them, is missing");
        }
        return kinds;
    }

    private static List<Column> columns(ScenarioValue section, StateNames states) {
        List<Column> columns = new ArrayList<>();
        for (String key : section.names()) {
            ScenarioValue value = section.at(key);
            Dimension dimension = KeyTable.riverColumns().get(key);
            if (dimension == null || !value.isMap()) {
                continue; // noted already
            }
            if (KeyTable.BY_STATE.contains(key) && Collections.disjoint(value.names(), OF_A_COLUMN)) {
                states.checkNames(value);
                for (String state : value.names()) {
                    columns.add(column(key + "." + state, value.at(state), dimension));
                }
            } else {
                columns.add(column(key, value, dimension));
            }
        }
        return columns;
    }

    private static Column column(String key, ScenarioValue value, Dimension dimension) {
        double factor = KeyTable.OF_TEXT.contains(key) ? 1 : factor(value.at("unit"), dimension);
        return new Column(
                key,
                value.at("column").requireText(),
                factor,
                value.at("missing").texts());
    }

    /** Factor of the unit; those that are dimensionless may leave it out. */
    static double factor(ScenarioValue unit, Dimension dimension) {
        if (!unit.isPresent()) {
            if (!dimension.isBare()) {
                unit.problem("is missing; give one of " + dimension.accepted());
            }
            return 1;
        }
        try {
            Optional<String> text = unit.text();
            return text.isPresent() ? dimension.requireUnit(text.get()).toSi() : 1;
        } catch (IllegalArgumentException e) {
            unit.problem(e.getMessage());
            return 1;
        }
    }

    private static Optional<Elevation> elevation(ScenarioValue section, Sources sources) {
        if (!section.isPresent()) {
            return Optional.empty();
        }
        if (!section.at("file").isPresent()) {
            section.at("file").missing();
        }
        Optional<Path> file = sources.find("elevation", section.at("file"));
        double factor = factor(section.at("unit"), Dimension.LENGTH);
        boolean drainageArea = section.at("drainage-area").flag(false);
        return file.map(f -> new Elevation(f, factor, drainageArea));
    }

    private static List<Outlet> outlets(ScenarioValue section) {
        List<Outlet> outlets = new ArrayList<>();
        for (ScenarioValue item : section.items()) {
            if (item.isMap()) {
                outlets.add(outlet(item));
            } else {
                item.text()
                        .ifPresent(id ->
                                outlets.add(new Outlet(Optional.of(id), Optional.empty(), OptionalDouble.empty())));
            }
        }
        return outlets;
    }

    private static Outlet outlet(ScenarioValue item) {
        Optional<Position> position = position(item);
        if (item.at("feature").isPresent() == position.isPresent()) {
            item.problem("is no outlet; give feature, or longitude and latitude");
        }
        return new Outlet(
                item.at("feature").text(), position, item.at("basin-area").quantity());
    }

    private static Optional<Position> position(ScenarioValue item) {
        TableRow row = item.row(PositionCells.KEYS.stream().map(Key::path).toList());
        for (String half : List.of("longitude", "latitude")) {
            if (item.at("longitude").isPresent() != item.at("latitude").isPresent()
                    && !item.at(half).isPresent()) {
                item.at(half).missing();
                return Optional.of(new Position(0, 0, false));
            }
        }
        return PositionCells.COLUMNS.stream().anyMatch(row::has) ? Optional.of(row.position()) : Optional.empty();
    }

    private static List<String> orientBy(ScenarioValue section) {
        if (!section.isPresent()) {
            return KeyTable.require("rivers.orient-by").choices();
        }
        List<String> ways = new ArrayList<>();
        for (ScenarioValue item : section.items()) {
            item.choiceOf("rivers.orient-by").ifPresent(ways::add);
        }
        return ways;
    }
}
