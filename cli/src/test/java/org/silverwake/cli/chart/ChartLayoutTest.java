// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.silverwake.geo.map.Fonts;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;

/** Every chart as SVG: its words lie on the page and not on one another, and its axes have units. Pictures are left in target/charts. */
class ChartLayoutTest {
    private static final Path LEFT_FOR_EYES = Path.of("target", "charts");
    private static final FontRenderContext MEASURE = new FontRenderContext(null, true, true);
    /** Of the letters' height: what capitals rise above and tails hang below the baseline, less what may touch. */
    private static final double RISE = 0.70;

    private static final double TAIL = 0.10;
    /** WCAG 2.2, success criterion 1.4.3. */
    private static final double CONTRAST = 4.5;

    private record Word(String text, Rectangle2D box) {}

    private static final Pattern TRANSFORM = Pattern.compile("(\\w+)\\(([^)]*)\\)");

    private static List<Word> words(String name, Consumer<Path> chart) throws Exception {
        Files.createDirectories(LEFT_FOR_EYES);
        Path svg = LEFT_FOR_EYES.resolve(name + ".svg");
        chart.accept(svg);
        chart.accept(LEFT_FOR_EYES.resolve(name + ".png"));
        chart.accept(LEFT_FOR_EYES.resolve(name + ".pdf"));
        DocumentBuilderFactory factory = DocumentBuilderFactory.newDefaultInstance();
        Element root = factory.newDocumentBuilder().parse(svg.toFile()).getDocumentElement();
        NodeList texts = root.getElementsByTagName("text");
        List<Word> words = new ArrayList<>();
        for (int k = 0; k < texts.getLength(); k++) {
            words.add(word((Element) texts.item(k)));
        }
        assertThat(Files.readAllBytes(LEFT_FOR_EYES.resolve(name + ".pdf")))
                .startsWith("%PDF".getBytes(java.nio.charset.StandardCharsets.US_ASCII));
        return words;
    }

    private static Word word(Element text) {
        double size = Double.parseDouble(inherited(text, "font-size").replace("px", ""));
        Font font = inherited(text, "font-weight").equals("bold")
                ? Fonts.bold(size)
                : inherited(text, "font-style").equals("normal") ? Fonts.regular(size) : Fonts.oblique(size);
        double width = font.getStringBounds(text.getTextContent(), MEASURE).getWidth();
        double x = Double.parseDouble(text.getAttribute("x"));
        double y = Double.parseDouble(text.getAttribute("y"));
        Rectangle2D box = new Rectangle2D.Double(x, y - RISE * size, width, (RISE + TAIL) * size);
        AffineTransform at = new AffineTransform();
        for (Node node = text; node instanceof Element element; node = node.getParentNode()) {
            at.preConcatenate(transform(element.getAttribute("transform")));
        }
        return new Word(text.getTextContent(), at.createTransformedShape(box).getBounds2D());
    }

    private static String inherited(Element from, String attribute) {
        Element element = from;
        while (!element.hasAttribute(attribute)) {
            element = (Element) element.getParentNode();
        }
        return element.getAttribute(attribute);
    }

    private static AffineTransform transform(String words) {
        AffineTransform all = new AffineTransform();
        Matcher matcher = TRANSFORM.matcher(words);
        while (matcher.find()) {
            double[] n = Arrays.stream(matcher.group(2).trim().split("[ ,]+"))
                    .mapToDouble(Double::parseDouble)
                    .toArray();
            switch (matcher.group(1)) {
                case "matrix" -> all.concatenate(new AffineTransform(n));
                case "translate" -> all.translate(n[0], n.length > 1 ? n[1] : 0);
                case "scale" -> all.scale(n[0], n.length > 1 ? n[1] : n[0]);
                case "rotate" -> all.rotate(Math.toRadians(n[0]), n.length > 1 ? n[1] : 0, n.length > 1 ? n[2] : 0);
                default -> throw new IllegalStateException(matcher.group());
            }
        }
        return all;
    }

    private static final String CAUTION = "A screening from a model, not a finding of safety.";

    private static YearCourse course() {
        List<Double> low = IntStream.range(0, 60)
                .mapToObj(y -> 2 + 40 * Math.exp(-y / 9.0))
                .toList();
        List<Double> high = low.stream().map(v -> 12 * v).toList();
        YearCourse.Panel water = new YearCourse.Panel(
                "whole total Hg in surface water",
                "ng/L",
                low,
                high,
                List.of(new Profile.GuidelineValue("A (not checked in print)", "26 ng/L", 26)));
        YearCourse.Panel bed = new YearCourse.Panel(
                "total Hg in the bed", "mg/kg", low, low, List.of(new Profile.GuidelineValue("B", "0.17 mg/kg", 0.17)));
        return new YearCourse(
                "Wick", "from 2000 all sites at 100 %", 1996, List.of(water, bed, water), CAUTION, "2026");
    }

