// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.terrain;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.IntBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.time.Instant;
import org.silverwake.geo.GeoDataException;

/**
 * One 32-bit number for each cell of a raster. Small rasters lie in memory; large ones in a temporary file that is mapped
 * into memory, so that the heap stays small. The file is deleted at once where the system lets go of a name in use, else at the end or, where it
 * is still in use then, by the next run.
 */
final class CellNumbers {
    private static final int MOST_IN_MEMORY = 4_000_000;
    private static final int MOST = Integer.MAX_VALUE / Integer.BYTES;
    private static final String PREFIX = "silverwake-cells-";
    private static final Duration LEFT_OVER = Duration.ofDays(1);
    private static final double MEGABYTE = 1e6;

    private final IntBuffer numbers;

    private CellNumbers(IntBuffer numbers) {
        this.numbers = numbers;
    }

    /**
     * All 0.
     *
     * @param cells how many [-], at most 536,870,911
     * @throws GeoDataException if a file is needed and there is no room for it
     */
    static CellNumbers of(int cells) {
        return of(cells, 1);
    }

    /** As {@link #of(int)}, with room for more files like it that come next, itself counted; a file takes its room only as it is written. */
    static CellNumbers of(int cells, int files) {
        if (cells <= MOST_IN_MEMORY) {
            return new CellNumbers(IntBuffer.allocate(cells));
        }
        return inFile(cells, files);
    }

    /** As {@link #of(int, int)}, in a file however small. */
    static CellNumbers inFile(int cells, int files) {
        if (cells > MOST) {
            throw new IllegalArgumentException(cells + " cells");
        }
        Path folder = Path.of(System.getProperty("java.io.tmpdir"));
        long bytes = (long) cells * Integer.BYTES;
        try {
            sweep(folder);
            long room = Files.getFileStore(folder).getUsableSpace();
            if (room < bytes * files) {
                throw new GeoDataException(
                        folder + ": has room for " + Math.round(room / MEGABYTE) + " MB; the elevation raster needs "
                                + Math.round(bytes * files / MEGABYTE)
                                + " MB more there for a while; make room, cut the raster to the basin, or name another folder with"
                                + " -Djava.io.tmpdir=FOLDER");
            }
            return new CellNumbers(mapped(Files.createTempFile(folder, PREFIX, ".tmp"), bytes));
        } catch (IOException e) {
            throw new GeoDataException(folder + ": no temporary file can be written there (" + e.getMessage() + ")", e);
        }
    }

    private static IntBuffer mapped(Path file, long bytes) throws IOException {
        try (FileChannel channel = FileChannel.open(file, StandardOpenOption.READ, StandardOpenOption.WRITE)) {
            ByteBuffer buffer = channel.map(FileChannel.MapMode.READ_WRITE, 0, bytes);
            return buffer.order(ByteOrder.nativeOrder()).asIntBuffer();
        } finally {
            if (!gone(file)) {
                file.toFile().deleteOnExit();
            }
        }
    }

    /** Deletes files of runs long over, on systems that keep a file while it is mapped. */
    private static void sweep(Path folder) throws IOException {
        Instant before = Instant.now().minus(LEFT_OVER);
        try (DirectoryStream<Path> old = Files.newDirectoryStream(folder, PREFIX + "*.tmp")) {
            for (Path file : old) {
                if (Files.getLastModifiedTime(file).toInstant().isBefore(before)) {
                    gone(file);
                }
            }
        }
    }

    private static boolean gone(Path file) {
        try {
            return Files.deleteIfExists(file);
        } catch (IOException inUse) {
            return false;
        }
    }

    int at(int cell) {
        return numbers.get(cell);
    }

    void put(int cell, int number) {
        numbers.put(cell, number);
    }

    float heightAt(int cell) {
        return Float.intBitsToFloat(numbers.get(cell));
    }

    void putHeight(int cell, float height) {
        numbers.put(cell, Float.floatToRawIntBits(height));
    }
}
