// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.util.BitSet;
import org.silverwake.geo.GeoDataException;

/**
 * Which reach each cell of a raster drains to. Water floods in from the rivers and from the raster's rim, lowest cell first,
 * so that each pit fills to its lowest way out (priority-flood: R. Barnes, C. Lehman and D. Mulla 2014, Priority-flood: an optimal
 * depression-filling and watershed-labeling algorithm for digital elevation models, Computers and Geosciences 62, 117-127). A cell drains to the
 * neighbor of the steepest descent on the filled surface (D8: J. F. O'Callaghan and D. M. Mark 1984, The extraction of drainage networks
 * from digital elevation data, Computer Vision, Graphics, and Image Processing 28, 323-344); where none is lower, in flats and filled pits, back along the shortest way
 * that the flood came.
 *
 * <p>Rivers are burned in without a bottom: a cell beside a river drains into it, to the reach nearest to its center. Only past an end of
 * the network, where a river begins or flows out, a cell that lies lower than the river there keeps its own way. What flows
 * along a river is the network's matter, so that its directions win.
 *
 * <p>Heights count in steps of 1/1024 m, in twice that where they span more than 4 km, and so on. 8 bytes a cell.
 */
final class PriorityFlood {
    /** What takes the land's cells in. */
    interface Land {
        /**
         * A cell of land is done.
         *
         * @param label twice the reach's index, one more where it drains to the head of a headwater; or {@link #EDGE}
         * @param atRim whether it lies at the raster's rim, so that land beyond may drain to it
         * @param known whether the raster has its height
         */
        void take(int column, int row, int label, boolean atRim, boolean known);
    }

    /** Label of what drains over the raster's edge or to places without heights beyond. */
    static final int EDGE = (1 << 30) - 1;

    private static final int OUTSIDE = EDGE - 1;
    private static final int RIVER = 1 << 30;
    private static final int MOST_LEVELS = 1 << 22;
    private static final double FINEST = 1024;
    private static final int[] DX = {1, 1, 0, -1, -1, -1, 0, 1};
    private static final int[] DY = {0, 1, 1, 1, 0, -1, -1, -1};
    private static final int WAYS = 8;

    private final int columns;
    private final int rows;
    private final CellGround ground;
    private final BurnedRivers rivers;
    private final BurnedRivers.Search search;
    private final CellNumbers levels;
    private final CellNumbers links;
    private final LevelQueue queue;
    private final BitSet voids = new BitSet();
    private final BitSet inside = new BitSet();
    private final BitSet beyond = new BitSet();
    private double lowest = Double.POSITIVE_INFINITY;
    private double highest = Double.NEGATIVE_INFINITY;

    PriorityFlood(ElevationModel model, CellGround ground, BurnedRivers rivers) {
        this.columns = model.columns();
        this.rows = model.rows();
        this.ground = ground;
        this.rivers = rivers;
        this.search = rivers.new Search();
        int cells = columns * rows;
        if (cells > LevelQueue.MOST_CELLS) {
            throw new GeoDataException(model + ": too many cells");
        }
        levels = CellNumbers.of(cells, 2); // and the links
        links = CellNumbers.of(cells);
        queue = new LevelQueue(links, levels(model));
    }

    /** Puts heights as whole numbers from 1, 0 where there is none; gives the number of levels. */
    private int levels(ElevationModel model) {
        int cells = columns * rows;
        for (int cell = 0; cell < cells; cell++) {
            links.put(cell, LevelQueue.UNSEEN);
            double height = model.height(cell);
            if (!Double.isNaN(height)) {
                lowest = Math.min(lowest, height);
                highest = Math.max(highest, height);
            }
        }
        double perMeter = FINEST;
        while ((highest - lowest) * perMeter > MOST_LEVELS) {
            perMeter /= 2;
        }
        int most = 0;
        for (int cell = 0; cell < cells; cell++) {
            double height = model.height(cell);
            int level = Double.isNaN(height) ? 0 : 1 + (int) Math.rint((height - lowest) * perMeter);
            levels.put(cell, level);
            most = Math.max(most, level);
        }
        return most + 1;
    }

    /** Floods the raster; each cell of land is given once. */
    void run(Land land) {
        outside();
        rivers(land);
        besideRivers();
        rim();
        for (int cell = queue.take(); cell >= 0; cell = queue.take()) {
            settle(cell, land);
        }
    }

    /** Whether some of a reach runs over land, once the flood has run. */
    boolean isInside(int reach) {
        return inside.get(reach);
    }

    /** Whether some of a reach runs where there are no heights at the raster's border, once the flood has run. */
    boolean isBeyond(int reach) {
        return beyond.get(reach);
    }

    /** Cells without height that hang together with the raster's border are outside. */
    private void outside() {
        LevelQueue spread = new LevelQueue(links, 1);
        for (int cell = 0; cell < columns * rows; cell = nextOfBorder(cell)) {
            wet(spread, cell);
        }
        for (int cell = spread.take(); cell >= 0; cell = spread.take()) {
            links.put(cell, OUTSIDE);
            for (int way = 0; way < WAYS; way++) {
                wet(spread, neighbor(cell % columns, cell / columns, way));
            }
        }
    }

