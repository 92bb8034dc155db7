// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.silverwake.cli.scenario.Key.Kind;
import org.silverwake.cli.scenario.ScenarioInput.Position;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.crs.Datums;
import org.silverwake.geo.crs.PointSystem;
import org.silverwake.model.quantity.DecimalMark;
import org.silverwake.model.quantity.Dimension;

/**
 * The cells of a row that say where it lies, in one of three ways: longitude and latitude, or easting and northing of a UTM
 * zone, both on a datum; or x and y in the river layer's own system.
 */
final class PositionCells {
    /** The columns of a position, in any table. */
    static final List<String> COLUMNS = List.of(
            "longitude",
            "latitude",
            "easting",
            "northing",
            "zone",
            "hemisphere",
            "datum",
            "x",
            "y",
            "accuracy",
            "accuracy_unit");

    private static final Key ACCURACY = Key.quantity(
            "accuracy", Dimension.LENGTH, "m", 0, 100_000, "", "how far off the position may be; none stated if blank");

    /** The columns for the reference page. */
    static final List<Key> KEYS = List.of(
            Key.longitude("longitude"),
            Key.latitude("latitude"),
            Key.word("easting", Kind.TEXT, "", "UTM easting, 100000 to 900000 m"),
            Key.word("northing", Kind.TEXT, "", "UTM northing, 0 to 10000000 m"),
            Key.word("zone", Kind.TEXT, "", "UTM zone with north or south, such as `21 south`"),
            Key.word("hemisphere", Kind.TEXT, "", "north or south, where the zone does not say"),
            Key.word("datum", Kind.TEXT, "", "datum of degrees or UTM, by name or EPSG code; WGS 84 if blank"),
            Key.word("x", Kind.TEXT, "", "x in the river layer's own system"),
            Key.word("y", Kind.TEXT, "", "y in the river layer's own system"),
            ACCURACY);

    private static final Key COORDINATE =
            Key.quantity("x", Dimension.DIMENSIONLESS, "-", -1e9, 1e9, "", "in the layer's system");
    private static final Position NOWHERE = new Position(0, 0, false);
    private static final double LEAST_EASTING = 100_000;
    private static final double MOST_EASTING = 900_000;
    private static final double MOST_NORTHING = 10_000_000;
    /** Easting and northing of a system other than UTM may be anything [m]. */
    private static final double ANY = 1e8;

    private final TableRow row;
    private final DecimalMark mark;

    PositionCells(TableRow row, DecimalMark mark) {
        this.row = row;
        this.mark = mark;
    }

    /** The position; a placeholder with a noted problem where it is not one. */
    Position read() {
        boolean degrees = row.has("longitude") || row.has("latitude");
        boolean layer = row.has("x") || row.has("y");
        boolean utm = row.has("easting") || row.has("northing");
        int ways = (degrees ? 1 : 0) + (layer ? 1 : 0) + (utm ? 1 : 0);
        if (ways != 1) {
            String found = ways == 0
                    ? "are blank"
                    : degrees
                            ? "are given beside " + (layer ? "x, y" : "easting, northing")
                            : "stand apart from easting, northing, given beside x, y";
            row.problem(
                    "longitude, latitude",
                    found
                            + "; give longitude and latitude in degrees (longitude first), or x and y in the layer's system,"
                            + " or easting, northing and zone");
            return NOWHERE;
        }
        OptionalDouble accuracy = row.quantity("accuracy", ACCURACY, "accuracy_unit");
        Position position = layer ? inLayer() : degrees ? degrees() : utm();
        return new Position(position.x(), position.y(), position.system(), accuracy);
    }

    private Position inLayer() {
        for (String column : List.of("datum", "zone", "hemisphere")) {
            if (row.has(column)) {
                row.problem(
                        column,
                        "stands beside x, y, which are in the layer's own system; leave it blank, or give longitude and"
                                + " latitude, or easting and northing");
            }
        }
        return new Position(layerNumber("x"), layerNumber("y"), true);
    }

