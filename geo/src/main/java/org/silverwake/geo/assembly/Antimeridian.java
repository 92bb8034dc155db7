// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.List;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.silverwake.geo.crs.Reshape;
import org.silverwake.geo.layer.LayerFeature;
import org.silverwake.geo.layer.VectorLayer;

/**
 * Layers on both sides of the antimeridian. Their western longitudes are counted on beyond 180 degrees while a network is
 * assembled, so that a river drawn across, or cut there, hangs together.
 */
final class Antimeridian {
    private static final double HALF_TURN = 180;
    private static final double FULL_TURN = 360;

    private Antimeridian() {}

    /**
     * The layer, with western longitudes counted on beyond 180 degrees if that makes it span at most half a turn and it
     * did not before. A layer of more than half the globe either way stays as it is.
     */
    static VectorLayer joined(VectorLayer layer) {
        Envelope plain = new Envelope();
        Envelope onward = new Envelope();
        for (LayerFeature feature : layer.features()) {
            if (feature.geometry() != null) {
                for (Coordinate at : feature.geometry().getCoordinates()) {
                    plain.expandToInclude(at);
                    onward.expandToInclude(onward(at.x), at.y);
                }
            }
        }
        if (plain.getWidth() <= HALF_TURN || onward.getWidth() > HALF_TURN) {
            return layer;
        }
        List<LayerFeature> features = layer.features().stream()
                .map(f -> new LayerFeature(f.id(), f.attributes(), onward(f.geometry())))
                .toList();
        return new VectorLayer(layer.file(), layer.name(), layer.crs(), layer.columns(), features, layer.warnings());
    }

    private static double onward(double longitude) {
        return longitude < 0 ? longitude + FULL_TURN : longitude;
    }

    private static Geometry onward(Geometry geometry) {
        return geometry == null ? null : Reshape.points(geometry, at -> new Coordinate(onward(at.x), at.y));
    }

    /** A place's longitude counted so that it lies in, or else nearest to, a box of places [degrees]. */
    static Coordinate toward(Envelope box, Coordinate at) {
        if (box.isNull() || at.x >= box.getMinX() && at.x <= box.getMaxX()) {
            return at;
        }
        double turns = Math.rint(((box.getMinX() + box.getMaxX()) / 2 - at.x) / FULL_TURN);
        return turns == 0 ? at : new Coordinate(at.x + turns * FULL_TURN, at.y);
    }
}
