// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;

/** Layers of the open test data, read where they lie. */
final class OpenData {
    private OpenData() {}

    /** A file of the open data; the test is skipped where the folder is absent. */
    static Path file(String name) {
        Path file = Path.of(System.getProperty("silverwake.shared", "absent"), "data/open", name);
        assumeTrue(Files.exists(file), "open test data absent: " + name);
        return file;
    }

    static VectorLayer read(String name) {
        return Layers.read(source(file(name)));
    }

    /** The reading of a file, to see it refused; the test is skipped before that where the file is absent. */
    static ThrowingCallable reading(String name) {
        LayerSource source = source(file(name));
        return () -> Layers.read(source);
    }

    static VectorLayer read(String name, String crs) {
        return Layers.read(with(source(file(name)), null, crs, null, null));
    }

    static LayerSource source(Path file) {
        return with(
                new LayerSource(file, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty()),
                null,
                null,
                null,
                null);
    }

    /** A source with what is not null replaced. */
    static LayerSource with(LayerSource source, String layer, String crs, String filter, String idColumn) {
        return new LayerSource(
                source.file(),
                Optional.ofNullable(layer).or(source::layer),
                Optional.ofNullable(crs).or(source::crs),
                Optional.ofNullable(filter).or(source::filter),
                Optional.ofNullable(idColumn).or(source::idColumn));
    }
}
