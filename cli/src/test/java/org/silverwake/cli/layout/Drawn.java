// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.layout;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.silverwake.cli.report.MapFiles;
import org.silverwake.cli.report.Maps;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.map.MapFormat;

/** Maps of a run, as files to read. */
public final class Drawn {
    private Drawn() {}

    /** The analyst's maps of every value that reaches are compared with, by name. */
    public static List<Path> maps(Outcome outcome, Path folder) {
        Maps.draw(outcome, new MapFiles(folder, Set.of(MapFormat.SVG)), Optional.empty(), true, false);
        return files(folder);
    }

    /** What lies in a folder, by name. */
    public static List<Path> files(Path folder) {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
