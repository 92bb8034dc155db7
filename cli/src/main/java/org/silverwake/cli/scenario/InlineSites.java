// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.silverwake.model.quantity.DecimalMark;

/** Sites that stand in the scenario file itself, under {@code sites.more}, by name: read as one more table of sites. */
final class InlineSites {
    static final String PATTERN = "sites.more.*.";

    /** Keys of one site: columns of the table that need no flow state or class in their name. */
    static final List<String> KEYS = Stream.of(
                    Stream.of("group"),
                    PositionCells.COLUMNS.stream().map(column -> column.replace('_', '-')),
                    Stream.of(
                            "path",
                            "release",
                            "tailings",
                            "content",
                            "effluent",
                            "concentration",
                            "cyanide",
                            "cyanide-concentration",
                            "exchangeable-share",
                            "share-droplets",
                            "share-complex",
                            "share-elemental",
                            "share-methyl",
                            "water",
                            "outfall",
                            "river",
                            "note"))
            .flatMap(keys -> keys)
            .filter(key -> !key.endsWith("-unit"))
            .toList();

    private InlineSites() {}

    /** The sites as a table; empty where there are none. */
    static Optional<Table> table(ScenarioValue more) {
        Set<String> columns = new LinkedHashSet<>(List.of("name", "path"));
        List<Table.Line> rows = new ArrayList<>();
        List<String> places = new ArrayList<>();
        for (String name : more.names()) {
            ScenarioValue site = more.at(name);
            Map<String, String> cells = new LinkedHashMap<>(Map.of("name", name));
            for (String key : KEYS) {
                site.at(key).text().ifPresent(text -> cells.put(Table.columnName(key), text));
            }
            columns.addAll(cells.keySet());
            places.add(site.place());
            rows.add(new Table.Line(places.size(), cells));
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Table(new Places(List.copyOf(places)), columns, rows, DecimalMark.POINT, more.units()));
    }

    /** Each site has the place of its name. */
    private record Places(List<String> rows) implements TablePlaces {
        @Override
        public String row(long line) {
            return rows.get((int) line - 1);
        }

        @Override
        public String cell(long line, String column) {
            return row(line) + " " + column;
        }

        @Override
        public String heading(String column) {
            return cell(1, column);
        }
    }
}
