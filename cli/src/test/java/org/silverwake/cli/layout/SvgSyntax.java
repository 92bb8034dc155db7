// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.layout;

import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The two small languages of SVG 1.1 (W3C): paths (8.3, absolute commands) and transforms (7.6), as far as the files here use them. */
final class SvgSyntax {
    private static final Pattern TRANSFORM = Pattern.compile("(\\w+)\\s*\\(([^)]*)\\)");
    private static final Map<String, Integer> LENGTHS = Map.of("M", 2, "L", 2, "Q", 4, "C", 6, "Z", 0);
    private static final Pattern COMMAND = Pattern.compile("([A-Za-z])([^A-Za-z]*)");

    private SvgSyntax() {}

    /** Numbers with blanks or commas between. */
    static double[] numbers(String text) {
        List<Double> numbers = new ArrayList<>();
        for (String word : text.strip().split("[\\s,]+")) {
            if (!word.isEmpty()) {
                numbers.add(Double.parseDouble(word));
            }
        }
        return numbers.stream().mapToDouble(Double::doubleValue).toArray();
    }

    static AffineTransform transform(String text) {
        AffineTransform all = new AffineTransform();
        Matcher each = TRANSFORM.matcher(text);
        while (each.find()) {
            double[] n = numbers(each.group(2));
            switch (each.group(1)) {
                case "matrix" -> all.concatenate(new AffineTransform(n));
                case "translate" -> all.translate(n[0], n.length > 1 ? n[1] : 0);
                case "scale" -> all.scale(n[0], n.length > 1 ? n[1] : n[0]);
                case "rotate" -> all.rotate(Math.toRadians(n[0]));
                default -> throw new IllegalArgumentException("transform not known here: " + each.group());
            }
        }
        return all;
    }

    static Path2D path(String text) {
        Path2D path = new Path2D.Double(Path2D.WIND_NON_ZERO);
        Matcher each = COMMAND.matcher(text);
        while (each.find()) {
            double[] n = numbers(each.group(2));
            if (n.length != LENGTHS.getOrDefault(each.group(1), -1)) {
                throw new IllegalArgumentException("path command not known here: " + each.group());
            }
            switch (each.group(1)) {
                case "M" -> path.moveTo(n[0], n[1]);
                case "L" -> path.lineTo(n[0], n[1]);
                case "Q" -> path.quadTo(n[0], n[1], n[2], n[3]);
                case "C" -> path.curveTo(n[0], n[1], n[2], n[3], n[4], n[5]);
                default -> path.closePath();
            }
        }
        return path;
    }
}
