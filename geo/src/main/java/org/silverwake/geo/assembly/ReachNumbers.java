// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.HashMap;
import java.util.Map;

/**
 * A feature's numbers, shared out to a piece of it: heights are interpolated between its ends, the area that drains to
 * it sideways goes by length; all else holds for each piece.
 */
final class ReachNumbers {
    static final String UPPER = "elevation-upper";
    static final String LOWER = "elevation-lower";
    static final String LOCAL_AREA = "local-area";

    private ReachNumbers() {}

    /** Heights exchanged where that makes the reach fall; heights are given for the drawn start and end. */
    static Map<String, Double> turned(Map<String, Double> numbers) {
        Double upper = numbers.get(UPPER);
        Double lower = numbers.get(LOWER);
        if (upper == null || lower == null || upper >= lower) {
            return numbers;
        }
        Map<String, Double> turned = new HashMap<>(numbers);
        turned.put(UPPER, lower);
        turned.put(LOWER, upper);
        return turned;
    }

    /** Numbers of the piece between two fractions [-] of the way downstream. */
    static Map<String, Double> piece(Map<String, Double> numbers, double from, double to) {
        if (numbers.isEmpty() || from <= 0 && to >= 1) {
            return numbers;
        }
        Map<String, Double> piece = new HashMap<>(numbers);
        piece.computeIfPresent(LOCAL_AREA, (key, area) -> area * (to - from));
        heights(piece, UPPER, LOWER, from, to);
        heights(piece, "dem-" + UPPER, "dem-" + LOWER, from, to);
        return piece;
    }

    private static void heights(Map<String, Double> numbers, String upper, String lower, double from, double to) {
        Double top = numbers.get(upper);
        Double bottom = numbers.get(lower);
        if (top != null && bottom != null) {
            numbers.put(upper, top + (bottom - top) * from);
            numbers.put(lower, top + (bottom - top) * to);
        }
    }
}
