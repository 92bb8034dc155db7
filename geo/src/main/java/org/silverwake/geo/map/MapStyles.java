// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.util.ArrayList;
import java.util.List;
import org.geotools.api.style.FeatureTypeStyle;
import org.geotools.api.style.LineSymbolizer;
import org.geotools.api.style.Mark;
import org.geotools.api.style.PointSymbolizer;
import org.geotools.api.style.PolygonSymbolizer;
import org.geotools.api.style.Rule;
import org.geotools.api.style.Style;
import org.geotools.api.style.Symbolizer;

/** The project's own styles: one look per class and mark, used on the map and in its legend alike. */
final class MapStyles {
    static final String INK = "#1c1c1c";
    static final String WATER_INK = "#2d4a73";
    private static final String PAPER = "#ffffff";
    static final String AREA = "#ecdfc6";
    private static final double AREA_OPACITY = 0.8;
    private static final double CASING = 2;
    private static final double WATER_OPACITY = 0.45;

    private MapStyles() {}

    /** Reaches by class: the last class of the legend lowest, the first on top. */
    static Style reaches(List<LineClass> classes, double factor) {
        List<FeatureTypeStyle> passes = new ArrayList<>();
        for (int k = classes.size() - 1; k >= 0; k--) {
            LineClass look = classes.get(k);
            passes.add(Symbols.pass(
                    Symbols.rule(Symbols.equal("class", k), reach(look, factor).toArray(new Symbolizer[0]))));
        }
        return Symbols.style(passes.toArray(new FeatureTypeStyle[0]));
    }

    /** White edges that set rivers off from whatever lies under them. */
    static Style casings(List<LineClass> classes, double factor) {
        List<Rule> rules = new ArrayList<>();
        for (int k = 0; k < classes.size(); k++) {
            double width = classes.get(k).width() * factor + CASING;
            rules.add(Symbols.rule(Symbols.equal("class", k), Symbols.line(PAPER, width, List.of(), "round")));
        }
        return Symbols.style(Symbols.pass(rules.toArray(new Rule[0])));
    }

    /** One class, with widths and dashes by a factor. */
    static List<LineSymbolizer> reach(LineClass look, double factor) {
        return look.strokes().stream()
                .map(stroke -> Symbols.line(
                        look.color(),
                        stroke.width() * factor,
                        stroke.dash().stream().map(length -> length * factor).toList(),
                        stroke.cap()))
                .toList();
    }

    /** Surfaces of waters by class, pale enough for the line that runs through them to stand out. */
    static Style waters(List<LineClass> classes) {
        List<Rule> rules = new ArrayList<>();
        for (int k = 0; k < classes.size(); k++) {
            rules.add(Symbols.rule(Symbols.equal("class", k), water(classes.get(k))));
        }
        return Symbols.style(Symbols.pass(rules.toArray(new Rule[0])));
    }

    static PolygonSymbolizer water(LineClass look) {
        return Symbols.area(look.color(), WATER_OPACITY, look.color(), 1);
    }

    /** Areas of groups of sites: a pale ground, a dotted edge, the group's name. */
    static Style areas() {
        return Symbols.style(Symbols.pass(Symbols.rule(
                null,
                area(),
                Symbols.text("label", new Symbols.Letters(11, "bold", "oblique"), INK, Symbols.besidePoint()))));
    }

    static PolygonSymbolizer area() {
        PolygonSymbolizer area = Symbols.area(AREA, AREA_OPACITY, INK, 1.2);
        area.getStroke().setDashArray(new float[] {1.2f, 3});
        return area;
    }

    static Style marks(double factor) {
        return Symbols.style(
                Symbols.pass(Symbols.rule(Symbols.equal("hatched", 1), hatching(factor))),
                Symbols.pass(Symbols.rule(Symbols.equal("near_bank", 1), nearBank(factor))),
                Symbols.pass(Symbols.rule(Symbols.equal("background", 1), background())));
    }

    static LineSymbolizer hatching(double factor) {
        return Symbols.along(Symbols.mark("slash", null, INK, 0.9), 6 + 5 * factor, -3 - 2 * factor, 0);
    }

