// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.place;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.silverwake.geo.crs.PointReader;

/** What older datums did to the points, one line for each datum and transformation. */
final class ShiftNotes {
    private static final int NAMED = 3;
    /** Shifts this small are the agreement of modern datums, no news [m]. */
    private static final double NEWS = 0.5;

    private record Way(String datum, String operation, String direction) {}

    private record Moved(String point, PointReader.Shift shift) {}

    private final Map<Way, List<Moved>> moved = new LinkedHashMap<>();

    void add(PointRequest request, PointReader.Shift shift) {
        if (shift.meters() >= NEWS) {
            moved.computeIfAbsent(
                            new Way(shift.datum(), shift.operation(), shift.direction()), key -> new ArrayList<>())
                    .add(new Moved(Positions.name(request), shift));
        }
    }

    /** The lines, in the order of the points. */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        moved.forEach((way, points) -> lines.add(line(way, points)));
        return lines;
    }

    private static String line(Way way, List<Moved> points) {
        double least = points.stream().mapToDouble(p -> p.shift.meters()).min().orElse(0);
        double most = points.stream().mapToDouble(p -> p.shift.meters()).max().orElse(0);
        double doubt =
                points.stream().mapToDouble(p -> p.shift.doubtMeters()).max().orElse(0);
        String names = points.stream().limit(NAMED).map(Moved::point).collect(Collectors.joining(", "));
        int more = points.size() - NAMED;
        String from = FarPoint.distance(least);
        String to = FarPoint.distance(most);
        return names + (more > 0 ? " and " + more + " more" : "") + ": shifted "
                + (from.equals(to) ? from : from + " to " + to) + " to the " + way.direction + ", from datum "
                + way.datum
                + " to WGS 84, by " + way.operation
                + (doubt < 1
                        ? ""
                        : "; other transformations known for the place lie up to " + FarPoint.distance(doubt)
                                + " from it")
                + others(points);
    }

    private static String others(List<Moved> points) {
        Map<String, Double> others = new LinkedHashMap<>();
        points.forEach(
                p -> p.shift.others().forEach(other -> others.merge(other.operation(), other.meters(), Math::max)));
        if (others.isEmpty()) {
            return "";
        }
        String named = others.entrySet().stream()
                .limit(NAMED)
                .map(other -> other.getKey() + ": " + FarPoint.distance(other.getValue()))
                .collect(Collectors.joining("; "));
        return ". The boxes of other areas hold the place too, and what the program takes is the best stated accuracy,"
                + " not the country: " + named
                + (others.size() > NAMED ? "; and " + (others.size() - NAMED) + " more" : "")
                + "; where the place lies in one of these, take its position in WGS 84";
    }
}
