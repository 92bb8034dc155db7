// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.crs.LayerCrs;

/**
 * Reads a layer of any supported format. What leaves is WGS 84 degrees, longitude first, whatever the file holds;
 * geometries of every type are kept, as are null shapes, so that nothing of the user's file goes missing in silence. A
 * line of one point, which the geometry model cannot hold, comes as two equal points.
 */
public final class Layers {
    /** Two names of one system may differ by the small shifts between modern datums [m]. */
    private static final double SAME_SYSTEM = 10;
    /** A system with an unknown datum shift may be replaced by one that knows it [m]. */
    private static final double SAME_BUT_DATUM = 2000;

    private Layers() {}

    /**
     * The layer a source describes.
     *
     * @throws GeoDataException if it cannot be read as described; the message is one line for the user
     */
    public static VectorLayer read(LayerSource source) {
        VectorLayer layer = readAlsoEmpty(source);
        if (layer.features().isEmpty()) {
            throw new GeoDataException(
                    source.file() + ": layer \"" + layer.name() + "\" has no features; give a layer that has some");
        }
        return layer;
    }

    /**
     * The layer a source describes, also where it has no features; its coordinate system then is WGS 84.
     *
     * @throws GeoDataException if it cannot be read as described; the message is one line for the user
     */
    public static VectorLayer readAlsoEmpty(LayerSource source) {
        Path file = source.file();
        if (!Files.isRegularFile(file)) {
            throw new GeoDataException(
                    file + ": there is no such file; check the path, which counts from the scenario's folder");
        }
        try {
            RawLayer raw = raw(source);
            if (raw.features().isEmpty()) {
                return new VectorLayer(file, raw.name(), LayerCrs.wgs84(), raw.columns(), List.of(), raw.warnings());
            }
            return finish(source, raw);
        } catch (GeoDataException e) {
            throw e.getMessage().startsWith(file.toString())
                    ? e
                    : new GeoDataException(file + ": " + e.getMessage(), e.getCause());
        } catch (IOException e) {
            throw new GeoDataException(
                    file + ": cannot be read (" + e.getMessage() + "); check that the file is whole and may be read",
                    e);
        }
    }

    private static RawLayer raw(LayerSource source) throws IOException {
        String name = String.valueOf(source.file().getFileName());
        String ending = name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
        return switch (ending) {
            case "gpkg" -> GeoPackageReader.read(source.file(), source.layer());
            case "shp", "zip" -> ShapefileReader.read(ShapefileParts.of(source.file(), source.layer()));
            case "geojson", "json" -> GeoJsonReader.read(source.file());
            case "fgb" -> FlatGeobufReader.read(source.file());
            default ->
                throw new GeoDataException("files ending in \"" + ending + "\" are not read; give a GeoPackage"
                        + " (.gpkg), a Shapefile (.shp, or a .zip that holds one), GeoJSON (.geojson, .json) or FlatGeobuf"
                        + " (.fgb)");
        };
    }

    private static VectorLayer finish(LayerSource source, RawLayer raw) {
        List<String> warnings = new ArrayList<>(raw.warnings());
        LayerCrs crs = system(source, raw, warnings);
        crs.doubt().ifPresent(warnings::add);
        Ids ids = new Ids(source.idColumn(), raw.columns());
        Optional<EcqlFilter> filter = source.filter().map(text -> new EcqlFilter(text, raw.columns()));
        List<LayerFeature> features = new ArrayList<>();
        for (int i = 0; i < raw.features().size(); i++) {
            RawLayer.Feature feature = raw.features().get(i);
            String id = ids.of(feature, i + 1);
            Map<String, Object> attributes = feature.attributes();
            if (filter.isEmpty() || filter.get().chooses(id, attributes)) {
                features.add(new LayerFeature(id, attributes, placed(feature.geometry(), crs, id)));
            }
        }
        if (features.isEmpty()) {
            throw new GeoDataException("filter \"" + source.filter().orElse("") + "\" chooses none of the "
                    + raw.features().size() + " features of layer \"" + raw.name() + "\"; check its values");
        }
        ids.warning().ifPresent(warnings::add);
        return new VectorLayer(source.file(), raw.name(), crs, raw.columns(), features, warnings);
    }

    private static Geometry placed(Geometry geometry, LayerCrs crs, String id) {
        try {
            return geometry == null ? null : crs.toLonLat(geometry);
        } catch (GeoDataException e) {
            throw new GeoDataException("feature " + id + ": " + e.getMessage(), e);
        }
    }

    private static LayerCrs system(LayerSource source, RawLayer raw, List<String> warnings) {
        Optional<LayerCrs> given = source.crs().map(text -> system("rivers.crs", text));
        if (raw.system().isPresent()) {
            return stated(raw, given, warnings);
        }
        if (given.isPresent()) {
            raw.assumed()
                    .ifPresent(usual -> warnings.add("states no coordinate system, which by its format means "
                            + usual.name() + "; read as " + given.get().name() + ", as rivers.crs says"));
            return given.get();
        }
        return raw.assumed()
                .orElseThrow(() -> new GeoDataException("layer \"" + raw.name()
                        + "\" states no coordinate system; give rivers.crs, as a code such as EPSG:32726 or as"
                        + " well-known text"));
    }

    /** The file's own system, or the user's where the file's cannot be used. */
    private static LayerCrs stated(RawLayer raw, Optional<LayerCrs> given, List<String> warnings) {
        LayerCrs own;
        try {
            own = system("the file's coordinate system", raw.system().orElseThrow());
        } catch (GeoDataException e) {
            warnings.add(e.getMessage());
            return given.orElseThrow(() -> e);
        }
        return given.isEmpty() ? own : agreed(raw, own, given.get());
    }

    private static LayerCrs system(String where, String text) {
        try {
            return LayerCrs.of(text);
        } catch (GeoDataException e) {
            throw new GeoDataException(where + ": " + e.getMessage(), e);
        }
    }

    private static LayerCrs agreed(RawLayer raw, LayerCrs own, LayerCrs given) {
        double apart = 0;
        for (RawLayer.Feature feature : raw.features()) {
            if (feature.geometry() != null && !feature.geometry().isEmpty()) {
                Coordinate c = feature.geometry().getCoordinate();
                apart = own.disagreement(given, c.x, c.y);
                break;
            }
        }
        if (apart <= SAME_SYSTEM) {
            return own;
        }
        if (own.doubt().isPresent() && given.doubt().isEmpty() && apart <= SAME_BUT_DATUM) {
            return given;
        }
        String distance = Double.isInfinite(apart) ? "" : String.format(Locale.ROOT, " (%,.0f m apart here)", apart);
        throw new GeoDataException("the file states " + own.name() + ", but rivers.crs says " + given.name() + distance
                + "; leave rivers.crs out, or correct the file");
    }
}
