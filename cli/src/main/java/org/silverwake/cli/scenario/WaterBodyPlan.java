// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.model.water.ReachKind;

/** Still waters and wetlands, by a table and by polygons. */
public record WaterBodyPlan(List<WaterBody> table, Optional<WaterPolygons> polygons) {
    /** Copies the list. */
    public WaterBodyPlan {
        table = List.copyOf(table);
    }

    /** A row of that table: kind, area [m2] and mean depth [m], each where it is given. */
    public record WaterBody(
            String where, String name, Optional<ReachKind> kind, OptionalDouble area, OptionalDouble depth) {}

    /** A layer of polygons and how to read it. */
    public record WaterPolygons(
            String where,
            Path file,
            Optional<String> layer,
            Optional<String> crs,
            Optional<String> filter,
            Columns columns) {
        /** Its columns; depths are multiplied by {@code toMeters}. */
        public record Columns(
                Optional<String> id,
                Optional<String> name,
                Optional<String> kind,
                Optional<String> depth,
                double toMeters,
                List<String> missing) {
            /** Copies the list. */
            public Columns {
                missing = List.copyOf(missing);
            }
        }
    }
}
