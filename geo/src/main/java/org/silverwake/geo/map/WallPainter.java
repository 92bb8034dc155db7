// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.geotools.api.style.Symbolizer;
import org.silverwake.geo.assembly.RiverMap;

/**
 * Draws printed sheets for a wall. Everything is laid out on A4 and enlarged for larger paper, where a letter of the size s points has
 * capitals of 0.257 s mm on A4 and 0.729 s mm on A1. Least sizes: letters that subtend 5 minutes of arc are what sight of 6/6
 * resolves (Snellen; ISO 8596), 14.5 mm at 10 m. So on A1 titles are 25 mm or more, answers 14.6 mm, while cautions can be read at
 * arm's length on A4.
 */
public final class WallPainter {
    /** Least size of the title, of answers, and of cautions on A4 [points]. */
    static final double LEAST_TITLE = 35;

    static final double ANSWER = 20;
    static final double LEAST_CAUTION = 8.5;

    private static final double MOST_TITLE = 42;
    private static final double SUBTITLE = 16;
    private static final double BAND = 22;
    private static final double BAND_LETTERS = 14;
    private static final double ROW = 10;
    private static final double PEOPLE = 10;
    private static final double SOURCES = 8.5;
    private static final double CAUTION = 9.2;
    private static final double INSET = 7;
    private static final double COLUMN_GAP = 14;
    private static final double STRIP_GAP = 10;
    private static final Color INK = Color.decode(MapStyles.INK);
    private static final Color BAND_COLOR = new Color(0x2b, 0x0a, 0x2f);

    private final RiverMap map;
    private final WallSheet sheet;
    private final double width;
    private final double height;

    private WallPainter(RiverMap map, WallSheet sheet) {
        this.map = map;
        this.sheet = sheet;
        boolean stands = sheet.paper().isPortrait();
        width = stands ? Paper.A4.height() : Paper.A4.width();
        height = stands ? Paper.A4.width() : Paper.A4.height();
    }

    /**
     * Draws a sheet in each of some formats.
     *
     * @param map the network whose reaches the sheet's figures mark
     * @param files ending in .pdf, .png or .svg, replaced if there
     * @return how many names of places found no room
     */
    public static int draw(RiverMap map, WallSheet sheet, List<Path> files) {
        WallPainter painter = new WallPainter(map, sheet);
        int[] dropped = new int[1];
        for (Path file : files) {
            Picture.write(file, sheet.paper(), g -> dropped[0] = painter.paint(g));
        }
        return dropped[0];
    }

    /** Where the parts stand. */
    static WallLayout layout(RiverMap map, WallSheet sheet) {
        return new WallPainter(map, sheet).layout();
    }

    private WallLayout layout() {
        double column = WallLayout.column(width, height);
        WallLayout.Heights heights = new WallLayout.Heights(
                sheet.head().bands().size() * BAND,
                titleHeight() + subtitleHeight(),
                Panel.height(column, this::answers)
                        + sheet.bars().map(bars -> WallBars.keyHeight(bars)).orElse(0.0),
                Panel.height(column, panel -> key(panel, 1)),
                peopleHeight(),
                Panel.height(width - 2 * WallLayout.MARGIN, this::sources),
                cautionsHeight(),
                sheet.hasMaps() && !sheet.strips().isEmpty() ? WallLayout.STRIP : 0);
        return WallLayout.of(width, height, heights, sheet.hasMaps());
    }

    private double peopleHeight() {
        return peopleColumns().stream()
                .mapToDouble(blocks -> Panel.height(peopleWidth(), people(blocks)))
                .max()
                .orElse(0);
    }

    /** Side by side below the maps of a sheet that lies, below each other on one that stands. */
    private List<List<WallSheet.Block>> peopleColumns() {
        List<WallSheet.Block> blocks = sheet.blocks().forPeople().stream()
                .filter(block -> !block.lines().isEmpty())
                .toList();
        return sheet.paper().isPortrait()
                ? List.of(blocks)
                : blocks.stream().map(List::of).toList();
    }

