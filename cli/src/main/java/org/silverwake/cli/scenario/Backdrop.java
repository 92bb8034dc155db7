// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What maps lie upon.
 *
 * @param hillShade whether slopes are shaded, by the elevation raster of the rivers
 * @param layers further layers, the lowest first
 */
public record Backdrop(boolean hillShade, List<Layer> layers) {
    /** Copies the list. */
    public Backdrop {
        layers = List.copyOf(layers);
    }

    /** What a layer is of, which gives its look. */
    public enum Kind {
        ROADS,
        LAKES,
        SETTLEMENTS,
        FOREST,
        BORDERS,
        OTHER
    }

    /**
     * A layer of any format that can be read.
     *
     * @param where place of its file in the scenario, for messages
     * @param labelWhere place of its label in the scenario
     * @param styleWhere place of its style in the scenario
     * @param file where it is
     * @param layer its name within the file; the only one where empty
     * @param kind what it is of
     * @param label column with names to be written
     * @param color in place of the kind's, as #rrggbb
     * @param width of lines on paper, in place of the kind's [m]
     * @param style styles of its own (SLD or SE), in place of all that
     */
    public record Layer(
            String where,
            String labelWhere,
            String styleWhere,
            Path file,
            Optional<String> layer,
            Kind kind,
            Optional<String> label,
            Optional<String> color,
            OptionalDouble width,
            Optional<Path> style) {}
}
