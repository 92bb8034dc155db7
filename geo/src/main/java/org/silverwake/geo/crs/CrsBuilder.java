// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.Optional;
import org.geotools.api.referencing.FactoryException;
import org.geotools.api.referencing.crs.CoordinateReferenceSystem;
import org.geotools.api.referencing.crs.ProjectedCRS;
import org.geotools.api.referencing.crs.SingleCRS;
import org.geotools.api.referencing.datum.Ellipsoid;
import org.geotools.api.referencing.datum.GeodeticDatum;
import org.geotools.api.referencing.operation.MathTransform;
import org.geotools.api.referencing.operation.OperationNotFoundException;
import org.geotools.referencing.crs.DefaultGeographicCRS;
import org.geotools.referencing.cs.DefaultEllipsoidalCS;
import org.geotools.referencing.factory.ReferencingObjectFactory;
import org.geotools.referencing.operation.DefaultCoordinateOperationFactory;
import org.geotools.referencing.operation.transform.ConcatenatedTransform;
import org.geotools.util.factory.Hints;
import org.silverwake.geo.GeoDataException;

/** Builds the way from a coordinate system to WGS 84 degrees, without the EPSG register wherever the text suffices. */
final class CrsBuilder {
    private static final double WGS84_AXIS = 6378137;
    private static final double WGS84_INVERSE_FLATTENING = 298.257223563;
    /** The ellipsoids of WGS 84 and GRS 80, the ones of the modern satellite datums, differ by 1.5e-6 here. */
    private static final double SAME_FLATTENING = 1e-4;

    private static final double SAME_AXIS = 0.01;
    /** Programs write the degree with 15 to 18 digits. */
    private static final double SAME_UNIT = 1e-9;

    /** The one datum on the new ellipsoid that lies 300 m from WGS 84, GGRS87 (EPSG:6121). */
    private static final String OLD_ON_NEW_ELLIPSOID = "(?i).*(GGRS|Greek.Geodetic).*";

    private CrsBuilder() {}

    /** What there is to know of a system: its name, the way to WGS 84, and a doubt about it. */
    record Built(String name, Optional<MathTransform> toLonLat, boolean degrees, Optional<String> doubt) {}

    static Built fromCode(String code) {
        if (code.equals("EPSG:4326") || code.equals("OGC:CRS84")) {
            return new Built("WGS 84 (" + code + ")", Optional.empty(), true, Optional.empty());
        }
        Optional<String> text = CrsCodes.text(code);
        if (text.isPresent()) {
            return named(fromTree(WktNode.parse(text.get())), code);
        }
        if (!code.startsWith("EPSG:")) {
            throw new GeoDataException("coordinate system " + code + ": unknown code; give an EPSG code such as"
                    + " EPSG:32726, or the system as well-known text");
        }
        return named(fromRegister(code), code);
    }

    private static Built fromRegister(String code) {
        CoordinateReferenceSystem system = CrsCodes.fromRegister(code);
        String name = system.getName().getCode();
        if (!(system instanceof SingleCRS single && single.getDatum() instanceof GeodeticDatum datum)
                || system.getCoordinateSystem().getDimension() != 2) {
            throw new GeoDataException("coordinate system " + code + " (" + name
                    + ") is not a system of places on the earth's surface; give one that is");
        }
        Ellipsoid ellipsoid = datum.getEllipsoid();
        boolean same = datum.getPrimeMeridian().getGreenwichLongitude() == 0
                && !datum.getName().getCode().matches(OLD_ON_NEW_ELLIPSOID)
                && isModern(ellipsoid.getSemiMajorAxis(), ellipsoid.getInverseFlattening());
        if (system instanceof ProjectedCRS projected) {
            OlderWkt.checked(
                    projected.getConversionFromBase().getMethod().getName().getCode());
        }
        try {
            if (same) {
                MathTransform way = Factories.OPERATIONS
                        .createOperation(system, degreesOn(system))
                        .getMathTransform();
                return built(system, way, code, Optional.empty());
            }
            boolean known = CrsCodes.knowsWay(system);
            Optional<String> doubt = known
                    ? Optional.empty()
                    : Optional.of(doubt(code, datum.getName().getCode()));
            return built(system, CrsCodes.registerWay(system), code, doubt);
        } catch (FactoryException e) {
            throw noWay(name, e);
        }
    }

    static Built fromTree(WktNode given) {
        WktNode root = OlderWkt.tidy(given);
        WktNode geographic = root.is("GEOGCS") ? root : root.need("GEOGCS");
        boolean same = isWgs84InAllButName(geographic);
        if (same && root.is("GEOGCS") && isDegree(root.need("UNIT"))) {
            return new Built(name(root.name(), root.code().orElse("")), Optional.empty(), true, Optional.empty());
        }
        boolean tied = same || geographic.need("DATUM").child("TOWGS84").isPresent();
        Optional<MathTransform> registered = tied
                ? Optional.empty()
                : geographic.code().filter(c -> c.startsWith("EPSG:")).flatMap(CrsBuilder::registeredWay);
        Optional<String> doubt = tied || registered.isPresent()
                ? Optional.empty()
                : Optional.of(doubt(root.name(), geographic.need("DATUM").name()));
        return build(root, same, registered, doubt);
    }

