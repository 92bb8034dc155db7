// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import java.util.zip.ZipOutputStream;

/**
 * Gives the comments of a workbook boxes in which their text has room; the library draws each over two columns and two rows,
 * however long it is (VML drawings, ECMA-376, part 4, 19.4.2.3 for the anchor).
 */
final class CommentBoxes {
    private static final Pattern DRAWING = Pattern.compile("xl/drawings/vmlDrawing(\\d+)\\.vml");
    private static final Pattern SHAPE = Pattern.compile(
            "<x:Anchor>[^<]*</x:Anchor>(.*?<x:Row>(\\d+)</x:Row><x:Column>(\\d+)</x:Column>)", Pattern.DOTALL);
    private static final Pattern COMMENT =
            Pattern.compile("<comment ref=\"([A-Z]+\\d+)\".*?<t[^>]*>(.*?)</t>", Pattern.DOTALL);
    private static final Pattern WIDTH = Pattern.compile("<col min=\"(\\d+)\" max=\"\\d+\" width=\"([\\d.]+)\"");

    /** Width of a box [digits], and letters that a line of it takes. */
    private static final double BOX = 46;

    private static final int LETTERS = 40;
    private static final double USUAL_WIDTH = 9;
    private static final int EDGE = 12;

    private CommentBoxes() {}

    /** Copies a workbook with its boxes made to fit. */
    static void fit(Path workbook, OutputStream out) throws IOException {
        Map<String, byte[]> parts = new LinkedHashMap<>();
        try (ZipFile zip = new ZipFile(workbook.toFile())) { // cannot be read as a stream: sizes stand at its end alone
            for (ZipEntry entry : Collections.list(zip.entries())) {
                try (InputStream in = zip.getInputStream(entry)) {
                    parts.put(entry.getName(), in.readAllBytes());
                }
            }
        }
        try (ZipOutputStream zip = new ZipOutputStream(out)) {
            for (Map.Entry<String, byte[]> part : parts.entrySet()) {
                Matcher drawing = DRAWING.matcher(part.getKey());
                zip.putNextEntry(new ZipEntry(part.getKey()));
                zip.write(
                        drawing.matches()
                                ? fitted(text(part.getValue()), parts, drawing.group(1))
                                        .getBytes(StandardCharsets.UTF_8)
                                : part.getValue());
                zip.closeEntry();
            }
        }
    }

    private static String fitted(String drawing, Map<String, byte[]> parts, String number) {
        Map<String, String> comments = new HashMap<>();
        Matcher comment = COMMENT.matcher(text(parts.get("xl/comments" + number + ".xml")));
        while (comment.find()) {
            comments.put(comment.group(1), comment.group(2));
        }
        Map<Integer, Double> widths = new HashMap<>();
        Matcher width = WIDTH.matcher(text(parts.get("xl/worksheets/sheet" + number + ".xml")));
        while (width.find()) {
            widths.put(Integer.parseInt(width.group(1)) - 1, Double.parseDouble(width.group(2)));
        }
        return SHAPE.matcher(drawing).replaceAll(shape -> {
            int row = Integer.parseInt(shape.group(2));
            int column = Integer.parseInt(shape.group(3));
            String anchor = anchor(row, column, comments.get(BookSheet.reference(row, column)), widths);
            return Matcher.quoteReplacement("<x:Anchor>" + anchor + "</x:Anchor>" + shape.group(1));
        });
    }

    /** Left, top, right and bottom of a box beside its cell, each as a column or row and pixels from its edge. */
    private static String anchor(int row, int column, String text, Map<Integer, Double> widths) {
        int right = column + 1;
        double covered = 0;
        while (covered < BOX) {
            covered += widths.getOrDefault(right++, USUAL_WIDTH);
        }
        int lines = text.lines().mapToInt(line -> 1 + line.length() / LETTERS).sum();
        return column + 1 + "," + EDGE + "," + row + ",4," + right + ",0," + (row + 1 + Math.max(2, lines)) + ",0";
    }

    private static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }
}
