// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.xml.parsers.DocumentBuilderFactory;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.api.filter.Filter;
import org.geotools.feature.simple.SimpleFeatureBuilder;
import org.geotools.feature.simple.SimpleFeatureTypeBuilder;
import org.geotools.filter.FilterDOMParser;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.silverwake.geo.assembly.ReachPart;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.VectorLayer;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.ReachShade;
import org.w3c.dom.Document;
import org.w3c.dom.Element;

class ReachLayersTest {
    private static final List<LineClass> CLASSES = List.of(
            ReachShade.ABOVE.withLegend("above: > 5 & more"), ReachShade.MAY_BE_ABOVE.withLegend("may be above"));

    @TempDir
    Path folder;

    private static RiverMap map() {
        return new RiverMap(List.of(reach("A", 0, -20.5), reach("B", 1, -20.4)), 3, List.of());
    }

    private static RiverMap.Reach reach(String id, int node, double west) {
        Coordinate[] line = {new Coordinate(west, -30), new Coordinate(west + 0.1, -30)};
        return new RiverMap.Reach(
                id,
                new ReachPart(id, node, 0, 0, 9648, false),
                node,
                node + 1,
                9648,
                new GeometryFactory().createLineString(line),
                Optional.empty(),
                Map.of(),
                Map.of());
    }

    private static ReachLayer layer() {
        return new ReachLayer(
                "dry",
                "Dry season",
                List.of(Column.text("class"), Column.real("total_ng_per_l")),
                List.of(1, 0),
                List.of(Arrays.asList("above", 31.5), Arrays.asList("may-be-above", null)),
                List.of(new ReachStyle("answers", "class", CLASSES)));
    }

    @Test
    void rowsCarryTheLinesOfTheirReaches() throws Exception {
        Path file = folder.resolve("reaches.gpkg");
        ReachLayers.write(file, map(), List.of(layer()), LocalDate.of(2026, 11, 25));
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement();
                var rows = statement.executeQuery("SELECT class, total_ng_per_l, round(minx, 3) FROM dry"
                        + " JOIN rtree_dry_geom ON id = fid ORDER BY fid")) {
            rows.next();
            assertThat(List.of(rows.getString(1), rows.getString(2), rows.getString(3)))
                    .containsExactly("above", "31.5", "-20.4");
            rows.next();
            assertThat(rows.getString(1)).isEqualTo("may-be-above");
            assertThat(rows.getString(2)).isNull();
        }
    }

    /** What we write, we read: by the project's own reader, which is tested on other programs' files. */
    @Test
    void ownReaderReadsItBack() {
        Path file = folder.resolve("reaches.gpkg");
        ReachLayers.write(file, map(), List.of(layer()), LocalDate.of(2026, 11, 25));
        VectorLayer read = Layers.read(
                new LayerSource(file, Optional.of("dry"), Optional.empty(), Optional.empty(), Optional.empty()));
        assertThat(read.columns()).contains("class", "total_ng_per_l");
        assertThat(read.features()).hasSize(2);
        assertThat(read.features().get(0).attributes()).containsEntry("total_ng_per_l", 31.5);
        assertThat(read.features().get(0).geometry().equalsExact(map().reach(1).line()))
                .isTrue();
        assertThat(read.features().get(1).attributes()).doesNotContainKey("total_ng_per_l");
    }

    /** The style is read by the library's own filter parser and chooses the rule of the reach's class. */
    @Test
    void styleIsSldWhoseRulesChooseTheirClass() throws Exception {
        DocumentBuilderFactory parsers = DocumentBuilderFactory.newInstance();
        parsers.setNamespaceAware(true);
        String text = SldWriter.lines("dry", layer().styles().get(0));
        Document sld =
                parsers.newDocumentBuilder().parse(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
        assertThat(sld.getDocumentElement().getNamespaceURI()).isEqualTo("http://www.opengis.net/sld");
        assertThat(sld.getDocumentElement().getAttribute("version")).isEqualTo("1.0.0");
        var rules = sld.getElementsByTagNameNS("http://www.opengis.net/sld", "Rule");
        assertThat(rules.getLength()).isEqualTo(2);
        Element last = (Element) rules.item(1);
        assertThat(last.getElementsByTagNameNS("*", "Title").item(0).getTextContent())
                .isEqualTo("above: > 5 & more");
        Filter filter = FilterDOMParser.parseFilter(
                last.getElementsByTagNameNS("http://www.opengis.net/ogc", "PropertyIsEqualTo")
                        .item(0));
        assertThat(filter.evaluate(feature("above"))).isTrue();
        assertThat(filter.evaluate(feature("may-be-above"))).isFalse();
    }

    private static SimpleFeature feature(String value) {
        SimpleFeatureTypeBuilder type = new SimpleFeatureTypeBuilder();
        type.setName("dry");
        type.add("class", String.class);
        return SimpleFeatureBuilder.build(type.buildFeatureType(), new Object[] {value}, "1");
    }

    @Test
    void refusesRowsWithoutReaches() {
        assertThatThrownBy(() -> new ReachLayer("a", "a", List.of(), List.of(1), List.of(), List.of()))
                .hasMessageContaining("0 rows for 1 reaches");
    }
}
