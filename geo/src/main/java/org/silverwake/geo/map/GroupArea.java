// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import net.sf.geographiclib.Geodesic;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.silverwake.geo.assembly.RiverMap;

/**
 * Where the sites of a group lie, as an area that gives none of them away: the least box of a coarse grid that holds them all, wider by
 * one step of the grid, with round corners. Its sides say how far the group reaches north, east, south and west, to the step of the
 * grid, and no more: unlike a hull, it has no corner that belongs to a site, and a site that moves within its field of the grid
 * changes nothing. The grid is laid out from longitude and latitude 0, not from the sites.
 *
 * @param outline closed ring, WGS 84 [degrees]; longitudes run on past 180 where the area lies across the antimeridian
 */
public record GroupArea(List<Corner> outline) {
    /** Fewer places than this have no area: two of them would know each other's place. Chosen; common practice for small counts, no source. */
    public static final int FEWEST = 3;

    /** Least step of the grid, and so the least distance of every site to the outline [m]. Chosen. */
    public static final double LEAST_STEP = 2000;

    /** Step of the grid as a share of the map's width, where that is more: smaller areas could not be seen. Chosen. */
    private static final double SHARE_OF_MAP = 0.025;

    /** Sites closer together than this are one place [m]: several outfalls of a yard. Chosen. */
    private static final double SAME_PLACE = 200;

    private static final int CORNERS_PER_QUARTER = 6;

    /** A corner of the outline, WGS 84 [degrees]. */
    public record Corner(double longitude, double latitude) {}

    /** Copies the list. */
    public GroupArea {
        outline = List.copyOf(outline);
    }

    /**
     * The area of a group.
     *
     * @param sites where they are, WGS 84 [degrees]
     * @param mapMeters width of the whole map [m]
     * @return empty where the sites are fewer than three places
     */
    public static Optional<GroupArea> around(List<Corner> sites, double mapMeters) {
        if (places(sites) < FEWEST) {
            return Optional.empty();
        }
        double step = step(mapMeters);
        Grid grid = Grid.of(sites);
        Envelope box = new Envelope();
        double first = sites.get(0).longitude();
        for (Corner site : sites) {
            double x = grid.x(first + wrap(site.longitude() - first));
            double y = grid.y(site.latitude());
            double left = Math.floor(x / step) * step;
            double below = Math.floor(y / step) * step;
            box.expandToInclude(new Envelope(left, left + step, below, below + step));
        }
        Geometry area = new GeometryFactory().toGeometry(box).buffer(step, CORNERS_PER_QUARTER);
        List<Corner> outline = new ArrayList<>();
        for (Coordinate corner : area.getCoordinates()) {
            outline.add(new Corner(grid.longitude(corner.x), grid.latitude(corner.y)));
        }
        return Optional.of(new GroupArea(outline));
    }

    /** The area of a group on the map of a network; see {@link #around(List, double)}. */
    public static Optional<GroupArea> around(List<Corner> sites, RiverMap map) {
        if (map.reachCount() == 0) {
            return around(sites, 0);
        }
        double first = map.reach(0).longitude(0);
        Envelope extent = new Envelope();
        for (RiverMap.Reach reach : map.reaches()) {
            for (Coordinate at : reach.line().getCoordinates()) {
                extent.expandToInclude(wrap(at.x - first), at.y);
            }
        }
        double middle = extent.centre().y;
        return around(sites, meters(new Corner(first, middle), new Corner(first + extent.getWidth(), middle)));
    }

    /**
     * How far every site of a group is from the outline, at least [m]; up to 2 % less within 60 degrees of the equator, as the grid is that of a whole degree.
     *
     * @param mapMeters width of the whole map [m]
     */
    public static double step(double mapMeters) {
        return Math.max(LEAST_STEP, SHARE_OF_MAP * mapMeters);
    }

    /**
     * How many places the sites are: those near to one that was counted are not counted again.
     *
     * @param sites where they are, WGS 84 [degrees]
     */
    public static int places(List<Corner> sites) {
        List<Corner> places = new ArrayList<>();
        for (Corner site : sites) {
            boolean isNew = places.stream().noneMatch(place -> meters(place, site) < SAME_PLACE);
            if (isNew) {
                places.add(site);
            }
        }
        return places.size();
    }

    /** The outline as a polygon, WGS 84, longitude first [degrees]. */
    Geometry shape() {
        Coordinate[] corners = outline.stream()
                .map(corner -> new Coordinate(corner.longitude(), corner.latitude()))
                .toArray(Coordinate[]::new);
        return new GeometryFactory().createPolygon(corners);
    }

    private static double meters(Corner a, Corner b) {
        return Geodesic.WGS84.Inverse(a.latitude(), a.longitude(), b.latitude(), b.longitude()).s12;
    }

    private static double wrap(double degrees) {
        return degrees - 360 * Math.floor((degrees + 180) / 360);
    }

    /** Meters east and north of longitude and latitude 0, at the scale of a whole degree of latitude near by, so that it does not follow the sites. */
    private record Grid(double metersPerLongitude, double metersPerLatitude) {
        static Grid of(List<Corner> sites) {
            double middle =
                    sites.stream().mapToDouble(Corner::latitude).average().orElseThrow();
            double whole = Math.max(-89, Math.min(89, Math.rint(middle)));
            double east = meters(new Corner(0, whole), new Corner(1, whole));
            double north = meters(new Corner(0, whole - 0.5), new Corner(0, whole + 0.5));
            return new Grid(east, north);
        }

        double x(double longitude) {
            return longitude * metersPerLongitude;
        }

        double y(double latitude) {
            return latitude * metersPerLatitude;
        }

        double longitude(double x) {
            return x / metersPerLongitude;
        }

        double latitude(double y) {
            return y / metersPerLatitude;
        }
    }
}
