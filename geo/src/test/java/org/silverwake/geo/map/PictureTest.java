// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Rectangle2D;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDResources;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.geo.assembly.RiverMap;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class PictureTest {
    /** PRINTED: SVG lengths have two decimals. */
    private static final double HUNDREDTH = 0.006;

    private static final Paper SMALL = new Paper(144, 72);
    private static final RiverMap MAP = InventedRivers.tree(4, 7);

    @TempDir
    Path folder;

    private static void paint(Graphics2D g) {
        g.setColor(new Color(0x2d, 0x4a, 0x73));
        g.fill(new Rectangle2D.Double(36, 18, 72, 9));
        g.setFont(Fonts.bold(12.5));
        g.drawString("Água 10 µg/L", 20, 50);
        g.setFont(Fonts.oblique(9));
        g.drawString("flow of ř", 100, 60.25f);
    }

    /** 2 x 1 inch at 200 dots per inch: 400 x 200 pixels; the bar begins half an inch from the left and a quarter from the top. */
    @Test
    void pngHasThePixelsOfItsResolution() throws Exception {
        Path file = folder.resolve("a.png");
        Picture.write(file, SMALL.width(), SMALL.height(), 200, PictureTest::paint);
        var image = ImageIO.read(file.toFile());
        assertThat(image.getWidth()).isEqualTo(400);
        assertThat(image.getHeight()).isEqualTo(200);
        assertThat(image.getRGB(99, 60)).isEqualTo(0xffffffff);
        assertThat(image.getRGB(100, 50)).isEqualTo(0xff2d4a73);
        assertThat(image.getRGB(299, 74)).isEqualTo(0xff2d4a73);
        assertThat(image.getRGB(300, 74)).isEqualTo(0xffffffff);
    }

    @Test
    void svgKeepsTextsWhereTheyAreAndBringsTheirLetters() throws Exception {
        Document svg = svg(PictureTest::paint);
        Element root = svg.getDocumentElement();
        assertThat(root.getAttribute("viewBox")).isEqualTo("0 0 144.00 72.00");
        assertThat(root.getAttribute("width")).isEqualTo("144.00pt");
        Element bar = (Element) root.getElementsByTagName("rect").item(1);
        assertThat(Double.parseDouble(bar.getAttribute("x"))).isCloseTo(36, within(HUNDREDTH));
        assertThat(Double.parseDouble(bar.getAttribute("width"))).isCloseTo(72, within(HUNDREDTH));
        Element text = (Element) root.getElementsByTagName("text").item(0);
        assertThat(text.getTextContent()).isEqualTo("Água 10 µg/L");
        assertThat(inherited(text, "font-weight")).isEqualTo("bold");
        assertThat(inherited(text, "font-size")).isEqualTo("12.5px");
        assertThat(Double.parseDouble(text.getAttribute("y"))).isCloseTo(50, within(HUNDREDTH));
        String style = root.getElementsByTagName("style").item(0).getTextContent();
        assertThat(style.split("@font-face", -1)).hasSize(3);
        assertThat(style)
                .contains("font-weight:bold;font-style:normal;src:url(data:font/ttf;base64,AAEAAA")
                .contains("font-weight:normal;font-style:italic;src:url(data:font/ttf;base64,AAEAAA");
    }

    @Test
    void pdfHasEveryFontInItAndItsTextCanBeRead() throws Exception {
        Path file = folder.resolve("a.pdf");
        Picture.writePages(file, SMALL, List.of(PictureTest::paint, g -> {}, PictureTest::paint));
        try (PDDocument document = Loader.loadPDF(file.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(3);
            assertThat(document.getPage(0).getMediaBox().getWidth()).isEqualTo(144);
            List<PDFont> fonts = fonts(document.getPage(0).getResources());
            assertThat(fonts).hasSize(2).allMatch(PDFont::isEmbedded);
            assertThat(fonts)
                    .extracting(PDFont::getName)
                    .anyMatch(name -> name.endsWith("+DejaVuSans-Bold"))
                    .anyMatch(name -> name.endsWith("+DejaVuSans-Oblique"));
            PDFTextStripper reader = new PDFTextStripper();
            reader.setStartPage(3);
            assertThat(reader.getText(document)).contains("Água 10 µg/L").contains("flow of ř");
            assertThat(document.getDocumentInformation().getCreationDate()).isNull();
        }
    }

    @Test
    void sameDrawingGivesSameBytes() throws Exception {
        for (String ending : List.of("png", "svg", "pdf")) {
            Path first = folder.resolve("first." + ending);
            Path second = folder.resolve("second." + ending);
            ConcentrationMap.draw(MAP, Sheets.full(MAP, 5, Paper.A4), first);
            ConcentrationMap.draw(MAP, Sheets.full(MAP, 5, Paper.A4), second);
            assertThat(Files.mismatch(first, second)).as(ending).isEqualTo(-1);
        }
        try (var files = Files.list(folder)) {
            assertThat(files).noneMatch(file -> file.toString().endsWith(".part"));
        }
    }

    @Test
    void otherEndingsAreRefused() {
        assertThatThrownBy(() -> Picture.write(folder.resolve("a.gif"), SMALL, PictureTest::paint))
                .hasMessageContaining("a.gif: give a name that ends in .png, .svg or .pdf");
    }

    @Test
    void paperTurnsAndKnowsItsSize() {
        assertThat(Paper.A1.portrait().isPortrait()).isTrue();
        assertThat(Paper.A1.portrait().landscape()).isEqualTo(Paper.A1);
        assertThat(Paper.A4.width() / 72 * 25.4).isCloseTo(297, within(1e-9));
        assertThatThrownBy(() -> new Paper(0, 1)).hasMessageContaining("two positive lengths");
        assertThatThrownBy(() -> ConcentrationMap.draw(
                        MAP, Sheets.full(MAP, 5, Paper.A4.portrait()), folder.resolve("upright.png")))
                .hasMessageContaining("give it in landscape");
    }

    private Document svg(java.util.function.Consumer<Graphics2D> painter) throws Exception {
        Path file = folder.resolve("a.svg");
        Picture.write(file, SMALL, painter);
        return DocumentBuilderFactory.newDefaultInstance().newDocumentBuilder().parse(file.toFile());
    }

    private static String inherited(Element element, String attribute) {
        Element at = element;
        while (!at.hasAttribute(attribute)) {
            at = (Element) at.getParentNode();
        }
        return at.getAttribute(attribute);
    }

    private static List<PDFont> fonts(PDResources resources) throws Exception {
        List<PDFont> fonts = new ArrayList<>();
        for (COSName name : resources.getFontNames()) {
            fonts.add(resources.getFont(name));
        }
        for (COSName name : resources.getXObjectNames()) {
            if (resources.getXObject(name) instanceof org.apache.pdfbox.pdmodel.graphics.form.PDFormXObject form) {
                fonts.addAll(fonts(form.getResources()));
            }
        }
        return fonts;
    }
}