    static LineSymbolizer nearBank(double factor) {
        return Symbols.shifted(Symbols.line(INK, 1.7, List.of(0.1, 3.6), "round"), 3 * factor + 3.2);
    }

    static LineSymbolizer background() {
        return Symbols.along(Symbols.mark("diamond", PAPER, INK, 1), 8, 16, 0);
    }

    static Style flow(double gap) {
        return Symbols.style(Symbols.pass(Symbols.rule(null, arrow(gap))));
    }

    /** With a white edge that shows on the darkest class. */
    static LineSymbolizer arrow(double gap) {
        return arrow(gap, 12);
    }

    /** An arrow on a line of any length, for legends. */
    static LineSymbolizer arrowOfLegend() {
        return arrow(90, 0);
    }

    private static LineSymbolizer arrow(double gap, double ends) {
        return Symbols.along(Symbols.mark("arrow", INK, PAPER, 1.5), 13, gap, ends);
    }

    static Style riverNames() {
        return Symbols.style(Symbols.pass(Symbols.rule(
                null,
                Symbols.text(
                        "label", new Symbols.Letters(11.5, "normal", "oblique"), WATER_INK, Symbols.besideLine()))));
    }

    static Style points() {
        List<Rule> rules = new ArrayList<>();
        for (MapPoint.Kind kind : MapPoint.Kind.values()) {
            boolean quiet = kind == MapPoint.Kind.GAUGE || kind == MapPoint.Kind.OTHER || kind.isSample();
            String weight = quiet ? "normal" : "bold";
            double size = kind == MapPoint.Kind.VILLAGE ? 12.5 : kind.isSample() ? 9.5 : 11;
            rules.add(Symbols.rule(
                    Symbols.equal("kind", kind.name()),
                    point(kind, mark(kind)),
                    Symbols.text("label", new Symbols.Letters(size, weight, "normal"), INK, Symbols.besidePoint())));
        }
        return Symbols.style(Symbols.pass(rules.toArray(new Rule[0])));
    }

    static Mark mark(MapPoint.Kind kind) {
        return switch (kind) {
            case VILLAGE -> Symbols.mark("house", PAPER, INK, 1.8);
            case INTAKE -> Symbols.mark("drop", WATER_INK, PAPER, 0.8);
            case FISHING -> Symbols.mark("fish", WATER_INK, PAPER, 0.8);
            case SITE -> Symbols.mark("triangle", INK, PAPER, 1);
            case GAUGE -> Symbols.mark("staff", INK, PAPER, 0.6);
            case OTHER -> Symbols.mark("circle", PAPER, INK, 1.2);
            case GROUP_SMALL -> Symbols.mark("circle", "#b85a14", INK, 1.2);
            case GROUP_MIDDLE -> Symbols.mark("circle", "#a3213e", INK, 1.2);
            case GROUP_LARGE -> Symbols.mark("circle", "#150519", PAPER, 1.2);
            case SAMPLE -> Symbols.markOf("bottle", "color", INK, 1.1);
            case SAMPLE_BELOW_LIMIT -> Symbols.mark("bottle", PAPER, INK, 1.1);
            case SAMPLE_CANNOT_TELL -> Symbols.mark("crossed-bottle", PAPER, INK, 1.1);
        };
    }

    /** The point symbol of a kind; samples stand above their place, so that they hide nothing there. */
    static PointSymbolizer point(MapPoint.Kind kind, Mark mark) {
        return kind.isSample() ? Symbols.raised(mark, size(kind), "up") : Symbols.point(mark, size(kind));
    }

    /** A sample in a color of the legend. */
    static Mark sample(String color) {
        return Symbols.mark("bottle", color, INK, 1.1);
    }

    static double size(MapPoint.Kind kind) {
        return switch (kind) {
            case VILLAGE -> 10;
            case INTAKE, SITE -> 13;
            case FISHING -> 14;
            case GAUGE -> 11;
            case OTHER -> 8;
            case GROUP_SMALL -> 11;
            case GROUP_MIDDLE -> 16;
            case GROUP_LARGE -> 22;
            case SAMPLE, SAMPLE_BELOW_LIMIT, SAMPLE_CANNOT_TELL -> 14;
        };
    }
}
