// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.text.Numbers;

/** Classes of amounts by decades below the largest: "more than 10", "more than 1" ..., and the rest. */
final class DecadeClasses {
    private static final int TENFOLD = 10;

    private final double top;
    private final int count;

    /** As many classes of one decade each, the first with the largest amount, at least 0 [any unit]. */
    DecadeClasses(double largest, int count) {
        this.top = largest > 0 ? StrictMath.pow(TENFOLD, Math.floor(StrictMath.log10(largest))) : 1;
        this.count = count;
    }

    private double least(int of) {
        return top / StrictMath.pow(TENFOLD, of);
    }

    /** The class of an amount; that of the rest is the number of decades. */
    int of(double amount) {
        int k = 0;
        while (k < count && !(amount > least(k))) {
            k++;
        }
        return k;
    }

    /** What a legend says of the decades. */
    List<String> words(String unit) {
        List<String> words = new ArrayList<>();
        for (int k = 0; k < count; k++) {
            words.add("More than " + Numbers.shown(least(k), 3) + " " + unit);
        }
        return words;
    }
}
