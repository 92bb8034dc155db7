// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.nio.file.Path;
import java.util.List;
import org.silverwake.geo.crs.LayerCrs;

/**
 * A layer read from a file, its geometries brought to WGS 84 degrees, longitude first.
 *
 * @param file the file
 * @param name the layer's name in it
 * @param crs the system the file's coordinates were in
 * @param columns all column names, in file order
 * @param features in file order, those with null shapes included
 * @param warnings what the reader had to pass over, one line each
 */
public record VectorLayer(
        Path file,
        String name,
        LayerCrs crs,
        List<String> columns,
        List<LayerFeature> features,
        List<String> warnings) {
    /** Copies the lists. */
    public VectorLayer {
        columns = List.copyOf(columns);
        features = List.copyOf(features);
        warnings = List.copyOf(warnings);
    }

    /** The file's name, else the layer's: for messages. */
    public String label() {
        return file == null ? name : String.valueOf(file.getFileName());
    }
}
