// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Base64;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;

/** What the page's script does with the data, written from docs/reference/report-data.md alone. */
final class PageModel {
    private static final int LONGEST = 100_000_000;
    private static final int NO_VALUE = 255;
    private static final double YEAR = 365.25;
    private static final double WINDOW = 30;

    private final Map<?, ?> data;
    private final List<float[]> blocks = new ArrayList<>();
    private final double[] factors;

    /**
     * What is shown of a reach.
     *
     * @param answer code, -1 where the guideline does not apply
     */
    record Shown(
            int answer,
            String reason,
            String shade,
            double low,
            double high,
            double background,
            boolean hatched,
            boolean fromBackground) {}

    PageModel(String json) {
        LoadSettings settings =
                LoadSettings.builder().setCodePointLimit(LONGEST).build();
        this.data = (Map<?, ?>) new Load(settings).loadFromString(json);
        for (Object text : list(data, "blocks")) {
            ByteBuffer bytes =
                    ByteBuffer.wrap(Base64.getDecoder().decode((String) text)).order(ByteOrder.LITTLE_ENDIAN);
            float[] block = new float[bytes.remaining() / Float.BYTES];
            bytes.asFloatBuffer().get(block);
            blocks.add(block);
        }
        this.factors = new double[list(data, "contributors").size()];
        Arrays.fill(factors, 1);
    }

    static List<?> list(Map<?, ?> of, String key) {
        return (List<?>) of.get(key);
    }

    static Map<?, ?> map(Map<?, ?> of, String key) {
        return (Map<?, ?>) of.get(key);
    }

    static double number(Object value) {
        return ((Number) value).doubleValue();
    }

    Map<?, ?> data() {
        return data;
    }

    @SuppressWarnings("unchecked")
    List<Map<?, ?>> items(String key) {
        return (List<Map<?, ?>>) data.get(key);
    }

    int reaches() {
        return (Integer) map(data, "reaches").get("count");
    }

    static BitSet runs(List<?> runs) {
        BitSet set = new BitSet();
        int at = 0;
        for (Object step : runs) {
            at += (Integer) step;
            set.set(at);
        }
        return set;
    }

    /** Moves every lever so far from where it is now toward its other end [-]. */
    void move(double... ways) {
        Arrays.fill(factors, 1);
        List<Map<?, ?>> levers = items("levers");
        for (int l = 0; l < ways.length; l++) {
            for (Object end : list(levers.get(l), "of")) {
                int k = (Integer) ((Map<?, ?>) end).get("contributor");
                factors[k] *= 1 + ways[l] * (number(((Map<?, ?>) end).get("atEnd")) - 1);
            }
        }
    }

    double[] factors() {
        return factors.clone();
    }

    /** Low, high and background of every reach; NaN without a value. */
    double[][] values(int measure, int state) {
        Map<?, ?> fish = map(items("measures").get(measure), "fish");
        return fish == null ? ownValues(measure, state) : fish(fish, ownValues(measure, 0));
    }

    /** Fish from the water over the year, over their range; where they have no value as run they have none. */
    private double[][] fish(Map<?, ?> fish, double[][] own) {
        int n = reaches();
        double[][] year = new double[3][n];
        double[] shares = new double[n];
        for (int s = 0; s < list(data, "states").size(); s++) {
            double share = number(items("states").get(s).get("share"));
            double[][] water = ownValues((Integer) fish.get("measure"), s);
            for (int r = 0; r < n; r++) {
                shares[r] += Double.isNaN(water[0][r]) ? 0 : share;
                for (int which = 0; which < 3; which++) {
                    year[which][r] += Double.isNaN(water[0][r]) ? 0 : share * water[which][r];
                }
            }
        }
        double[] factors = {number(fish.get("low")), number(fish.get("high")), number(fish.get("background"))};
        float[] weights = blocks.get((Integer) fish.get("weights"));
        int at = 0;
        for (int r = 0; r < n; r++) {
            double[] sums = new double[3];
            for (int i = 0; i < (Integer) list(fish, "sizes").get(r); i++) {
                int there = (Integer) list(fish, "reaches").get(at);
                for (int which = 0; which < 3; which++) {
                    sums[which] += weights[at] * year[which][there] / shares[there];
                }
                at++;
            }
            boolean none = Double.isNaN(own[0][r]);
            for (int which = 0; which < 3; which++) {
                own[which][r] = none ? Double.NaN : factors[which] * sums[which];
            }
        }
        return own;
    }