    private double peopleWidth() {
        double column = WallLayout.column(width, height);
        int columns = Math.max(1, peopleColumns().size());
        double wide = width - 2 * WallLayout.MARGIN - column - COLUMN_GAP;
        return sheet.paper().isPortrait() ? column : (wide - (columns - 1) * COLUMN_GAP) / columns;
    }

    private int paint(Graphics2D g) {
        g.scale(sheet.paper().width() / width, sheet.paper().height() / height);
        WallLayout layout = layout();
        Part.draw(g, "bands", () -> bands(g));
        Part.draw(g, "heading", () -> head(g, layout.head()));
        int dropped = figure(g, layout);
        if (layout.strip().getHeight() > 0) {
            Part.draw(g, "strip", () -> WallStrip.of(sheet.strips()).get(0).paint(g, layout.strip()));
        }
        Part.draw(g, "legend", () -> Panel.draw(g, layout.legend(), this::answers));
        Part.draw(g, "key", () -> Panel.draw(g, layout.key(), panel -> key(panel, dropped)));
        Part.draw(g, "people", () -> people(g, layout.people()));
        Part.draw(g, "sources", () -> Panel.draw(g, layout.sources(), this::sources));
        Part.draw(g, "cautions", () -> cautions(g, layout.cautions()));
        Part.draw(g, "foot", () -> foot(g, layout.foot()));
        return dropped;
    }

    /** Maps, bars or profiles; how many names found no room. */
    private int figure(Graphics2D g, WallLayout layout) {
        if (sheet.hasMaps()) {
            WallMaps maps = new WallMaps(map, sheet, layout.figure());
            int dropped = Part.count(g, "map", () -> maps.paint(g));
            Part.draw(g, "scale", () -> maps.scale(g, layout.scale()));
            return dropped;
        }
        if (sheet.bars().isPresent()) {
            WallBars bars = new WallBars(sheet.bars().get());
            double below = Panel.height(layout.legend().getWidth(), this::answers);
            Part.draw(g, "bars", () -> bars.paint(g, layout.figure()));
            Part.draw(g, "legend", () -> bars.key(g, layout.legend(), below));
        } else {
            Part.draw(g, "strip", () -> strips(g, layout.figure()));
        }
        return 0;
    }

    /** Below each other, of one height. */
    private void strips(Graphics2D g, Rectangle2D room) {
        List<WallStrip> strips = WallStrip.of(sheet.strips());
        int count = strips.size();
        double each = (room.getHeight() - (count - 1) * STRIP_GAP) / count;
        for (int k = 0; k < count; k++) {
            double y = room.getY() + k * (each + STRIP_GAP);
            strips.get(k).paint(g, new Rectangle2D.Double(room.getX(), y, room.getWidth(), each));
        }
    }

    private void bands(Graphics2D g) {
        double top = 0;
        for (String band : sheet.head().bands()) {
            g.setColor(BAND_COLOR);
            g.fill(new Rectangle2D.Double(0, top, width, BAND - 1));
            g.setColor(Color.WHITE);
            Font font = Prose.fitting(band, Fonts.bold(BAND_LETTERS), width - 2 * WallLayout.MARGIN);
            g.setFont(font);
            g.drawString(band, (float) ((width - Prose.width(band, font)) / 2), (float) (top + BAND - 6));
            top += BAND;
        }
    }

    /** In one line as large as it fits, or at the least size in as many as it needs. */
    private Font titleFont() {
        double wide = width - 2 * WallLayout.MARGIN;
        Font one = Prose.fitting(sheet.head().title(), Fonts.bold(MOST_TITLE), wide);
        return one.getSize2D() >= LEAST_TITLE ? one : Fonts.bold(LEAST_TITLE);
    }

