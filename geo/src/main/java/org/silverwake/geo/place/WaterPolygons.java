// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.index.strtree.STRtree;
import org.locationtech.jts.linearref.LengthIndexedLine;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.ReachCutting;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.crs.Geodesy;
import org.silverwake.geo.crs.MetricPlane;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.NumberText;
import org.silverwake.geo.layer.VectorLayer;

/**
 * Polygons of lakes, ponds, reservoirs and wetlands: what is known of each, and which reaches run through it. Lines are cut
 * where they cross an edge; a reach lies in the polygon that holds more than half of it. Compared in the plane of {@link
 * MetricPlane}, where edges are straight; areas are geodesic.
 */
public final class WaterPolygons {
    private static final double HALF = 0.5;
    /** Where drawing alone puts a line's end a little in or out, nothing is cut off [m]. */
    private static final double SHORTEST = 20;

    private static final int NONE = -1;

    private final List<Polygon> polygons = new ArrayList<>();
    private final List<String> warnings;

    private WaterPolygons(List<String> warnings) {
        this.warnings = new ArrayList<>(warnings);
    }

    /**
     * Which column holds what.
     *
     * @param name of the water's name
     * @param depth of its mean depth
     * @param toMeters factor that turns depths into meters [-]
     * @param missing values that mean no depth
     * @param kind of its kind
     */
    public record Columns(
            Optional<String> name,
            Optional<String> depth,
            double toMeters,
            List<String> missing,
            Optional<String> kind) {
        /** Copies the list. */
        public Columns {
            missing = List.copyOf(missing);
        }
    }

    /**
     * One polygon.
     *
     * @param id of the feature
     * @param name its name; the id where it has none
     * @param area geodesic [m2]
     * @param depth mean depth [m], above 0; empty where it is not told
     * @param kind as written; "" where it is not told
     * @param shape WGS 84, longitude first [degrees]
     */
    public record Polygon(String id, String name, double area, OptionalDouble depth, String kind, Geometry shape) {}

    /**
     * Reads the layer.
     *
     * @throws GeoDataException if it cannot be read, holds something else than polygons, or depths that are none; one line
     *     for each feature
     */
    public static WaterPolygons read(LayerSource source, Columns columns) {
        VectorLayer layer = Layers.read(source);
        List<String> problems = new ArrayList<>();
        for (Optional<String> column : List.of(columns.name(), columns.depth(), columns.kind())) {
            if (column.isPresent() && !layer.columns().contains(column.get())) {
                problems.add(layer.label() + ": there is no column " + column.get() + "; its columns are "
                        + String.join(", ", layer.columns()));
            }
        }
        WaterPolygons result = new WaterPolygons(layer.warnings());
        for (LayerFeature feature : layer.features()) {
            Geometry shape = feature.geometry();
            String where = layer.label() + ": feature " + feature.id();
            if (shape == null || shape.isEmpty()) {
                result.warnings.add(where + " has no shape and is passed over");
            } else if (shape.getDimension() < 2) {
                problems.add(where + " is a " + shape.getGeometryType() + "; give a layer of polygons");
            } else {
                result.polygons.add(new Polygon(
                        feature.id(),
                        text(feature, columns.name()).orElse(feature.id()),
                        Geodesy.area(shape),
                        depth(where, feature, columns, problems),
                        text(feature, columns.kind()).orElse(""),
                        shape));
            }
        }
        if (!problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", problems));
        }
        return result;
    }

    private static Optional<String> text(LayerFeature feature, Optional<String> column) {
        return column.map(name -> feature.attributes().get(name))
                .map(value -> value.toString().strip())
                .filter(text -> !text.isEmpty());
    }

