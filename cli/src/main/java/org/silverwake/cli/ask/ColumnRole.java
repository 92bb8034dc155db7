// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.silverwake.model.quantity.Dimension;
import org.silverwake.model.table.CsvTable;

/**
 * What a column of a river layer may be, and the headings that people give it (columns.csv).
 *
 * @param key as the scenario calls it
 * @param words patterns of headings, most telling first
 * @param shows what its values must look like
 * @param dimension what it measures, where it measures something
 */
record ColumnRole(String key, List<Pattern> words, Shows shows, Optional<Dimension> dimension) {
    /** What values must look like. */
    enum Shows {
        DIFFERENT,
        TEXT,
        NUMBER
    }

    /** Units as headings carry them at their end, most telling first. */
    private static final List<String[]> ENDINGS = List.of(
            new String[] {"AREA", "_?(km2|km\\^2|sqkm|kmsq)", "km2"},
            new String[] {"AREA", "_?(sqmi|mi2)", "mi2"},
            new String[] {"AREA", "_(ha|hectares?)", "ha"},
            new String[] {"AREA", "_?(m2|sqm)", "m2"},
            new String[] {"DISCHARGE", "_?(m3_?s|m3/s|cms|cumecs?)", "m3/s"},
            new String[] {"DISCHARGE", "_?(cfs)", "cfs"},
            new String[] {"DISCHARGE", "_(l_?s|lps|l/s)", "L/s"},
            new String[] {"LENGTH", "_(m|mt|mts|met(er|re)s?|msnm)", "m"},
            new String[] {"LENGTH", "_(ft|feet)", "ft"},
            new String[] {"LENGTH", "_(cm)", "cm"},
            new String[] {"VELOCITY", "_?(m_s|m/s|ms)", "m/s"},
            new String[] {"VELOCITY", "_?(ft_s|ft/s|fps)", "ft/s"},
            new String[] {"SLOPE", "_(m_?m|m/m)", "m/m"},
            new String[] {"SLOPE", "_?(%|pct|percent)", "%"});

    /** How well a heading fits: place among the words, 0 best, and the unit at its end, if any. */
    record Fit(int rank, Optional<String> unit) {}

    static List<ColumnRole> all() {
        List<ColumnRole> roles = new ArrayList<>();
        for (CsvTable.Row row :
                CsvTable.ofResource(ColumnRole.class, "columns.csv").rows()) {
            List<Pattern> words = new ArrayList<>();
            for (String word : row.value("words").split(" ")) {
                words.add(Pattern.compile(word));
            }
            String dimension = row.value("dimension");
            roles.add(new ColumnRole(
                    row.value("role"),
                    List.copyOf(words),
                    Shows.valueOf(row.value("shows")),
                    dimension.isEmpty() ? Optional.empty() : Optional.of(Dimension.valueOf(dimension))));
        }
        return List.copyOf(roles);
    }

    Optional<Fit> fit(String heading) {
        String plain = heading.strip().toLowerCase(Locale.ROOT);
        plain = plain.replaceAll("[\\s.-]+", "_");
        Optional<Fit> whole = rank(plain, Optional.empty());
        if (whole.isPresent() || dimension.isEmpty()) {
            return whole;
        }
        for (String[] ending : ENDINGS) {
            Matcher matcher = Pattern.compile("(.*?)" + ending[1]).matcher(plain);
            if (ending[0].equals(dimension.get().name()) && matcher.matches()) {
                Optional<Fit> fit = rank(matcher.group(1), Optional.of(ending[2]));
                if (fit.isPresent()) {
                    return fit;
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Fit> rank(String stem, Optional<String> unit) {
        String bare = stem.replaceAll("^_+|_+$", "");
        for (int i = 0; i < words.size(); i++) {
            if (words.get(i).matcher(bare).matches()) {
                return Optional.of(new Fit(i, unit));
            }
        }
        return Optional.empty();
    }

    /** Whether a column's values can be this. */
    boolean accepts(ColumnValues values, int features) {
        return refusal("", values, features).isEmpty() && (shows != Shows.TEXT || !values.isNumeric());
    }

    /** Why a column cannot be this, if it cannot. */
    Optional<String> refusal(String column, ColumnValues values, int features) {
        String reason = "";
        if (values.filled() == 0) {
            reason = " is blank everywhere";
        } else if (shows == Shows.DIFFERENT && !values.allDiffer(features)) {
            reason = " is blank or the same in several features, which an id must not be";
        } else if (shows == Shows.NUMBER && !values.isNumeric()) {
            reason = " holds text (" + values.texts().iterator().next() + "), not numbers";
        } else if (shows == Shows.NUMBER && values.low() < 0 && !key.startsWith("elevation")) {
            reason = " has values below 0, which cannot be";
        }
        return reason.isEmpty()
                ? Optional.empty()
                : Optional.of(column + reason + "; give another column for " + shown() + ", or none");
    }

    /** As people say it. */
    String shown() {
        return key.equals("id") ? "reach id" : key.equals("name") ? "river name" : key.replace('-', ' ');
    }
}
