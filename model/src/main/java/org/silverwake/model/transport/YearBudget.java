// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.List;
import org.silverwake.model.numerics.CompensatedSum;

/** Where mercury went in a time, member by member [kg]; every term is added up by itself. */
final class YearBudget {
    /** What is left of less is not held against closure [kg]: far below one atom doubles have no digits left to close with. */
    private static final double NOTHING = 1e-200;

    private final int members;
    private final double[][] amount;
    private final double[] began;
    private final double[] store;
    private double duration;

    /** Where mercury comes from and goes to. */
    enum Term {
        ENTERED,
        EXPORTED,
        EVADED,
        OVERBANK,
        ABSTRACTED,
        HELD_DRY,
        BURIED
    }

    YearBudget(int members) {
        this.members = members;
        this.amount = new double[Term.values().length][members];
        this.began = new double[members];
        this.store = new double[members];
    }

    /** A budget that goes on from this one: what the beds held then is where it starts, everything else is 0. */
    YearBudget next() {
        YearBudget next = new YearBudget(members);
        System.arraycopy(store, 0, next.began, 0, members);
        return next;
    }

    /** This budget and the one that follows it together. */
    YearBudget plus(YearBudget next) {
        YearBudget sum = new YearBudget(members);
        for (int t = 0; t < amount.length; t++) {
            for (int m = 0; m < members; m++) {
                sum.amount[t][m] = amount[t][m] + next.amount[t][m];
            }
        }
        System.arraycopy(began, 0, sum.began, 0, members);
        System.arraycopy(next.store, 0, sum.store, 0, members);
        return sum;
    }

    /** Takes the terms of the parts of a network together; of one part as they are. */
    void sum(List<YearBudget> parts) {
        for (int t = 0; t < amount.length; t++) {
            for (int m = 0; m < members; m++) {
                CompensatedSum all = new CompensatedSum();
                for (YearBudget part : parts) {
                    all.add(part.amount[t][m]);
                }
                amount[t][m] = all.value();
            }
        }
    }

    /** Length of the present step [s]. */
    void duration(double seconds) {
        duration = seconds;
    }

    /** Adds loads [kg/s] of all forms, times a factor, over the present step. */
    void add(Term term, double[] load, double factor) {
        addAt(term, load, 0, load.length, factor);
    }

    /** The same for a part of an array that begins at an index. */
    void addAt(Term term, double[] load, int from, int length, double factor) {
        double[] into = amount[term.ordinal()];
        double scale = factor * duration;
        for (int i = 0; i < length; i++) {
            into[i % members] += load[from + i] * scale;
        }
    }

    /** Adds a rate [kg/s] of one member. */
    void addOne(Term term, int member, double rate) {
        amount[term.ordinal()][member] += rate * duration;
    }

    /** Takes what the beds hold, index (cell x forms + form) x members + member [kg]. */
    void setStore(double[] stock) {
        java.util.Arrays.fill(store, 0);
        for (int i = 0; i < stock.length; i++) {
            store[i % members] += stock[i];
        }
    }

    /** The same for what the beds hold in the beginning. */
    void begin(double[] stock) {
        setStore(stock);
        System.arraycopy(store, 0, began, 0, members);
    }

    /** Amount of a term [kg]. */
    double amount(Term term, int member) {
        return amount[term.ordinal()][member];
    }

    /** What the beds hold [kg]. */
    double store(int member) {
        return store[member];
    }

    /** What the beds held in the beginning [kg]. */
    double began(int member) {
        return began[member];
    }

    /** Worst relative closure over members [-], of what was there and came in. */
    double closure() {
        double worst = 0;
        for (int m = 0; m < members; m++) {
            double in = began[m] + amount(Term.ENTERED, m);
            double left = in - store[m];
            for (Term term : Term.values()) {
                left -= term == Term.ENTERED ? 0 : amount(term, m);
            }
            worst = Math.max(worst, Math.abs(left) / Math.max(in, NOTHING));
        }
        return worst;
    }
}