    private double titleHeight() {
        return Prose.height(sheet.head().title(), titleFont(), width - 2 * WallLayout.MARGIN);
    }

    private double subtitleHeight() {
        return Prose.height(sheet.head().subtitle(), Fonts.regular(SUBTITLE), width - 2 * WallLayout.MARGIN);
    }

    private void head(Graphics2D g, Rectangle2D room) {
        g.setColor(INK);
        double y = room.getY();
        y += Prose.draw(g, sheet.head().title(), titleFont(), room.getX(), y - 4, room.getWidth());
        Prose.draw(g, sheet.head().subtitle(), Fonts.regular(SUBTITLE), room.getX(), y - 4, room.getWidth());
    }

    private void answers(Panel panel) {
        if (!sheet.legend().heading().isEmpty()) {
            panel.strong(sheet.legend().heading(), 11);
        }
        for (WallSheet.Answer answer : sheet.legend().answers()) {
            if (!answer.words().isEmpty()) {
                panel.answer(answer.words(), ANSWER);
            }
            for (LineClass look : answer.classes()) {
                panel.line(MapStyles.reach(look, 1), look.legend(), ROW);
            }
            panel.gap(1);
        }
    }

    private void key(Panel panel, int dropped) {
        if (sheet.hasMaps()) {
            marks(panel);
        }
        if (sheet.hasMaps() && sheet.ground().under().isDrawn()) {
            new WallMaps(map, sheet, new Rectangle2D.Double(0, 0, width, height))
                    .backdrop()
                    .legend(panel, sheet.legend().marks().ground());
        }
        sheet.legend().notes().forEach(note -> panel.paragraph(note, SOURCES));
        if (dropped > 0) {
            panel.paragraph(sheet.legend().marks().namesLeftOut() + " " + dropped, SOURCES);
        }
    }

    private void marks(Panel panel) {
        MapWords words = sheet.legend().marks();
        List<LineClass> classes = sheet.legend().classes();
        List<ReachMark> reaches = sheet.figures().stream()
                .flatMap(figure -> figure.reaches().stream())
                .toList();
        LineClass sample = classes.get(Math.min(classes.size() - 1, 3));
        if (reaches.stream().anyMatch(ReachMark::hatched)) {
            panel.line(with(sample, MapStyles.hatching(1)), words.hatched(), SOURCES + 1);
        }
        if (reaches.stream().anyMatch(ReachMark::nearBank)) {
            panel.line(with(sample, MapStyles.nearBank(1)), words.nearBank(), SOURCES + 1);
        }
        if (reaches.stream().anyMatch(ReachMark::aboveFromBackground)) {
            panel.line(with(sample, MapStyles.background()), words.aboveFromBackground(), SOURCES + 1);
        }
        if (!sheet.ground().areas().isEmpty()) {
            panel.area(List.of(MapStyles.area()), sheet.legend().area(), SOURCES + 1);
        }
        if (!sheet.ground().waters().isEmpty()) {
            panel.area(List.of(MapStyles.water(sample)), words.water(), SOURCES + 1);
        }
        List<Symbolizer> symbols = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (MapPoint.Kind kind : MapPoint.Kind.values()) {
            if (sheet.figures().stream().flatMap(f -> f.points().stream()).anyMatch(point -> point.kind() == kind)) {
                symbols.add(Symbols.point(MapStyles.mark(kind), Math.min(MapStyles.size(kind), 14)));
                texts.add(words.kinds().get(kind));
            }
        }
        panel.points(symbols, texts, ROW);
        panel.line(
                List.of(Symbols.line(MapStyles.WATER_INK, 1.6, List.of(), "butt"), MapStyles.arrowOfLegend()),
                words.flow(),
                SOURCES + 1);
    }

    private static List<Symbolizer> with(LineClass sample, Symbolizer mark) {
        List<Symbolizer> both = new ArrayList<>(MapStyles.reach(sample, 1));
        both.add(mark);
        return both;
    }

