// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A legal class or use of reaches, which chooses the guideline values that are compared there.
 *
 * @param where file and line, or sheet and cell
 * @param name its name
 * @param guidelines ids of the values compared on its reaches
 * @param use what the water is used for, in words; "" where not told
 * @param legal where the class is laid down, in words; "" where not told
 * @param selection which reaches
 */
public record ReachClass(
        String where, String name, List<String> guidelines, String use, String legal, Selection selection) {
    /** Copies the list. */
    public ReachClass {
        guidelines = List.copyOf(guidelines);
    }

    /** One of four ways to say which reaches. */
    public sealed interface Selection permits ByColumn, Along, Within, Rest {}

    /** Reaches of features that have one of these values in a column of the river layer. */
    public record ByColumn(String column, List<String> values) implements Selection {
        /** Copies the list. */
        public ByColumn {
            values = List.copyOf(values);
        }
    }

    /** Reaches along the river, from one point to another. */
    public record Along(List<Range> ranges) implements Selection {
        /** Copies the list. */
        public Along {
            ranges = List.copyOf(ranges);
        }
    }

    /** Reaches of which more than half lies within the polygons of a layer. */
    public record Within(Path file, Optional<String> layer, Optional<String> crs, Optional<String> filter)
            implements Selection {}

    /** Reaches of no other class. */
    public record Rest() implements Selection {}

    /**
     * A stretch of river. A feature counts from its upstream end at {@code from} and to its downstream end at {@code to},
     * unless a chainage is given; a point of the scenario (site, place, gauge, abstraction) counts as itself.
     *
     * @param from feature id or name of a point where it begins
     * @param to where it ends; the outlet if empty
     * @param fromChainage along the feature in flow direction [m]
     * @param toChainage along the feature in flow direction [m]
     */
    public record Range(String from, Optional<String> to, OptionalDouble fromChainage, OptionalDouble toChainage) {}
}
