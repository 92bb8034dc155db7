// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.crs.Geodesy;

/** Collects defects while a network is assembled. */
final class DefectLog {
    private final List<Defect> defects = new ArrayList<>();

    void repaired(Defect.Kind kind, Coordinate at, List<String> ids, String text, String done) {
        defects.add(new Defect(kind, at.x, at.y, ids, text, done, true));
    }

    void open(Defect.Kind kind, Coordinate at, List<String> ids, String text, String remedy) {
        defects.add(new Defect(kind, at.x, at.y, ids, text, remedy, false));
    }

    void addAll(DefectLog other) {
        defects.addAll(other.defects);
    }

    List<Defect> sorted() {
        List<Defect> list = new ArrayList<>(defects);
        list.sort(Comparator.comparing(Defect::kind));
        return list;
    }

    /** A length in words: "0.35 m", "412 m", "12.4 km", tiny ones as a power of ten. */
    static String meters(double length) {
        if (length != 0 && length < 0.005) {
            return String.format(Locale.ROOT, "%.1e m", length);
        }
        if (length < 20) {
            return String.format(Locale.ROOT, "%.2f m", length);
        }
        return length < 2000
                ? String.format(Locale.ROOT, "%.0f m", length)
                : String.format(Locale.ROOT, "%.1f km", length / 1000);
    }

    /** A place in words: "12.34567 E, 3.45678 S". */
    static String place(Coordinate at) {
        double longitude = Geodesy.wrap(at.x);
        return String.format(
                Locale.ROOT,
                "%.5f %s, %.5f %s",
                Math.abs(longitude),
                longitude < 0 ? "W" : "E",
                Math.abs(at.y),
                at.y < 0 ? "S" : "N");
    }

    /** Up to ten names, then how many more. */
    static String names(List<String> ids) {
        int shown = Math.min(10, ids.size());
        String text = String.join(", ", ids.subList(0, shown));
        return shown < ids.size() ? text + " and " + (ids.size() - shown) + " more" : text;
    }
}
