// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.LocalDateTime;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.silverwake.geo.GeoDataException;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.geo.map.PhonePictures;

/**
 * Writes a {@link PhoneMap} as a KMZ: a zip of a KML 2.2 document (OGC 07-147r2), which comes first, its legend and the symbols of its points as
 * PNG. Same map, same bytes: all times in the zip are one and the same.
 */
public final class KmzWriter {
    /** The first day that a zip tells without a time zone: at the very earliest time, Java adds one. */
    private static final LocalDateTime TIME = LocalDateTime.of(1980, 1, 2, 0, 0);

    private KmzWriter() {}

    /**
     * Writes a file, replacing one that is there.
     *
     * @param file where; its folder must exist
     * @param map the network the stretches' reaches are of
     * @throws GeoDataException if it cannot be written
     */
    public static void write(Path file, RiverMap map, PhoneMap phone) {
        Path part = file.resolveSibling(file.getFileName() + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(part);
                    ZipOutputStream zip = new ZipOutputStream(out)) {
                add(zip, "doc.kml", KmlDocument.bytes(map, phone));
                add(
                        zip,
                        KmlDocument.LEGEND,
                        PhonePictures.legend(phone.legendTitle(), phone.bands(), phone.classes(), phone.caution()));
                for (MapPoint.Kind kind : KmlDocument.kinds(phone)) {
                    add(zip, KmlDocument.icon(kind), PhonePictures.icon(kind));
                }
            }
            Files.move(part, file, StandardCopyOption.REPLACE_EXISTING);
        } catch (IOException e) {
            throw new GeoDataException(
                    file + ": cannot be written (" + e.getMessage() + "); give a folder that exists and has room", e);
        }
    }

    private static void add(ZipOutputStream zip, String name, byte[] content) throws IOException {
        ZipEntry entry = new ZipEntry(name);
        entry.setTimeLocal(TIME);
        zip.putNextEntry(entry);
        zip.write(content);
        zip.closeEntry();
    }
}
