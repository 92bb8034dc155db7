// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.silverwake.cli.scenario.AnswerText;
import org.silverwake.cli.scenario.Table;
import org.silverwake.cli.text.Numbers;

/** Reads states and their shares of the year: "dry 0.6, wet 0.4", "dry 7, wet 5" (months) or "dry 60%, wet 40%". */
final class StateShares {
    private static final double ROUNDING = 1e-6;
    /** Thirds in three digits sum to 0.999. */
    private static final double TYPED = 0.0011;

    private static final double MONTHS = 12;
    private static final double PERCENT = 100;
    private static final Pattern PART =
            Pattern.compile("(.*?)[\\s:=]+(\\d+(?:[.,]\\d*)?|[.,]\\d+)\\s*(%|months?)?", Pattern.CASE_INSENSITIVE);

    /**
     * A state and its share.
     *
     * @param state its name
     * @param ofYear share of the year [-]
     */
    record Share(String state, double ofYear) {
        String text() {
            return Numbers.shown(ofYear, 7);
        }
    }

    private StateShares() {}

    /**
     * The states, with shares that sum to 1.
     *
     * @throws IllegalArgumentException in words for the user
     */
    static List<Share> parse(String answer) {
        List<Share> read = new ArrayList<>();
        Set<String> columns = new HashSet<>();
        double sum = 0;
        for (String part : answer.split(",(?=\\s*(\\p{L}|$))|;")) {
            Matcher matcher = PART.matcher(part.strip());
            if (!matcher.matches()) {
                throw new IllegalArgumentException("\"" + part.strip()
                        + "\" has no share of the year; give a name and a share, such as dry 0.6, wet 0.4");
            }
            String name = AnswerText.stateName(matcher.group(1).strip().toLowerCase(Locale.ROOT));
            if (!columns.add(Table.columnName(name))) {
                throw new IllegalArgumentException("\"" + name + "\" is there twice; give each state its own name");
            }
            double share = Double.parseDouble(matcher.group(2).replace(',', '.'));
            read.add(new Share(name, share));
            sum += share;
        }
        return toOne(read, whole(sum), sum);
    }

    /** What the shares sum to: 1, the months of a year, or percent. Thirds may be a little off. */
    private static double whole(double sum) {
        for (double whole : List.of(1.0, MONTHS, PERCENT)) {
            if (Math.abs(sum - whole) < TYPED * whole) {
                return whole;
            }
        }
        throw new IllegalArgumentException("they sum to " + Numbers.shown(sum, 7)
                + "; give shares that sum to 1, or months that sum to 12, or percent that sum to 100");
    }

    /** The last takes what rounding leaves. */
    private static List<Share> toOne(List<Share> read, double whole, double sum) {
        List<Share> shares = new ArrayList<>();
        double left = 1;
        for (Share each : read) {
            boolean last = shares.size() == read.size() - 1;
            double share = round(last ? left : each.ofYear() / (Math.abs(sum - whole) < ROUNDING ? whole : sum));
            left -= share;
            shares.add(new Share(each.state(), share));
        }
        return shares;
    }

    private static double round(double share) {
        return Math.rint(share / ROUNDING) * ROUNDING;
    }
}
