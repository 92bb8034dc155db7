// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.run.MainRun;

/** The analyst's maps of the demo basin, as their SVG files have them. */
class MapLayoutTest {
    @TempDir
    private static Path folder;

    private static List<Path> files;

    @BeforeAll
    static void draw() {
        files = Drawn.maps(MainRun.run(DemoCopy.LANTERN, step -> {}), folder.resolve("maps"));
    }

    @Test
    void nothingLiesOnWhatItMustNot() {
        assertThat(files).hasSizeGreaterThan(3);
        for (Path file : files) {
            SvgPage page = new SvgPage(file);
            assertThat(page.of("map", "label")).as(file + ": names").hasSizeGreaterThan(25);
            assertThat(page.of("map", "symbol")).as(file + ": symbols").hasSizeGreaterThan(40);
            assertThat(page.of("map", "leader")).as(file + ": leaders").hasSizeGreaterThan(10);
            assertThat(Overlaps.of(page)).as(file.toString()).isEmpty();
        }
    }

    /** Every demo map is moved a little in every way that the count must see: it finds each. */
    @Test
    void theCountFindsWhatIsMoved() {
        for (Path file : files) {
            SvgPage page = new SvgPage(file);
            SvgItem name = page.of("map", "label").findFirst().orElseThrow();
            SvgItem other = page.of("map", "label")
                    .filter(item -> !item.text().equals(name.text()))
                    .findFirst()
                    .orElseThrow();
            SvgItem symbol = page.of("map", "symbol").findFirst().orElseThrow();
            SvgItem frame = page.of("frame", "").findFirst().orElseThrow();
            SvgItem leader = page.of("map", "leader")
                    .filter(item -> !item.stroke().equals("white"))
                    .max(Comparator.comparingDouble(
                            item -> item.bounds().getWidth() + item.bounds().getHeight()))
                    .orElseThrow();
            assertThat(Overlaps.moved(page, name, other))
                    .as("name on other")
                    .anyMatch(s -> s.startsWith("text on text"));
            assertThat(Overlaps.moved(page, name, symbol))
                    .as("name on symbol")
                    .anyMatch(s -> s.startsWith("text on symbol"));
            assertThat(Overlaps.moved(page, frame, name))
                    .as("frame on name")
                    .anyMatch(s -> s.startsWith("name across the frame"));
            assertThat(Overlaps.moved(page, name, leader))
                    .as("name on leader")
                    .anyMatch(s -> s.startsWith("leader through name"));
            assertThat(Overlaps.moved(page, symbol, leader))
                    .as("symbol on leader")
                    .anyMatch(s -> s.startsWith("leader through symbol"));
            for (String part : List.of("legend", "scale", "heading", "cautions")) {
                SvgItem piece =
                        page.of(part, "").filter(SvgItem::isText).findFirst().orElseThrow();
                assertThat(Overlaps.moved(page, piece, frame)).as(part).anyMatch(s -> s.startsWith("part on part"));
                assertThat(Overlaps.changed(page, piece::equals, item -> item.moved(2000, 0)))
                        .as(part)
                        .anyMatch(s -> s.startsWith("text beyond the page"));
            }
        }
    }
}