    private static YearStack yearStack() {
        List<YearStack.Layer> layers = new ArrayList<>();
        for (int k = 0; k < 6; k++) {
            int layer = k;
            layers.add(new YearStack.Layer(
                    "place number " + k,
                    IntStream.range(0, 40)
                            .mapToObj(y -> layer == 3 ? 1000.0 * y : 0.02 * y)
                            .toList()));
        }
        return new YearStack("Where it is", "supposed", 1996, "all forms", "kg", layers, CAUTION, "2026");
    }

    private static ReachStack reachStack() {
        List<ReachStack.Point> points = IntStream.range(0, 65)
                .mapToObj(k -> new ReachStack.Point(2.0 * k, List.of(0.1, 1e-6, 40.0 - k / 2.0, 1e-7)))
                .toList();
        return new ReachStack(
                ProfileChartTest.crowded(),
                List.of(
                        new ReachStack.Layer("background", 0),
                        new ReachStack.Layer("exchangeable Hg(II)", 1),
                        new ReachStack.Layer("mercury locked in grains", 2),
                        new ReachStack.Layer("methylmercury", 6)),
                List.of(
                        new ReachStack.Panel("carried through", List.of(points)),
                        new ReachStack.Panel("laid down", List.of(points))));
    }

    private static BudgetCurve budgets() {
        List<Double> money =
                IntStream.range(0, 9).mapToObj(k -> -500.0 + 7000 * k).toList();
        return new BudgetCurve(
                "What each budget buys",
                "by middle costs",
                "USD a year",
                money,
                List.of(
                        new BudgetCurve.Panel(
                                "kept out [kg a year]",
                                money.stream().map(m -> (m + 500) / 90).toList()),
                        new BudgetCurve.Panel(
                                "values met [number of 2]", List.of(0.0, 0.0, 1.0, 1.0, 1.0, 2.0, 2.0, 2.0, 2.0))),
                CAUTION,
                "2026");
    }

    private static ShareBars shares() {
        List<ShareBars.Source> sources = List.of(
                new ShareBars.Source("Upper Lamp sheds", ShareBars.Kind.SITE, "-60 | -2 %"),
                new ShareBars.Source("Mill", ShareBars.Kind.SITE, "-3 | -2 %"),
                new ShareBars.Source("background, without any site", ShareBars.Kind.BACKGROUND, ""));
        ShareBars.Bar bar = new ShareBars.Bar("dry", "278 ng/L", List.of(0.6, 0.02, 0.38));
        return new ShareBars(
                "Which sites",
                "shares",
                sources,
                "Closed:",
                List.of(
                        new ShareBars.Group("Whole water", List.of(bar, bar)),
                        new ShareBars.Group("Bed", List.of(bar))),
                CAUTION,
                "2026");
    }

    private static Tornado tornado(double most) {
        List<Tornado.Bar> bars = IntStream.range(0, Tornado.MOST)
                .mapToObj(k -> new Tornado.Bar(
                        "Sheds number " + k, "1.2 to 56 kg a year to the river", 90.0 + k, 110 + most / (k + 1)))
                .toList();
        return new Tornado(
                "What makes the answer uncertain",
                "flow state: dry",
                "total mercury",
                "ng/L",
                101,
                bars,
                List.of(
                        new Profile.GuidelineValue("A", "26 ng/L", 26),
                        new Profile.GuidelineValue("B (not checked in print)", "100 ng/L", 100)),
                CAUTION,
                "2026");
    }

    private static Map<String, Consumer<Path>> charts() {
        Map<String, Consumer<Path>> charts = new LinkedHashMap<>();
        charts.put("layout-profile", file -> ProfileChart.write(ProfileChartTest.crowded(), file));
        charts.put(
                "layout-scenarios",
                file -> ProfileChart.write(
                        new ScenarioProfile(
                                ProfileChartTest.crowded().ofScenarios(),
                                List.of(
                                        new ScenarioProfile.Course(
                                                "as today",
                                                ProfileChartTest.crowded().stretches()),
                                        new ScenarioProfile.Course(
                                                "with retorts and ponds",
                                                ProfileChartTest.crowded().stretches()))),
                        file));
        charts.put("layout-years", file -> YearCharts.write(course(), file));
        charts.put("layout-whereabouts", file -> YearCharts.write(yearStack(), file));
        charts.put("layout-forms", file -> ReachStackChart.write(reachStack(), file));
        charts.put("layout-budgets", file -> BudgetChart.write(budgets(), file));
        charts.put("layout-shares", file -> ShareBarsChart.write(shares(), file));
        charts.put("layout-tornado", file -> TornadoChart.write(tornado(300), file));
        charts.put("layout-tornado-wide", file -> TornadoChart.write(tornado(30000), file));
        return charts;
    }

