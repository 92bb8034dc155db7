// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.crs;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.geo.GeoDataException;
import org.silverwake.model.numerics.EditDistance;
import org.silverwake.model.table.CsvTable;

/**
 * Geodetic datums by the names that stand on field sheets and in receivers. Codes, names, ellipsoids and shifts come from
 * the EPSG Dataset v10.076 of IOGP (as PROJ 9.1.1 carries it): every transformation to WGS 84 in force there by three
 * translations, seven parameters of either rotation, or those about a point (Molodensky-Badekas), brought to the seven of
 * a position vector; an accuracy of 999 m, which says that none is known, is left blank. The other names are from memory.
 */
public final class Datums {
    /** The code of WGS 84 degrees. */
    public static final String WGS84 = "EPSG:4326";

    private static final Set<String> WGS84_NAMES = Set.of(
            "wgs84",
            "wgs1984",
            "wgs",
            "worldgeodeticsystem1984",
            "epsg4326",
            "4326",
            "gps",
            "ogccrs84",
            "crs84",
            "wgs84g1762");
    private static final Set<String> UNKNOWN = Set.of(
            "unkwn",
            "unk",
            "unknown",
            "other",
            "notknown",
            "notrecorded",
            "none",
            "na",
            "nd",
            "desconocido",
            "desconhecido",
            "otro",
            "outro",
            "inconnu",
            "autre",
            "user",
            "userdefined",
            "");

    private static final List<Datum> ALL = load();
    private static final Map<String, Datum> BY_NAME = byName();

    private Datums() {}

    /** Whether the text says that the datum was not written down. */
    public static boolean isUnknown(String text) {
        return UNKNOWN.contains(plain(text));
    }

    /**
     * The code of a datum's degrees, or of another system, by a name or a code.
     *
     * @param text such as SAD69, Prov. S. American 1956, WGS 84, EPSG:4618
     * @return EPSG code; {@link #WGS84} for WGS 84
     * @throws GeoDataException with the nearest name, where the name is none that is known here
     */
    public static String code(String text) {
        String plain = plain(text);
        if (WGS84_NAMES.contains(plain)) {
            return WGS84;
        }
        Datum datum = BY_NAME.get(plain);
        if (datum != null) {
            return datum.code();
        }
        Optional<String> code = CrsCodes.normalize(text);
        if (code.isPresent()) {
            return code.get();
        }
        throw new GeoDataException("datum \"" + text + "\" is not known; " + hint(plain));
    }

    /** The datum with a code; empty for WGS 84 itself and for codes that are not in the table. */
    static Optional<Datum> find(String code) {
        return ALL.stream().filter(d -> d.code().equals(code)).findFirst();
    }

    /** Names and codes of all datums in the table, for the reference page. */
    public static Map<String, String> names() {
        Map<String, String> names = new LinkedHashMap<>();
        ALL.forEach(d -> names.put(d.name(), d.code()));
        return names;
    }

    private static String hint(String plain) {
        if (plain.contains("clarke") || plain.contains("international1924") || plain.startsWith("bessel")) {
            return "it names an ellipsoid, which many datums share (Clarke 1866: NAD27, Luzon 1911; Clarke 1880: Arc 1950,"
                    + " Arc 1960, Adindan, Minna; International 1924: PSAD56, Corrego Alegre); give the datum";
        }
        String best = "";
        int least = 2 * Math.max(2, plain.length() / 3) + 2;
        for (Map.Entry<String, Datum> entry : BY_NAME.entrySet()) {
            // of names equally far, one of the same length: digits changed about are the usual slip
            int distance = 2 * EditDistance.between(plain, entry.getKey())
                    + (plain.length() == entry.getKey().length() ? 0 : 1);
            if (distance < least) {
                least = distance;
                best = entry.getValue().name();
            }
        }
        return (best.isEmpty() ? "" : "the nearest known one is " + best + "; ")
                + "give the name of a datum of the reference page, or an EPSG code such as EPSG:4618";
    }

    /** Letters and digits without accents and case. */
    private static String plain(String text) {
        return Normalizer.normalize(text, Normalizer.Form.NFD)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]", "");
    }

    private static Map<String, Datum> byName() {
        Map<String, Datum> map = new LinkedHashMap<>();
        for (CsvTable.Row row : CsvTable.ofResource(Datums.class, "datums.csv").rows()) {
            Datum datum = find(row.value("code")).orElseThrow();
            Set<String> names = new TreeSet<>(List.of(row.value("name"), row.value("code")));
            names.addAll(List.of(row.value("other_names").split("\\|")));
            for (String name : names) {
                Datum other = name.isEmpty() ? null : map.put(plain(name), datum);
                if (other != null && !other.equals(datum)) {
                    throw new IllegalStateException(row.where() + " " + name + " names two datums");
                }
            }
        }
        return Collections.unmodifiableMap(map);
    }

    private static List<Datum> load() {
        Map<String, List<Datum.Shift>> shifts = new HashMap<>();
        for (CsvTable.Row row :
                CsvTable.ofResource(Datums.class, "datum-shifts.csv").rows()) {
            shifts.computeIfAbsent(row.value("datum"), k -> new ArrayList<>()).add(shift(row));
        }
        List<Datum> list = new ArrayList<>();
        for (CsvTable.Row row : CsvTable.ofResource(Datums.class, "datums.csv").rows()) {
            list.add(new Datum(
                    row.value("code"),
                    row.value("name"),
                    row.value("ellipsoid"),
                    number(row, "semi_major_m"),
                    number(row, "inverse_flattening"),
                    shifts.getOrDefault(row.value("code"), List.of())));
        }
        return List.copyOf(list);
    }

    private static Datum.Shift shift(CsvTable.Row row) {
        List<Double> parameters = new ArrayList<>();
        for (String column : List.of("dx_m", "dy_m", "dz_m", "rx_arcsec", "ry_arcsec", "rz_arcsec", "scale_ppm")) {
            parameters.add(row.value(column).isEmpty() ? 0 : number(row, column));
        }
        return new Datum.Shift(
                row.value("operation"),
                parameters,
                row.value("accuracy_m").isEmpty() ? Double.POSITIVE_INFINITY : number(row, "accuracy_m"),
                row.value("area"),
                number(row, "south"),
                number(row, "north"),
                number(row, "west"),
                number(row, "east"),
                row.value("sea").equals("yes"));
    }

    private static double number(CsvTable.Row row, String column) {
        return Double.parseDouble(row.value(column));
    }
}
