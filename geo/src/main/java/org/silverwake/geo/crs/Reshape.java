// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Geometry;

/** Copies of geometries with every point moved; height and measure stay. */
final class Reshape {
    private Reshape() {}

    static Geometry points(Geometry geometry, UnaryOperator<Coordinate> move) {
        Geometry copy = geometry.copy();
        copy.apply(new CoordinateSequenceFilter() {
            @Override
            public void filter(CoordinateSequence points, int i) {
                Coordinate moved = move.apply(new Coordinate(points.getX(i), points.getY(i)));
                points.setOrdinate(i, CoordinateSequence.X, moved.x);
                points.setOrdinate(i, CoordinateSequence.Y, moved.y);
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
