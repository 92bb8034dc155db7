// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.sheet.PrintedSheets;
import org.silverwake.geo.map.MapFormat;

/**
 * Our own earlier layout of the demo's maps and sheets, judged by eye when it was written: says whether the layout moved, not whether it is
 * good. Written anew by
 * {@code mvn -pl cli -am test -Dtest=GoldenLayoutTest -Dsurefire.failIfNoSpecifiedTests=false -Dsilverwake.rewrite=true}.
 */
class GoldenLayoutTest {
    private static final Path GOLDENS = Path.of("src", "test", "resources", "layout");
    private static final String HEAD = "# PINNED: how this page was laid out when somebody last looked at it"
            + " [mm: left top width height]."
            + " To judge anew: draw it (silverwake run scenarios/lantern --formats png --sheets png), look at it at full size in color and"
            + " in gray, then write this file by GoldenLayoutTest with -Dsilverwake.rewrite=true.";

    /** PINNED: one step of the rounding [mm]; letters may be measured a hair differently elsewhere. */
    private static final double HALF_MILLIMETER = 0.5;

    @TempDir
    private static Path folder;

    private static Outcome demo;

    @BeforeAll
    static void run() {
        demo = MainRun.run(DemoCopy.LANTERN, step -> {});
    }

    @Test
    void mapsAreLaidOutAsTheyWere() throws IOException {
        for (Path file : Drawn.maps(demo, folder.resolve("maps"))) {
            see(file, "map-");
        }
    }

    @Test
    void sheetsAreLaidOutAsTheyWere() throws IOException {
        PrintedSheets.draw(demo, folder.resolve("sheets"), Set.of(MapFormat.SVG));
        for (Path file : Drawn.files(folder.resolve("sheets"))) {
            see(file, "sheet-");
        }
    }

    @Test
    void aNameThatMovesIsSeen() throws IOException {
        List<Layout.Line> lines =
                Layout.of(new SvgPage(Drawn.maps(demo, folder.resolve("moved")).get(0)));
        Layout.Line name = lines.stream()
                .filter(line -> line.what().startsWith("name "))
                .findFirst()
                .orElseThrow();
        List<Double> near = List.of(
                name.numbers().get(0) + 0.5,
                name.numbers().get(1) - 0.5,
                name.numbers().get(2),
                name.numbers().get(3));
        List<Double> far = List.of(
                name.numbers().get(0) + 1,
                name.numbers().get(1),
                name.numbers().get(2),
                name.numbers().get(3));
        assertThat(name.isLike(new Layout.Line(name.what(), near), HALF_MILLIMETER))
                .isTrue();
        assertThat(name.isLike(new Layout.Line(name.what(), far), HALF_MILLIMETER))
                .isFalse();
        assertThat(difference(lines, lines.subList(1, lines.size()))).hasSize(1);
    }

    private static void see(Path file, String kind) throws IOException {
        List<Layout.Line> now = Layout.of(new SvgPage(file));
        String name = kind + file.getFileName().toString().replace(".svg", ".txt");
        Path golden = GOLDENS.resolve(name);
        if (Boolean.getBoolean("silverwake.rewrite")) {
            Files.createDirectories(GOLDENS);
            String text = now.stream().map(Layout.Line::toString).collect(Collectors.joining("\n", HEAD + "\n", "\n"));
            Files.writeString(golden, text, StandardCharsets.UTF_8);
        }
        List<Layout.Line> then = Files.readAllLines(golden, StandardCharsets.UTF_8).stream()
                .filter(line -> !line.startsWith("#"))
                .map(Layout.Line::parsed)
                .toList();
        assertThat(difference(then, now))
                .as(name + ": the layout moved; look at it, then rewrite with -Dsilverwake.rewrite=true")
                .isEmpty();
    }

    /** Lines of one that have no like in the other. */
    private static List<String> difference(List<Layout.Line> then, List<Layout.Line> now) {
        List<Layout.Line> left = new ArrayList<>(now);
        List<String> found = new ArrayList<>();
        for (Layout.Line line : then) {
            if (left.stream()
                    .filter(other -> line.isLike(other, HALF_MILLIMETER))
                    .findFirst()
                    .map(left::remove)
                    .isEmpty()) {
                found.add("was " + line);
            }
        }
        left.forEach(line -> found.add("is " + line));
        return found;
    }
}