    @Test
    void wordsLieOnThePageAndNotOnOneAnother() throws Exception {
        Rectangle2D page = new Rectangle2D.Double(0, 0, Theme.WIDTH, Theme.HEIGHT);
        List<String> wrong = new ArrayList<>();
        for (Map.Entry<String, Consumer<Path>> chart : charts().entrySet()) {
            List<Word> words = words(chart.getKey(), chart.getValue());
            assertThat(words).as(chart.getKey()).hasSizeGreaterThan(5);
            for (int a = 0; a < words.size(); a++) {
                Word word = words.get(a);
                if (!page.contains(word.box())) {
                    wrong.add(chart.getKey() + ": off the page: " + word);
                }
                for (Word other : words.subList(a + 1, words.size())) {
                    if (word.box().intersects(other.box())) {
                        wrong.add(chart.getKey() + ": " + word + " lies on " + other);
                    }
                }
            }
        }
        assertThat(wrong).isEmpty();
    }

    @Test
    void axesHaveUnits() throws Exception {
        Map<String, List<String>> units = Map.of(
                "layout-profile", List.of("[ng/L]", "[km]"),
                "layout-scenarios", List.of("[ng/L]", "[km]"),
                "layout-years", List.of("[ng/L]", "[mg/kg]"),
                "layout-whereabouts", List.of("[kg]"),
                "layout-forms", List.of("[ng/L]", "[km]"),
                "layout-budgets", List.of("[kg a year]", "[USD a year]"),
                "layout-shares", List.of("[%]"),
                "layout-tornado", List.of("[ng/L]"));
        Map<String, Consumer<Path>> charts = charts();
        for (Map.Entry<String, List<String>> each : units.entrySet()) {
            String all = String.join(
                    "\n",
                    words(each.getKey(), charts.get(each.getKey())).stream()
                            .map(Word::text)
                            .toList());
            assertThat(all).as(each.getKey()).contains(each.getValue());
        }
    }

    @Test
    void numbersOfALogarithmicAxisAreFew() {
        for (int decades = 1; decades <= 6; decades++) {
            Decades axis = new Decades(-2, -2 + decades);
            int labels = decades / axis.labelStep() + 1;
            assertThat(labels).as("%d decades", decades).isBetween(2, 6);
        }
        assertThat(Axes.step(21.7)).isEqualTo(50);
        assertThat(Axes.step(0.02)).isEqualTo(0.02);
        assertThat(Axes.step(700)).isEqualTo(1000);
    }

    /** Relative luminance and contrast by WCAG 2.2. */
    private static double luminance(Color color) {
        double[] parts = new double[3];
        float[] rgb = color.getRGBColorComponents(null);
        for (int k = 0; k < 3; k++) {
            parts[k] = rgb[k] <= 0.04045 ? rgb[k] / 12.92 : Math.pow((rgb[k] + 0.055) / 1.055, 2.4);
        }
        return 0.2126 * parts[0] + 0.7152 * parts[1] + 0.0722 * parts[2];
    }

    private static double contrast(Color a, Color b) {
        double one = luminance(a) + 0.05;
        double two = luminance(b) + 0.05;
        return Math.max(one, two) / Math.min(one, two);
    }

    @Test
    void lettersStandOutAndLayersDifferInGrey() throws IOException {
        assertThat(contrast(Color.WHITE, Color.BLACK)).isGreaterThan(20.9);
        assertThat(contrast(Theme.TEXT, Theme.PAPER)).isGreaterThan(CONTRAST);
        assertThat(contrast(Theme.FAINT_TEXT, Theme.PAPER)).isGreaterThan(CONTRAST);
        assertThat(contrast(Theme.TEXT, Theme.BAND)).isGreaterThan(CONTRAST);
        assertThat(contrast(Theme.TEXT, Theme.GAP)).isGreaterThan(CONTRAST);
        for (int k = 0; k < Theme.layers(); k++) {
            Color layer = Theme.layer(k);
            assertThat(contrast(Theme.letters(layer), layer)).as("layer %d", k).isGreaterThan(CONTRAST);
            if (k > 0) {
                assertThat(contrast(layer, Theme.layer(k - 1)))
                        .as("layer %d", k)
                        .isGreaterThan(3);
            }
        }
    }
}
