// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.layout.Changed;
import org.silverwake.cli.layout.Drawn;
import org.silverwake.cli.layout.Overlaps;
import org.silverwake.cli.layout.SvgItem;
import org.silverwake.cli.layout.SvgPage;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.cli.scenario.Sheets;
import org.silverwake.geo.map.MapFormat;

/** Sheets of the demo basin as their SVG files have them: names, symbols, leaders, frame and the parts of the page. */
class SheetLayoutTest {
    @TempDir
    private static Path folder;

    private static Outcome demo;

    /** One run for all languages and papers: they change nothing but the sheets. */
    @BeforeAll
    static void run() {
        demo = MainRun.run(DemoCopy.LANTERN, step -> {});
    }

    private static Outcome sheet(
            Outcome outcome, String language, Outputs.Audience audience, String paper, Set<Sheets.Kind> kinds) {
        String[] how = paper.split(" ");
        Outcome changed = Changed.at(outcome, "scenario.project.language", language);
        changed = Changed.at(changed, "scenario.outputs.audience", audience);
        changed = Changed.at(changed, "scenario.outputs.sheets.size", Sheets.Size.valueOf(how[0]));
        changed = Changed.at(changed, "scenario.outputs.sheets.portrait", how[1].equals("portrait"));
        return Changed.at(changed, "scenario.outputs.sheets.kinds", kinds);
    }

    /** Every language, every paper lying and standing, both audiences, every kind of sheet: not each with each, for the time it takes. */
    @ParameterizedTest
    @CsvSource({
        "en, PUBLIC, A4 landscape, MAP",
        "es, PUBLIC, A4 portrait, MAP",
        "fr, OFFICE, A3 landscape, FLOW_STATES",
        "fr, OFFICE, A3 portrait, SITE_SHARES",
        "pt, PUBLIC, A1 portrait, FLOW_STATES",
        "id, OFFICE, A4 portrait, MAP",
        "sw, PUBLIC, A1 landscape, FLOW_STATES",
        "sw, PUBLIC, A4 landscape, SITE_SHARES"
    })
    void nothingLiesOnWhatItMustNot(String language, Outputs.Audience audience, String paper, Sheets.Kind kind) {
        Path sheets = folder.resolve(language + paper);
        PrintedSheets.draw(sheet(demo, language, audience, paper, Set.of(kind)), sheets, Set.of(MapFormat.SVG));
        assertThat(Drawn.files(sheets)).isNotEmpty();
        for (Path file : Drawn.files(sheets)) {
            SvgPage page = new SvgPage(file);
            assertThat(page.of("map", "label").count() > 10).isEqualTo(kind != Sheets.Kind.SITE_SHARES);
            assertThat(page.of("map", "frame").count() > 0).isEqualTo(kind != Sheets.Kind.SITE_SHARES);
            assertThat(page.of("cautions", "")).hasSizeGreaterThan(8);
            assertThat(Overlaps.of(page)).as(file.getFileName().toString()).isEmpty();
        }
    }

    /** Every part of a sheet is put where the map is, and the count finds it. */
    @Test
    void theCountFindsAPartThatIsMoved() {
        Path sheets = folder.resolve("moved");
        PrintedSheets.draw(
                sheet(demo, "en", Outputs.Audience.OFFICE, "A3 landscape", Set.of(Sheets.Kind.FLOW_STATES)),
                sheets,
                Set.of(MapFormat.SVG));
        SvgPage page = new SvgPage(sheets.resolve("flow-states.svg"));
        SvgItem frame = page.of("map", "frame").findFirst().orElseThrow();
        for (String part :
                List.of("bands", "heading", "legend", "key", "scale", "people", "sources", "cautions", "foot")) {
            SvgItem piece =
                    page.of(part, "").filter(SvgItem::isText).findFirst().orElseThrow();
            assertThat(Overlaps.moved(page, piece, frame)).as(part).anyMatch(s -> s.startsWith("part on part"));
        }
        SvgItem name = page.of("map", "label").findFirst().orElseThrow();
        SvgItem symbol = page.of("map", "symbol").findFirst().orElseThrow();
        assertThat(Overlaps.moved(page, name, symbol)).anyMatch(s -> s.startsWith("text on symbol"));
        assertThat(Overlaps.moved(page, frame, name)).anyMatch(s -> s.startsWith("name across the frame"));
    }
}
