// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Sheets;
import org.silverwake.cli.text.Texts;
import org.silverwake.geo.map.BackdropLayer;
import org.silverwake.geo.map.GroundWords;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.geo.map.MapWords;
import org.silverwake.geo.map.Paper;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.geo.map.WallSheet.Block;
import org.silverwake.model.screening.Guideline;
import org.silverwake.model.screening.Medium;

/** The words that all sheets of a run have in common. */
final class SheetWords {
    private static final int DIGITS = 3;
    private static final int PERCENT = 100;
    private static final double KILOMETER = 1000;
    private static final double MINUTE = 60;
    private static final double HOUR = 3600;

    private final Outcome outcome;
    private final Sheets sheets;
    private final Texts texts;

    SheetWords(Outcome outcome) {
        this.outcome = outcome;
        this.sheets = outcome.scenario().outputs().sheets();
        this.texts = Texts.of(outcome.scenario().project().language());
    }

    Texts texts() {
        return texts;
    }

    String number(double value) {
        return texts.number(value, DIGITS);
    }

    Paper paper() {
        Paper paper = switch (sheets.size()) {
            case A4 -> Paper.A4;
            case A3 -> Paper.A3;
            case A1 -> Paper.A1;
        };
        return sheets.portrait() ? paper.portrait() : paper;
    }

    /**
     * Title, subtitle and bands.
     *
     * @param made title where the scenario has none
     */
    WallSheet.Head head(String made, String subtitle, boolean withSites) {
        List<String> bands = new ArrayList<>();
        boolean draft = texts.reviewedBy().isEmpty();
        if (withSites) {
            bands.add(texts.text("not-for-posting"));
        }
        if (draft) {
            bands.add(texts.text("draft"));
        }
        return new WallSheet.Head(sheets.title().orElse(made), subtitle, bands, draft ? texts.text("draft.mark") : "");
    }

    /** A flow state and its share of the year. */
    String state(int state) {
        var flow = outcome.scenario().states().get(state);
        return texts.text("sheet.state", flow.name(), number(PERCENT * flow.share()));
    }

    String medium(Guideline guideline) {
        Medium medium = guideline.observable().medium();
        return texts.text("medium." + medium.word().replace(' ', '-'));
    }

    /** The value itself with its unit. */
    String value(Guideline guideline) {
        return value(guideline, guideline.value());
    }

    /** Another value [SI] in the unit of the value compared with. */
    String value(Guideline guideline, double value) {
        return number(value * guideline.fromSi()) + " " + unit(guideline);
    }

    static String unit(Guideline guideline) {
        return guideline.unit().replace("ug/", "\u00b5g/");
    }

    /** What was compared with, by how much the estimate may be wrong, and remarks. */
    Block source(Guideline guideline, List<String> remarks) {
        List<String> lines = new ArrayList<>();
        lines.add(texts.text(
                "guide.line",
                medium(guideline),
                number(guideline.value() * guideline.fromSi()),
                unit(guideline),
                guideline.id()));
        lines.add(guideline.source().words()
                + (guideline.checked() == Guideline.Checked.SEEN
                        ? "."
                        : " \u2013 " + texts.text("guide.not-seen") + "."));
        lines.addAll(remarks);
        lines.add(texts.text("guide.factor", number(factor(guideline))));
        return new Block(texts.text("guide.heading"), lines);
    }

    double factor(Guideline guideline) {
        return outcome.screening().rule().factor(guideline.observable().medium());
    }

    /** What people can do and whom they can ask. */
    List<Block> forPeople() {
        return List.of(new Block(texts.text("made.to-do"), sheets.whatToDo()), toAsk());
    }

    /** Whom people can ask. */
    Block toAsk() {
        return new Block(texts.text("made.ask"), sheets.whomToAsk());
    }

    /** What a public sheet does not show. */
    List<String> notes(boolean withSites) {
        return withSites || outcome.scenario().sites().isEmpty() ? List.of() : List.of(texts.text("sheet.areas.note"));
    }

    Block cautions() {
        return new Block(texts.text("caution.heading"), texts.numbered("caution"));
    }

    String foot() {
        var project = outcome.scenario().project();
        return String.join(
                "   \u2013   ",
                texts.text("made.use-until", texts.date(sheets.useUntil())),
                texts.text("made.by", project.preparedBy()),
                texts.text("made.on", texts.date(project.date())));
    }

    /** Words of marks and points. */
    MapWords marks() {
        Map<MapPoint.Kind, String> kinds = new EnumMap<>(MapPoint.Kind.class);
        for (MapPoint.Kind kind : MapPoint.Kind.values()) {
            kinds.put(kind, "");
        }
        kinds.put(MapPoint.Kind.VILLAGE, texts.text("point.village"));
        kinds.put(MapPoint.Kind.INTAKE, texts.text("point.intake"));
        kinds.put(MapPoint.Kind.FISHING, texts.text("point.fishing"));
        kinds.put(MapPoint.Kind.SITE, texts.text("point.site"));
        kinds.put(MapPoint.Kind.OTHER, texts.text("point.other"));
        return MapWords.ofMarks(
                texts.text("mark.hatched"),
                texts.text("mark.near-bank"),
                texts.text("mark.background"),
                texts.text("mark.flow"),
                texts.text("mark.water"),
                kinds,
                texts.text("mark.left-out"),
                ground());
    }

    private GroundWords ground() {
        Map<BackdropLayer.Kind, String> kinds = new EnumMap<>(BackdropLayer.Kind.class);
        kinds.put(BackdropLayer.Kind.ROADS, texts.text("ground.roads"));
        kinds.put(BackdropLayer.Kind.LAKES, texts.text("ground.lakes"));
        kinds.put(BackdropLayer.Kind.SETTLEMENTS, texts.text("ground.settlements"));
        kinds.put(BackdropLayer.Kind.FOREST, texts.text("ground.forest"));
        kinds.put(BackdropLayer.Kind.BORDERS, texts.text("ground.borders"));
        return new GroundWords(
                kinds, texts.text("ground.slopes"), "", "", "", "", "", "", "", texts.text("ground.equator"));
    }

    /** Kilometers, and the time that they take at the scenario's speeds. */
    WallSheet.ScaleWords scale() {
        return new WallSheet.ScaleWords() {
            @Override
            public String kilometers(double meters, boolean withUnit) {
                String number = number(meters / KILOMETER);
                return withUnit ? texts.text("scale.kilometers", number) : number;
            }

            @Override
            public List<String> times(double meters) {
                List<String> times = new ArrayList<>();
                time("scale.on-foot", meters, sheets.walking()).ifPresent(times::add);
                time("scale.by-boat", meters, sheets.boat()).ifPresent(times::add);
                return times;
            }

            @Override
            public String north() {
                return texts.text("scale.north");
            }
        };
    }

    private Optional<String> time(String key, double meters, OptionalDouble speed) {
        if (speed.isEmpty()) {
            return Optional.empty();
        }
        double seconds = meters / speed.getAsDouble();
        String time = seconds >= HOUR
                ? texts.text("scale.hours", texts.number(seconds / HOUR, 2))
                : texts.text("scale.minutes", texts.number(seconds / MINUTE, 2));
        return Optional.of(texts.text(key, time));
    }
}