    private static OptionalDouble depth(String where, LayerFeature feature, Columns columns, List<String> problems) {
        Optional<String> written =
                text(feature, columns.depth()).filter(text -> !NumberText.isMissing(text, columns.missing()));
        if (written.isEmpty()) {
            return OptionalDouble.empty();
        }
        OptionalDouble number = NumberText.parse(written.get());
        if (number.isEmpty() || !(number.getAsDouble() > 0) || Double.isInfinite(number.getAsDouble())) {
            problems.add(where + ", column " + columns.depth().orElseThrow() + ": \"" + written.get()
                    + "\" is not a depth; give a number above 0, leave it blank, or list it under missing");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(number.getAsDouble() * columns.toMeters());
    }

    /** All polygons, in the order of the layer. */
    public List<Polygon> polygons() {
        return List.copyOf(polygons);
    }

    /** What the reader had to pass over, one line each. */
    public List<String> warnings() {
        return List.copyOf(warnings);
    }

    /** The map with its lines cut at the edges of the polygons. */
    public RiverMap cut(RiverMap map) {
        Search search = new Search(map);
        List<List<Double>> cuts = new ArrayList<>();
        for (int i = 0; i < map.reachCount(); i++) {
            cuts.add(search.crossings(i));
        }
        return ReachCutting.cut(map, cuts);
    }

    /**
     * The polygon of each reach of a map, by index; -1 where it lies in none.
     *
     * @throws GeoDataException where polygons lie on one another and a reach in several, one line for each pair
     */
    public int[] holding(RiverMap map) {
        Search search = new Search(map);
        int[] holding = new int[map.reachCount()];
        TreeSet<String> problems = new TreeSet<>();
        for (int i = 0; i < holding.length; i++) {
            List<Integer> inside = search.inside(i);
            holding[i] = inside.isEmpty() ? NONE : inside.get(0);
            for (int k : inside.subList(Math.min(1, inside.size()), inside.size())) {
                problems.add("polygons " + polygons.get(inside.get(0)).name() + " and "
                        + polygons.get(k).name() + " lie on one another, and line "
                        + map.reach(i).part().featureId()
                        + " runs through both; correct one of them, or leave it out by a filter");
            }
        }
        if (!problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", problems));
        }
        return holding;
    }

    /** Lines and polygons in one plane. */
    private final class Search {
        private final RiverMap map;
        private final MetricPlane plane;
        private final List<Geometry> shapes = new ArrayList<>();
        private final STRtree tree = new STRtree();

        Search(RiverMap map) {
            this.map = map;
            this.plane = MetricPlane.around(
                    map.reaches().stream().map(RiverMap.Reach::line).toList());
            for (int k = 0; k < polygons.size(); k++) {
                shapes.add(GeometryFixer.fix(plane.toPlane(polygons.get(k).shape())));
                tree.insert(shapes.get(k).getEnvelopeInternal(), k);
            }
        }

        private List<Integer> near(Geometry line) {
            List<Integer> near = new ArrayList<>();
            for (Object found : tree.query(line.getEnvelopeInternal())) {
                near.add((Integer) found);
            }
            near.sort(null);
            return near;
        }

        List<Integer> inside(int reach) {
            Geometry line = plane.toPlane(map.reach(reach).line());
            return near(line).stream()
                    .filter(k -> line.getLength() > 0
                            && shapes.get(k).intersection(line).getLength() > HALF * line.getLength())
                    .toList();
        }

        /** Chainages at which a reach crosses edges [m], none nearer than {@link #SHORTEST} to its ends or to one another. */
        List<Double> crossings(int reach) {
            Geometry line = plane.toPlane(map.reach(reach).line());
            LengthIndexedLine along = new LengthIndexedLine(line);
            double length = map.reach(reach).lengthMeters();
            TreeSet<Double> found = new TreeSet<>();
            for (int k : near(line)) {
                for (Coordinate at :
                        line.intersection(shapes.get(k).getBoundary()).getCoordinates()) {
                    found.add(along.indexOf(at) / line.getLength() * length);
                }
            }
            List<Double> kept = new ArrayList<>();
            double last = 0;
            for (double at : found) {
                if (at - last >= SHORTEST && length - at >= SHORTEST) {
                    kept.add(at);
                    last = at;
                }
            }
            return kept;
        }
    }
}