    /** The register's way to WGS 84 from degrees on the datum of a code, where it has one. */
    private static Optional<MathTransform> registeredWay(String code) {
        try {
            CoordinateReferenceSystem registered = CrsCodes.fromRegister(code);
            MathTransform toItsUnit = Factories.OPERATIONS
                    .createOperation(degreesOn(registered), registered)
                    .getMathTransform();
            if (!CrsCodes.knowsWay(registered)) {
                return Optional.empty();
            }
            return Optional.of(ConcatenatedTransform.create(toItsUnit, CrsCodes.registerWay(registered)));
        } catch (GeoDataException | FactoryException unknown) {
            return Optional.empty();
        }
    }

    private static String doubt(String name, String datum) {
        return "coordinate system \"" + name + "\" does not say how its datum \"" + datum
                + "\" lies to WGS 84: places may be off by some hundred meters; give rivers.crs as an EPSG code or with"
                + " TOWGS84";
    }

    private static Built build(WktNode root, boolean same, Optional<MathTransform> registered, Optional<String> doubt) {
        GeoToolsQuiet.please();
        try {
            CoordinateReferenceSystem system = Factories.OBJECTS.createFromWKT(root.toString());
            CoordinateReferenceSystem target =
                    same || registered.isPresent() ? degreesOn(system) : DefaultGeographicCRS.WGS84;
            MathTransform way =
                    Factories.OPERATIONS.createOperation(system, target).getMathTransform();
            if (registered.isPresent()) {
                way = ConcatenatedTransform.create(way, registered.get());
            }
            return built(system, way, root.code().orElse(""), doubt);
        } catch (OperationNotFoundException e) {
            throw noWay(root.name(), e);
        } catch (FactoryException | IllegalArgumentException e) {
            return fromCodeOf(root, e);
        }
    }

    /** From a system to the degrees of its own datum: no shift is computed. */
    static MathTransform toOwnDegrees(CoordinateReferenceSystem system) throws FactoryException {
        return Factories.OPERATIONS.createOperation(system, degreesOn(system)).getMathTransform();
    }

    /** Degrees on the system's own datum: for modern datums that is WGS 84, so no shift is computed. */
    private static CoordinateReferenceSystem degreesOn(CoordinateReferenceSystem system) {
        GeodeticDatum datum = (GeodeticDatum) ((SingleCRS) system).getDatum();
        return new DefaultGeographicCRS(datum, DefaultEllipsoidalCS.GEODETIC_2D);
    }

    /** Falls back on the text's own code where the library cannot use the text. */
    private static Built fromCodeOf(WktNode root, Exception problem) {
        String code = root.code().orElse("");
        if (code.startsWith("EPSG:")) {
            return fromCode(code);
        }
        throw new GeoDataException(
                "coordinate system \"" + root.name() + "\": its text cannot be used (" + firstLine(problem)
                        + "); give rivers.crs as a code such as EPSG:32726",
                problem);
    }

    /** Whether the datum is a modern one, on the ellipsoid of WGS 84 or GRS 80, with no shift other than zero. */
    private static boolean isWgs84InAllButName(WktNode geographic) {
        WktNode datum = geographic.need("DATUM");
        WktNode ellipsoid = datum.need("SPHEROID");
        boolean greenwich =
                geographic.child("PRIMEM").map(m -> m.number(0) == 0).orElse(true);
        boolean unshifted = datum.child("TOWGS84")
                .map(shift -> shift.numbers().stream().allMatch(v -> v == 0))
                .orElse(true);
        boolean old = datum.name().matches(OLD_ON_NEW_ELLIPSOID);
        return greenwich && unshifted && !old && isModern(ellipsoid.number(0), ellipsoid.number(1));
    }

    private static boolean isModern(double semiMajor, double inverseFlattening) {
        return Math.abs(semiMajor - WGS84_AXIS) < SAME_AXIS
                && Math.abs(inverseFlattening - WGS84_INVERSE_FLATTENING) < SAME_FLATTENING;
    }

    private static Built built(
            CoordinateReferenceSystem system, MathTransform way, String code, Optional<String> doubt) {
        String name = name(system.getName().getCode(), code);
        return new Built(name, Optional.of(way), CrsCodes.isGeographic(system), doubt);
    }

    private static String name(String name, String code) {
        return name + (code.isEmpty() ? " (no code)" : " (" + code + ")");
    }

    private static boolean isDegree(WktNode unit) {
        return Math.abs(Math.toDegrees(unit.number(0)) - 1) < SAME_UNIT;
    }

    private static Built named(Built built, String code) {
        String bare = built.name().replaceFirst(" \\([^()]*\\)$", "");
        return new Built(bare + " (" + code + ")", built.toLonLat(), built.degrees(), built.doubt());
    }

    private static GeoDataException noWay(String name, Exception cause) {
        return new GeoDataException(
                "coordinate system \"" + name + "\": no way from it to WGS 84 is known (" + firstLine(cause)
                        + "); give the layer in another system",
                cause);
    }

    private static String firstLine(Exception e) {
        return String.valueOf(e.getMessage()).lines().findFirst().orElse("").strip();
    }

    /** Made on first use: loading them takes some 0.3 s. */
    private static final class Factories {
        static final ReferencingObjectFactory OBJECTS = new ReferencingObjectFactory();
        static final DefaultCoordinateOperationFactory OPERATIONS =
                new DefaultCoordinateOperationFactory(new Hints(Hints.LENIENT_DATUM_SHIFT, Boolean.TRUE));
    }
}
