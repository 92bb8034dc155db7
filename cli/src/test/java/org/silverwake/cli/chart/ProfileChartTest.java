// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.chart;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pictures are left in {@code target/charts} to be looked at. */
class ProfileChartTest {
    private static final Path LEFT_FOR_EYES = Path.of("target", "charts");

    private static Profile.Stretch stretch(double from, double to, double high, double decay) {
        List<Profile.Point> points = new ArrayList<>();
        for (double x = from; x <= to; x += 2) {
            double carried = high * Math.exp(-0.004 * (x - from)) + 1.2;
            double laid = high * Math.exp(-decay * (x - from)) + 1.2;
            points.add(new Profile.Point(x, laid, carried, 1.2));
        }
        return new Profile.Stretch(points);
    }

    static Profile crowded() {
        return new Profile(
                "Lantern main stem, from Upper Lamp to the sea",
                "mean over the year; the wet season is the worst flow state",
                "whole inorganic Hg in surface water",
                "ng/L",
                "feature L040",
                List.of(
                        new Profile.Stretch(
                                List.of(new Profile.Point(0, 1.2, 1.2, 1.2), new Profile.Point(8, 1.2, 1.2, 1.2))),
                        stretch(8, 40, 900, 0.06),
                        stretch(40, 60, 260, 0.07),
                        stretch(70, 130, 120, 0.03)),
                List.of(new Profile.Gap(60, 70, "no water")),
                List.of(
                        new Profile.Mark(8, "Upper Lamp sheds", Profile.Mark.Kind.SITE),
                        new Profile.Mark(9, "Wick", Profile.Mark.Kind.PLACE),
                        new Profile.Mark(12, "Middle Lamp sheds", Profile.Mark.Kind.SITE),
                        new Profile.Mark(12, "Old tailings pond", Profile.Mark.Kind.SITE),
                        new Profile.Mark(40, "Candle River", Profile.Mark.Kind.TRIBUTARY),
                        new Profile.Mark(41, "Candle Ford", Profile.Mark.Kind.PLACE),
                        new Profile.Mark(70, "Glow Creek", Profile.Mark.Kind.TRIBUTARY),
                        new Profile.Mark(96, "Beacon water intake", Profile.Mark.Kind.PLACE),
                        new Profile.Mark(128, "Beacon fishing ground", Profile.Mark.Kind.PLACE)),
                List.of(
                        new Profile.GuidelineValue("CCME-FW-iHg", "26 ng/L, mean over the year", 26),
                        new Profile.GuidelineValue("IN-SW-iHg (not checked in print)", "26 ng/L, worst flow state", 26),
                        new Profile.GuidelineValue("BC-FW-Hg", "20 ng/L, largest mean over 30 days", 20)),
                "Screening estimate, not a measurement and not a finding of safety. Between the two lines the answer depends on"
                        + " what the river bed gives back.",
                "2026-11-25 \u00B7 Silverwake demo \u00B7 stated factor 5 \u00B7 not for posting: shows single sites");
    }

    private static Profile plain() {
        return new Profile(
                "Short creek",
                "dry season",
                "filtered total Hg in surface water",
                "ng/L",
                "spring",
                List.of(new Profile.Stretch(List.of(new Profile.Point(0, 0, 2, 0), new Profile.Point(3.4, 0, 1.5, 0)))),
                List.of(),
                List.of(),
                List.of(),
                "Screening estimate.",
                "2026-11-25");
    }

    @Test
    void sizeAndResolution(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("p.png");
        ProfileChart.write(crowded(), file);
        BufferedImage image = ImageIO.read(file.toFile());
        assertThat(image.getWidth()).isEqualTo(2400);
        assertThat(image.getHeight()).isEqualTo(1500);
        assertThat(pixelsPerMeter(Files.readAllBytes(file))).isEqualTo(11811);
    }

    /** 300 dots per inch are 11811 per m (ISO/IEC 15948:2004, 11.3.5.3: pHYs counts pixels per meter). */
    private static int pixelsPerMeter(byte[] png) {
        String text = new String(png, java.nio.charset.StandardCharsets.ISO_8859_1);
        return ByteBuffer.wrap(png).getInt(text.indexOf("pHYs") + 4);
    }

    @Test
    void allNamesFindRoomAndPicturesAreTheSameTwice() throws IOException {
        Files.createDirectories(LEFT_FOR_EYES);
        Path first = LEFT_FOR_EYES.resolve("crowded.png");
        Path second = LEFT_FOR_EYES.resolve("crowded-again.png");
        assertThat(ProfileChart.write(crowded(), first)).isZero();
        ProfileChart.write(crowded(), second);
        assertThat(Files.readAllBytes(second)).isEqualTo(Files.readAllBytes(first));
        ProfileChart.write(plain(), LEFT_FOR_EYES.resolve("plain.png"));
    }

    /** Hues from 75 to 165 degrees are what people call green. */
    @Test
    void nothingIsGreen() throws IOException {
        Files.createDirectories(LEFT_FOR_EYES);
        Path file = LEFT_FOR_EYES.resolve("hues.png");
        ProfileChart.write(crowded(), file);
        BufferedImage image = ImageIO.read(file.toFile());
        assertThat(greenPixels(image)).isZero();
        image.setRGB(0, 0, 0x2E8B57);
        assertThat(greenPixels(image)).isEqualTo(1);
    }

