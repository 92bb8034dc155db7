// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.util.Arrays;

/**
 * Cells that wait, lowest level first and, of one level, first come first served. The line of each level runs through the
 * cells' own numbers, so that the queue takes no memory but two numbers a level, however many cells wait. No cell may be added below
 * the level last taken from, and none twice.
 *
 * <p>A cell's number: 0 and above once it is done, whatever then is kept there; {@link #UNSEEN} before it waits; below 0
 * while it waits, with the way to its parent (3 bits) and the next cell in line (28 bits).
 */
final class LevelQueue {
    /** Not waiting yet. */
    static final int UNSEEN = -2;

    /** Most cells that can be told apart [-]. */
    static final int MOST_CELLS = (1 << 28) - 2;

    private static final int NOBODY = (1 << 28) - 1;
    private static final int WAITS = 1 << 31;
    private static final int WAY_SHIFT = 28;
    private static final int WAY_MASK = 7;

    private final CellNumbers links;
    private final int[] first;
    private final int[] last;
    private int level;
    private int way;

    /** An empty queue of levels 0 to {@code levels} - 1 over the cells' numbers. */
    LevelQueue(CellNumbers links, int levels) {
        this.links = links;
        first = new int[levels];
        last = new int[levels];
        Arrays.fill(first, NOBODY);
    }

    /** Adds a cell; {@code way}, 0 to 7, is kept with it. */
    void add(int cell, int atLevel, int toParent) {
        links.put(cell, WAITS | toParent << WAY_SHIFT | NOBODY);
        if (first[atLevel] == NOBODY) {
            first[atLevel] = cell;
        } else {
            int before = last[atLevel];
            links.put(before, links.at(before) & ~NOBODY | cell);
        }
        last[atLevel] = cell;
    }

    /** Takes the next cell, -1 where none waits. Its number is the caller's from here on. */
    int take() {
        while (level < first.length && first[level] == NOBODY) {
            level++;
        }
        if (level == first.length) {
            return -1;
        }
        int cell = first[level];
        int link = links.at(cell);
        first[level] = link & NOBODY;
        way = link >>> WAY_SHIFT & WAY_MASK;
        return cell;
    }

    /** Level of the cell last taken. */
    int level() {
        return level;
    }

    /** What was kept with the cell last taken. */
    int way() {
        return way;
    }
}
