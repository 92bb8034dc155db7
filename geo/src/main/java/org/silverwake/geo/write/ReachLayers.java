// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.silverwake.geo.assembly.RiverMap;

/** Writes results on reaches as a GeoPackage; the way in for callers that know no geometry. */
public final class ReachLayers {
    private ReachLayers() {}

    /**
     * Writes a file, replacing one that is there.
     *
     * @param file where; its folder must exist
     * @param map the network the layers' reach indices are of
     * @param layers one or more, names and titles all different
     * @param date stands as the date of change in the file
     * @throws org.silverwake.geo.GeoDataException if the file cannot be written
     * @throws IllegalArgumentException if a row does not fit its columns
     */
    public static void write(Path file, RiverMap map, List<ReachLayer> layers, LocalDate date) {
        GeoPackageWriter.write(
                file, layers.stream().map(layer -> withLines(map, layer)).toList(), date);
    }

    private static Layer withLines(RiverMap map, ReachLayer layer) {
        List<Row> rows = new ArrayList<>(layer.rows().size());
        for (int k = 0; k < layer.rows().size(); k++) {
            rows.add(new Row(
                    map.reach(layer.reaches().get(k)).line(), layer.rows().get(k)));
        }
        return new Layer(
                layer.name(),
                layer.title(),
                Layer.Shape.LINESTRING,
                layer.columns(),
                rows,
                layer.styles().stream()
                        .map(style -> new LayerStyle(style.name(), SldWriter.lines(layer.name(), style)))
                        .toList());
    }
}
