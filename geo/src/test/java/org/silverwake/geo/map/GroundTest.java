// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.layer.LayerSource;
import org.silverwake.geo.layer.Layers;
import org.silverwake.geo.layer.VectorLayer;

class GroundTest {
    private static final GroundWords WORDS = GroundWords.english();
    private static final String BOW_TIE =
            "{\"type\":\"Feature\",\"properties\":{\"name\":\"Bow\"},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":"
                    + "[[[-20.1,-30.1],[-20,-30],[-20.1,-30],[-20,-30.1],[-20.1,-30.1]]]}}";

    @TempDir
    private Path folder;

    @Test
    void brokenAreasAreDrawnWithAWarningAndNullShapesPassedOver() throws IOException {
        BackdropLayer layer = layer(
                BackdropLayer.Kind.LAKES,
                Optional.of("name"),
                BOW_TIE,
                "{\"type\":\"Feature\",\"properties\":{\"name\":\"x\"},\"geometry\":null}");
        assertThat(layer.missingLabel()).isEmpty();
        assertThat(layer.warnings())
                .singleElement()
                .asString()
                .contains("layer.geojson", "1 area cross themselves", "feature ");
        assertThat(layer.items()).hasSize(1);
        BufferedImage image = drawn(layer);
        MapFrame frame = frame();
        var inside = frame.toPage(-20.05, -30.09);
        assertThat(new Color(image.getRGB((int) inside.getX(), (int) inside.getY())))
                .isEqualTo(new Color(0xe3ecf5));
    }

    @Test
    void anEmptyLayerAndOneFarAwayGiveOneWarning() throws IOException {
        assertThat(layer(BackdropLayer.Kind.ROADS, Optional.of("name")).warnings())
                .singleElement()
                .asString()
                .contains("has no features");
        assertThat(layer(BackdropLayer.Kind.ROADS, Optional.empty(), BOW_TIE.replace("-20", "20"))
                        .warnings())
                .singleElement()
                .asString()
                .contains("none of its 1 shapes lies near the rivers");
    }

    @Test
    void aMissingLabelColumnIsNamedWithTheOnesThereAre() throws IOException {
        BackdropLayer layer = layer(BackdropLayer.Kind.LAKES, Optional.of("nome"), BOW_TIE);
        assertThat(layer.missingLabel())
                .hasValueSatisfying(text ->
                        assertThat(text).isEqualTo("layer.geojson: there is no column nome; its columns are name"));
    }

    @Test
    void noKindIsGreen() {
        for (BackdropLayer.Kind kind : BackdropLayer.Kind.values()) {
            BackdropLook look = BackdropLook.of(look(kind, Optional.empty()));
            for (Color color : List.of(look.edge(), look.ink(), look.fill().orElse(Color.WHITE))) {
                assertThat(color.getGreen())
                        .as("%s %s", kind, color)
                        .isLessThanOrEqualTo(Math.max(color.getRed(), color.getBlue()));
            }
        }
    }

    /** 4 km/h and 9 km/h: 10 km in 2 h 30 min and 1 h 7 min, told as 1 h. */
    @Test
    void theBarTellsTimesAndThatWaysAreLonger() {
        Ground ground = new Ground(
                Optional.empty(),
                List.of(),
                Locator.globe(),
                OptionalDouble.of(4000.0 / 3600),
                OptionalDouble.of(9000.0 / 3600));
        assertThat(Travel.line("10 km", 10_000, ground, WORDS))
                .contains("10 km in a straight line: about 2 h 30 min on foot, 1 h by boat."
                        + " Paths and rivers wind: the way is longer.");
        assertThat(Travel.line("10 km", 10_000, Ground.bare(), WORDS)).isEmpty();
        assertThat(Travel.time(59, WORDS)).isEqualTo("1 min");
        assertThat(Travel.time(3500, WORDS)).isEqualTo("1 h");
        assertThat(Travel.time(5 * 3600 + 1000, WORDS)).isEqualTo("5 h 30 min");
        assertThat(Travel.time(11 * 3600 + 2000, WORDS)).isEqualTo("12 h");
    }

    /** Written to target for looking at; here only that something dark stands in the middle of each. */
    @Test
    void locatorsShowTheBasin() throws IOException {
        RiverMap map = InventedRivers.tree(7, 3);
        BackdropLayer land = BackdropLayer.readAll(source(
                file("{\"type\":\"Feature\",\"properties\":{},\"geometry\":{\"type\":\"Polygon\",\"coordinates\":"
                        + "[[[-26,-33],[-22,-35],[-17,-33],[-15,-29],[-18,-26],[-23,-27],[-26,-33]]]}}")));
        int scale = 8;
        BufferedImage image = new BufferedImage(220 * scale, 105 * scale, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        g.scale(scale, scale);
        g.setColor(Color.WHITE);
        g.fill(new Rectangle2D.Double(0, 0, 220, 105));
        Locator.globe().draw(g, new Rectangle2D.Double(3, 3, 99, 99), map, WORDS);
        Locator.on(land).draw(g, new Rectangle2D.Double(115, 3, 99, 99), map, WORDS);
        g.dispose();
        Path pictures = Files.createDirectories(Path.of("target", "maps"));
        PngFile.write(pictures.resolve("locators.png"), image, Paper.DOTS_PER_INCH);
        assertThat(darkest(image, 3, 102, scale)).isLessThan(60);
        assertThat(darkest(image, 120, 210, scale)).isLessThan(60);
    }

    private static int darkest(BufferedImage image, int from, int to, int scale) {
        int least = 255;
        for (int x = from * scale; x < to * scale; x++) {
            for (int y = 10 * scale; y < 90 * scale; y++) {
                least = Math.min(least, new Color(image.getRGB(x, y)).getRed());
            }
        }
        return least;
    }

    private BufferedImage drawn(BackdropLayer layer) {
        BufferedImage image = new BufferedImage(200, 200, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(0, 0, 200, 200);
        Ground ground = new Ground(
                Optional.empty(), List.of(layer), Locator.globe(), OptionalDouble.empty(), OptionalDouble.empty());
        new BackdropPainter(frame(), ground).paint(g);
        g.dispose();
        return image;
    }

    private static MapFrame frame() {
        return new MapFrame(
                List.of(
                        new org.locationtech.jts.geom.Coordinate(-20.1, -30.1),
                        new org.locationtech.jts.geom.Coordinate(-20, -30)),
                new Rectangle2D.Double(0, 0, 200, 200),
                10);
    }

    private static BackdropLayer.Look look(BackdropLayer.Kind kind, Optional<String> label) {
        return new BackdropLayer.Look(kind, label, Optional.empty(), OptionalDouble.empty(), Optional.empty());
    }

    private BackdropLayer layer(BackdropLayer.Kind kind, Optional<String> label, String... features)
            throws IOException {
        Path rivers = folder.resolve("rivers.geojson");
        Files.writeString(
                rivers,
                "{\"type\":\"FeatureCollection\",\"features\":[{\"type\":\"Feature\",\"properties\":{},\"geometry\":"
                        + "{\"type\":\"LineString\",\"coordinates\":[[-20.1,-30.1],[-20,-30]]}}]}");
        VectorLayer near = Layers.read(source(rivers));
        return BackdropLayer.read(source(file(features)), look(kind, label), near);
    }

    private Path file(String... features) throws IOException {
        return Files.writeString(
                folder.resolve("layer.geojson"),
                "{\"type\":\"FeatureCollection\",\"features\":[" + String.join(",", features) + "]}");
    }

    private static LayerSource source(Path file) {
        return new LayerSource(file, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());
    }
}
