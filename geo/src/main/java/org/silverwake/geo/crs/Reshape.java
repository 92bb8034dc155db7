// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;

/** Copies of geometries with every point moved; height and measure stay. */
public final class Reshape {
    private Reshape() {}

    /** A copy with each point [degrees, or the unit of its system] moved. */
    public static Geometry points(Geometry geometry, UnaryOperator<Coordinate> move) {
        return sequences(geometry, points -> {
            for (int i = 0; i < points.size(); i++) {
                Coordinate moved = move.apply(new Coordinate(points.getX(i), points.getY(i)));
                points.setOrdinate(i, CoordinateSequence.X, moved.x);
                points.setOrdinate(i, CoordinateSequence.Y, moved.y);
            }
        });
    }

    /** A copy with each sequence of points changed as a whole. */
    static Geometry sequences(Geometry geometry, Consumer<CoordinateSequence> change) {
        Geometry copy = geometry.copy();
        copy.apply(new CoordinateSequenceFilter() {
            @Override
            public void filter(CoordinateSequence points, int i) {
                if (i == 0) {
                    change.accept(points);
                }
            }

            @Override
            public boolean isDone() {
                return false;
            }

            @Override
            public boolean isGeometryChanged() {
                return true;
            }
        });
        return copy;
    }
}
