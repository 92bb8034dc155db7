// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.AffineTransform;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.Base64;
import java.util.Locale;
import java.util.function.Consumer;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.transform.OutputKeys;
import javax.xml.transform.Transformer;
import javax.xml.transform.TransformerException;
import javax.xml.transform.TransformerFactory;
import javax.xml.transform.dom.DOMSource;
import javax.xml.transform.stream.StreamResult;
import org.apache.batik.ext.awt.g2d.GraphicContext;
import org.apache.batik.ext.awt.g2d.TransformStackElement;
import org.apache.batik.ext.awt.g2d.TransformType;
import org.apache.batik.svggen.CachedImageHandlerBase64Encoder;
import org.apache.batik.svggen.DOMGroupManager;
import org.apache.batik.svggen.DOMTreeManager;
import org.apache.batik.svggen.SVGGeneratorContext;
import org.apache.batik.svggen.SVGGraphics2D;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

/** A drawing as SVG 1.1 (W3C): lengths in points, to a hundredth; texts as texts, with the letters used as web fonts in the file. */
final class SvgFile {
    static final String NAMESPACE = SVGGraphics2D.SVG_NAMESPACE_URI;
    private static final int DECIMALS = 2;

    private SvgFile() {}

    static void write(Path file, double width, double height, Consumer<Graphics2D> painter) {
        Element root = root(width, height, painter);
        WholeFile.write(file, out -> {
            try {
                Transformer writer = TransformerFactory.newDefaultInstance().newTransformer();
                writer.setOutputProperty(OutputKeys.ENCODING, "UTF-8");
                writer.transform(new DOMSource(root), new StreamResult(out));
            } catch (TransformerException e) {
                throw new IOException(e.getMessage(), e);
            }
        });
    }

    private static Element root(double width, double height, Consumer<Graphics2D> painter) {
        SVGGeneratorContext context = SVGGeneratorContext.createDefault(document());
        context.setPrecision(DECIMALS);
        context.setGenericImageHandler(new Pictures());
        context.setComment(null);
        SVGGeneratorContext.GraphicContextDefaults start = new SVGGeneratorContext.GraphicContextDefaults();
        start.setFont(Fonts.regular(10));
        context.setGraphicContextDefaults(start);
        Pen pen = new Pen(context);
        // viewers may show a page without ground on black
        pen.setColor(Color.WHITE);
        pen.fill(new Rectangle2D.Double(0, 0, width, height));
        painter.accept(pen);
        Element root = pen.getRoot();
        root.setAttribute("width", String.format(Locale.ROOT, "%.2fpt", width));
        root.setAttribute("height", String.format(Locale.ROOT, "%.2fpt", height));
        root.setAttribute("viewBox", String.format(Locale.ROOT, "0 0 %.2f %.2f", width, height));
        root.insertBefore(WebFonts.of(root), root.getFirstChild());
        return root;
    }

    private static Document document() {
        try {
            return DocumentBuilderFactory.newDefaultInstance()
                    .newDocumentBuilder()
                    .getDOMImplementation()
                    .createDocument(NAMESPACE, "svg", null);
        } catch (ParserConfigurationException e) {
            throw new IllegalStateException("the Java in use cannot make XML documents", e);
        }
    }

    /** Images inside the file as PNG, by the JDK's writer: Batik's own lies in a module that nothing else needs. */
    private static final class Pictures extends CachedImageHandlerBase64Encoder {
        @Override
        public void encodeImage(BufferedImage image, OutputStream out) throws IOException {
            ByteArrayOutputStream png = new ByteArrayOutputStream();
            ImageIO.write(image, "png", png);
            out.write(Base64.getEncoder().encode(png.toByteArray()));
        }
    }

    /** Writes which part of the page an element is of, and by how much it is enlarged to more digits than where it is. */
    private static final class Parts extends DOMGroupManager {
        Parts(GraphicContext gc, DOMTreeManager tree) {
            super(gc, tree);
        }

        @Override
        public void addElement(Element element, short method) {
            String part = Part.in(gc.getRenderingHints());
            if (!part.isEmpty()) {
                element.setAttribute("class", part);
            }
            super.addElement(element, method);
        }

        @Override
        protected void setTransform(Element element, TransformStackElement[] stack) {
            AffineTransform all = new AffineTransform();
            for (TransformStackElement each : stack) {
                all.concatenate(transform(each.getType(), each.getTransformParameters()));
            }
            if (!all.isIdentity()) {
                element.setAttribute(
                        "transform",
                        String.format(
                                Locale.ROOT,
                                "matrix(%.6f,%.6f,%.6f,%.6f,%.2f,%.2f)",
                                all.getScaleX(),
                                all.getShearY(),
                                all.getShearX(),
                                all.getScaleY(),
                                all.getTranslateX(),
                                all.getTranslateY()));
            }
        }
    }

    private static AffineTransform transform(TransformType type, double[] n) {
        return switch (type.toInt()) {
            case TransformType.TRANSFORM_TRANSLATE -> AffineTransform.getTranslateInstance(n[0], n[1]);
            case TransformType.TRANSFORM_ROTATE -> AffineTransform.getRotateInstance(n[0]);
            case TransformType.TRANSFORM_SCALE -> AffineTransform.getScaleInstance(n[0], n[1]);
            case TransformType.TRANSFORM_SHEAR -> AffineTransform.getShearInstance(n[0], n[1]);
            default -> new AffineTransform(n);
        };
    }

    /** Tells weight and slope of a font, which a font read from a file keeps in its name alone. */
    private static final class Pen extends SVGGraphics2D {
        Pen(SVGGeneratorContext context) {
            super(context, false);
            tellParts();
        }

        private Pen(Pen other) {
            super(other);
            tellParts();
        }

        private void tellParts() {
            domTreeManager.removeGroupManager(domGroupManager);
            setDOMGroupManager(new Parts(gc, domTreeManager));
            domTreeManager.addGroupManager(domGroupManager);
        }

        @Override
        public Graphics create() {
            return new Pen(this);
        }

        @Override
        public void setFont(Font font) {
            super.setFont(font.deriveFont(Fonts.Face.of(font).style(), font.getSize2D()));
        }
    }
}
