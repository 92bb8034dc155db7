// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.whatif.ReachUnits;
import org.silverwake.geo.map.MapPoint;
import org.silverwake.geo.map.ReachShade;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.geo.write.PhoneMap;
import org.silverwake.geo.write.PhoneMap.Fact;
import org.silverwake.geo.write.PhoneMap.Place;
import org.silverwake.geo.write.PhoneMap.Section;
import org.silverwake.geo.write.PhoneMap.Stretch;

/**
 * Puts what a map for phones tells together, for the audience of the sheets. In public, stretches are those of the public page: no line begins at a
 * single site, and a stretch with sites on it is told by its worst part.
 */
final class PhoneSheet {
    private static final double KILOMETER = 1000;

    private final Outcome outcome;
    private final SheetWords words;
    private final SheetGround ground;
    private final PhoneFigure figure;
    private final List<ReachShade> order;

    PhoneSheet(Outcome outcome, SheetWords words, PhoneFigure figure) {
        this.outcome = outcome;
        this.words = words;
        this.ground = new SheetGround(outcome);
        this.figure = figure;
        this.order = figure.order();
    }

    /**
     * The map.
     *
     * @param legendTitle what the looks are looks of
     * @param source what was compared with
     */
    PhoneMap map(String title, String subtitle, String legendTitle, WallSheet.Block source) {
        WallSheet.Head head = words.head(title, subtitle, ground.withSites());
        ReachUnits units = ReachUnits.of(outcome, ground.withSites() ? Audience.OFFICE : Audience.PUBLIC);
        List<String> ids = units.ids(outcome);
        List<Stretch> stretches = new ArrayList<>();
        for (int u = 0; u < units.drawn(); u++) {
            stretches.add(stretch(units.parts(u), ids.get(u)));
        }
        return new PhoneMap(
                head.title() + ". " + head.subtitle(),
                head.bands(),
                words.cautions().lines().get(0),
                legendTitle,
                order.stream()
                        .map(shade -> shade.withLegend(figure.legend(shade)))
                        .toList(),
                stretches,
                words.texts().text("page.places"),
                places(),
                about(head, source));
    }

    private Stretch stretch(int[] parts, String id) {
        int worst = Arrays.stream(parts)
                .boxed()
                .min(Comparator.comparing(figure::shade).thenComparing(reach -> -figure.badness(reach)))
                .orElseThrow();
        double meters = Arrays.stream(parts)
                .mapToDouble(outcome.basin().table()::length)
                .sum();
        List<Fact> facts = new ArrayList<>(figure.facts(worst));
        facts.add(new Fact(words.texts().text("page.length"), words.number(meters / KILOMETER)));
        return new Stretch(
                outcome.basin()
                        .reach(worst)
                        .name()
                        .map(name -> words.texts().text("page.reach.named", name, id))
                        .orElse(id),
                order.indexOf(figure.shade(worst)),
                Arrays.stream(parts)
                        .mapToObj(outcome.basin().network()::inputIndex)
                        .toList(),
                facts,
                figure.remarks(worst));
    }

    /** Places with what is told of their reach; sites with their names alone. */
    private List<Place> places() {
        List<PlacedPoint> points = outcome.basin().points("place");
        List<Place> places = new ArrayList<>();
        int next = 0;
        for (MapPoint point : ground.points()) {
            String kind = words.marks().kinds().get(point.kind());
            if (point.kind() == MapPoint.Kind.SITE) {
                places.add(new Place(point, kind, List.of(), List.of()));
            } else {
                int reach = outcome.basin().reachAt(points.get(next));
                places.add(new Place(point, kind, figure.facts(reach), figure.remarks(reach)));
                next++;
            }
        }
        return places;
    }

    private List<Section> about(WallSheet.Head head, WallSheet.Block source) {
        List<Section> about = new ArrayList<>();
        about.add(new Section("", List.of(head.subtitle())));
        if (!words.notes(ground.withSites()).isEmpty()) {
            about.add(new Section("", words.notes(ground.withSites())));
        }
        about.add(new Section(source.heading(), source.lines()));
        about.add(new Section(words.cautions().heading(), words.cautions().lines()));
        about.add(new Section("", List.of(words.foot())));
        return about;
    }
}
