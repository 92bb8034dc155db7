// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Puts one image's strips and fields together as a TIFF file (TIFF 6.0, Adobe, 1992): header, strips, directory, long values. */
final class TiffFile {
    private static final int HEADER = 8;
    private static final int ENTRY = 12;

    private TiffFile() {}

    /**
     * The file.
     *
     * @param tags all fields but those that say where strips are; in any order
     * @param rowsPerStrip rows of each strip but perhaps the last, >= 1
     * @param strips from the north, packed
     */
    static byte[] bytes(List<TiffTag> tags, int rowsPerStrip, List<byte[]> strips) throws IOException {
        int[] begins = new int[strips.size()];
        int[] lengths = new int[strips.size()];
        int end = HEADER;
        for (int k = 0; k < begins.length; k++) {
            begins[k] = end;
            lengths[k] = strips.get(k).length;
            end += lengths[k];
        }
        List<TiffTag> all = new ArrayList<>(tags);
        all.add(TiffTag.ofLongs(273, begins));
        all.add(TiffTag.ofLongs(278, rowsPerStrip));
        all.add(TiffTag.ofLongs(279, lengths));
        // in rising order of their numbers, as TIFF 6.0 asks
        all.sort(Comparator.comparingInt(TiffTag::number));
        int directory = end + end % 2;
        byte[] fields = directory(all, directory);
        ByteBuffer file = TiffTag.buffer(directory + fields.length);
        file.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(directory);
        strips.forEach(file::put);
        return file.position(directory).put(fields).array();
    }

    private static byte[] directory(List<TiffTag> tags, int begin) throws IOException {
        int spill = begin + 2 + ENTRY * tags.size() + 4;
        ByteArrayOutputStream overflow = new ByteArrayOutputStream();
        ByteBuffer entries = TiffTag.buffer(2 + ENTRY * tags.size() + 4);
        entries.putShort((short) tags.size());
        for (TiffTag tag : tags) {
            byte[] content = tag.content();
            entries.putShort((short) tag.number()).putShort((short) tag.type()).putInt(tag.count());
            if (content.length <= 4) {
                entries.put(content).put(new byte[4 - content.length]);
            } else {
                entries.putInt(spill + overflow.size());
                overflow.write(content);
                overflow.write(new byte[content.length % 2]);
            }
        }
        return TiffTag.buffer(entries.capacity() + overflow.size())
                .put(entries.array())
                .put(overflow.toByteArray())
                .array();
    }
}
