// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.OwnStyle;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.model.screening.Guideline;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/** The styles in the demo's layers, with its years: one for each map that can be drawn, and each draws the classes of its map. */
class LayerStylesTest {
    @TempDir
    private static Path folder;

    private static Outcome outcome;

    @BeforeAll
    static void run() {
        outcome = MainRun.run(DemoCopy.LANTERN.resolve("years.yaml"), step -> {});
        Layers.write(outcome, folder);
    }

    private static List<Map<String, String>> query(String text) throws SQLException {
        List<Map<String, String>> found = new ArrayList<>();
        try (Connection file = DriverManager.getConnection("jdbc:sqlite:" + folder.resolve("reaches.gpkg"));
                Statement sql = file.createStatement();
                ResultSet rows = sql.executeQuery(text)) {
            while (rows.next()) {
                Map<String, String> row = new LinkedHashMap<>();
                for (int c = 1; c <= rows.getMetaData().getColumnCount(); c++) {
                    row.put(rows.getMetaData().getColumnName(c), rows.getString(c));
                }
                found.add(row);
            }
        }
        return found;
    }

    private static List<Element> all(NodeList nodes) {
        return IntStream.range(0, nodes.getLength())
                .mapToObj(k -> (Element) nodes.item(k))
                .toList();
    }

    private static String text(Element in, String name) {
        return in.getElementsByTagName(name).item(0).getTextContent();
    }

    /** The look that a map of this name gives a reach, by index in the network. */
    private static ReachShade onMap(String style, int state, int reach) {
        String id = style.replace("recovery ", "");
        Guideline guideline = Shown.drawable(outcome).stream()
                .filter(g -> g.id().equals(id))
                .findFirst()
                .orElseThrow();
        if (style.startsWith("recovery ")) {
            return new RecoveryClasses(outcome, outcome.years().orElseThrow())
                    .shades(guideline)
                    .get(reach);
        }
        if (outcome.screening().isLeftOut(guideline, reach)) {
            return ReachShade.DOES_NOT_APPLY;
        }
        return Shading.of(
                guideline.observable().averaging().isOneForAllStates()
                        ? outcome.screening().row(guideline, reach)
                        : outcome.screening().inState(guideline, reach, state),
                outcome.screening().rule().factor(guideline.observable().medium()));
    }

    @Test
    void everyMapHasItsStyleInEveryLayerAndOneIsTheDefault() throws SQLException {
        List<String> names = new ArrayList<>();
        names.add(Shown.guideline(outcome).orElseThrow().id());
        Shown.drawable(outcome).stream()
                .map(Guideline::id)
                .filter(id -> !names.contains(id))
                .forEach(names::add);
        Recoveries.guidelines(outcome, outcome.years().orElseThrow()).forEach(g -> names.add("recovery " + g.id()));
        assertThat(names).hasSizeGreaterThan(4);
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            List<Map<String, String>> styles = query("SELECT * FROM layer_styles WHERE f_table_name = 'reaches_"
                    + outcome.scenario().states().get(s).name() + "' ORDER BY id");
            assertThat(styles).extracting(row -> row.get("styleName")).containsExactlyElementsOf(names);
            assertThat(styles.stream().filter(row -> row.get("useAsDefault").equals("1")))
                    .containsExactly(styles.get(0));
        }
        assertThat(query("SELECT data_type FROM gpkg_contents WHERE table_name = 'layer_styles'"))
                .containsExactly(Map.of("data_type", "attributes"));
    }

    /** For each style and reach, exactly one rule is hit, and it has the color, width and dashes of the map's class. */
    @Test
    void rulesChooseTheClassOfTheMap() throws Exception {
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            String table = "reaches_" + outcome.scenario().states().get(s).name();
            List<Map<String, String>> rows = query("SELECT * FROM " + table);
            assertThat(rows).hasSize(outcome.basin().network().size());
            for (Map<String, String> style : query("SELECT * FROM layer_styles WHERE f_table_name = '" + table + "'")) {
                String sld = style.get("styleSLD");
                // the product's own reader takes it, and all it asks for is there
                OwnStyle read = OwnStyle.read(Files.writeString(folder.resolve("style.sld"), sld));
                assertThat(read.unknown(List.copyOf(rows.get(0).keySet()))).isEmpty();
                List<Element> rules = all(DocumentBuilderFactory.newDefaultInstance()
                        .newDocumentBuilder()
                        .parse(new ByteArrayInputStream(sld.getBytes(StandardCharsets.UTF_8)))
                        .getElementsByTagName("Rule"));
                for (int r = 0; r < rows.size(); r++) {
                    Map<String, String> row = rows.get(r);
                    List<Element> hit = rules.stream()
                            .filter(rule -> text(rule, "ogc:Literal").equals(row.get(text(rule, "ogc:PropertyName"))))
                            .toList();
                    assertThat(hit)
                            .as("%s, %s", style.get("styleName"), row.get("reach"))
                            .hasSize(1);
                    LineClass look = onMap(style.get("styleName"), s, r).withLegend("");
                    assertThat(text(hit.get(0), "Name")).isEqualTo(look.key());
                    List<Element> lines = all(hit.get(0).getElementsByTagName("LineSymbolizer"));
                    Map<String, String> line = parameters(lines.get(lines.size() - 1));
                    assertThat(line)
                            .containsEntry("stroke", look.color())
                            .containsEntry("stroke-width", String.valueOf(look.width()))
                            .containsEntry(
                                    "stroke-dasharray",
                                    String.join(
                                            " ",
                                            look.dash().stream()
                                                    .map(String::valueOf)
                                                    .toList()));
                }
            }
        }
    }

    private static Map<String, String> parameters(Element line) {
        Map<String, String> found = new LinkedHashMap<>(Map.of("stroke-dasharray", ""));
        all(line.getElementsByTagName("CssParameter"))
                .forEach(parameter -> found.put(parameter.getAttribute("name"), parameter.getTextContent()));
        return found;
    }

    /** An independent reader, where the machine has one: ogrinfo of GDAL lists the table of styles among the layers. */
    @Test
    void ogrinfoListsTheStyles() throws Exception {
        String told = says("ogrinfo", folder.resolve("reaches.gpkg").toString(), "layer_styles", "-q");
        assumeThat(told).as("ogrinfo on the path").isNotNull();
        assertThat(told).contains("styleSLD (String) = <?xml", "useAsDefault (").doesNotContain("ERROR", "Warning");
    }

    private static String says(String... command) throws InterruptedException {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
            return text;
        } catch (IOException e) {
            return null;
        }
    }
}
