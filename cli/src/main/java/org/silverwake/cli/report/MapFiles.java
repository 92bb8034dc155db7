// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.map.ConcentrationMap;
import org.silverwake.geo.map.MapFormat;
import org.silverwake.geo.map.MapImage;
import org.silverwake.geo.map.MapSheet;
import org.silverwake.geo.map.OwnLook;
import org.silverwake.geo.write.MapImageWriter;

/**
 * Where maps or charts go, and as which kinds of files; charts as pictures alone.
 *
 * @param folder made when the first is drawn
 * @param formats each is written once in each
 * @param onGround whether maps are written as GeoTIFF too
 */
public record MapFiles(Path folder, Set<MapFormat> formats, boolean onGround) {
    /** Copies. */
    public MapFiles {
        formats = Set.copyOf(formats);
    }

    /** Pictures alone. */
    public MapFiles(Path folder, Set<MapFormat> formats) {
        this(folder, formats, false);
    }

    /** The same formats in another folder. */
    public MapFiles in(Path other) {
        return new MapFiles(other, formats, onGround);
    }

    /** Draws a map; its name is without ending. */
    public void draw(RiverMap map, MapSheet sheet, String name) {
        draw(map, sheet, Optional.empty(), name);
    }

    /** Draws a map with reaches as a user's own style shows them, if there is one. */
    public void draw(RiverMap map, MapSheet sheet, Optional<OwnLook> own, String name) {
        each(name, file -> ConcentrationMap.draw(map, sheet, own, file));
        if (onGround) {
            makeFolder();
            MapImageWriter.write(folder.resolve(name + ".tif"), MapImage.of(map, sheet, own));
        }
    }

    private void makeFolder() {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Draws something once in each kind of picture; its name is without ending. */
    public void each(String name, Consumer<Path> drawing) {
        if (!formats.isEmpty()) {
            makeFolder();
        }
        for (MapFormat format : MapFormat.values()) {
            if (formats.contains(format)) {
                drawing.accept(folder.resolve(name + "." + format.ending()));
            }
        }
    }
}
