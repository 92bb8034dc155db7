// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.crs.MetricPlane;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.VectorLayer;

/**
 * Which reaches lie in the polygons of a layer, all polygons taken together: those of which more than half the length lies
 * within. Compared in the plane of {@link MetricPlane}; edges of polygons are straight there.
 *
 * @param reaches indices in the map, rising
 * @param warnings what the reader had to pass over, one line each
 */
public record ReachesInside(List<Integer> reaches, List<String> warnings) {
    private static final double HALF = 0.5;

    /** Copies the lists. */
    public ReachesInside {
        reaches = List.copyOf(reaches);
        warnings = List.copyOf(warnings);
    }

    /**
     * Reads the polygons and finds the reaches.
     *
     * @throws GeoDataException if the layer cannot be read or holds something else than polygons; one line for each feature
     */
    public static ReachesInside find(RiverMap map, LayerSource source) {
        VectorLayer layer = Layers.read(source);
        List<String> problems = new ArrayList<>();
        List<String> warnings = new ArrayList<>(layer.warnings());
        MetricPlane plane = MetricPlane.around(
                map.reaches().stream().map(RiverMap.Reach::line).toList());
        List<Geometry> polygons = new ArrayList<>();
        for (LayerFeature feature : layer.features()) {
            Geometry shape = feature.geometry();
            String name = layer.label() + ": feature " + feature.id();
            if (shape == null || shape.isEmpty()) {
                warnings.add(name + " has no shape and is passed over");
            } else if (shape.getDimension() < 2) {
                problems.add(name + " is a " + shape.getGeometryType() + "; give a layer of polygons");
            } else {
                polygons.add(GeometryFixer.fix(plane.toPlane(shape)));
            }
        }
        if (!problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", problems));
        }
        return new ReachesInside(inside(map, plane, polygons), warnings);
    }

    private static List<Integer> inside(RiverMap map, MetricPlane plane, List<Geometry> polygons) {
        List<Integer> inside = new ArrayList<>();
        if (polygons.isEmpty()) {
            return inside;
        }
        PreparedGeometry area = PreparedGeometryFactory.prepare(UnaryUnionOp.union(polygons));
        for (int i = 0; i < map.reachCount(); i++) {
            Geometry line = plane.toPlane(map.reach(i).line());
            if (area.covers(line) || area.intersects(line) && share(area.getGeometry(), line) > HALF) {
                inside.add(i);
            }
        }
        return inside;
    }

    /** Part of a line's length that lies in an area [-]. */
    private static double share(Geometry area, Geometry line) {
        return line.getLength() > 0 ? area.intersection(line).getLength() / line.getLength() : 0;
    }
}
