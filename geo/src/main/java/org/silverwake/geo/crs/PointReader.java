// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import net.sf.geographiclib.Geodesic;
import net.sf.geographiclib.GeodesicData;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.crs.PointSystem.Kind;

/**
 * Brings points given in any {@link PointSystem} to WGS 84 degrees, and says by how much an older datum moved them. Where
 * EPSG has several transformations whose area's box holds a place, the one of best stated accuracy is taken, and how far
 * the others would have put the point is told, by name where they are of other areas and lie apart by more than
 * it is good to. A datum without a known way is refused, never taken as WGS 84.
 */
public final class PointReader {
    private static final List<String> COMPASS =
            List.of("north", "north-east", "east", "south-east", "south", "south-west", "west", "north-west");
    private static final double SECTOR = 45;
    private static final int NAMED = 6;
    private static final String REGISTER = "the EPSG register's own transformation";

    private final LayerCrs layer;
    private final Map<String, LayerCrs> systems = new HashMap<>();
    private final Map<String, Optional<OwnDegrees>> grids = new HashMap<>();

    /** A reader beside a layer. */
    public PointReader(LayerCrs layer) {
        this.layer = layer;
    }

    /**
     * A point in WGS 84 degrees.
     *
     * @param longitude [degrees]
     * @param latitude [degrees]
     * @param shift what the datum did; empty where nothing was shifted
     */
    public record Fix(double longitude, double latitude, Optional<Shift> shift) {}

    /**
     * A shift from an older datum: from where WGS 84 would have put the same numbers.
     *
     * @param datum name and code of the datum
     * @param operation what was applied, with its EPSG code, area and accuracy
     * @param meters how far [m]
     * @param direction compass direction in words
     * @param doubtMeters how far the other known transformations would have put the point from here [m]; 0 where there is
     *     no other
     * @param others those of other areas, whose boxes hold the place too, that part from it by more than it is good to
     */
    public record Shift(
            String datum,
            String operation,
            double meters,
            String direction,
            double doubtMeters,
            List<OtherWay> others) {
        /** Copies the list. */
        public Shift {
            others = List.copyOf(others);
        }
    }

    /**
     * Another transformation for a place.
     *
     * @param operation its EPSG code, area and accuracy
     * @param meters how far from the applied one it would have put the point [m]
     */
    public record OtherWay(String operation, double meters) {}

    /**
     * The point in WGS 84 degrees.
     *
     * @param x longitude [degrees], or easting in the system's unit
     * @param y latitude [degrees], or northing in the system's unit
     * @throws GeoDataException in words for the user: no such point, or no known way from its datum
     */
    public Fix read(PointSystem system, double x, double y) {
        if (system.kind() == Kind.LAYER) {
            return fix(layer, x, y);
        }
        if (system.kind() == Kind.GRID) {
            return grid(system.datum(), x, y);
        }
        LayerCrs plain = unshifted(system);
        if (system.datum().equals(Datums.WGS84)) {
            return fix(plain, x, y);
        }
        Optional<Datum> datum = Datums.find(system.datum());
        if (datum.isPresent()) {
            return shifted(system, datum.get(), fix(plain, x, y), x, y);
        }
        if (system.kind() == Kind.UTM) {
            throw new GeoDataException(
                    system.datum() + " is not among the datums known here; give the code of the projected"
                            + " system itself as datum, without a zone, or the position in WGS 84");
        }
        Fix before = fix(plain, x, y);
        Fix after = fix(registered(system.datum(), true), x, y);
        return moved(before, after, system.datum(), REGISTER, 0, List.of());
    }

    /** A projected system's numbers, by the same table as those of its datum's degrees; the layer's own go as it does. */
    private Fix grid(String code, double x, double y) {
        Optional<OwnDegrees> own = grids.computeIfAbsent(code, OwnDegrees::of);
        if (own.isEmpty()) {
            return fix(registered(code, false), x, y);
        }
        Datum datum = own.get().datum();
        double[] lonLat = own.get().toDegrees(x, y);
        Fix before = new Fix(lonLat[0], lonLat[1], Optional.empty());
        if (layer.name().endsWith("(" + code + ")")) {
            return moved(before, fix(layer, x, y), datum.title(), REGISTER + ", as the layer", 0, List.of());
        }
        if (datum.shifts().isEmpty()) {
            return moved(before, fix(registered(code, false), x, y), datum.title(), REGISTER, 0, List.of());
        }
        return shifted(PointSystem.degrees(datum.code()), datum, before, lonLat[0], lonLat[1]);
    }

