// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.silverwake.geo.GeoDataException;

/** Files that are there whole or not at all: written to a temporary name and moved into place. */
final class WholeFile {
    private WholeFile() {}

    /** What is written. */
    interface Content {
        void write(OutputStream out) throws IOException;
    }

    /** Writes a file, replaced if there. */
    static void write(Path file, Content content) {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(part))) {
                content.write(out);
            }
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new GeoDataException(
                    file + ": cannot be written (" + e.getMessage() + "); give a folder that exists and has room", e);
        }
    }
}
