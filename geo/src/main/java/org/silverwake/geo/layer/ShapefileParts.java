// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.layer;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.silverwake.geo.GeoDataException;

/** The files that make up one Shapefile, by ending, from a folder or out of a .zip. */
final class ShapefileParts {
    private static final List<String> ENDINGS = List.of("shp", "shx", "dbf", "prj", "cpg");

    private final String name;
    private final Map<String, byte[]> parts;

    private ShapefileParts(String name, Map<String, byte[]> parts) {
        this.name = name;
        this.parts = Map.copyOf(parts);
    }

    /** The parts beside a .shp, or of the one Shapefile in a .zip. */
    static ShapefileParts of(Path file, Optional<String> layer) throws IOException {
        String fileName = String.valueOf(file.getFileName());
        if (fileName.toLowerCase(Locale.ROOT).endsWith(".zip")) {
            return zipped(file, layer);
        }
        String base = base(fileName);
        Map<String, byte[]> parts = new HashMap<>();
        Path folder = file.toAbsolutePath().getParent();
        try (Stream<Path> siblings = Files.list(folder)) {
            for (Path sibling : siblings.sorted().toList()) {
                String own = String.valueOf(sibling.getFileName());
                String ending = ending(own);
                if (base(own).equals(base) && ENDINGS.contains(ending) && Files.isRegularFile(sibling)) {
                    parts.putIfAbsent(ending, Files.readAllBytes(sibling));
                }
            }
        }
        return new ShapefileParts(base, parts);
    }

    private static ShapefileParts zipped(Path file, Optional<String> layer) throws IOException {
        try (ZipFile zip = new ZipFile(file.toFile())) {
            List<ZipEntry> entries = new ArrayList<>(zip.stream().toList());
            List<String> shapes = entries.stream()
                    .map(ZipEntry::getName)
                    .filter(entry -> ending(entry).equals("shp") && !entry.startsWith("__MACOSX/"))
                    .filter(entry -> layer.isEmpty() || lastName(entry).equals(layer.get()))
                    .toList();
            if (shapes.size() != 1) {
                throw new GeoDataException(
                        shapes.isEmpty()
                                ? "the .zip holds no Shapefile"
                                        + layer.map(l -> " \"" + l + "\"").orElse("") + "; give one that does"
                                : "the .zip holds several Shapefiles: "
                                        + String.join(
                                                ", ",
                                                shapes.stream()
                                                        .map(ShapefileParts::lastName)
                                                        .toList())
                                        + "; name one as layer");
            }
            String base = base(shapes.get(0));
            Map<String, byte[]> parts = new HashMap<>();
            for (ZipEntry entry : entries) {
                String ending = ending(entry.getName());
                if (base(entry.getName()).equals(base) && ENDINGS.contains(ending)) {
                    try (InputStream in = zip.getInputStream(entry)) {
                        parts.putIfAbsent(ending, in.readAllBytes());
                    }
                }
            }
            return new ShapefileParts(lastName(shapes.get(0)), parts);
        }
    }

    private static String ending(String name) {
        return name.substring(name.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    }

    private static String base(String name) {
        int dot = name.lastIndexOf('.');
        return dot < 0 ? name : name.substring(0, dot);
    }

    private static String lastName(String entry) {
        return base(entry.substring(entry.lastIndexOf('/') + 1));
    }

    /** The name without folder and ending. */
    String name() {
        return name;
    }

    /** A part's bytes, if it is there. */
    Optional<ByteBuffer> bytes(String ending) {
        return Optional.ofNullable(parts.get(ending)).map(ByteBuffer::wrap);
    }

    /** A part as text, if it is there. */
    Optional<String> text(String ending) {
        return Optional.ofNullable(parts.get(ending)).map(b -> new String(b, StandardCharsets.UTF_8).strip());
    }
}
