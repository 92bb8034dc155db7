// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.whatif.Measured.Column;
import org.silverwake.cli.whatif.ValueSet.Role;
import org.silverwake.cli.whatif.ValueSet.ValueColumn;
import org.silverwake.model.screening.ReachValues.Estimate;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.MercuryPart;

/** Makes the value sets of a run: first what each contributor adds at every spot, then the rows that are worth writing. */
final class ValueSets {
    private final Outcome outcome;
    private final ReachUnits units;
    private final List<int[]> reached;
    private final List<int[]> reachedAt;
    private final List<Measured> measures;
    private final ScreenedValues screened;

    /**
     * For a run.
     *
     * @param reached units by contributor
     */
    ValueSets(Outcome outcome, ReachUnits units, List<BitSet> reached, List<Measured> measures) {
        this.outcome = outcome;
        this.units = units;
        this.reached = reached.stream().map(set -> set.stream().toArray()).toList();
        this.reachedAt = this.reached.stream()
                .map(own -> {
                    int[] at = new int[units.count()];
                    Arrays.fill(at, -1);
                    IntStream.range(0, own.length).forEach(i -> at[own[i]] = i);
                    return at;
                })
                .toList();
        this.measures = measures;
        this.screened = new ScreenedValues(outcome.screening().values(), units);
    }

    private boolean isFixed(Measured measured) {
        return measured.fixed().isPresent() || reached.isEmpty();
    }

    /** What a contributor adds, by measure and state, then by unit reached: column x spots + spot; null without a value. */
    List<float[][]> responses(int contributor, MercuryPart part) {
        List<float[][]> all = new ArrayList<>();
        for (Measured measured : measures) {
            for (int s = 0; s < measured.sets(outcome.result()); s++) {
                int state = s;
                all.add(
                        isFixed(measured)
                                ? new float[0][]
                                : Arrays.stream(reached.get(contributor))
                                        .mapToObj(unit -> spots(measured, state, unit, part))
                                        .toArray(float[][]::new));
            }
        }
        return all;
    }

    /** Values of a part at all spots of a unit, column by column; null where the unit has no value. */
    private float[] spots(Measured measured, int state, int unit, MercuryPart part) {
        int[] own = screened.parts(measured, state, unit);
        if (own.length == 0) {
            return null;
        }
        List<double[]> columns = new ArrayList<>();
        for (Column column : measured.columns(outcome.result())) {
            columns.add(Arrays.stream(own)
                    .mapToObj(reach -> at(measured, column, state, reach, part))
                    .flatMapToDouble(Arrays::stream)
                    .toArray());
        }
        int spots = columns.stream().mapToInt(c -> c.length).max().orElse(0);
        float[] flat = new float[columns.size() * spots];
        for (int c = 0; c < columns.size(); c++) {
            for (int i = 0; i < columns.get(c).length; i++) {
                flat[c * spots + i] = (float) columns.get(c)[i];
            }
        }
        return flat;
    }

    private double[] at(Measured measured, Column column, int state, int reach, MercuryPart part) {
        Bound bound = column.bound();
        return switch (measured.kind()) {
            case WATER -> part.water(bound, column.variant(), state, reach, measured.part());
            case ON_SOLIDS -> part.onSolids(bound, column.variant(), state, reach, measured.part());
            case BED -> new double[] {part.bed(bound, column.variant(), reach)};
            case FISH -> throw new IllegalStateException("no lever moves fish");
        };
    }

    /** The sets, by measure and state. */
    List<List<ValueSet>> sets(MercuryPart background, List<List<float[][]>> responses) {
        List<List<ValueSet>> all = new ArrayList<>();
        int at = 0;
        for (Measured measured : measures) {
            List<ValueSet> own = new ArrayList<>();
            for (int s = 0; s < measured.sets(outcome.result()); s++) {
                int set = at++;
                own.add(
                        isFixed(measured)
                                ? fixed(measured, s)
                                : moved(
                                        measured,
                                        s,
                                        background,
                                        responses.stream().map(r -> r.get(set)).toList()));
            }
            all.add(List.copyOf(own));
        }
        return List.copyOf(all);
    }

    private float background(Measured measured, int state, int unit) {
        return (float) screened.of(measured, Estimate.BACKGROUND, state, unit);
    }

    /** Low and high as they were screened. */
    private ValueSet fixed(Measured measured, int state) {
        int[] counts = new int[units.count()];
        float[] background = new float[counts.length];
        Floats low = new Floats();
        Floats high = new Floats();
        for (int u = 0; u < counts.length; u++) {
            if (!screened.has(measured, state, u)) {
                counts[u] = ValueSet.NO_VALUE;
                continue;
            }
            background[u] = background(measured, state, u);
            float least = (float) screened.of(measured, Estimate.LAID_DOWN, state, u);
            float most = (float) screened.of(measured, Estimate.CARRIED_THROUGH, state, u);
            if (least != background[u] || most != background[u]) {
                counts[u] = 1;
                low.add(least);
                high.add(most);
            }
        }
        Column of = new Column(Bound.LAID_DOWN, 0);
        List<ValueColumn> columns =
                List.of(new ValueColumn(of, Role.LOW, low, List.of()), new ValueColumn(of, Role.HIGH, high, List.of()));
        return new ValueSet(counts, background, columns, List.of());
    }

    private ValueSet moved(Measured measured, int state, MercuryPart part, List<float[][]> responses) {
        int[] counts = new int[units.count()];
        float[] background = new float[counts.length];
        List<Column> columns = measured.columns(outcome.result());
        List<ValueColumn> written = columns.stream()
                .map(of -> new ValueColumn(
                        of,
                        Role.BOTH,
                        new Floats(),
                        responses.stream().map(r -> new Floats()).toList()))
                .toList();
        for (int u = 0; u < counts.length; u++) {
            int unit = u;
            float[] base = spots(measured, state, u, part);
            if (base == null) {
                counts[u] = ValueSet.NO_VALUE;
                continue;
            }
            background[u] = background(measured, state, u);
            List<Integer> here = new ArrayList<>();
            for (int k = 0; k < responses.size(); k++) {
                if (reachedAt.get(k)[u] >= 0) {
                    here.add(k);
                }
            }
            if (!here.isEmpty() || !isAll(base, columns.size(), background[u])) {
                counts[u] = rows(
                        written,
                        base,
                        here,
                        here.stream()
                                .map(k -> responses.get(k)[reachedAt.get(k)[unit]])
                                .toList());
            }
        }
        return new ValueSet(counts, background, written, reached);
    }

    /** Whether every column's largest is one value. */
    private static boolean isAll(float[] base, int columns, float value) {
        int spots = base.length / columns;
        for (int c = 0; c < columns; c++) {
            float largest = 0;
            for (int i = 0; i < spots; i++) {
                largest = Math.max(largest, base[c * spots + i]);
            }
            if (largest != value) {
                return false;
            }
        }
        return true;
    }

    /** Adds the rows of a unit; gives their number. */
    private static int rows(List<ValueColumn> written, float[] base, List<Integer> here, List<float[]> responses) {
        int spots = base.length / written.size();
        List<Integer> kept = new Spots(written.size(), spots, base, responses).kept();
        for (int c = 0; c < written.size(); c++) {
            for (int spot : kept) {
                written.get(c).base().add(base[c * spots + spot]);
            }
            for (int k = 0; k < here.size(); k++) {
                for (int spot : kept) {
                    written.get(c).responses().get(here.get(k)).add(responses.get(k)[c * spots + spot]);
                }
            }
        }
        return kept.size();
    }
}
