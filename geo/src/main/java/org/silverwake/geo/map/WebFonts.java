// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Base64;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.w3c.dom.Element;
import org.w3c.dom.Node;

/** The letters that the texts of an SVG use, as web fonts for it. */
final class WebFonts {
    /** Letters stand where Java's metrics put them: no pairs drawn together. */
    private static final String RULES = "text{font-kerning:none;font-variant-ligatures:none}";

    private WebFonts() {}

    /** A style element with one font for each face in use. */
    static Element of(Element root) {
        Map<Fonts.Face, Set<Integer>> letters = new EnumMap<>(Fonts.Face.class);
        gather(root, false, false, letters);
        StringBuilder rules = new StringBuilder();
        letters.forEach((face, used) -> rules.append("@font-face{font-family:\"")
                .append(face.font().getFamily())
                .append("\";font-weight:")
                .append(face.isBold() ? "bold" : "normal")
                .append(";font-style:")
                .append(face.isSlanted() ? "italic" : "normal")
                .append(";src:url(data:font/ttf;base64,")
                .append(Base64.getEncoder().encodeToString(subset(face, used)))
                .append(")}\n"));
        Element style = root.getOwnerDocument().createElementNS(SvgFile.NAMESPACE, "style");
        style.setAttribute("type", "text/css");
        style.setTextContent(rules + RULES);
        return style;
    }

    private static void gather(Element element, boolean bold, boolean slanted, Map<Fonts.Face, Set<Integer>> letters) {
        boolean boldHere = element.hasAttribute("font-weight")
                ? element.getAttribute("font-weight").equals("bold")
                : bold;
        boolean slantedHere = element.hasAttribute("font-style")
                ? element.getAttribute("font-style").equals("italic")
                : slanted;
        if (element.getTagName().equals("text")) {
            element.getTextContent()
                    .codePoints()
                    .forEach(
                            letters.computeIfAbsent(Fonts.Face.of(boldHere, slantedHere), face -> new TreeSet<>())
                                    ::add);
            return;
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element part) {
                gather(part, boldHere, slantedHere, letters);
            }
        }
    }

    private static byte[] subset(Fonts.Face face, Set<Integer> letters) {
        try (TrueTypeFont whole = new TTFParser().parse(new RandomAccessReadBuffer(face.open()))) {
            TTFSubsetter subsetter = new TTFSubsetter(whole);
            subsetter.addAll(letters);
            ByteArrayOutputStream bytes = new ByteArrayOutputStream();
            subsetter.writeToStream(bytes);
            return bytes.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException("font " + face + ": cannot be cut to the letters in use", e);
        }
    }
}
