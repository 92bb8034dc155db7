// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Path2D;
import java.awt.geom.PathIterator;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.run.ScaledRun;
import org.silverwake.cli.scenario.Outputs.Audience;
import org.silverwake.cli.scenario.ScenarioInput.Site;
import org.silverwake.cli.whatif.Contributor;
import org.silverwake.cli.whatif.Contributors;
import org.silverwake.cli.whatif.FullValues;
import org.silverwake.geo.crs.Ground;
import org.silverwake.geo.map.GroupArea;
import org.silverwake.geo.place.PlacedPoint;
import org.silverwake.model.quantity.Quantity;

/** A public page holds nothing of single sites, shown or not. */
class PublicPageTest {
    /** The grid of areas is that of a whole degree, up to 2 % off [-]. */
    private static final double OF_THE_STEP = 0.98;

    /** Nearer than this to a site no line may begin or end [m]. */
    private static final double NEAR = 20;

    private static final double HUNDRED_THOUSANDTH = 1e-5;

    private static final List<Outcome> DEMOS = Stream.of("scenario.yaml", "today.yaml", "contained.yaml")
            .map(file -> MainRun.run(DemoCopy.LANTERN.resolve(file), step -> {}))
            .toList();

    static List<Outcome> demos() {
        return DEMOS;
    }

    private static String json(Outcome outcome) {
        return ReportData.json(outcome, Audience.PUBLIC, "test");
    }

    @ParameterizedTest
    @MethodSource("demos")
    void noSiteIsNamed(Outcome outcome) {
        String json = json(outcome).toLowerCase(Locale.ROOT);
        List<Site> sites = new ArrayList<>(outcome.scenario().sites());
        sites.addAll(outcome.scenario().fieldNotes().sites());
        for (Site site : sites) {
            assertThat(json).doesNotContain(site.name().toLowerCase(Locale.ROOT));
        }
        assertThat(ReportData.json(outcome, Audience.OFFICE, "test"))
                .contains(sites.get(0).name());
    }

