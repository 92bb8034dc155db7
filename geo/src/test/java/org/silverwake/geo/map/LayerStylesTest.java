// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.BasicStroke;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.geotools.api.feature.simple.SimpleFeature;
import org.geotools.api.style.LineSymbolizer;
import org.geotools.api.style.Rule;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.write.Column;
import org.silverwake.geo.write.ReachLayer;
import org.silverwake.geo.write.ReachLayers;
import org.silverwake.geo.write.ReachStyle;

/** Styles in a GeoPackage draw what maps draw. */
class LayerStylesTest {
    private static final RiverMap MAP = InventedRivers.tree(3, 3);
    private static final List<LineClass> CLASSES = Arrays.stream(ReachShade.values())
            .map(shade -> shade.withLegend("<" + shade.key() + "> & more"))
            .toList();

    @TempDir
    private Path folder;

    private static ReachShade shade(int reach, int shift) {
        return ReachShade.values()[(reach + shift) % CLASSES.size()];
    }

    /** Two classes by columns of their own, the second in another order than the first. */
    private List<List<Object>> rows() {
        List<List<Object>> rows = new ArrayList<>();
        for (int r = 0; r < MAP.reachCount(); r++) {
            rows.add(List.of(shade(r, 0).key(), shade(r, 3).key()));
        }
        return rows;
    }

    /** Of a style's rules each reach hits the one of its class, whose lines are those of the map. */
    @Test
    void rulesChooseTheLooksOfTheMap() throws Exception {
        Path file = folder.resolve("reaches.gpkg");
        List<Column> columns = List.of(Column.text("class"), Column.text("class_other"));
        ReachLayer layer = new ReachLayer(
                "dry",
                "Dry season",
                columns,
                IntStream.range(0, MAP.reachCount()).boxed().toList(),
                rows(),
                List.of(new ReachStyle("A & B", "class", CLASSES), new ReachStyle("other", "class_other", CLASSES)));
        ReachLayers.write(file, MAP, List.of(layer), LocalDate.of(2026, 11, 25));
        List<String> found = new ArrayList<>();
        try (var connection = DriverManager.getConnection("jdbc:sqlite:" + file);
                var statement = connection.createStatement();
                var styles = statement.executeQuery(
                        "SELECT styleName, useAsDefault, styleSLD FROM layer_styles ORDER BY id")) {
            while (styles.next()) {
                found.add(styles.getString(1) + " " + styles.getInt(2));
                Path sld = Files.writeString(folder.resolve("style.sld"), styles.getString(3));
                compare(SldReader.read(sld), found.size() == 1 ? 0 : 3);
            }
        }
        assertThat(found).containsExactly("A & B 1", "other 0");
    }

    private void compare(SldReader.Read style, int shift) {
        List<Rule> rules = style.style().featureTypeStyles().stream()
                .flatMap(pass -> pass.rules().stream())
                .toList();
        assertThat(rules).hasSameSizeAs(CLASSES);
        List<SimpleFeature> features =
                MapFeatures.reaches(MAP, new OwnLook(null, List.of("class", "class_other"), rows(), ""));
        for (int r = 0; r < MAP.reachCount(); r++) {
            SimpleFeature feature = features.get(r);
            List<Rule> hit = rules.stream()
                    .filter(rule -> rule.getFilter().evaluate(feature))
                    .toList();
            assertThat(hit).hasSize(1);
            LineClass look = CLASSES.get(shade(r, shift).ordinal());
            assertThat(hit.get(0).getName()).isEqualTo(look.key());
            assertThat(hit.get(0).getDescription().getTitle().toString()).isEqualTo(look.legend());
            assertThat(strokes(hit.get(0).symbolizers())).isEqualTo(strokes(MapStyles.reach(look, 1)));
        }
    }

    /** Color, width, dash, cap and join of each line. */
    private static List<String> strokes(List<?> symbolizers) {
        return symbolizers.stream()
                .map(LineSymbolizer.class::cast)
                .map(line -> {
                    BasicStroke stroke = StyleValues.stroke(line.getStroke(), null);
                    return StyleValues.color(line.getStroke(), null) + " " + stroke.getLineWidth() + " "
                            + Arrays.toString(stroke.getDashArray()) + " " + stroke.getEndCap() + " "
                            + stroke.getLineJoin();
                })
                .toList();
    }

    @Test
    void aStyleWithoutItsColumnIsRefused() {
        org.assertj.core.api.Assertions.assertThatThrownBy(() -> new ReachLayer(
                        "dry",
                        "Dry",
                        List.of(),
                        List.of(),
                        Collections.emptyList(),
                        List.of(new ReachStyle("answers", "class", CLASSES))))
                .hasMessageContaining("asks for class, which is no column");
    }
}
