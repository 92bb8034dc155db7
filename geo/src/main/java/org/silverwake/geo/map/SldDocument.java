// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import javax.xml.parsers.SAXParserFactory;
import org.silverwake.geo.GeoDataException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.xml.sax.Attributes;
import org.xml.sax.Locator;
import org.xml.sax.SAXException;
import org.xml.sax.SAXParseException;
import org.xml.sax.helpers.DefaultHandler;

/**
 * A style file as a tree that knows its lines, and the problems found in it. Document type declarations are refused, and with them all
 * entities from elsewhere. Elements are told apart by their local names: SLD 1.0 and SE 1.1 use other namespaces for the same things.
 */
final class SldDocument {
    private static final String LINE = "line";

    private final Path file;
    private final Element root;
    private final List<String> problems = new ArrayList<>();

    private SldDocument(Path file, Element root) {
        this.file = file;
        this.root = root;
    }

    static SldDocument read(Path file) {
        try (InputStream in = Files.newInputStream(file)) {
            Document tree = DocumentBuilderFactory.newDefaultInstance()
                    .newDocumentBuilder()
                    .newDocument();
            SAXParserFactory parsers = SAXParserFactory.newDefaultInstance();
            parsers.setNamespaceAware(true);
            parsers.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            parsers.newSAXParser().parse(in, new Growing(tree));
            return new SldDocument(file, tree.getDocumentElement());
        } catch (SAXParseException e) {
            throw new GeoDataException(file + ":" + e.getLineNumber() + ": not XML that can be read (" + e.getMessage()
                    + "); give an SLD 1.0 or SE 1.1 file without DOCTYPE");
        } catch (IOException e) {
            throw new GeoDataException(file + ": cannot be read (" + e.getMessage() + "); give an SLD file", e);
        } catch (SAXException | ParserConfigurationException e) {
            throw new IllegalStateException("the Java in use cannot read XML", e);
        }
    }

    Element root() {
        return root;
    }

    /** Notes what cannot be used; reading goes on. */
    void problem(Node where, String text) {
        problems.add(file + ":" + where.getUserData(LINE) + ": " + text);
    }

    /** Ends reading if there were problems: one line each, by line number. */
    void requireNoProblems() {
        if (!problems.isEmpty()) {
            throw new GeoDataException(String.join("\n", problems));
        }
    }

    static List<Element> children(Element of, String... names) {
        List<Element> found = new ArrayList<>();
        for (Node child = of.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element element
                    && (names.length == 0 || List.of(names).contains(element.getLocalName()))) {
                found.add(element);
            }
        }
        return found;
    }

    static Optional<Element> child(Element of, String name) {
        return children(of, name).stream().findFirst();
    }

    static Optional<String> text(Element of, String name) {
        return child(of, name).map(element -> element.getTextContent().strip());
    }

    /** Builds the tree; each element keeps the line on which it begins. */
    private static final class Growing extends DefaultHandler {
        private final Document tree;
        private Node at;
        private Locator locator;

        Growing(Document tree) {
            this.tree = tree;
            this.at = tree;
        }

        @Override
        public void setDocumentLocator(Locator where) {
            locator = where;
        }

        @Override
        public void startElement(String uri, String local, String name, Attributes attributes) {
            Element element = tree.createElementNS(uri, name);
            for (int k = 0; k < attributes.getLength(); k++) {
                element.setAttributeNS(attributes.getURI(k), attributes.getQName(k), attributes.getValue(k));
            }
            element.setUserData(LINE, locator.getLineNumber(), null);
            at.appendChild(element);
            at = element;
        }

        @Override
        public void endElement(String uri, String local, String name) {
            at = at.getParentNode();
        }

        @Override
        public void characters(char[] letters, int from, int count) {
            at.appendChild(tree.createTextNode(new String(letters, from, count)));
        }
    }
}
