// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import java.time.LocalDate;
import java.util.List;

/**
 * What all pages draw from.
 *
 * @param title of the scenario
 * @param preparedBy who made it
 * @param date of the scenario
 * @param states names of its flow states
 * @param every samples for which one duplicate and one blank are taken
 * @param plan places and bottles
 * @param words words on the pages
 */
record Kit(
        String title,
        String preparedBy,
        LocalDate date,
        List<String> states,
        int every,
        SamplePlan plan,
        KitWords words) {
    /** Left edge of what is printed [mm]. */
    static final double LEFT = 15;
    /** Right edge of what is printed [mm]. */
    static final double RIGHT = Sheet.WIDTH - 15;
    /** Width of what is printed [mm]. */
    static final double WIDTH = RIGHT - LEFT;

    private static final double TOP = 17;
    private static final double FOOT = Sheet.HEIGHT - 9;
    private static final double HEADING = 15;
    private static final double SMALL = 7;
    private static final double SMALLEST = 9;
    private static final double RUNNING = 9;
    private static final double RUNNING_WIDTH = 70;

    /** Copies the list. */
    Kit {
        states = List.copyOf(states);
    }

    /** Heading, title of the scenario and foot; the baseline below which the page is free. */
    double frame(Sheet sheet, String heading) {
        sheet.fitted(LEFT, TOP, WIDTH - RUNNING_WIDTH - 5, HEADING, SMALLEST, true, heading);
        sheet.right(RIGHT, TOP, RUNNING_WIDTH, RUNNING, title);
        sheet.line(LEFT, TOP + 2, RIGHT, TOP + 2);
        sheet.fitted(LEFT, FOOT, WIDTH, SMALL, SMALL, false, words.text("foot", title, date));
        return TOP + 8;
    }
}