    private static int greenPixels(BufferedImage image) {
        float[] hsb = new float[3];
        int green = 0;
        for (int y = 0; y < image.getHeight(); y++) {
            for (int x = 0; x < image.getWidth(); x++) {
                int rgb = image.getRGB(x, y);
                Color.RGBtoHSB(rgb >> 16 & 0xFF, rgb >> 8 & 0xFF, rgb & 0xFF, hsb);
                green += hsb[0] > 75 / 360f && hsb[0] < 165 / 360f && hsb[1] > 0.15f ? 1 : 0;
            }
        }
        return green;
    }

    private static Profile withSamples(List<Profile.Sample> samples) {
        Profile bare = crowded();
        return new Profile(
                bare.title(),
                bare.subtitle(),
                bare.quantity(),
                bare.unit(),
                bare.start(),
                bare.ofBounds(),
                bare.stretches(),
                bare.gaps(),
                bare.marks(),
                bare.guidelines(),
                samples,
                bare.caution(),
                bare.imprint());
    }

    @Test
    void samplesAreDrawnWithTheirCodes() throws IOException {
        Files.createDirectories(LEFT_FOR_EYES);
        Profile profile = withSamples(List.of(
                new Profile.Sample(20, 300, Profile.Sample.Kind.VALUE, "W-1"),
                new Profile.Sample(20, 250, Profile.Sample.Kind.VALUE, "W-2"),
                new Profile.Sample(50, 2, Profile.Sample.Kind.BELOW, "W-3"),
                new Profile.Sample(90, 40, Profile.Sample.Kind.ABOVE, "W-4"),
                new Profile.Sample(129, 5, Profile.Sample.Kind.VALUE, "W-5")));
        assertThat(ProfileChart.write(profile, LEFT_FOR_EYES.resolve("samples.png")))
                .isZero();
        assertThat(Decades.of(withSamples(List.of(new Profile.Sample(20, 0.3, Profile.Sample.Kind.BELOW, "W-6")))))
                .isEqualTo(new Decades(-1, 3));
        List<Profile.Sample> heap =
                java.util.Collections.nCopies(6, new Profile.Sample(20, 300, Profile.Sample.Kind.VALUE, "W-7"));
        assertThat(ProfileChart.write(withSamples(heap), LEFT_FOR_EYES.resolve("heap.png")))
                .isEqualTo(2);
    }

    @Test
    void axisHoldsAllGuidelinesAndNoMoreThanSixDecades() {
        assertThat(Decades.of(crowded())).isEqualTo(new Decades(0, 3));
        assertThat(Decades.of(plain())).isEqualTo(new Decades(0, 1));
        Profile deep = new Profile(
                "t",
                "",
                "",
                "",
                "",
                List.of(new Profile.Stretch(List.of(new Profile.Point(0, 1e-20, 100, 0)))),
                List.of(),
                List.of(),
                List.of(),
                "",
                "");
        assertThat(Decades.of(deep)).isEqualTo(new Decades(-4, 2));
        assertThat(Decades.of(deep).drawn(0)).isEqualTo(1e-4);
    }

    /** Fourteen sites within 30 km: those named keep clear (LabelRoomTest), the rest are counted on the picture. */
    @Test
    void namesThatFindNoRoomAreCounted() throws IOException {
        List<Profile.Mark> marks = new ArrayList<>();
        for (int i = 0; i < 14; i++) {
            marks.add(new Profile.Mark(5 + 2 * i, "Processing sheds no. " + (i + 1), Profile.Mark.Kind.SITE));
        }
        Profile many = new Profile(
                "Many sheds",
                "flow state: wet (42 % of the year)",
                "whole total Hg in surface water",
                "ng/L",
                "Lantern Head",
                List.of(stretch(0, 240, 40000, 0.1)),
                List.of(new Profile.Gap(240, 245, "no water"), new Profile.Gap(245, 260, "no water")),
                marks,
                List.of(
                        new Profile.GuidelineValue("A", "40 ng/L, worst flow state", 40),
                        new Profile.GuidelineValue("B (not checked in print)", "100 ng/L, worst flow state", 100),
                        new Profile.GuidelineValue("C", "50 ng/L, worst flow state", 50),
                        new Profile.GuidelineValue("D", "1 ug/L, worst flow state", 1000),
                        new Profile.GuidelineValue("E (not checked in print)", "0.2 ug/L, worst flow state", 200),
                        new Profile.GuidelineValue("F", "0.1 ug/L, worst flow state", 100)),
                "Screening estimate, not a finding of safety.",
                "2026-11-25");
        assertThat(many.gaps()).containsExactly(new Profile.Gap(240, 260, "no water"));
        Files.createDirectories(LEFT_FOR_EYES);
        assertThat(ProfileChart.write(many, LEFT_FOR_EYES.resolve("many.png"))).isBetween(1, 12);
    }

    @Test
    void impossibleProfilesAreRefused() {
        assertThatThrownBy(() -> new Profile.Point(1, 2, 1, 0)).hasMessageContaining("low to high");
        assertThatThrownBy(() -> new Profile.Point(1, 0, Double.NaN, 0)).hasMessageContaining("finite");
        assertThatThrownBy(() -> new Profile("t", "", "", "", "", List.of(), List.of(), List.of(), List.of(), "", ""))
                .hasMessageContaining("nothing to draw");
    }
}
