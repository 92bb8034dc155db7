// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.Optional;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.ReferenceIdentifier;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.TransformException;
import org.silverwake.geo.GeoDataException;

/**
 * The way from a projected system of the EPSG register to the degrees of its own datum, where the datum is in the table.
 *
 * @param code EPSG code of the projected system
 * @param datum its datum
 * @param way from easting and northing to longitude and latitude on the datum, unshifted
 */
record OwnDegrees(String code, Datum datum, MathTransform way) {

    /** By a code; empty where it names no projected system of the register, or one whose datum is not in the table. */
    static Optional<OwnDegrees> of(String code) {
        if (!code.startsWith("EPSG:") || CrsCodes.text(code).isPresent()) {
            return Optional.empty();
        }
        CoordinateReferenceSystem system = CrsCodes.fromRegister(code);
        if (!(system instanceof ProjectedCRS projected)) {
            return Optional.empty();
        }
        OlderWkt.checked(projected.getConversionFromBase().getMethod().getName().getCode());
        Optional<Datum> datum = projected.getBaseCRS().getIdentifiers().stream()
                .map(ReferenceIdentifier::toString)
                .flatMap(id -> Datums.find(id).stream())
                .findFirst();
        try {
            MathTransform way = CrsBuilder.toOwnDegrees(projected);
            return datum.map(d -> new OwnDegrees(code, d, way));
        } catch (FactoryException unknown) {
            return Optional.empty();
        }
    }

    /** Longitude and latitude on the datum [degrees]. */
    double[] toDegrees(double x, double y) {
        double[] point = {x, y};
        try {
            way.transform(point, 0, point, 0, 1);
        } catch (TransformException | AssertionError e) {
            throw new GeoDataException(
                    "easting " + x + ", northing " + y + " lies outside of what " + code
                            + " covers; check the numbers and the code",
                    e);
        }
        return point;
    }
}
