// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.util.List;

/**
 * A ruled table.
 *
 * @param widths of its columns [mm]
 * @param rowHeight [mm]
 * @param size of its letters [points]
 */
record Grid(List<Double> widths, double rowHeight, double size) {
    private static final double SMALLEST = 6;
    private static final double INSET = 1.2;

    /** Copies the list. */
    Grid {
        widths = List.copyOf(widths);
    }

    /** Draws a row whose upper edge is at y; its lower edge. Cells that are left out stay empty. */
    double row(Sheet sheet, double y, boolean bold, List<String> cells) {
        double x = Kit.LEFT;
        for (int i = 0; i < widths.size(); i++) {
            sheet.frame(x, y, widths.get(i), rowHeight);
            String cell = i < cells.size() ? cells.get(i) : "";
            if (!cell.isEmpty()) {
                double baseline = y + rowHeight / 2 + size * 0.125;
                sheet.fitted(x + INSET, baseline, widths.get(i) - 2 * INSET, size, SMALLEST, bold, cell);
            }
            x += widths.get(i);
        }
        return y + rowHeight;
    }
}