    private double[][] ownValues(int measure, int state) {
        Map<?, ?> set =
                (Map<?, ?>) list(items("measures").get(measure), "states").get(state);
        byte[] counts = Base64.getDecoder().decode((String) set.get("counts"));
        double[][] values = new double[3][counts.length];
        float[] background = block(set.get("background"), counts.length);
        Arrays.fill(values[0], Double.POSITIVE_INFINITY);
        for (Object column : list(set, "columns")) {
            column((Map<?, ?>) column, counts, background, values);
        }
        for (int r = 0; r < counts.length; r++) {
            values[2][r] = background[r];
            if ((counts[r] & 0xff) == NO_VALUE) {
                values[0][r] = Double.NaN;
                values[1][r] = Double.NaN;
            }
        }
        return values;
    }

    private float[] block(Object index, int size) {
        int i = (Integer) index;
        return i < 0 ? new float[size] : blocks.get(i);
    }

    private void column(Map<?, ?> column, byte[] counts, float[] background, double[][] values) {
        int[] starts = new int[counts.length];
        int rows = 0;
        for (int r = 0; r < counts.length; r++) {
            starts[r] = rows;
            rows += (counts[r] & 0xff) == NO_VALUE ? 0 : counts[r] & 0xff;
        }
        double[] sum = new double[rows];
        float[] base = block(column.get("base"), rows);
        for (int i = 0; i < rows; i++) {
            sum[i] = base[i];
        }
        List<?> responses = list(column, "responses");
        for (int k = 0; k < responses.size(); k++) {
            if ((Integer) responses.get(k) >= 0) {
                float[] response = blocks.get((Integer) responses.get(k));
                int at = 0;
                for (int r : runs(list(items("contributors").get(k), "reaches")).stream()
                        .toArray()) {
                    for (int i = 0; (counts[r] & 0xff) != NO_VALUE && i < counts[r]; i++) {
                        sum[starts[r] + i] += factors[k] * response[at++];
                    }
                }
            }
        }
        String role = (String) column.get("role");
        for (int r = 0; r < counts.length; r++) {
            double value = counts[r] == 0 ? background[r] : 0;
            for (int i = 0; (counts[r] & 0xff) != NO_VALUE && i < counts[r]; i++) {
                value = Math.max(value, sum[starts[r] + i]);
            }
            values[0][r] = role.equals("high") ? values[0][r] : Math.min(values[0][r], value);
            values[1][r] = role.equals("low") ? values[1][r] : Math.max(values[1][r], value);
        }
    }

    /** A guideline's answers of all reaches; in one state, or as the guideline asks where it is -1. */
    List<Shown> shown(int guideline, int state) {
        Map<?, ?> g = items("guidelines").get(guideline);
        int measure = (Integer) g.get("measure");
        boolean one = (Boolean) g.get("isOneForAllStates");
        List<double[][]> values = new ArrayList<>();
        List<Integer> states = new ArrayList<>();
        for (int s = 0; measure >= 0 && s < (one ? 1 : list(data, "states").size()); s++) {
            if (one || state < 0 || s == state) {
                values.add(values(measure, s));
                states.add(s);
            }
        }
        BitSet leftOut = runs(list(g, "leftOut"));
        List<Shown> shown = new ArrayList<>();
        for (int r = 0; r < reaches(); r++) {
            shown.add(
                    leftOut.get(r)
                            ? new Shown(-1, "", "does-not-apply", 0, 0, 0, false, false)
                            : shown(g, r, states, values, state >= 0));
        }
        return shown;
    }

    private static Shown without(String reason) {
        return new Shown(3, reason, reason.equals("NO_WATER") ? "no-water" : "not-assessed", 0, 0, 0, false, false);
    }

    private String reason(Object code) {
        return (Integer) code < 0
                ? ""
                : (String) items("reasons").get((Integer) code).get("key");
    }

