// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import org.silverwake.cli.workbook.BookSheet.CellRange;

/** Hidden rows and merged cells, which the library does not tell, straight from a workbook's parts (ECMA-376, part 1, 18). */
final class SheetParts {
    private static final String RELATIONS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

    private final ZipFile zip;
    private final Map<String, String> partOfSheet = new HashMap<>();

    SheetParts(ZipFile zip) throws IOException {
        this.zip = zip;
        Map<String, String> targets = new HashMap<>();
        each("xl/_rels/workbook.xml.rels", "Relationship", x -> targets.put(value(x, "Id"), value(x, "Target")));
        each("xl/workbook.xml", "sheet", x -> partOfSheet.put(value(x, "name"), part(targets, x)));
    }

    private static String part(Map<String, String> targets, XMLStreamReader xml) {
        String id = xml.getAttributeValue(RELATIONS, "id");
        String target = targets.getOrDefault(id == null ? "" : id, "");
        return target.startsWith("/") ? target.substring(1) : "xl/" + target;
    }

    /** Rows of a sheet that are out of sight, 0 is the first. */
    Set<Integer> hiddenRows(String sheet) throws IOException {
        Set<Integer> rows = new HashSet<>();
        each(partOfSheet.getOrDefault(sheet, ""), "row", x -> {
            if (value(x, "hidden").matches("1|true") && value(x, "r").matches("\\d+")) {
                rows.add(Integer.parseInt(value(x, "r")) - 1);
            }
        });
        return rows;
    }

    /** Merged ranges of a sheet. */
    List<CellRange> merged(String sheet) throws IOException {
        List<CellRange> ranges = new ArrayList<>();
        each(partOfSheet.getOrDefault(sheet, ""), "mergeCell", x -> ranges.add(CellRange.of(value(x, "ref"))));
        return ranges;
    }

    private static String value(XMLStreamReader xml, String attribute) {
        String value = xml.getAttributeValue(null, attribute);
        return value == null ? "" : value;
    }

    private void each(String part, String element, Consumer<XMLStreamReader> use) throws IOException {
        ZipEntry entry = zip.getEntry(part);
        if (entry == null) {
            return;
        }
        XMLInputFactory factory = XMLInputFactory.newDefaultFactory();
        factory.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        factory.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try (InputStream in = zip.getInputStream(entry)) {
            XMLStreamReader xml = factory.createXMLStreamReader(in);
            while (xml.hasNext()) {
                if (xml.next() == XMLStreamReader.START_ELEMENT
                        && xml.getLocalName().equals(element)) {
                    use.accept(xml);
                }
            }
            xml.close();
        } catch (XMLStreamException e) {
            throw new IOException(e.getMessage(), e);
        }
    }
}
