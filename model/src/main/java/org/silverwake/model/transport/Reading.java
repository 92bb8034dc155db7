// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.HashMap;
import java.util.Map;

/**
 * One linear functional of what a steady run computes: weights on loads at heads and ends of cells and on their time
 * integrals, by flow state, and on stocks of the bed. The value it reads is the sum of weight x what it weighs.
 */
final class Reading {
    private final int cells;
    private final int forms;
    private final Map<Integer, double[]> head = new HashMap<>();
    private final Map<Integer, double[]> end = new HashMap<>();
    private final Map<Integer, double[]> time = new HashMap<>();
    private final Map<Integer, double[]> stock = new HashMap<>();

    Reading(int cells, int forms) {
        this.cells = cells;
        this.forms = forms;
    }

    private double[] at(Map<Integer, double[]> of, int state, int cell) {
        return of.computeIfAbsent(state * cells + cell, k -> new double[forms]);
    }

    /** Weighs the load at a cell's head [value per kg/s]. */
    void head(int state, int cell, int form, double weight) {
        at(head, state, cell)[form] += weight;
    }

    /** Weighs the load at a cell's end [value per kg/s]. */
    void end(int state, int cell, int form, double weight) {
        at(end, state, cell)[form] += weight;
    }

    /** Weighs the time integral of a load [value per kg]. */
    void time(int state, int cell, int form, double weight) {
        at(time, state, cell)[form] += weight;
    }

    /** Weighs what a cell's bed holds [value per kg]. */
    void stock(int cell, int form, double weight) {
        at(stock, 0, cell)[form] += weight;
    }

    /** Whether it reads anything in a cell. */
    boolean reads(int state, int cell) {
        int key = state * cells + cell;
        return head.containsKey(key) || end.containsKey(key) || time.containsKey(key) || stock.containsKey(cell);
    }

    /** Adds the weights at a cell's head to form i at {@code offset + i x stride}. */
    void addHead(int state, int cell, double[] into, int offset, int stride) {
        add(head.get(state * cells + cell), into, offset, stride);
    }

    /** The same at its end. */
    void addEnd(int state, int cell, double[] into, int offset, int stride) {
        add(end.get(state * cells + cell), into, offset, stride);
    }

    /** The same of time integrals. */
    void addTime(int state, int cell, double[] into, int offset, int stride) {
        add(time.get(state * cells + cell), into, offset, stride);
    }

    /** The same of the bed's stock. */
    void addStock(int cell, double[] into, int offset, int stride) {
        add(stock.get(cell), into, offset, stride);
    }

    private void add(double[] weights, double[] into, int offset, int stride) {
        for (int i = 0; weights != null && i < forms; i++) {
            into[offset + i * stride] += weights[i];
        }
    }
}