    @ParameterizedTest
    @MethodSource("demos")
    void everySourceIsAtLeastThreeSites(Outcome outcome) {
        PageModel page = new PageModel(json(outcome));
        assertThat(page.items("contributors"))
                .isNotEmpty()
                .allSatisfy(each -> assertThat((Integer) each.get("sites")).isGreaterThanOrEqualTo(3))
                .allSatisfy(each -> assertThat(each.get("lon")).isNull())
                .allSatisfy(each -> assertThat(each.get("withinOneWidth")).isEqualTo(List.of()));
        assertThat(page.items("levers"))
                .allSatisfy(lever -> assertThat(lever.get("kind")).isEqualTo("group"));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void noReleaseOfASingleSiteIsToldAnywhere(Outcome outcome) {
        PageModel page = new PageModel(json(outcome));
        List<Double> numbers = new ArrayList<>();
        numbers(page.data().get("contributors"), numbers);
        numbers(page.data().get("levers"), numbers);
        numbers(page.data().get("balance"), numbers);
        for (int i = 0; i < outcome.scenario().sites().size(); i++) {
            double own = outcome.result().input().meanRelease(i) * Quantity.SECONDS_PER_YEAR;
            assertThat(numbers).noneMatch(number -> Math.abs(number - own) < 1e-5 * own);
        }
    }

    private static void numbers(Object data, List<Double> into) {
        if (data instanceof Number number) {
            into.add(number.doubleValue());
        } else if (data instanceof List<?> list) {
            list.forEach(item -> numbers(item, into));
        } else if (data instanceof Map<?, ?> map) {
            map.values().forEach(item -> numbers(item, into));
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void noLineBeginsOrEndsAtASite(Outcome outcome) {
        PageModel page = new PageModel(json(outcome));
        Map<?, ?> reaches = PageModel.map(page.data(), "reaches");
        List<?> steps = PageModel.list(reaches, "points");
        double x = 0;
        double y = 0;
        int at = 0;
        for (Object size : PageModel.list(reaches, "size")) {
            for (int k = 0; k < (Integer) size; k++) {
                x += (Integer) steps.get(at++) * HUNDRED_THOUSANDTH;
                y += (Integer) steps.get(at++) * HUNDRED_THOUSANDTH;
                for (PlacedPoint site : outcome.basin().points("site")) {
                    double near = Ground.distance(x, y, site.snappedLongitude(), site.snappedLatitude());
                    assertThat(k > 0 && k < (Integer) size - 1 || near > NEAR)
                            .as("%s", site.request().name())
                            .isTrue();
                }
            }
        }
        assertThat(at).isEqualTo(steps.size());
    }

    /** The areas are those of sheets: they hold every site of their group, and no corner of them is near any. */
    @ParameterizedTest
    @MethodSource("demos")
    void areasOfGroupsGiveNoSiteAway(Outcome outcome) {
        PageModel page = new PageModel(json(outcome));
        List<PlacedPoint> points = outcome.basin().points("site");
        List<String> named = new ArrayList<>();
        for (Map<?, ?> group : page.items("groups")) {
            Map<?, ?> contributor = page.items("contributors").get((Integer) group.get("contributor"));
            named.add((String) contributor.get("name"));
            Path2D ring = ring(PageModel.list(group, "points"));
            List<GroupArea.Corner> own = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                if (outcome.scenario().sites().get(i).group().equals(contributor.get("name"))) {
                    own.add(new GroupArea.Corner(
                            points.get(i).longitude(), points.get(i).latitude()));
                }
            }
            assertThat(own)
                    .hasSizeGreaterThanOrEqualTo(3)
                    .allSatisfy(site -> assertThat(ring.contains(site.longitude(), site.latitude()))
                            .isTrue())
                    .allSatisfy(
                            site -> assertThat(nearest(ring, site)).isGreaterThan(OF_THE_STEP * GroupArea.LEAST_STEP));
        }
        assertThat(named).containsExactlyInAnyOrder("Upper Lamp", "Quinquet Hill");
        assertThat(new PageModel(ReportData.json(outcome, Audience.OFFICE, "test")).items("groups"))
                .isEmpty();
    }

    private static Path2D ring(List<?> steps) {
        Path2D ring = new Path2D.Double();
        double x = 0;
        double y = 0;
        for (int k = 0; k < steps.size(); k += 2) {
            x += (Integer) steps.get(k) * HUNDRED_THOUSANDTH;
            y += (Integer) steps.get(k + 1) * HUNDRED_THOUSANDTH;
            if (k == 0) {
                ring.moveTo(x, y);
            } else {
                ring.lineTo(x, y);
            }
        }
        return ring;
    }

    private static double nearest(Path2D ring, GroupArea.Corner site) {
        double least = Double.POSITIVE_INFINITY;
        double[] at = new double[6];
        for (PathIterator corners = ring.getPathIterator(null); !corners.isDone(); corners.next()) {
            corners.currentSegment(at);
            least = Math.min(least, Ground.distance(at[0], at[1], site.longitude(), site.latitude()));
        }
        return least;
    }

    /** Neither as a number of the table of sites nor by what its notes say. */
    @ParameterizedTest
    @MethodSource("demos")
    void noPositionAndNoNoteOfASingleSiteIsWritten(Outcome outcome) {
        String json = json(outcome);
        for (PlacedPoint site : outcome.basin().points("site")) {
            assertThat(json)
                    .doesNotContain(BigDecimal.valueOf(site.longitude()).toPlainString())
                    .doesNotContain(BigDecimal.valueOf(site.latitude()).toPlainString());
        }
        outcome.scenario().sites().stream()
                .map(Site::note)
                .filter(note -> !note.isBlank())
                .forEach(note -> assertThat(json).doesNotContain(note));
    }

    @ParameterizedTest
    @MethodSource("demos")
    void noTextOfTheScenarioGoesAlong(Outcome outcome) {
        assertThat(new PageModel(json(outcome)).items("source")).isEmpty();
        assertThat(new PageModel(ReportData.json(outcome, Audience.OFFICE, "test")).items("source"))
                .hasSize(1);
    }

    /** Groups as levers, by the page's own stretches of river, against the full run. */
    @ParameterizedTest
    @MethodSource("demos")
    void groupsMoveAsFullRunsDo(Outcome outcome) {
        PageModel page = new PageModel(json(outcome));
        page.move(0.3, 0.8, 0.55);
        List<Contributor> groups = Contributors.of(outcome.scenario(), Audience.PUBLIC, Contributors.Grouping.NONE);
        double[] factors = new double[outcome.scenario().sites().size()];
        for (int k = 0; k < groups.size(); k++) {
            for (int point : groups.get(k).points()) {
                factors[point] = page.factors()[k];
            }
        }
        var full = ScaledRun.of(outcome, factors);
        for (int m = 0; m < page.items("measures").size(); m++) {
            for (int s = 0;
                    s < PageModel.list(page.items("measures").get(m), "states").size();
                    s++) {
                double[][] shown = page.values(m, s);
                double[][] run = FullValues.of(outcome, full, Audience.PUBLIC, m, s);
                for (int u = 0; u < page.reaches(); u++) {
                    if (!Double.isNaN(shown[0][u])) {
                        assertThat(Math.abs(shown[0][u] - run[0][u])).isLessThanOrEqualTo(1e-6 * run[0][u]);
                        assertThat(Math.abs(shown[1][u] - run[1][u])).isLessThanOrEqualTo(1e-6 * run[1][u]);
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("demos")
    void lengthsAndPeopleAreAllThere(Outcome outcome) {
        PageModel page = new PageModel(json(outcome));
        double meters = PageModel.list(PageModel.map(page.data(), "reaches"), "meters").stream()
                .mapToDouble(PageModel::number)
                .sum();
        double all = 0;
        for (int r = 0; r < outcome.basin().network().size(); r++) {
            all += outcome.basin().table().length(r);
        }
        assertThat(Math.abs(meters - all)).isLessThan(page.reaches());
        assertThat(page.items("places")).hasSameSizeAs(outcome.scenario().places());
    }
}
