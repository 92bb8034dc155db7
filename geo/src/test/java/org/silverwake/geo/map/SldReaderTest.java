// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.api.style.LineSymbolizer;
import org.geotools.api.style.Mark;
import org.geotools.api.style.PointSymbolizer;
import org.geotools.api.style.PolygonSymbolizer;
import org.geotools.api.style.Rule;
import org.geotools.api.style.Style;
import org.geotools.api.style.TextSymbolizer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Point;

class SldReaderTest {
    private static final String SLD_1_0 = "<StyledLayerDescriptor version='1.0.0' xmlns='http://www.opengis.net/sld'"
            + " xmlns:ogc='http://www.opengis.net/ogc'><NamedLayer><Name>a</Name><UserStyle><FeatureTypeStyle>\n";
    private static final String SLD_END = "</FeatureTypeStyle></UserStyle></NamedLayer></StyledLayerDescriptor>";
    private static final String SE_1_1 = "<FeatureTypeStyle version='1.1.0' xmlns='http://www.opengis.net/se'"
            + " xmlns:ogc='http://www.opengis.net/ogc'>\n";

    @TempDir
    Path folder;

    private Style read(String text) throws Exception {
        Path file = folder.resolve("my.sld");
        Files.writeString(file, text);
        return SldReader.read(file).style();
    }

    private static Rule rule(Style style, int k) {
        return style.featureTypeStyles().get(0).rules().get(k);
    }

    private static SimpleFeature feature() {
        MapFeatures.Builder one = new MapFeatures.Builder(
                Point.class, Map.of("name", String.class, "ratio", Double.class, "class", String.class));
        one.add(MapFeatures.point(0, 0), Map.of("name", "Wick Creek", "ratio", 3.0, "class", "above"));
        return one.all().get(0);
    }

    /** The dashed line of OGC 02-070, 11.1.3 (from memory): blue, 2 wide, dashes and gaps 10 and 5; a filter and scales about it. */
    @Test
    void lineOfSld10() throws Exception {
        Style style = read(SLD_1_0 + """
                <Rule><Name>r</Name><Title>Above</Title>
                <ogc:Filter><ogc:And><ogc:PropertyIsEqualTo><ogc:PropertyName>class</ogc:PropertyName>
                <ogc:Literal>above</ogc:Literal></ogc:PropertyIsEqualTo>
                <ogc:PropertyIsGreaterThan><ogc:PropertyName>ratio</ogc:PropertyName><ogc:Literal>2</ogc:Literal>
                </ogc:PropertyIsGreaterThan></ogc:And></ogc:Filter>
                <MinScaleDenominator>1000</MinScaleDenominator><MaxScaleDenominator>5e5</MaxScaleDenominator>
                <LineSymbolizer><Geometry><ogc:PropertyName>geom</ogc:PropertyName></Geometry><Stroke>
                <CssParameter name="stroke">#0000ff</CssParameter><CssParameter name="stroke-width">2</CssParameter>
                <CssParameter name="stroke-linecap">round</CssParameter>
                <CssParameter name="stroke-dasharray">10.0 5, 10 5</CssParameter></Stroke></LineSymbolizer></Rule>
                <Rule><ElseFilter/><LineSymbolizer/></Rule>
                """ + SLD_END);
        Rule rule = rule(style, 0);
        assertThat(rule.getName()).isEqualTo("r");
        assertThat(rule.getDescription().getTitle().toString()).isEqualTo("Above");
        assertThat(rule.getFilter().evaluate(feature())).isTrue();
        assertThat(rule.getMinScaleDenominator()).isEqualTo(1000);
        assertThat(rule.getMaxScaleDenominator()).isEqualTo(500_000);
        LineSymbolizer line = (LineSymbolizer) rule.symbolizers().get(0);
        assertThat(StyleValues.color(line.getStroke(), null)).isEqualTo(Color.BLUE);
        assertThat(StyleValues.stroke(line.getStroke(), null).getLineWidth()).isEqualTo(2);
        assertThat(line.getStroke().getDashArray()).containsExactly(10, 5, 10, 5);
        assertThat(rule(style, 1).isElseFilter()).isTrue();
        assertThat(rule(style, 1).symbolizers()).hasSize(1);
    }