    private Shown shown(Map<?, ?> g, int r, List<Integer> states, List<double[][]> values, boolean inState) {
        Map<?, ?> reaches = map(data, "reaches");
        String medium = (String) g.get("medium");
        boolean fish = medium.equals("fish");
        if ((Integer) g.get("measure") < 0) {
            return without("NOT_MODELLED");
        }
        String unassessed = reason(list(reaches, "unassessed").get(r));
        if (!fish && !unassessed.isEmpty()) {
            return without(unassessed);
        }
        for (int k = 0; !fish && k < factors.length; k++) {
            if (factors[k] > 0
                    && runs(list(items("contributors").get(k), "withinOneWidth"))
                            .get(r)) {
                return without("NEAR_BANK_OUTFALL");
            }
        }
        List<Integer> used = new ArrayList<>();
        for (int i = 0; i < states.size(); i++) {
            if (!Double.isNaN(values.get(i)[0][r])) {
                used.add(i);
            }
        }
        if (used.isEmpty()) {
            boolean wet = states.stream()
                    .anyMatch(s -> !runs(list(items("states").get(s), "dry")).get(r));
            return without(
                    fish
                            ? "NO_WATER"
                            : medium.equals("bed sediment")
                                    ? "NO_SOLIDS_DEPOSIT"
                                    : wet ? "NO_SUSPENDED_SOLIDS" : "NO_WATER");
        }
        String averaging = inState ? "any-state" : (String) g.get("averaging");
        double a = average(averaging, 0, r, used, states, values);
        double b = average(averaging, 1, r, used, states, values);
        double background = average(averaging, 2, r, used, states, values);
        return judged(g, r, Math.min(a, b), Math.max(a, b), background);
    }

    private String doubt(Map<?, ?> g, int r) {
        if (g.get("doubt") != null) {
            return reason(list(g, "doubt").get(r));
        }
        Map<?, ?> reaches = map(data, "reaches");
        String doubt = reason(list(reaches, "doubt").get(r));
        boolean cyanide = g.get("substance").equals("cyanide")
                && runs(list(reaches, "cyanideDoubt")).get(r);
        return doubt.isEmpty() && cyanide ? reason(reaches.get("cyanideDoubtReason")) : doubt;
    }

    private Shown judged(Map<?, ?> g, int r, double low, double high, double background) {
        String doubt = doubt(g, r);
        boolean fish = g.get("medium").equals("fish");
        if (high == 0) {
            String nothing = fish
                    ? "NO_METHYLMERCURY"
                    : g.get("substance").equals("cyanide") ? "NO_CYANIDE_UPSTREAM" : "NO_SOURCE_UPSTREAM";
            return without(doubt.isEmpty() ? nothing : doubt);
        }
        double f = number(g.get("factor"));
        double value = number(g.get("value"));
        Map<?, ?> rule = map(data, "rule");
        int answer = low / value > f ? 0 : high / value < 1 / f ? 2 : 1;
        if (answer == 2 && !doubt.isEmpty()) {
            return without(doubt);
        }
        String shade = answer == 0
                ? low / value > number(rule.get("farAbove")) * f ? "far-above" : "above"
                : answer == 1 ? low / value > 1 ? "likely-above" : "may-be-above" : "below";
        boolean hatched = !fish && high > number(rule.get("boundsRatio")) * low;
        return new Shown(answer, "", shade, low, high, background, hatched, background > value);
    }

    private double average(
            String averaging, int which, int r, List<Integer> used, List<Integer> states, List<double[][]> values) {
        List<double[]> found = new ArrayList<>();
        for (int i : used) {
            found.add(new double[] {number(items("states").get(states.get(i)).get("share")), values.get(i)[which][r]});
        }
        found.sort(Comparator.comparingDouble(each -> -each[1]));
        if (averaging.equals("year")) {
            double sum = found.stream().mapToDouble(each -> each[0] * each[1]).sum();
            return sum / found.stream().mapToDouble(each -> each[0]).sum();
        }
        if (averaging.equals("30-day")) {
            double filled = 0;
            double sum = 0;
            for (double[] each : found) {
                double days = Math.min(WINDOW - filled, each[0] * YEAR);
                sum += days * each[1];
                filled += days;
            }
            return sum / filled;
        }
        return found.get(0)[1];
    }

    /** The near-bank mark of a state's map. */
    boolean isNearBank(int state, int reach) {
        for (int k = 0; k < factors.length; k++) {
            List<?> nearBank = list(items("contributors").get(k), "nearBank");
            if (factors[k] > 0 && runs((List<?>) nearBank.get(state)).get(reach)) {
                return true;
            }
        }
        return false;
    }
}