    private Fix shifted(PointSystem system, Datum datum, Fix before, double x, double y) {
        List<Datum.Shift> shifts = datum.shiftsAt(before.longitude, before.latitude);
        if (shifts.isEmpty()) {
            throw new GeoDataException(noWay(datum, before));
        }
        Datum.Shift best = shifts.get(0);
        Fix after = fix(on(system, datum, best), x, y);
        double doubt = 0;
        Map<String, OtherWay> others = new LinkedHashMap<>();
        for (Datum.Shift other : shifts.subList(1, shifts.size())) {
            double meters = between(after, fix(on(system, datum, other), x, y)).s12;
            if (other.sea() == best.sea()) {
                doubt = Math.max(doubt, meters);
                if (meters > best.doubt() && !other.area().equals(best.area())) {
                    others.putIfAbsent(other.area(), new OtherWay(other.title(), meters));
                }
            }
        }
        return moved(
                before, after, datum.title(), "transformation " + best.title(), doubt, List.copyOf(others.values()));
    }

    private static String noWay(Datum datum, Fix at) {
        String place = String.format(Locale.ROOT, "%.3f, %.3f", at.longitude, at.latitude);
        List<String> areas =
                datum.shifts().stream().map(Datum.Shift::area).distinct().toList();
        String known = areas.stream().limit(NAMED).collect(Collectors.joining("; "))
                + (areas.size() > NAMED ? " and in " + (areas.size() - NAMED) + " more areas" : "");
        return "no transformation from datum " + datum.title() + " to WGS 84 is known at " + place
                + " (longitude first): "
                + (known.isEmpty() ? "EPSG gives none that is a shift of axes" : "it is used in " + known)
                + "; give the position in another datum, such as WGS 84";
    }

    private static Fix moved(
            Fix before, Fix after, String datum, String operation, double doubt, List<OtherWay> others) {
        GeodesicData line = between(before, after);
        if (line.s12 == 0) {
            return after;
        }
        int sector = (int) Math.rint((line.azi1 + 360) / SECTOR) % COMPASS.size();
        return new Fix(
                after.longitude,
                after.latitude,
                Optional.of(new Shift(datum, operation, line.s12, COMPASS.get(sector), doubt, others)));
    }

    private static GeodesicData between(Fix a, Fix b) {
        return Geodesic.WGS84.Inverse(a.latitude, a.longitude, b.latitude, b.longitude);
    }

    private static Fix fix(LayerCrs crs, double x, double y) {
        double[] lonLat = crs.toLonLat(x, y);
        return new Fix(lonLat[0], lonLat[1], Optional.empty());
    }

    /** The same numbers as if they were of WGS 84. */
    private LayerCrs unshifted(PointSystem system) {
        int first = system.south() ? 32700 : 32600;
        String code = system.kind() == Kind.UTM ? "EPSG:" + (first + system.zone()) : Datums.WGS84;
        return systems.computeIfAbsent(code, LayerCrs::of);
    }

    private LayerCrs on(PointSystem system, Datum datum, Datum.Shift shift) {
        String text =
                system.kind() == Kind.UTM ? datum.utm(system.zone(), system.south(), shift) : datum.degrees(shift);
        return systems.computeIfAbsent(text, LayerCrs::of);
    }

    private LayerCrs registered(String code, boolean degrees) {
        LayerCrs crs = systems.computeIfAbsent(code, LayerCrs::of);
        if (crs.isDegrees() != degrees) {
            throw new GeoDataException(
                    crs.name()
                            + (degrees
                                    ? " is no system of degrees; give it with easting and northing"
                                    : " is a system of degrees; give a zone with easting and northing, or longitude and latitude"));
        }
        if (crs.doubt().isPresent()) {
            throw new GeoDataException("no transformation from " + crs.name()
                    + " to WGS 84 is known; give the position in another datum, such as WGS 84");
        }
        return crs;
    }
}