    /** A star in red, 8 high (the mark of OGC 05-077r4, 11.3.3, from memory), an area half opaque, and arithmetic in a size. */
    @Test
    void pointAndAreaOfSe11() throws Exception {
        Style style = read(SE_1_1 + """
                <Rule><Description><Title>Sites</Title></Description>
                <PointSymbolizer uom="http://www.opengeospatial.org/se/units/pixel"><Graphic><Mark><WellKnownName>star</WellKnownName>
                <Fill><SvgParameter name="fill">#ff0000</SvgParameter></Fill></Mark>
                <Size><ogc:Add><ogc:PropertyName>ratio</ogc:PropertyName><ogc:Literal>5</ogc:Literal></ogc:Add></Size>
                <Rotation>45</Rotation></Graphic></PointSymbolizer>
                <PolygonSymbolizer><Fill><SvgParameter name="fill">#000080</SvgParameter>
                <SvgParameter name="fill-opacity"><ogc:Literal>0.5</ogc:Literal></SvgParameter></Fill></PolygonSymbolizer>
                <LineSymbolizer><Stroke><GraphicStroke><Graphic><Mark><WellKnownName>x</WellKnownName></Mark><Size>4</Size></Graphic>
                <Gap>9</Gap></GraphicStroke></Stroke><PerpendicularOffset>3</PerpendicularOffset></LineSymbolizer></Rule>
                </FeatureTypeStyle>""");
        Rule rule = rule(style, 0);
        assertThat(rule.getDescription().getTitle().toString()).isEqualTo("Sites");
        PointSymbolizer point = (PointSymbolizer) rule.symbolizers().get(0);
        Mark mark = (Mark) point.getGraphic().graphicalSymbols().get(0);
        assertThat(StyleValues.text(mark.getWellKnownName(), null, "")).isEqualTo("star");
        assertThat(StyleValues.number(point.getGraphic().getSize(), feature(), 0))
                .isEqualTo(8);
        assertThat(StyleValues.number(point.getGraphic().getRotation(), feature(), 0))
                .isEqualTo(45);
        PolygonSymbolizer area = (PolygonSymbolizer) rule.symbolizers().get(1);
        assertThat(StyleValues.color(area.getFill(), null, Color.GRAY)).isEqualTo(new Color(0, 0, 0x80, 128));
        LineSymbolizer line = (LineSymbolizer) rule.symbolizers().get(2);
        assertThat(StyleValues.number(line.getPerpendicularOffset(), null, 0)).isEqualTo(3);
        assertThat(StyleValues.number(line.getStroke().getGraphicStroke().getGap(), null, 0))
                .isEqualTo(9);
    }

    @Test
    void labelKeepsBlanksBetweenItsParts() throws Exception {
        Style style = read(SLD_1_0 + """
                <Rule><TextSymbolizer><Label>
                  <ogc:PropertyName>name</ogc:PropertyName> is over by <ogc:PropertyName>ratio</ogc:PropertyName>,
                  <ogc:Literal>roughly</ogc:Literal>
                </Label><Font><CssParameter name="font-size">12</CssParameter><CssParameter name="font-weight">bold</CssParameter></Font>
                <LabelPlacement><LinePlacement/></LabelPlacement><Halo><Radius>2</Radius></Halo></TextSymbolizer></Rule>
                """ + SLD_END);
        TextSymbolizer text = (TextSymbolizer) rule(style, 0).symbolizers().get(0);
        assertThat(StyleValues.text(text.getLabel(), feature(), "")).isEqualTo("Wick Creek is over by 3.0, roughly");
        assertThat(StyleValues.font(text.getFont(), null)).isEqualTo(Fonts.bold(12));
        assertThat(StyleValues.number(text.getHalo().getRadius(), null, 0)).isEqualTo(2);
    }

    @Test
    void allProblemsAreToldWithTheirLines() {
        assertThatThrownBy(() -> read(SLD_1_0 + """
                        <Rule><RasterSymbolizer/>
                        <PointSymbolizer><Graphic>
                        <ExternalGraphic/><Size>big</Size></Graphic></PointSymbolizer>
                        <LineSymbolizer uom="http://www.opengeospatial.org/se/units/metre"><Stroke>
                        <CssParameter name="stroke">blueish</CssParameter>
                        <CssParameter name="stroke-colour">#ffffff</CssParameter>
                        <CssParameter name="stroke-dasharray">4 x</CssParameter></Stroke></LineSymbolizer>
                        <MinScaleDenominator>far</MinScaleDenominator></Rule>
                        """ + SLD_END))
                .hasMessageContaining("my.sld:2: RasterSymbolizer is not drawn")
                .hasMessageContaining("my.sld:4: ExternalGraphic is not drawn; give a Mark")
                .hasMessageContaining("Size \"big\" is no number")
                .hasMessageContaining("my.sld:5: uom \"http://www.opengeospatial.org/se/units/metre\" is not drawn")
                .hasMessageContaining("my.sld:6: stroke \"blueish\" is no color; give #rrggbb")
                .hasMessageContaining("my.sld:7: parameter \"stroke-colour\" is not used here")
                .hasMessageContaining("stroke-dasharray \"4 x\" is no list of lengths")
                .hasMessageContaining("my.sld:9: MinScaleDenominator \"far\" is no scale");
    }

    @Test
    void nothingIsFetchedFromElsewhere() throws Exception {
        Path secret = Files.writeString(folder.resolve("secret"), "secret words");
        assertThatThrownBy(() -> read("<!DOCTYPE a [<!ENTITY b SYSTEM '" + secret.toUri() + "'>]>\n" + SLD_1_0
                        + "<Rule><Name>&b;</Name></Rule>" + SLD_END))
                .hasMessageContaining("my.sld:1: not XML that can be read")
                .hasMessageContaining("without DOCTYPE");
        assertThatThrownBy(() -> read("<a xmlns='urn:b'/>")).hasMessageContaining("no FeatureTypeStyle in it");
        assertThatThrownBy(() -> SldReader.read(folder.resolve("absent.sld"))).hasMessageContaining("give an SLD file");
    }
}
