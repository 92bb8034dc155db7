// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.TimeZone;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The same inputs give the same bytes, whoever's machine it is; of pictures, the same pixels. */
class RepeatableRunTest {
    private final Locale locale = Locale.getDefault();
    private final TimeZone zone = TimeZone.getDefault();

    @TempDir
    private Path temporary;

    @AfterEach
    void restore() {
        Locale.setDefault(locale);
        TimeZone.setDefault(zone);
    }

    private Path run(String name) {
        Path out = temporary.resolve(name);
        Messy.Said said =
                Messy.say("run", Messy.LANTERN.toString(), "--formats", "png,svg,pdf,tif,kmz", "--out", out.toString());
        assertThat(said.code()).as("%s", said.err()).isZero();
        return out;
    }

    @Test
    void sameFilesInAnyLocaleAndTimeZone() throws IOException {
        Path here = run("here");
        // Turkish has an i without a dot, Hindi digits of its own, and both write a decimal comma or grouping otherwise
        Locale.setDefault(Locale.forLanguageTag("tr-TR"));
        TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Kiritimati"));
        same(here, run("turkish"));
        Locale.setDefault(Locale.forLanguageTag("hi-IN-u-nu-deva"));
        TimeZone.setDefault(TimeZone.getTimeZone("America/Anchorage"));
        same(here, run("hindi"));
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    private static void same(Path one, Path other) throws IOException {
        List<String> names = names(one);
        assertThat(names(other)).isEqualTo(names);
        assertThat(names)
                .anyMatch(n -> n.endsWith(".csv"))
                .anyMatch(n -> n.endsWith(".png"))
                .anyMatch(n -> n.endsWith(".svg"))
                .anyMatch(n -> n.endsWith(".pdf"));
        for (String name : names) {
            if (name.equals("timing.json")) {
                continue; // wall times, never the same twice
            }
            if (name.endsWith(".png")) {
                assertThat(pixels(other.resolve(name))).as(name).isEqualTo(pixels(one.resolve(name)));
            } else {
                assertThat(Files.mismatch(one.resolve(name), other.resolve(name)))
                        .as(name)
                        .isEqualTo(-1);
            }
        }
    }

    private static int[] pixels(Path file) throws IOException {
        BufferedImage picture = ImageIO.read(file.toFile());
        return picture.getRGB(0, 0, picture.getWidth(), picture.getHeight(), null, 0, picture.getWidth());
    }
}
