// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.whatif;

import java.util.Arrays;
import java.util.List;
import org.silverwake.cli.whatif.Measured.Column;

/**
 * Values of a measure in a flow state, as they are written: rows, which are spots of units, and for each column what no lever
 * moves and what each contributor adds.
 */
public final class ValueSet {
    /** In place of a number of rows: there is no value. */
    static final int NO_VALUE = 255;

    private final int[] counts;
    private final float[] background;
    private final List<ValueColumn> columns;
    private final List<int[]> reached;

    /** For which estimate a column counts. */
    public enum Role {
        BOTH,
        LOW,
        HIGH
    }

    /**
     * A column.
     *
     * @param of bound and variant
     * @param base what no lever moves, by row
     * @param responses by contributor, for the rows of the units it reaches; none where no lever moves the measure
     */
    public record ValueColumn(Column of, Role role, Floats base, List<Floats> responses) {}

    /**
     * A set.
     *
     * @param counts rows by unit
     * @param background by unit
     * @param reached units by contributor
     */
    ValueSet(int[] counts, float[] background, List<ValueColumn> columns, List<int[]> reached) {
        this.counts = counts;
        this.background = background;
        this.columns = List.copyOf(columns);
        this.reached = List.copyOf(reached);
    }

    /** Rows of a unit, or {@link #NO_VALUE}. */
    public int count(int unit) {
        return counts[unit];
    }

    /** Number of units [-]. */
    public int units() {
        return counts.length;
    }

    /** Background by unit. */
    public float[] background() {
        return background.clone();
    }

    /** The columns. */
    public List<ValueColumn> columns() {
        return columns;
    }

    /**
     * Low and high estimate of every unit when each contributor releases so many times what it does.
     *
     * @param factors by contributor [-]
     * @return low, then high; NaN where there is no value
     */
    double[][] at(double[] factors) {
        double[] low = new double[counts.length];
        double[] high = new double[counts.length];
        Arrays.fill(low, Double.POSITIVE_INFINITY);
        for (ValueColumn column : columns) {
            double[] rows = rows(column, factors);
            int row = 0;
            for (int u = 0; u < counts.length; u++) {
                double value = counts[u] == 0 ? background[u] : 0;
                for (int i = 0; counts[u] != NO_VALUE && i < counts[u]; i++) {
                    value = Math.max(value, rows[row++]);
                }
                low[u] = column.role() == Role.HIGH ? low[u] : Math.min(low[u], value);
                high[u] = column.role() == Role.LOW ? high[u] : Math.max(high[u], value);
            }
        }
        for (int u = 0; u < counts.length; u++) {
            if (counts[u] == NO_VALUE) {
                low[u] = Double.NaN;
                high[u] = Double.NaN;
            }
        }
        return new double[][] {low, high};
    }

    private double[] rows(ValueColumn column, double[] factors) {
        double[] rows = new double[column.base().size()];
        for (int i = 0; i < rows.length; i++) {
            rows[i] = column.base().at(i);
        }
        int[] starts = new int[counts.length];
        for (int u = 1; u < starts.length; u++) {
            starts[u] = starts[u - 1] + (counts[u - 1] == NO_VALUE ? 0 : counts[u - 1]);
        }
        for (int k = 0; k < column.responses().size(); k++) {
            int at = 0;
            for (int u : reached.get(k)) {
                for (int i = 0; counts[u] != NO_VALUE && i < counts[u]; i++) {
                    rows[starts[u] + i] +=
                            factors[k] * column.responses().get(k).at(at++);
                }
            }
        }
        return rows;
    }
}
