// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.layout;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/**
 * How a page is laid out, in lines of text: where its parts stand, each name and what it says, how many strokes reaches have of each
 * color. Millimeters from the page's upper left corner, to half a millimeter.
 */
final class Layout {
    private static final double MILLIMETER = 72 / 25.4;
    private static final double STEP = 0.5;

    /**
     * One line.
     *
     * @param what part, name or color
     * @param numbers left, top, width, height [mm], or a count
     */
    record Line(String what, List<Double> numbers) {
        static Line parsed(String text) {
            int at = text.lastIndexOf(": ");
            List<Double> numbers = new ArrayList<>();
            for (String word : text.substring(at + 2).split(" ")) {
                numbers.add(Double.parseDouble(word));
            }
            return new Line(text.substring(0, at), numbers);
        }

        /** Whether it says the same of the same, with positions no farther off than a tolerance [mm]. */
        boolean isLike(Line other, double tolerance) {
            if (!what.equals(other.what) || numbers.size() != other.numbers.size()) {
                return false;
            }
            for (int k = 0; k < numbers.size(); k++) {
                double most = numbers.size() == 1 ? 0 : tolerance;
                if (Math.abs(numbers.get(k) - other.numbers.get(k)) > most) {
                    return false;
                }
            }
            return true;
        }

        @Override
        public String toString() {
            StringBuilder text = new StringBuilder(what).append(':');
            numbers.forEach(n -> text.append(' ').append(String.format(Locale.ROOT, n % 1 == 0 ? "%.0f" : "%.1f", n)));
            return text.toString();
        }
    }

    private final List<Line> lines = new ArrayList<>();

    private Layout(SvgPage page) {
        parts(page);
        page.of("map", "label").forEach(name -> lines.add(placed("name " + name.text(), name.bounds())));
        counted(page, "leader");
        counted(page, "symbol");
        Map<String, Integer> strokes = new TreeMap<>();
        page.of("map", "reach").forEach(reach -> strokes.merge(reach.stroke(), 1, Integer::sum));
        strokes.forEach((color, count) -> lines.add(new Line("reaches in " + color, List.of((double) count))));
        page.of("legend", "")
                .filter(SvgItem::isText)
                .forEach(text -> lines.add(placed("legend " + text.text(), text.bounds())));
    }

    static List<Line> of(SvgPage page) {
        return List.copyOf(new Layout(page).lines);
    }

    private void parts(SvgPage page) {
        Map<String, Rectangle2D> parts = new LinkedHashMap<>();
        for (SvgItem item : page.items()) {
            String part = item.kind().equals("frame") ? "frame" : item.block();
            if (!part.isEmpty() && !part.equals("map")) {
                parts.merge(part, item.bounds(), Rectangle2D::createUnion);
            }
        }
        parts.forEach((part, box) -> lines.add(placed("part " + part, box)));
    }

    private void counted(SvgPage page, String kind) {
        lines.add(new Line(kind + "s", List.of((double) page.of("map", kind).count())));
    }

    private static Line placed(String what, Rectangle2D box) {
        return new Line(what, List.of(half(box.getX()), half(box.getY()), half(box.getWidth()), half(box.getHeight())));
    }

    private static double half(double points) {
        return STEP * Math.round(points / MILLIMETER / STEP);
    }
}