    private void people(Graphics2D g, Rectangle2D room) {
        double x = room.getX();
        for (List<WallSheet.Block> blocks : peopleColumns()) {
            Panel.draw(g, new Rectangle2D.Double(x, room.getY(), peopleWidth(), room.getHeight() + 1), people(blocks));
            x += peopleWidth() + COLUMN_GAP;
        }
    }

    private static Consumer<Panel> people(List<WallSheet.Block> blocks) {
        return panel -> {
            for (WallSheet.Block block : blocks) {
                panel.strong(block.heading(), PEOPLE + 2);
                block.lines().forEach(line -> panel.paragraph(line, PEOPLE));
            }
        };
    }

    private void sources(Panel panel) {
        for (WallSheet.Block block : sheet.blocks().sources()) {
            if (!block.lines().isEmpty()) {
                panel.paragraph(block.heading() + ": " + String.join(" ", block.lines()), SOURCES);
            }
        }
    }

    private int cautionColumns() {
        return sheet.paper().isPortrait() ? 2 : 3;
    }

    private double cautionWidth() {
        int columns = cautionColumns();
        return (width - 2 * WallLayout.MARGIN - 2 * INSET - (columns - 1) * COLUMN_GAP) / columns;
    }

    /** The cautions of each column, in their order, the highest column as low as can be. */
    private List<List<String>> cautionParts() {
        List<String> all = sheet.cautions().lines();
        double[] ends = new double[all.size() + 1];
        for (int k = 0; k < all.size(); k++) {
            ends[k + 1] = ends[k] + Panel.height(cautionWidth(), lines(all.subList(k, k + 1)));
        }
        int first = 0;
        int second = all.size();
        double least = Double.POSITIVE_INFINITY;
        for (int a = 0; a <= all.size(); a++) {
            for (int b = cautionColumns() > 2 ? a : all.size(); b <= all.size(); b++) {
                double highest = Math.max(ends[a], Math.max(ends[b] - ends[a], ends[all.size()] - ends[b]));
                if (highest < least) {
                    least = highest;
                    first = a;
                    second = b;
                }
            }
        }
        return List.of(all.subList(0, first), all.subList(first, second), all.subList(second, all.size()));
    }

    private static Consumer<Panel> lines(List<String> lines) {
        return panel -> lines.forEach(line -> {
            panel.paragraph(line, CAUTION);
            panel.gap(1.5);
        });
    }

    private double cautionsHeight() {
        double highest = cautionParts().stream()
                .mapToDouble(part -> Panel.height(cautionWidth(), lines(part)))
                .max()
                .orElse(0);
        return highest + headingHeight() + 1.5 * INSET;
    }

    private double headingHeight() {
        return Prose.height(sheet.cautions().heading(), Fonts.bold(CAUTION + 3), width);
    }

    private void cautions(Graphics2D g, Rectangle2D room) {
        g.setColor(INK);
        g.setStroke(new BasicStroke(1.6f));
        g.draw(room);
        double x = room.getX() + INSET;
        double y = room.getY() + INSET - 3;
        y += Prose.draw(g, sheet.cautions().heading(), Fonts.bold(CAUTION + 3), x, y, room.getWidth());
        List<List<String>> parts = cautionParts();
        for (int k = 0; k < parts.size(); k++) {
            double left = x + k * (cautionWidth() + COLUMN_GAP);
            Panel.draw(g, new Rectangle2D.Double(left, y + 1, cautionWidth(), room.getMaxY() - y), lines(parts.get(k)));
        }
    }

    private void foot(Graphics2D g, Rectangle2D room) {
        g.setColor(INK);
        Font font = Prose.fitting(sheet.foot(), Fonts.bold(11), room.getWidth());
        Prose.draw(g, sheet.foot(), font, room.getX(), room.getY() + 1, 2 * room.getWidth());
    }
}
