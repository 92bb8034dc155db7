// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.silverwake.geo.assembly.ReachPart;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.crs.Geodesy;
import org.silverwake.geo.crs.LayerCrs;

/** A small raster with rivers drawn in its columns and rows; 0, 0 is the center of the first cell. */
final class Land {
    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final RasterFile raster;
    private final LayerCrs crs;
    private final List<RiverMap.Reach> reaches = new ArrayList<>();
    private final Map<String, Integer> nodes = new HashMap<>();

    private Land(RasterFile raster) {
        this.raster = raster;
        this.crs = LayerCrs.of("EPSG:" + raster.code());
    }

    /** Cells of 100 m in UTM zone 21 south, where its scale is 0.9996 along the middle. */
    static Land meters(int columns, int rows) {
        return new Land(new RasterFile(columns, rows, 32721, 500_000 - 50.0 * columns, 8_000_000, 100));
    }

    /** Cells of 0.01 degrees from 40 degrees north southward. */
    static Land degrees(int columns, int rows) {
        return new Land(new RasterFile(columns, rows, 4326, 10, 40, 0.01));
    }

    /** A reach from a node to another, by columns and rows in turn. */
    Land reach(String from, String to, double... places) {
        Coordinate[] points = new Coordinate[places.length / 2];
        for (int k = 0; k < points.length; k++) {
            double[] lonLat = crs.toLonLat(
                    raster.west() + (places[2 * k] + 0.5) * raster.cell(),
                    raster.north() - (places[2 * k + 1] + 0.5) * raster.cell());
            points[k] = new Coordinate(lonLat[0], lonLat[1]);
        }
        LineString line = FACTORY.createLineString(points);
        int index = reaches.size();
        reaches.add(new RiverMap.Reach(
                "r" + index,
                new ReachPart("r" + index, index, 0, 0, Geodesy.length(line), false),
                node(from),
                node(to),
                Geodesy.length(line),
                line,
                Optional.empty(),
                Map.of(),
                Map.of()));
        return this;
    }

    private int node(String name) {
        return nodes.computeIfAbsent(name, k -> nodes.size());
    }

    RiverMap map() {
        return new RiverMap(reaches, nodes.size(), List.of());
    }

    Path write(Path file, RasterFile.Heights heights) {
        return raster.write(file, heights);
    }

    ElevationModel model(Path folder, RasterFile.Heights heights) {
        return ElevationModel.read(raster.write(folder.resolve("land.tif"), heights), 1);
    }

    /** The areas of the raster with these heights. */
    TerrainAreas areas(Path folder, RasterFile.Heights heights) {
        return TerrainAreas.of(map(), model(folder, heights));
    }
}
