// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.stream.Collectors;
import org.silverwake.cli.scenario.WaterBodyPlan;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.place.WaterPolygons;

/** Reads the scenario's polygons of still waters and wetlands. */
final class PolygonLayer {
    private PolygonLayer() {}

    /**
     * Reads.
     *
     * @throws GeoDataException with a line for each problem, each with its place in the scenario
     */
    static WaterPolygons read(WaterBodyPlan.WaterPolygons polygons) {
        WaterBodyPlan.WaterPolygons.Columns columns = polygons.columns();
        try {
            return WaterPolygons.read(
                    new LayerSource(polygons.file(), polygons.layer(), polygons.crs(), polygons.filter(), columns.id()),
                    new WaterPolygons.Columns(
                            columns.name(), columns.depth(), columns.toMeters(), columns.missing(), columns.kind()));
        } catch (GeoDataException e) {
            throw new GeoDataException(
                    e.getMessage()
                            .lines()
                            .map(line ->
                                    polygons.where() + ": " + line.replace("rivers.crs", "water-bodies.polygons.crs"))
                            .collect(Collectors.joining("\n")),
                    e);
        }
    }
}