    private double layerNumber(String column) {
        if (!row.has(column)) {
            row.problem(column, "is blank; give " + COORDINATE.range());
        }
        return row.number(column, COORDINATE).orElse(Double.NaN);
    }

    /** A zone beside them says nothing more; receivers write it in every row. */
    private Position degrees() {
        double x = cell("longitude", "-180 to 180 deg", text -> DegreeText.read(text, true, mark));
        double y = cell("latitude", "-90 to 90 deg", text -> DegreeText.read(text, false, mark));
        if (x == 0 && y == 0) {
            row.problem("longitude, latitude", "0, 0 means no position fix; give the place's own position");
        }
        return new Position(x, y, PointSystem.degrees(datum()), OptionalDouble.empty());
    }

    private Position utm() {
        String datum = datum();
        if (!row.has("zone") && !datum.equals(Datums.WGS84) && !Datums.names().containsValue(datum)) {
            double x = cell("easting", "meters", text -> MeterText.read(text, -ANY, ANY, mark));
            double y = cell("northing", "meters", text -> MeterText.read(text, -ANY, ANY, mark));
            return new Position(x, y, PointSystem.grid(datum), OptionalDouble.empty());
        }
        if (isSwapped()) {
            row.problem("easting, northing", "look swapped; easting is 100000 to 900000 m, northing up to 10000000 m");
            return NOWHERE;
        }
        double x =
                cell("easting", "100000 to 900000 m", text -> MeterText.read(text, LEAST_EASTING, MOST_EASTING, mark));
        double y = cell("northing", "0 to 10000000 m", text -> MeterText.read(text, 0, MOST_NORTHING, mark));
        Optional<String> zone = row.text("zone");
        if (zone.isEmpty()) {
            row.problem("zone", "is blank; give the UTM zone with north or south, such as 21 south");
            return NOWHERE;
        }
        try {
            UtmZone read = UtmZone.read(zone.get(), row.text("hemisphere"), y);
            return new Position(x, y, PointSystem.utm(read.number(), read.south(), datum), OptionalDouble.empty());
        } catch (IllegalArgumentException e) {
            row.problem("zone", e.getMessage());
            return NOWHERE;
        }
    }

    /** Whether the two are in range only when changed about. */
    private boolean isSwapped() {
        return reads("easting", MOST_EASTING, MOST_NORTHING)
                && reads("northing", LEAST_EASTING, MOST_EASTING)
                && !reads("easting", LEAST_EASTING, MOST_EASTING);
    }

    private boolean reads(String column, double low, double high) {
        try {
            return row.has(column) && MeterText.read(row.text(column).orElseThrow(), low, high, mark) >= low;
        } catch (IllegalArgumentException e) {
            return false;
        }
    }

    private double cell(String column, String range, ToDoubleFunction<String> reader) {
        if (!row.has(column)) {
            row.problem(column, "is blank; give " + range);
            return Double.NaN;
        }
        try {
            return reader.applyAsDouble(row.text(column).orElseThrow());
        } catch (IllegalArgumentException e) {
            row.problem(column, e.getMessage());
            return Double.NaN;
        }
    }

    private String datum() {
        Optional<String> written = row.text("datum");
        if (written.isEmpty()) {
            return Datums.WGS84;
        }
        if (Datums.isUnknown(written.get())) {
            row.warn(
                    "datum",
                    "\"" + written.get() + "\" does not say which; the position is taken as WGS 84, and older national"
                            + " datums differ from it by 100 to 400 m, which may be another creek; ask for the receiver's"
                            + " setting");
            return Datums.WGS84;
        }
        try {
            return Datums.code(written.get());
        } catch (GeoDataException e) {
            row.problem("datum", e.getMessage());
            return Datums.WGS84;
        }
    }
}
