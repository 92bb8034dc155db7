// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.schema.FailsafeSchema;

/** Turns a scenario.yaml with its CSV tables into the contents of a workbook, so that both doors can be compared. */
final class TextDoor {
    private static final List<String> TABLES =
            List.of("sites", "places", "gauges", "abstractions", "field-notes", "practices");

    private final Path folder;
    private final WorkbookContents.Builder contents = WorkbookContents.builder();

    private TextDoor(Path folder) {
        this.folder = folder;
    }

    static WorkbookContents contents(Path folder) throws IOException {
        TextDoor door = new TextDoor(folder);
        Load load =
                new Load(LoadSettings.builder().setSchema(new FailsafeSchema()).build());
        Object root = load.loadFromString(Files.readString(folder.resolve("scenario.yaml")));
        door.put("", root);
        return door.contents.build();
    }

    private void put(String path, Object value) throws IOException {
        if (value instanceof Map<?, ?> map && path.equals("sites.more")) {
            for (Map.Entry<?, ?> site : map.entrySet()) {
                Map<String, String> row =
                        new LinkedHashMap<>(Map.of("name", site.getKey().toString()));
                ((Map<?, ?>) site.getValue())
                        .forEach((k, v) -> row.put(k.toString().replace('-', '_'), v.toString()));
                contents.addRow("sites", row);
            }
        } else if (value instanceof Map<?, ?> map) {
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                put(path.isEmpty() ? entry.getKey().toString() : path + "." + entry.getKey(), entry.getValue());
            }
        } else if (value instanceof List<?> list) {
            list(path, list);
        } else if (path.endsWith(".file") && TABLES.contains(path.replace(".file", ""))) {
            rows(path.replace(".file", ""), folder.resolve(value.toString()));
        } else {
            contents.put(path, value.toString());
        }
    }

    private void list(String path, List<?> list) {
        boolean rows = path.equals("rivers.outlets") || list.get(0) instanceof Map;
        if (!rows) {
            contents.put(path, list.stream().map(Object::toString).collect(Collectors.joining("; ")));
            return;
        }
        for (Object item : list) {
            Map<String, String> row = new LinkedHashMap<>();
            if (item instanceof Map<?, ?> map) {
                map.forEach((k, v) -> row.put(k.toString(), v.toString()));
            } else {
                row.put("feature", item.toString());
            }
            contents.addRow(path, row);
        }
    }

    /** A plain table: no field of it holds a comma or a quote. */
    private void rows(String table, Path file) throws IOException {
        Iterator<String> lines = Files.readAllLines(file).iterator();
        String[] header = lines.next().split(",");
        while (lines.hasNext()) {
            String[] cells = lines.next().split(",");
            Map<String, String> row = new LinkedHashMap<>();
            for (int i = 0; i < cells.length; i++) {
                if (!cells[i].isBlank()) {
                    row.put(header[i], cells[i]);
                }
            }
            contents.addRow(table, row);
        }
    }
}