    private void wet(LevelQueue spread, int cell) {
        if (cell >= 0 && links.at(cell) == LevelQueue.UNSEEN && levels.at(cell) == 0) {
            spread.add(cell, 0, 0);
        }
    }

    private void rivers(Land land) {
        int before = -1;
        boolean beforeOut = false;
        for (int k = 0; k < rivers.crossings(); k++) {
            int cell = rivers.cell(k);
            boolean out = cell == before ? beforeOut : links.at(cell) == OUTSIDE;
            (out ? beyond : inside).set(rivers.reach(k));
            if (cell != before) {
                int column = cell % columns;
                int row = cell / columns;
                search.clear();
                search.look(cell, column, row, aspect(row));
                if (!out) {
                    boolean entered = search.isHead() && isBorder(column, row);
                    land.take(column, row, label(), entered, levels.at(cell) > 0);
                }
                links.put(cell, RIVER | label());
                before = cell;
                beforeOut = out;
            }
        }
    }

    private void besideRivers() {
        int before = -1;
        for (int k = 0; k < rivers.crossings(); k++) {
            if (rivers.cell(k) != before) {
                before = rivers.cell(k);
                for (int way = 0; way < WAYS; way++) {
                    int beside = neighbor(before % columns, before / columns, way);
                    if (beside >= 0 && links.at(beside) == LevelQueue.UNSEEN) {
                        reach(beside, 0, way);
                    }
                }
            }
        }
    }

    /** Land at the raster's border or beside the outside. */
    private void rim() {
        for (int cell = 0; cell < columns * rows; cell = nextOfBorder(cell)) {
            if (links.at(cell) == LevelQueue.UNSEEN) {
                queue.add(cell, levels.at(cell), 0);
            }
        }
        for (int cell = 0; cell < columns * rows; cell++) {
            if (links.at(cell) == OUTSIDE) {
                for (int way = 0; way < WAYS; way++) {
                    int beside = neighbor(cell % columns, cell / columns, way);
                    if (beside >= 0 && links.at(beside) == LevelQueue.UNSEEN) {
                        queue.add(beside, levels.at(beside), 0);
                    }
                }
            }
        }
    }

    private int nextOfBorder(int cell) {
        int row = cell / columns;
        boolean inside = row > 0 && row < rows - 1 && cell % columns == 0 && columns > 1;
        return inside ? cell + columns - 1 : cell + 1;
    }

    private int label() {
        return 2 * search.found() + (search.isHead() ? 1 : 0);
    }

    private double aspect(int row) {
        return ground.south(row) / ground.east(row);
    }

    private boolean isBorder(int column, int row) {
        return column == 0 || row == 0 || column == columns - 1 || row == rows - 1;
    }

    private int neighbor(int fromColumn, int fromRow, int way) {
        int column = fromColumn + DX[way];
        int row = fromRow + DY[way];
        return column < 0 || row < 0 || column >= columns || row >= rows ? -1 : row * columns + column;
    }

    private static int back(int way) {
        return way + WAYS / 2 & WAYS - 1;
    }

    private void settle(int cell, Land land) {
        int column = cell % columns;
        int row = cell / columns;
        int level = queue.level();
        int parent = queue.way();
        boolean rim = isBorder(column, row);
        boolean beside = false;
        double steepest = 0;
        int label = BurnedRivers.NONE;
        for (int way = 0; way < WAYS; way++) {
            int other = neighbor(column, row, way);
            int link = other < 0 ? OUTSIDE : links.at(other);
            if (link == LevelQueue.UNSEEN) {
                reach(other, level, way);
            } else if (link == OUTSIDE) {
                rim = true;
            } else if (link >= RIVER) {
                beside = true;
            } else if (link >= 0 && (level - levels.at(other)) / distance(row, way) > steepest) {
                steepest = (level - levels.at(other)) / distance(row, way);
                label = link;
            }
        }
        int river = beside ? river(cell, column, row, label == BurnedRivers.NONE && !rim) : BurnedRivers.NONE;
        if (river != BurnedRivers.NONE) {
            label = river;
        } else if (label == BurnedRivers.NONE) {
            label = rim ? EDGE : links.at(neighbor(column, row, parent)) & ~RIVER;
        }
        links.put(cell, label);
        land.take(column, row, label, rim, !voids.get(cell));
    }

    /** The flood reaches a cell: it fills at least to the flood's level. */
    private void reach(int cell, int level, int way) {
        if (levels.at(cell) == 0) {
            voids.set(cell);
        }
        levels.put(cell, Math.max(level, levels.at(cell)));
        queue.add(cell, levels.at(cell), back(way));
    }

    /** Label of the nearest reach in the river cells beside a cell; none where the cell lies lower than an end of the network and has another way. */
    private int river(int cell, int column, int row, boolean only) {
        search.clear();
        for (int way = 0; way < WAYS; way++) {
            int other = neighbor(column, row, way);
            if (other >= 0 && links.at(other) >= RIVER) {
                search.look(other, column, row, aspect(row));
            }
        }
        boolean past = !only && search.isPastEnd() && levels.at(cell) < levels.at(search.endCell());
        return past ? BurnedRivers.NONE : label();
    }

    private double distance(int row, int way) {
        if (DY[way] == 0) {
            return ground.east(row);
        }
        return DX[way] == 0 ? ground.south(row) : Math.hypot(ground.east(row), ground.south(row));
    }
}
