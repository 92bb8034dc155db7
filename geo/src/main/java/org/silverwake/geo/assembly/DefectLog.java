// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.CorrectionOutcome.Status;
import org.silverwake.geo.assembly.NetworkCorrections.Ruling;
import org.silverwake.geo.crs.Geodesy;

/** Collects defects while a network is assembled, and asks the user's rulings on them. */
final class DefectLog {
    private final List<Defect> defects = new ArrayList<>();
    private final Rulings rulings;

    /** A log without rulings. */
    DefectLog() {
        this(List.of());
    }

    DefectLog(List<NetworkCorrections.Ruling> rulings) {
        this.rulings = new Rulings(rulings);
    }

    Rulings rulings() {
        return rulings;
    }

    void repaired(Defect.Kind kind, Coordinate at, List<String> ids, String text, String done) {
        Optional<Ruling> accepted = rulings.find(true, kind, ids, List.of(at));
        accepted.ifPresent(ruling -> rulings.note(ruling.where(), Status.APPLIED, text + ": " + done));
        String by = accepted.map(r -> "; accepted in " + r.where()).orElse("");
        defects.add(new Defect(kind, at.x, at.y, ids, text, done + by, true, accepted.isPresent()));
    }

    /** A change of the layer that a correction made. */
    void corrected(Defect.Kind kind, Coordinate at, List<String> ids, String text, String done) {
        defects.add(new Defect(kind, at.x, at.y, ids, text, done, true, true));
    }

    void open(Defect.Kind kind, Coordinate at, List<String> ids, String text, String remedy) {
        boolean gap = kind == Defect.Kind.GAP;
        Optional<Ruling> ruling = rulings.find(!gap, kind, ids, List.of(at));
        ruling.ifPresent(
                r -> rulings.note(r.where(), Status.APPLIED, text + (gap ? ": left open" : ": seen, left as it is")));
        String by = ruling.map(r -> (gap ? "; refused in " : "; seen, ") + r.where())
                .orElse("");
        defects.add(new Defect(kind, at.x, at.y, ids, text, remedy + by, false, ruling.isPresent()));
    }

    /** Whether the user refused this repair, at one of the places; it is listed then, and must not be made. */
    boolean refused(Defect.Kind kind, List<Coordinate> at, List<String> ids, String text) {
        Optional<Ruling> ruling = rulings.find(false, kind, ids, at);
        ruling.ifPresent(r -> {
            rulings.note(r.where(), Status.APPLIED, text + ": not repaired");
            rulings.noteRefused(ids, at);
            Coordinate place = at.get(0);
            String left = "left as it is: refused in " + r.where();
            defects.add(new Defect(kind, place.x, place.y, ids, text, left, false, true));
        });
        return ruling.isPresent();
    }

    void addAll(DefectLog other) {
        defects.addAll(other.defects);
        rulings.addAll(other.rulings);
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
