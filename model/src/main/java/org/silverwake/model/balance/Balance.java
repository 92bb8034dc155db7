// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.balance;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.model.numerics.CompensatedSum;

/**
 * The mass budget of one flow state: what entered and where it went, each term found on its own. Rows are process x form.
 *
 * @param rows the terms
 */
public record Balance(List<Row> rows) {
    /** Copies the rows. */
    public Balance {
        rows = List.copyOf(rows);
    }

    /** Where mercury comes from and goes to. */
    public enum Process {
        RELEASED(true),
        BACKGROUND(true),
        LATERAL(true),
        FROM_BED(true),
        EXPORTED(false),
        SETTLED(false),
        TO_PORES(false),
        OVERBANK(false),
        EVADED(false),
        LOST(false),
        ABSTRACTED(false),
        HELD_DRY(false);

        private final boolean incoming;

        Process(boolean incoming) {
            this.incoming = incoming;
        }

        /** Whether it brings mercury in. */
        public boolean isIncoming() {
            return incoming;
        }
    }

    /**
     * One term.
     *
     * @param process the process
     * @param form the form of mercury
     * @param rate mass per time [kg/s], at least 0
     */
    public record Row(Process process, String form, double rate) {}

    /** Sum of a process over all forms [kg/s]. */
    public double sum(Process process) {
        CompensatedSum sum = new CompensatedSum();
        for (Row row : rows) {
            if (row.process() == process) {
                sum.add(row.rate());
            }
        }
        return sum.value();
    }

    /** Relative closure |in - out|/in [-]; 0 where nothing enters and nothing leaves. */
    public double closure() {
        CompensatedSum difference = new CompensatedSum();
        double in = 0;
        double out = 0;
        for (Row row : rows) {
            difference.add(row.process().isIncoming() ? row.rate() : -row.rate());
            in += row.process().isIncoming() ? row.rate() : 0;
            out += row.process().isIncoming() ? 0 : row.rate();
        }
        return in == 0 ? (out == 0 ? 0 : Double.POSITIVE_INFINITY) : Math.abs(difference.value()) / in;
    }

    /** Two budgets of the same state together. */
    public Balance plus(Balance other) {
        List<Row> all = new ArrayList<>(rows);
        all.addAll(other.rows);
        return new Balance(all);
    }
}
