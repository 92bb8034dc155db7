// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.text.Texts;
import org.silverwake.cli.whatif.Audience;
import org.silverwake.cli.whatif.ReachUnits;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.geo.map.LineClass;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.geo.write.PhoneMap;
import org.silverwake.geo.write.PhoneMap.Place;
import org.silverwake.geo.write.PhoneMap.Section;
import org.silverwake.geo.write.PhoneMap.Stretch;
import org.silverwake.model.screening.Guideline;

/**
 * The answers to a guide value in one state of flow or over the year, as a phone shows them. In public, stretches are those of the public page: no
 * line begins at a single site, and a stretch with sites on it is told by its worst part.
 */
final class PhoneAnswers {
    private final Outcome outcome;
    private final Guideline guideline;
    private final int state;
    private final SheetWords words;
    private final Texts texts;
    private final AnswerSheets answers;
    private final PhoneTable table;
    private final boolean withSites;

    PhoneAnswers(Outcome outcome, Guideline guideline, int state) {
        this.outcome = outcome;
        this.guideline = guideline;
        this.state = state;
        this.words = new SheetWords(outcome);
        this.texts = words.texts();
        this.answers = new AnswerSheets(outcome, guideline);
        this.withSites = new SheetGround(outcome).withSites();
        this.table = new PhoneTable(words, guideline);
    }

    PhoneMap map() {
        ReachUnits units = ReachUnits.of(outcome, withSites ? Audience.OFFICE : Audience.PUBLIC);
        List<LineClass> classes = new ArrayList<>();
        List<ReachShade> order = List.copyOf(used());
        order.forEach(shade -> classes.add(shade.withLegend(table.legend(shade))));
        List<String> ids = units.ids(outcome);
        List<Stretch> stretches = new ArrayList<>();
        for (int u = 0; u < units.drawn(); u++) {
            stretches.add(stretch(units.parts(u), ids.get(u), order));
        }
        WallSheet.Head head = words.head(
                answers.title(),
                state == AnswerSheets.ALL_STATES ? texts.text("sheet.year") : words.state(state),
                withSites);
        return new PhoneMap(
                head.title() + ". " + head.subtitle(),
                head.bands(),
                words.cautions().lines().get(0),
                texts.text("sheet.compared", words.medium(guideline)),
                classes,
                stretches,
                texts.text("page.places"),
                places(),
                about(head));
    }

    /** Looks that occur, and those of all answers, in the order of the legend. */
    private Set<ReachShade> used() {
        Set<ReachShade> used = EnumSet.range(ReachShade.FAR_ABOVE, ReachShade.NOT_ASSESSED);
        used.addAll(answers.shades(state));
        return used;
    }

    private Stretch stretch(int[] parts, String id, List<ReachShade> order) {
        int worst = worst(parts);
        RiverMap.Reach reach = outcome.basin().reach(worst);
        double meters = Arrays.stream(parts)
                .mapToDouble(outcome.basin().table()::length)
                .sum();
        return new Stretch(
                reach.name()
                        .map(name -> texts.text("page.reach.named", name, id))
                        .orElse(id),
                order.indexOf(answers.shade(state, worst)),
                Arrays.stream(parts)
                        .mapToObj(outcome.basin().network()::inputIndex)
                        .toList(),
                isLeftOut(worst) ? table.leftOut(meters) : table.facts(answers.row(state, worst), meters),
                isLeftOut(worst)
                        ? List.of()
                        : table.remarks(answers.row(state, worst), withSites && answers.isNearBank(state, worst)));
    }

    /** The part with the worst look, of those the one with the highest estimate. */
    private int worst(int[] parts) {
        return Arrays.stream(parts)
                .boxed()
                .min(Comparator.comparing((Integer reach) -> answers.shade(state, reach))
                        .thenComparing(reach -> isLeftOut(reach)
                                ? 0
                                : -answers.row(state, reach).ratioHigh().orElse(0.0)))
                .orElseThrow();
    }

    private boolean isLeftOut(int reach) {
        return outcome.screening().isLeftOut(guideline, reach);
    }

    /** Places with the answer of their reach; sites with their names alone. */
    private List<Place> places() {
        List<PlacedPoint> points = outcome.basin().points("place");
        List<Place> places = new ArrayList<>();
        int next = 0;
        for (MapPoint point : new SheetGround(outcome).points()) {
            String kind = words.marks().kinds().get(point.kind());
            if (point.kind() == MapPoint.Kind.SITE) {
                places.add(new Place(point, kind, List.of(), List.of()));
                continue;
            }
            int reach = outcome.basin().reachAt(points.get(next));
            next++;
            places.add(new Place(
                    point,
                    kind,
                    isLeftOut(reach) ? table.leftOut() : table.facts(answers.row(state, reach)),
                    isLeftOut(reach) ? List.of() : table.remarks(answers.row(state, reach), false)));
        }
        return places;
    }

    private List<Section> about(WallSheet.Head head) {
        List<Section> about = new ArrayList<>();
        about.add(new Section("", List.of(head.subtitle())));
        if (!words.notes(withSites).isEmpty()) {
            about.add(new Section("", words.notes(withSites)));
        }
        WallSheet.Block source = words.source(guideline, answers.remarks(state));
        about.add(new Section(source.heading(), source.lines()));
        WallSheet.Block cautions = words.cautions();
        about.add(new Section(cautions.heading(), cautions.lines()));
        about.add(new Section("", List.of(words.foot())));
        return about;
    }
}
