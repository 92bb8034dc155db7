// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.layout;

import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;

/**
 * Counts what lies on what it must not on a written map or sheet: names on names and symbols, names beyond the frame, leaders through
 * what is not theirs, texts on texts, parts of the page on one another.
 */
public final class Overlaps {
    private static final double A4_LONG = 297 / 25.4 * 72;
    /** A leader begins so near its symbol's box [points on A4]. */
    private static final double NEAR = 3;
    /** Drawings are rounded to a hundredth before they are enlarged [points on A4]. */
    private static final double ROUNDED = 0.05;

    private final Rectangle2D page;
    private final List<SvgItem> items;
    private final double scale;
    private final List<String> found = new ArrayList<>();

    private Overlaps(Rectangle2D page, List<SvgItem> items, double scale) {
        this.page = page;
        this.items = items;
        this.scale = scale;
    }

    /** All of them, each in words. */
    public static List<String> of(SvgPage page) {
        return of(page, page.items());
    }

    /** The same, were the middle of one thing on that of another. */
    public static List<String> moved(SvgPage page, SvgItem what, SvgItem onto) {
        double right = onto.middle().getX() - what.middle().getX();
        double down = onto.middle().getY() - what.middle().getY();
        return changed(page, what::equals, item -> item.moved(right, down));
    }

    /** The same, were some things elsewhere. */
    static List<String> changed(SvgPage page, Predicate<SvgItem> which, UnaryOperator<SvgItem> how) {
        List<SvgItem> items = new ArrayList<>();
        page.items().forEach(item -> items.add(which.test(item) ? how.apply(item) : item));
        return of(page, items);
    }

    private static List<String> of(SvgPage page, List<SvgItem> items) {
        double longSide = Math.max(page.page().getWidth(), page.page().getHeight());
        Overlaps overlaps = new Overlaps(page.page(), items, longSide / A4_LONG);
        overlaps.texts();
        overlaps.names();
        overlaps.leaders();
        overlaps.blocks();
        return overlaps.found;
    }

    private List<SvgItem> kind(String kind) {
        return items.stream().filter(item -> item.kind().equals(kind)).toList();
    }

    private void texts() {
        List<SvgItem> texts = items.stream()
                .filter(item -> item.isText() && !item.text().isBlank())
                .toList();
        for (int a = 0; a < texts.size(); a++) {
            for (int b = a + 1; b < texts.size(); b++) {
                report("text on text", texts.get(a), texts.get(b));
            }
            for (SvgItem symbol : kind("symbol")) {
                report("text on symbol", texts.get(a), symbol);
            }
            if (!page.contains(texts.get(a).bounds())) {
                found.add("text beyond the page: " + texts.get(a));
            }
        }
    }

    private void report(String what, SvgItem a, SvgItem b) {
        if (a.lieson(b)) {
            found.add(what + ": " + a + " / " + b);
        }
    }

    private void names() {
        List<Rectangle2D> frames =
                kind("frame").stream().map(frame -> frame.shape().getBounds2D()).toList();
        for (SvgItem name : kind("label")) {
            if (frames.stream().noneMatch(frame -> frame.contains(name.bounds()))) {
                found.add("name across the frame: " + name);
            }
        }
    }

    /** Each leader is drawn twice, white below dark; the dark one counts. */
    private void leaders() {
        List<SvgItem> leaders = kind("leader").stream()
                .filter(leader -> !leader.stroke().equals("white"))
                .toList();
        for (int k = 0; k < leaders.size(); k++) {
            SvgItem leader = leaders.get(k);
            kind("label").forEach(name -> report("leader through name", leader, name));
            Optional<SvgItem> own = own(leader);
            if (own.isEmpty() && !isOfArea(leader)) {
                found.add("leader from no symbol: " + leader);
            }
            for (SvgItem symbol : kind("symbol")) {
                if (own.isPresent() && own.get().middle().distance(symbol.middle()) > scale) {
                    report("leader through symbol", leader, symbol);
                }
            }
            for (SvgItem other : leaders.subList(k + 1, leaders.size())) {
                if (line(leader).intersectsLine(line(other))) {
                    found.add("leader across leader: " + leader + " / " + other);
                }
            }
        }
    }

    /** A name of an area stands beside it as a symbol's does; the leader begins inside. */
    private boolean isOfArea(SvgItem leader) {
        return kind("area").stream()
                .anyMatch(area -> area.shape().contains(line(leader).getP1()));
    }

    /** The symbol that a leader begins at: the nearest to the line it would go on in. */
    private Optional<SvgItem> own(SvgItem leader) {
        Line2D line = line(leader);
        SvgItem best = null;
        double least = 2 * scale;
        for (SvgItem symbol : kind("symbol")) {
            Rectangle2D box = symbol.bounds();
            double near = NEAR * scale;
            box.setFrame(box.getX() - near, box.getY() - near, box.getWidth() + 2 * near, box.getHeight() + 2 * near);
            double aside = line.ptLineDist(symbol.middle());
            if (box.contains(line.getP1()) && aside < least) {
                least = aside;
                best = symbol;
            }
        }
        return Optional.ofNullable(best);
    }

    private static Line2D line(SvgItem item) {
        PathIterator path = new Path2D.Double(item.shape()).getPathIterator(null);
        double[] from = new double[6];
        path.currentSegment(from);
        path.next();
        double[] to = new double[6];
        path.currentSegment(to);
        return new Line2D.Double(from[0], from[1], to[0], to[1]);
    }

    /** Parts of the page, each with all that is drawn of it, share no place; a map's part is its frame. */
    private void blocks() {
        Map<String, Rectangle2D> blocks = new LinkedHashMap<>();
        for (SvgItem item : items) {
            String part = item.kind().equals("frame") ? "frame" : item.block();
            if (!part.isEmpty() && !part.equals("map")) {
                blocks.merge(part, item.bounds(), Rectangle2D::createUnion);
            }
        }
        List<Map.Entry<String, Rectangle2D>> all = List.copyOf(blocks.entrySet());
        for (int a = 0; a < all.size(); a++) {
            Rectangle2D one = all.get(a).getValue();
            if (!page.contains(inner(one, scale))) {
                found.add("part beyond the page: " + all.get(a).getKey());
            }
            for (int b = a + 1; b < all.size(); b++) {
                boolean around =
                        List.of(all.get(a).getKey(), all.get(b).getKey()).contains("degrees");
                if (!around && inner(one, scale).intersects(all.get(b).getValue())) {
                    found.add("part on part: " + all.get(a).getKey() + " / "
                            + all.get(b).getKey());
                }
            }
        }
    }

    private static Rectangle2D inner(Rectangle2D box, double scale) {
        double rim = ROUNDED * scale;
        return new Rectangle2D.Double(
                box.getX() + rim, box.getY() + rim, box.getWidth() - 2 * rim, box.getHeight() - 2 * rim);
    }
}
