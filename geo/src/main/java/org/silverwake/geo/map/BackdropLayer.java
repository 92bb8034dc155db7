// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.geotools.api.feature.simple.SimpleFeature;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.VectorLayer;

/**
 * A layer that people know the land by, to be drawn under the rivers: points, lines or areas in any mixture, WGS 84, longitude first.
 * Shapes far from the basin are left out. Immutable.
 */
public final class BackdropLayer {
    /** How far around the basin shapes are kept, in its longer sides [-]: more than a map's view reaches. */
    private static final double AROUND = 1.5;

    private static final String CRS = "rivers.crs";

    /** What a layer is of, which gives its look. */
    public enum Kind {
        ROADS,
        LAKES,
        SETTLEMENTS,
        FOREST,
        BORDERS,
        OTHER
    }

    /**
     * How it is drawn.
     *
     * @param kind what it is of
     * @param label column with names to be written
     * @param color in place of the kind's, as #rrggbb
     * @param width of lines on A4 paper [points], in place of the kind's
     * @param style in place of kind, color and width
     */
    public record Look(
            Kind kind,
            Optional<String> label,
            Optional<String> color,
            OptionalDouble width,
            Optional<OwnStyle> style) {}

    /** A shape with its name, "" where it has none. */
    record Item(Geometry shape, String name) {}

    private final String title;
    private final Look look;
    private final List<Item> items;
    private final List<SimpleFeature> features;
    private final List<String> warnings;
    private final Optional<String> missingLabel;
    private final List<String> missingColumns;

    private BackdropLayer(
            String title,
            Look look,
            List<Item> items,
            List<SimpleFeature> features,
            List<String> warnings,
            Optional<String> missingLabel,
            List<String> missingColumns) {
        this.title = title;
        this.features = List.copyOf(features);
        this.missingColumns = List.copyOf(missingColumns);
        this.look = look;
        this.items = List.copyOf(items);
        this.warnings = List.copyOf(warnings);
        this.missingLabel = missingLabel;
    }

    /**
     * Reads the shapes near a river layer.
     *
     * @param rivers the layer of rivers, by which shapes far away are left out
     * @throws GeoDataException if the layer cannot be read; one line
     */
    public static BackdropLayer read(LayerSource source, Look look, VectorLayer rivers) {
        return read(source, look, Optional.of(around(rivers)));
    }

    /** All of it, wherever it lies: for the small map of where the basin is. */
    public static BackdropLayer readAll(LayerSource source) {
        return read(
                source,
                new Look(Kind.BORDERS, Optional.empty(), Optional.empty(), OptionalDouble.empty(), Optional.empty()),
                Optional.empty());
    }

    private static BackdropLayer read(LayerSource source, Look look, Optional<Envelope> land) {
        VectorLayer layer;
        try {
            layer = Layers.readAlsoEmpty(source);
        } catch (GeoDataException e) {
            throw new GeoDataException(
                    e.getMessage()
                            .replace(
                                    "give " + CRS + ", as a code such as EPSG:32726 or as well-known text",
                                    "write it" + " again as GeoPackage with its system, or add its .prj file")
                            .replace("give the system they are in as " + CRS, "write the file again with its system")
                            .replace(
                                    "give the system the numbers are in as " + CRS,
                                    "write the file again with its" + " system"),
                    e);
        }
        List<String> warnings = new ArrayList<>(layer.warnings());
        List<Item> items = new ArrayList<>();
        MapFeatures.Builder styled = MapFeatures.Builder.ofColumns(Geometry.class, layer.columns());
        Broken broken = new Broken();
        for (LayerFeature feature : layer.features()) {
            Geometry shape = feature.geometry();
            boolean near = shape != null
                    && !shape.isEmpty()
                    && (land.isEmpty() || land.get().intersects(shape.getEnvelopeInternal()));
            if (near) {
                broken.look(feature);
                items.add(new Item(shape, name(feature, look)));
                look.style().ifPresent(style -> styled.add(shape, feature.attributes()));
            }
        }
        broken.warning(layer).ifPresent(warnings::add);
        if (items.isEmpty()) {
            warnings.add(layer.label()
                    + (layer.features().isEmpty()
                            ? ": layer \"" + layer.name() + "\" has no features"
                            : ": none of its " + layer.features().size() + " shapes lies near the rivers")
                    + "; nothing of it is drawn under maps");
        }
        List<String> missing =
                look.style().map(style -> style.unknown(layer.columns())).orElse(List.of());
        return new BackdropLayer(
                layer.name(),
                look,
                items,
                styled.all(),
                warnings,
                missingLabel(layer, look),
                layer.features().isEmpty()
                        ? List.of()
                        : missing.stream()
                                .map(column -> missingColumn(layer, column, "take it out of the style"))
                                .toList());
    }

    private static Optional<String> missingLabel(VectorLayer layer, Look look) {
        return look.label()
                .filter(column ->
                        !layer.features().isEmpty() && !layer.columns().contains(column))
                .map(column -> missingColumn(layer, column, "leave label out"));
    }

    private static String missingColumn(VectorLayer layer, String column, String whatToDo) {
        return layer.label() + ": there is no column " + column
                + (layer.columns().isEmpty()
                        ? ", nor any other; " + whatToDo
                        : "; its columns are " + String.join(", ", layer.columns()));
    }

    private static Envelope around(VectorLayer rivers) {
        Envelope box = new Envelope();
        for (LayerFeature feature : rivers.features()) {
            if (feature.geometry() != null) {
                box.expandToInclude(feature.geometry().getEnvelopeInternal());
            }
        }
        double latitude = box.isNull() ? 0 : Math.min(80, Math.abs(box.centre().y));
        double side = Math.max(box.getHeight(), box.getWidth() * Math.cos(Math.toRadians(latitude)));
        box.expandBy(AROUND * side / Math.cos(Math.toRadians(latitude)), AROUND * side);
        return box;
    }

    private static String name(LayerFeature feature, Look look) {
        return look.label()
                .map(column -> feature.attributes().get(column))
                .map(value -> value.toString().strip())
                .orElse("");
    }

    /** Counts areas whose edges cross or touch themselves. */
    private static final class Broken {
        private int count;
        private String first = "";

        void look(LayerFeature feature) {
            if (feature.geometry().getDimension() == 2 && !feature.geometry().isValid()) {
                first = count++ == 0 ? feature.id() : first;
            }
        }

        Optional<String> warning(VectorLayer layer) {
            return count == 0
                    ? Optional.empty()
                    : Optional.of(layer.label() + ": the edges of " + count + (count == 1 ? " area" : " areas")
                            + " cross themselves (" + (count == 1 ? "" : "the first is ") + "feature " + first
                            + "); drawn as well as can be, correct the layer where the map looks wrong");
        }
    }

    /** The layer's name in its file. */
    String title() {
        return title;
    }

    Look look() {
        return look;
    }

    List<Item> items() {
        return items;
    }

    /** The shapes with their columns, where a style draws them. */
    List<SimpleFeature> features() {
        return features;
    }

    /** What was passed over or looks wrong, one line each. */
    public List<String> warnings() {
        return warnings;
    }

    /** That the layer has no such column as shall be written, one line; empty where it has. */
    public Optional<String> missingLabel() {
        return missingLabel;
    }

    /** Columns that the style asks for and the layer does not have, one line each. */
    public List<String> missingColumns() {
        return missingColumns;
    }
}
