// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import org.silverwake.cli.compare.Comparison;
import org.silverwake.cli.report.Shading;
import org.silverwake.cli.report.Shown;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.map.MapFormat;
import org.silverwake.geo.map.ReachMark;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.geo.map.WallSheet.Block;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.screening.Guideline;

/** Sheets of before and after: the first scenario and another side by side, with what changes in words and kilograms. */
public final class ChangeSheets {
    private static final double KILOMETER = 1000;
    private static final Set<ReachShade> ABOVE = EnumSet.of(ReachShade.FAR_ABOVE, ReachShade.ABOVE);
    private static final Set<ReachShade> MAY_BE_ABOVE = EnumSet.of(ReachShade.LIKELY_ABOVE, ReachShade.MAY_BE_ABOVE);

    private final Comparison comparison;
    private final Outcome first;
    private final Guideline guideline;
    private final SheetWords words;
    private final SheetGround ground;

    private ChangeSheets(Comparison comparison, Guideline guideline) {
        this.comparison = comparison;
        this.first = comparison.first();
        this.guideline = guideline;
        this.words = new SheetWords(first);
        this.ground = new SheetGround(first);
    }

    /** One sheet for each scenario after the first, by the value that maps of the first show; none where it is not compared. */
    public static void draw(Comparison comparison, Path folder, Set<MapFormat> formats) {
        Optional<Guideline> guideline = Shown.guideline(comparison.first()).filter(comparison.guidelines()::contains);
        if (guideline.isEmpty()) {
            return;
        }
        ChangeSheets sheets = new ChangeSheets(comparison, guideline.get());
        for (int k = 1; k < comparison.scenarios().size(); k++) {
            String name = comparison.scenarios().get(k).name().replaceAll("[^\\p{L}\\p{N}]+", "-");
            PrintedSheets.write(comparison.first(), folder, formats, "change-" + k + "-" + name, sheets.sheet(k));
        }
    }

    private WallSheet sheet(int other) {
        List<ReachShade> before = shades(0);
        List<ReachShade> after = shades(other);
        List<ReachShade> both = new ArrayList<>(before);
        both.addAll(after);
        SheetLegend legend = SheetLegend.ofAnswers(words.texts(), words.factor(guideline), SheetLegend.used(both));
        String title = words.texts()
                .text("sheet.title.change", first.scenario().project().title());
        return new WallSheet(
                words.paper(),
                words.head(title, words.texts().text("sheet.change", name(0), name(other)), ground.withSites()),
                List.of(figure(legend, name(0), before), figure(legend, name(other), after)),
                ground.ground(),
                Optional.empty(),
                List.of(),
                new WallSheet.Legend(
                        words.texts().text("sheet.compared", words.medium(guideline)),
                        legend.answers(),
                        words.marks(),
                        words.texts().text("sheet.area"),
                        words.notes(ground.withSites())),
                new WallSheet.Blocks(
                        List.of(change(other, before, after), words.toAsk()),
                        List.of(words.source(guideline, List.of()))),
                words.cautions(),
                words.foot(),
                words.scale());
    }

    private String name(int which) {
        return comparison.scenarios().get(which).name();
    }

    private WallSheet.Figure figure(SheetLegend legend, String name, List<ReachShade> shades) {
        List<ReachMark> marks = new ArrayList<>();
        for (int i = 0; i < first.basin().map().reachCount(); i++) {
            ReachShade shade = shades.get(first.basin().network().reachOfInput(i));
            marks.add(new ReachMark(legend.number(shade), false, false, false));
        }
        return new WallSheet.Figure(name, ground.seen(marks, legend.number(ReachShade.NOT_ASSESSED)), ground.places());
    }

    /** The worst answer of a scenario on each reach of the first. */
    private List<ReachShade> shades(int scenario) {
        double factor = words.factor(guideline);
        return IntStream.range(0, first.basin().network().size())
                .mapToObj(reach -> comparison
                        .worst(scenario, guideline, reach)
                        .map(row -> Shading.of(row, factor))
                        .orElse(ReachShade.DOES_NOT_APPLY))
                .toList();
    }

    private Block change(int other, List<ReachShade> before, List<ReachShade> after) {
        return new Block(
                words.texts().text("sheet.change.heading"),
                List.of(
                        words.texts().text("sheet.change.released", released(0), released(other)),
                        words.texts().text("sheet.change.above", kilometers(before, ABOVE), kilometers(after, ABOVE)),
                        words.texts()
                                .text(
                                        "sheet.change.may-be-above",
                                        kilometers(before, MAY_BE_ABOVE),
                                        kilometers(after, MAY_BE_ABOVE)),
                        words.texts().text("sheet.change.note")));
    }

    /** Kilograms of a year that all sites give to the river. */
    private String released(int scenario) {
        Outcome outcome = comparison.scenarios().get(scenario).outcome();
        double sum = IntStream.range(0, outcome.scenario().sites().size())
                .mapToDouble(i -> outcome.result().input().meanRelease(i))
                .sum();
        return words.number(sum * Quantity.SECONDS_PER_YEAR);
    }

    private String kilometers(List<ReachShade> shades, Set<ReachShade> counted) {
        double sum = IntStream.range(0, shades.size())
                .filter(reach -> counted.contains(shades.get(reach)))
                .mapToDouble(reach -> first.basin().table().length(reach))
                .sum();
        return words.number(sum / KILOMETER);
    }
}
