// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.awt.Color;
import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import net.sf.geographiclib.Geodesic;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.locationtech.jts.geom.Coordinate;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.geo.place.PointRequest;

class ConcentrationMapTest {
    /** DISCRETIZATION: the frame is straight, the parallel is not the geodesic; over a third of a map 100 km wide that is below 1e-5. */
    private static final double SCALE_PERCENT = 0.01;

    @TempDir
    Path folder;

    private static final RiverMap MAP = InventedRivers.tree(4, 7);

    private BufferedImage drawn(MapSheet sheet) throws Exception {
        Path file = folder.resolve("map.png");
        ConcentrationMap.draw(MAP, sheet, file);
        return ImageIO.read(file.toFile());
    }

    @Test
    void everyClassIsSeenAndNothingIsGreen() throws Exception {
        BufferedImage image = drawn(Sheets.full(MAP, 5, Paper.A4));
        assertThat(image.getWidth()).isEqualTo(3508);
        assertThat(image.getHeight()).isEqualTo(2480);
        Set<Integer> left = new HashSet<>();
        int greenish = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y) & 0xffffff;
                if (x < 2200) {
                    left.add(rgb);
                }
                greenish += isGreenish(rgb) ? 1 : 0;
            }
        }
        for (LineClass look : Sheets.CLASSES) {
            assertThat(left)
                    .as(look.key())
                    .contains(Integer.parseInt(look.color().substring(1), 16));
        }
        assertThat(greenish).isZero();
    }

    /** Hue 80 to 160 degrees with a saturation above a quarter; near-black pixels have no hue to speak of. */
    private static boolean isGreenish(int rgb) {
        float[] hsb = Color.RGBtoHSB(rgb >> 16, rgb >> 8 & 0xff, rgb & 0xff, null);
        return hsb[0] * 360 >= 80 && hsb[0] * 360 <= 160 && hsb[1] > 0.25 && hsb[2] > 0.1;
    }

    @Test
    void greenishIsSeenWhereItIs() {
        assertThat(isGreenish(0x3a9d4f)).isTrue();
        assertThat(isGreenish(0x7fa6d6)).isFalse();
    }

    /** Looks differ in lightness (CIE 1976 L*), neighbors of the ramp by 10 at least; widths fall along it. */
    @Test
    void looksDifferInLightnessAndWidth() {
        List<ReachShade> ramp =
                List.of(ReachShade.FAR_ABOVE, ReachShade.ABOVE, ReachShade.LIKELY_ABOVE, ReachShade.MAY_BE_ABOVE);
        for (int k = 1; k < ramp.size(); k++) {
            LineClass dark = ramp.get(k - 1).withLegend("");
            LineClass light = ramp.get(k).withLegend("");
            assertThat(lightness(light) - lightness(dark)).as(light.key()).isGreaterThan(10);
            assertThat(light.width()).isLessThan(dark.width());
        }
        Set<Object> looks = new HashSet<>();
        for (ReachShade shade : ReachShade.values()) {
            LineClass look = shade.withLegend("");
            looks.add(List.of(look.width(), look.dash()));
        }
        assertThat(looks).hasSize(ReachShade.values().length);
    }

    /** CIE 1976 lightness from sRGB, D65 (IEC 61966-2-1). */
    private static double lightness(LineClass look) {
        int rgb = Integer.parseInt(look.color().substring(1), 16);
        double y = 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 0xff) + 0.0722 * linear(rgb & 0xff);
        return 116 * Math.cbrt(y) - 16;
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    /** pHYs of ISO/IEC 15948: 300 dots per inch are 11811 per meter. */
    @Test
    void pictureKnowsItsResolution() throws Exception {
        drawn(Sheets.full(MAP, 5, Paper.A4));
        byte[] head = new byte[80];
        try (var in = Files.newInputStream(folder.resolve("map.png"))) {
            assertThat(in.readNBytes(head, 0, 80)).isEqualTo(80);
        }
        String text = new String(head, java.nio.charset.StandardCharsets.ISO_8859_1);
        int at = text.indexOf("pHYs") + 4;
        assertThat(java.nio.ByteBuffer.wrap(head).getInt(at)).isEqualTo(11811);
        assertThat(head[at + 8]).isEqualTo((byte) 1);
    }

    @Test
    void sameSheetGivesSameBytes() throws Exception {
        ConcentrationMap.draw(MAP, Sheets.full(MAP, 5, Paper.A4), folder.resolve("a.png"));
        ConcentrationMap.draw(MAP, Sheets.full(MAP, 5, Paper.A4), folder.resolve("b.png"));
        assertThat(Files.mismatch(folder.resolve("a.png"), folder.resolve("b.png")))
                .isEqualTo(-1);
    }

    /** The bar's ends, brought back to the ground, are as far apart as it says, by an independent geodesic (Karney 2013). */
    @Test
    void scaleBarIsTrueToTheGround() {
        for (double latitude : new double[] {0, -30, 62}) {
            List<Coordinate> places =
                    List.of(new Coordinate(178.9, latitude - 0.4), new Coordinate(-179.9, latitude + 0.4));
            MapFrame frame = new MapFrame(places, new Rectangle2D.Double(30, 80, 520, 440), 30);
            Surround surround = new Surround(null, frame);
            double half = surround.scalePoints() / 2;
            Coordinate west = frame.toGround(290 - half, 300);
            Coordinate east = frame.toGround(290 + half, 300);
            double ground = Geodesic.WGS84.Inverse(west.y, west.x, east.y, east.x).s12;
            assertThat(ground).isCloseTo(surround.scaleMeters(), withinPercentage(SCALE_PERCENT));
            assertThat(half).isGreaterThan(20);
            Coordinate north = frame.toGround(290, 250);
            Coordinate south = frame.toGround(290, 350);
            assertThat(100 / frame.pointsPerMeter())
                    .isCloseTo(
                            Geodesic.WGS84.Inverse(north.y, north.x, south.y, south.x).s12,
                            withinPercentage(SCALE_PERCENT));
        }
    }

    @Test
    void placesComeBackFromThePage() {
        MapFrame frame = new MapFrame(
                List.of(new Coordinate(-20.5, -30), new Coordinate(-20, -29)),
                new Rectangle2D.Double(0, 0, 100, 90),
                5);
        Point2D page = frame.toPage(-20.3, -29.7);
        Coordinate ground = frame.toGround(page.getX(), page.getY());
        assertThat(ground.distance(new Coordinate(-20.3, -29.7))).isLessThan(1e-12);
        assertThat(frame.toPage(-20.3, -29.2).getY()).isLessThan(page.getY());
    }

    /** A basin five times as wide as high gets a lower frame at the same scale; a high one keeps the whole room. */
    @Test
    void frameIsNoHigherThanTheBasinNeeds() {
        Rectangle2D room = new Rectangle2D.Double(0, 0, 500, 400);
        List<Coordinate> wide = List.of(new Coordinate(0, 0), new Coordinate(1, 0.2));
        MapFrame low = MapFrame.fitted(wide, room, 30);
        assertThat(low.view().getHeight()).isBetween(199.0, 201.0);
        assertThat(low.pointsPerMeter()).isEqualTo(new MapFrame(wide, room, 30).pointsPerMeter());
        List<Coordinate> high = List.of(new Coordinate(0, 0), new Coordinate(0.2, 1));
        assertThat(MapFrame.fitted(high, room, 30).view()).isEqualTo(room);
    }

    @Test
    void sitesCannotBeShownWithoutTheBand() {
        MapSheet sheet = Sheets.full(MAP, 5, Paper.A4);
        MapBasis basis = sheet.basis();
        assertThatThrownBy(() -> new MapBasis(
                        "",
                        basis.points(),
                        List.of(),
                        List.of(),
                        "",
                        basis.date(),
                        false,
                        basis.words(),
                        Paper.A4,
                        Ground.bare()))
                .hasMessageContaining("not for posting");
    }

    @Test
    void sheetOfAnotherNetworkIsRefused() {
        RiverMap other = InventedRivers.tree(1, 2);
        assertThatThrownBy(() -> ConcentrationMap.draw(other, Sheets.full(MAP, 5, Paper.A4), folder.resolve("no.png")))
                .hasMessageContaining("give one mark per reach");
    }

    /** Pictures for the eye, in target/pictures. */
    @Test
    void picturesToLookAt() throws Exception {
        Path pictures = Files.createDirectories(Path.of("target/pictures"));
        ConcentrationMap.draw(MAP, Sheets.downstream(MAP, Paper.A4), pictures.resolve("downstream.png"));
        ConcentrationMap.draw(MAP, Sheets.full(MAP, 5, Paper.A3), pictures.resolve("all-looks-a3.png"));
        List<Defect> defects = new ArrayList<>();
        List<PlacedPoint> points = new ArrayList<>();
        for (int k = 0; k < 7; k++) {
            Coordinate at = MAP.reach(11 * k).line().getCoordinateN(3);
            defects.add(new Defect(
                    Defect.Kind.GAP,
                    at.x,
                    at.y,
                    List.of("L1"),
                    "gap of 1." + k + " m between L10" + k + "2 and L10" + k + "5",
                    "joined, since it is below the snap tolerance of 2 m",
                    true));
            Coordinate on = MAP.reach(11 * k + 5).line().getCoordinateN(9);
            var request = new PointRequest(
                    "site", "Shed " + k, "sites.csv:" + k, on.x, on.y, false, 500, java.util.Optional.empty());
            points.add(new PlacedPoint(request, on.x + 0.02, on.y + 0.01, on.x, on.y, 400, "L1", 0, 0));
        }
        RiverMap flawed = new RiverMap(MAP.reaches(), MAP.nodeCount(), defects);
        CheckPicture.draw(flawed, points, "Lantern River: what was read", pictures.resolve("check.png"));
        assertThat(ImageIO.read(pictures.resolve("check.png").toFile()).getWidth())
                .isEqualTo(3508);
        assertThat(ImageIO.read(pictures.resolve("all-looks-a3.png").toFile()).getWidth())
                .isEqualTo(4961);
    }
}
