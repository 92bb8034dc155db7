// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.layout;

import java.awt.Font;
import java.awt.FontFormatException;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.SAXException;

/** What is drawn in an SVG file, in the order it is drawn. Letters are measured by the metrics of the fonts that come with the program. */
public final class SvgPage {
    private static final String FONTS = "/net/sf/jasperreports/fonts/dejavu/";
    private static final FontRenderContext PAPER = new FontRenderContext(null, true, true);
    private static final List<String> INHERITED =
            List.of("fill", "stroke", "stroke-width", "font-size", "font-weight", "font-style");

    private final Map<String, Font> fonts = new HashMap<>();
    private final List<SvgItem> items = new ArrayList<>();
    private final Rectangle2D page;

    /** Reads a file. */
    public SvgPage(Path file) {
        Element root;
        try {
            root = DocumentBuilderFactory.newDefaultInstance()
                    .newDocumentBuilder()
                    .parse(file.toFile())
                    .getDocumentElement();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalStateException(file + ": is no SVG", e);
        }
        double[] box = SvgSyntax.numbers(root.getAttribute("viewBox"));
        page = new Rectangle2D.Double(box[0], box[1], box[2], box[3]);
        walk(root, Map.of(), new AffineTransform());
    }

    /** The sheet of paper [points]. */
    public Rectangle2D page() {
        return page;
    }

    /** All that is drawn. */
    public List<SvgItem> items() {
        return List.copyOf(items);
    }

    /** What belongs to a part and, within it, is of a kind; "" for any. */
    public Stream<SvgItem> of(String block, String kind) {
        return items.stream()
                .filter(item -> block.isEmpty() || item.block().equals(block))
                .filter(item -> kind.isEmpty() || item.kind().equals(kind));
    }

    private void walk(Element element, Map<String, String> around, AffineTransform above) {
        if (element.getTagName().equals("defs")) {
            return;
        }
        Map<String, String> style = new HashMap<>(around);
        for (String name : INHERITED) {
            if (element.hasAttribute(name)) {
                style.put(name, element.getAttribute(name));
            }
        }
        AffineTransform to = new AffineTransform(above);
        to.concatenate(SvgSyntax.transform(element.getAttribute("transform")));
        Shape shape = shape(element, style);
        if (shape != null) {
            add(element, style, to, shape);
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element part) {
                walk(part, style, to);
            }
        }
    }

    private void add(Element element, Map<String, String> style, AffineTransform to, Shape shape) {
        String parts = element.getAttribute("class");
        double scale = Math.sqrt(Math.abs(to.getDeterminant()));
        items.add(new SvgItem(
                parts.isEmpty() ? List.of() : Arrays.asList(parts.split(" ")),
                element.getTagName(),
                element.getTagName().equals("text") ? element.getTextContent() : "",
                to.createTransformedShape(shape),
                style.get("fill"),
                style.get("stroke"),
                scale * Double.parseDouble(style.get("stroke-width"))));
    }

    private Shape shape(Element element, Map<String, String> style) {
        return switch (element.getTagName()) {
            case "path" -> SvgSyntax.path(element.getAttribute("d"));
            case "rect", "image" ->
                new Rectangle2D.Double(
                        number(element, "x"),
                        number(element, "y"),
                        number(element, "width"),
                        number(element, "height"));
            case "line" ->
                new Line2D.Double(
                        number(element, "x1"), number(element, "y1"), number(element, "x2"), number(element, "y2"));
            case "circle" -> ellipse(element, number(element, "r"), number(element, "r"));
            case "ellipse" -> ellipse(element, number(element, "rx"), number(element, "ry"));
            case "polygon", "polyline" -> polygon(SvgSyntax.numbers(element.getAttribute("points")));
            case "text" -> letters(element, style);
            default -> null;
        };
    }

    private static double number(Element element, String name) {
        String text = element.getAttribute(name);
        return text.isEmpty() ? 0 : Double.parseDouble(text);
    }

    private static Shape ellipse(Element element, double rx, double ry) {
        return new Ellipse2D.Double(number(element, "cx") - rx, number(element, "cy") - ry, 2 * rx, 2 * ry);
    }

    private static Shape polygon(double[] xy) {
        Path2D path = new Path2D.Double();
        path.moveTo(xy[0], xy[1]);
        for (int k = 2; k < xy.length; k += 2) {
            path.lineTo(xy[k], xy[k + 1]);
        }
        path.closePath();
        return path;
    }

    /** The box that the letters fill; of blanks alone, one without size. */
    private Shape letters(Element element, Map<String, String> style) {
        Font font = font(style);
        Rectangle2D box =
                font.createGlyphVector(PAPER, element.getTextContent()).getVisualBounds();
        Point2D at = new Point2D.Double(number(element, "x"), number(element, "y"));
        return new Rectangle2D.Double(at.getX() + box.getX(), at.getY() + box.getY(), box.getWidth(), box.getHeight());
    }

    private Font font(Map<String, String> style) {
        boolean bold = "bold".equals(style.get("font-weight"));
        boolean slanted = "italic".equals(style.get("font-style"));
        String look = (bold ? "Bold" : "") + (slanted ? "Oblique" : "");
        String name = "DejaVuSans" + (look.isEmpty() ? "" : "-" + look) + ".ttf";
        float size = Float.parseFloat(style.get("font-size").replace("px", ""));
        return fonts.computeIfAbsent(name, SvgPage::load).deriveFont(size);
    }

    private static Font load(String name) {
        try (InputStream in = SvgPage.class.getResourceAsStream(FONTS + name)) {
            return Font.createFont(Font.TRUETYPE_FONT, in);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (FontFormatException e) {
            throw new IllegalStateException(name, e);
        }
    }
}
