// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.List;
import org.silverwake.cli.chart.Profile;
import org.silverwake.cli.chart.Tornado;
import org.silverwake.cli.chart.TornadoChart;
import org.silverwake.cli.run.Apportioned;
import org.silverwake.cli.run.Swing;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.cli.text.Numbers;
import org.silverwake.model.quantity.Quantity;
import org.silverwake.model.release.Spread;

/** A picture for each place and flow state: what makes the answer there uncertain. */
public final class Tornadoes {
    static final double NANOGRAMS_PER_LITER = 1e9;
    private static final int DIGITS = 2;
    /** A bar narrower than this share of the widest is not drawn (chosen) [-]. */
    private static final double NARROW = 0.01;

    private Tornadoes() {}

    /** Draws all. */
    public static void draw(Apportioned apportioned, List<Swing> swings, MapFiles files) {
        for (Swing swing : swings) {
            Tornado tornado = tornado(apportioned, swing);
            String name = Profiles.fileName("tornado-" + SharedWords.place(apportioned, swing.place()) + "-"
                    + state(apportioned, swing).name());
            files.each(name, file -> TornadoChart.write(tornado, file));
        }
    }

    static ScenarioInput.FlowState state(Apportioned apportioned, Swing swing) {
        return apportioned.outcome().scenario().states().get(swing.state());
    }

    private static Tornado tornado(Apportioned apportioned, Swing swing) {
        ScenarioInput scenario = apportioned.outcome().scenario();
        boolean single = scenario.outputs().audience() == Outputs.Audience.OFFICE;
        double widest = swing.bars().get(0).width();
        List<Tornado.Bar> bars = swing.bars().stream()
                .filter(bar -> bar.width() > NARROW * widest)
                .limit(Tornado.MOST)
                .map(Tornadoes::bar)
                .toList();
        int others = swing.bars().size() - bars.size();
        List<Profile.GuidelineValue> guidelines = ProfileView.ofWhole().guidelines(apportioned.outcome());
        String what = single ? "site" : "group of sites";
        return new Tornado(
                "What makes the answer uncertain: " + SharedWords.place(apportioned, swing.place()),
                scenario.project().title() + " \u2013 "
                        + Profiles.subtitle(apportioned.outcome(), swing.state())
                        + "; one " + what + " at a time from its low to its high release, the others at the middle",
                "total mercury in whole water, highest estimate",
                "ng/L",
                swing.middle() * NANOGRAMS_PER_LITER,
                bars,
                guidelines,
                Profiles.caution(single) + (single ? " " + SharedWords.NO_EVIDENCE : ""),
                scenario.project().preparedBy() + ", " + scenario.project().date()
                        + " \u00B7 ranges of field notes; what the river itself leaves open is not in them"
                        + (others > 0
                                ? " \u00B7 " + others + " other " + (single ? "sites" : "groups")
                                        + " change it little or not at all"
                                : ""));
    }

    private static Tornado.Bar bar(Swing.Bar bar) {
        Spread release = bar.release().map(value -> value * Quantity.SECONDS_PER_YEAR);
        return new Tornado.Bar(
                bar.name(),
                Numbers.shown(release.low(), DIGITS) + " to " + Numbers.shown(release.high(), DIGITS)
                        + " kg a year to the river",
                bar.low() * NANOGRAMS_PER_LITER,
                bar.high() * NANOGRAMS_PER_LITER);
    }
}
