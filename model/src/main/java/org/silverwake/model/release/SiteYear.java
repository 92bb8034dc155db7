// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.silverwake.model.quantity.Quantity;

/**
 * A site's year at one level of each assumption.
 *
 * @param balance mercury by path, all sheds, practices in force
 * @param releases what goes to the river
 * @param circuit drum to gold of one shed, as noted, without practices; empty where no mercury is used
 * @param gold all sheds [kg/s]
 */
record SiteYear(YearBalance balance, List<PathRelease> releases, Optional<Circuit> circuit, double gold) {
    private static final double ROUNDING = 1e-9;
    private static final Assumed WASHED = new Assumed(
            "share of the heap washed out in states that do not fill it, by their length",
            Spread.exact(1),
            "-",
            Published.TRADE);
    private static final Assumed RESIDUE =
            new Assumed("grain-bound share of the mercury in leached tailings", Spread.exact(1), "-", Published.TRADE);

    /** Of one set of notes. */
    static SiteYear of(FieldNotes notes, FlowYear flowYear, Assumptions assumptions) {
        double sheds = notes.work().sheds();
        if (notes.practice() == Amalgamation.NONE) {
            double none = notes.work().gold().map(Noted::value).orElse(0.0) * sheds;
            return new SiteYear(new YearBalance(Map.of(), 0), List.of(), Optional.empty(), none);
        }
        Circuit circuit = circuit(notes, assumptions);
        if (notes.tailings().storage() instanceof Storage.HeapByLength) {
            assumptions.ask(WASHED);
        }
        double gold = circuit.value(Circuit.GOLD) * sheds;
        YearBalance balance = shed(notes, flowYear, circuit, assumptions).times(sheds);
        double riverShare = notes.tailings().fate().orElseThrow().river() * goes(notes, flowYear);
        Effects effects = new Effects(notes, gold, assumptions);
        for (FieldNotes.Change change : notes.changes()) {
            balance = effects.with(change.practice(), balance);
        }
        for (FieldNotes.Change change : notes.changes()) {
            balance = effects.bleeding(change, balance, riverShare);
        }
        FieldNotes.Nearby nearby = notes.burning().nearby();
        balance = balance.moved(SitePath::isVapor, SitePath.LAID_DOWN, nearby.laidDown())
                .moved(path -> path == SitePath.LAID_DOWN, SitePath.RUNOFF, nearby.runoff());
        return new SiteYear(balance, releases(notes, flowYear, balance), Optional.of(circuit), gold);
    }

    /** Of an old heap or disturbed ground; the content's range is that of its stated uncertainty. */
    static SiteYear of(Eroded ground, FlowYear flowYear, Assumptions assumptions) {
        double content = assumptions.noted("mercury content of the ground", ground.content(), "kg/kg");
        Map<SitePath, Double> rates = new EnumMap<>(SitePath.class);
        double eroded = ground.solids() * content;
        Storage.Released released = ground.storage().release(eroded, flowYear);
        rates.put(SitePath.ERODED, eroded);
        rates.put(SitePath.KEPT, released.kept());
        slurry(ground.forms(), released.mean(flowYear), rates);
        double going = ground.storage().release(1, flowYear).mean(flowYear);
        YearBalance balance = new YearBalance(rates, ground.solids() * going);
        PathRelease release = slurry(PathRelease.Path.EROSION, balance, ground.storage(), flowYear, 0);
        return new SiteYear(balance, List.of(release), Optional.empty(), 0);
    }

    /** A table test whose remainder was not assayed is the least that an assumed balance may leave in the tailings. */
    private static Circuit circuit(FieldNotes notes, Assumptions assumptions) {
        Circuit circuit = Circuit.of(notes, assumptions);
        double least = least(notes);
        boolean assumed = assumptions.asked().contains(notes.practice().toAir());
        if (!assumed || circuit.value(Circuit.TAILINGS) >= least) {
            return circuit;
        }
        double content = notes.tailings().tableTest().orElseThrow().content().value();
        FieldNotes.Tailings t = notes.tailings();
        return Circuit.of(
                notes.with(new FieldNotes.Tailings(
                        t.massPerCycle(),
                        Optional.of(Noted.of(content)),
                        t.tableTest(),
                        t.fate(),
                        t.forms(),
                        t.storage(),
                        t.waterPerCycle())),
                assumptions);
    }

    /** Least mercury in the tailings of a shed by a table test without assay [kg/s]; 0 where there is none. */
    static double least(FieldNotes notes) {
        Optional<TableTest> test = notes.tailings().tableTest().filter(TableTest::isLowerBound);
        return test.isEmpty() || notes.tailings().content().isPresent()
                ? 0
                : test.get().content().value() * tailingsMass(notes);
    }

    /** Dry tailings of a shed [kg/s]; 0 where not known. */
    static double tailingsMass(FieldNotes notes) {
        return notes.tailingsPerCycle().orElse(0) * Circuit.perSecond(notes);
    }

    /** Share of what is given to the river that goes there in the year. */
    private static double goes(FieldNotes notes, FlowYear flowYear) {
        return notes.tailings().storage().release(1, flowYear).mean(flowYear);
    }

    private static YearBalance shed(FieldNotes notes, FlowYear flowYear, Circuit circuit, Assumptions assumptions) {
        Map<SitePath, Double> rates = new EnumMap<>(SitePath.class);
        if (circuit.isChargeKnown()) {
            rates.put(SitePath.CHARGED, circuit.value(Circuit.CHARGED));
            rates.put(SitePath.SQUEEZED_BACK, circuit.value(Circuit.SQUEEZED));
        } else {
            rates.put(SitePath.USED, circuit.value(Circuit.USED));
        }
        rates.put(SitePath.HELD, notes.mercury().held());
        rates.put(SitePath.PRODUCT, circuit.value(Circuit.PRODUCT));
        rates.put(SitePath.RETORT_RECOVERED, circuit.value(Circuit.RETORT));
        rates.put(SitePath.AIR_OPEN, circuit.openVapor());
        rates.put(SitePath.AIR_RETORT, circuit.retortVapor());

        FieldNotes.Fate fate = notes.tailings().fate().orElseThrow();
        double tailings = circuit.value(Circuit.TAILINGS);
        double recovered = tailings * fate.reprocessed() * fate.recovery();
        double rest = tailings * (1 - fate.reprocessed() * fate.recovery());
        rates.put(SitePath.TAILINGS_RECOVERED, recovered);
        Storage.Released released = notes.tailings().storage().release(rest * fate.river(), flowYear);
        double kept = rest * fate.stored() + released.kept();
        slurry(notes.tailings().forms(), released.mean(flowYear), rates);
        double solids = tailingsMass(notes) * fate.river();
        if (fate.leached() > 0) {
            FieldNotes.Tank tank = notes.tank().orElseThrow();
            double entering = rest * fate.leached();
            double dissolved = dissolved(notes, tank, entering, assumptions);
            double letGo = dissolved * (1 - tank.detoxified());
            double residue = entering - letGo;
            if (tank.residueToRiver() > 0) {
                assumptions.ask(RESIDUE);
            }
            Storage.Released ofResidue = notes.tailings().storage().release(residue * tank.residueToRiver(), flowYear);
            rates.put(SitePath.TANK_COMPLEX, letGo * tank.solutionToRiver());
            rates.put(SitePath.TANK_RESIDUE, ofResidue.mean(flowYear));
            kept += letGo * (1 - tank.solutionToRiver()) + residue * (1 - tank.residueToRiver()) + ofResidue.kept();
            solids += tailingsMass(notes) * fate.leached() * tank.residueToRiver();
        }
        rates.put(SitePath.KEPT, kept);
        return new YearBalance(rates, solids * goes(notes, flowYear));
    }

    private static void slurry(Optional<FieldNotes.Forms> forms, double rate, Map<SitePath, Double> rates) {
        if (forms.isEmpty()) {
            rates.put(SitePath.SLURRY_UNSPLIT, rate);
            return;
        }
        rates.put(SitePath.SLURRY_DROPLETS, rate * forms.get().droplets());
        rates.put(SitePath.SLURRY_EXCHANGEABLE, rate * forms.get().exchangeable());
        rates.put(SitePath.SLURRY_GRAIN_BOUND, rate * forms.get().grainBound());
    }

    private static double dissolved(FieldNotes notes, FieldNotes.Tank tank, double entering, Assumptions assumptions) {
        double volume = tank.volume() * tank.cyclesPerYear() / Quantity.SECONDS_PER_YEAR;
        if (tank.dissolved().isEmpty()) {
            return Math.min(entering, volume * assumptions.ask(Published.DISSOLVED));
        }
        double dissolved = volume * tank.dissolved().get().value();
        if (dissolved > entering * (1 + ROUNDING)) {
            throw new NotesException(
                    notes.name(),
                    List.of(NoteFinding.refused(
                            "mercury dissolved in leach solution",
                            dissolved * Quantity.SECONDS_PER_YEAR,
                            "kg/yr",
                            "more comes out of the tank than the "
                                    + NoteFinding.show(entering * Quantity.SECONDS_PER_YEAR)
                                    + " kg/yr that the tailings bring")));
        }
        return Math.min(entering, dissolved);
    }

    private static List<PathRelease> releases(FieldNotes notes, FlowYear flowYear, YearBalance balance) {
        List<PathRelease> releases = new ArrayList<>();
        double sheds = notes.work().sheds();
        FieldNotes.Fate fate = notes.tailings().fate().orElseThrow();
        double slurryWater = notes.tailings().waterPerCycle() * Circuit.perSecond(notes) * sheds * fate.river();
        if (balance.sum(SitePath::isSlurry) > 0 || balance.solids() > 0) {
            releases.add(
                    slurry(PathRelease.Path.SLURRY, balance, notes.tailings().storage(), flowYear, slurryWater));
        }
        double complex = balance.rate(SitePath.TANK_COMPLEX);
        if (fate.leached() > 0) {
            FieldNotes.Tank tank = notes.tank().orElseThrow();
            double water =
                    tank.volume() * tank.cyclesPerYear() / Quantity.SECONDS_PER_YEAR * sheds * tank.solutionToRiver();
            releases.add(new PathRelease(
                    PathRelease.Path.LEACH_TANK,
                    flowYear.spread(complex),
                    0,
                    complex > 0 ? 1 : 0,
                    OptionalDouble.of(1),
                    same(0, flowYear),
                    flowYear.spread(water)));
        }
        double runoff = balance.rate(SitePath.RUNOFF);
        if (runoff > 0) {
            releases.add(new PathRelease(
                    PathRelease.Path.RUNOFF,
                    same(runoff, flowYear),
                    0,
                    0,
                    OptionalDouble.of(1),
                    same(0, flowYear),
                    same(0, flowYear)));
        }
        return releases;
    }

    /** Slurry by state: the year's mass in the rhythm of its storage. */
    static PathRelease slurry(
            PathRelease.Path path, YearBalance balance, Storage storage, FlowYear flowYear, double water) {
        Storage.Released rhythm = storage.release(1, flowYear);
        double mean = rhythm.mean(flowYear);
        double all = balance.sum(SitePath::isSlurry);
        double droplets = balance.rate(SitePath.SLURRY_DROPLETS);
        double exchangeable = balance.rate(SitePath.SLURRY_EXCHANGEABLE);
        double divalent = all - droplets;
        boolean open = balance.rate(SitePath.SLURRY_UNSPLIT) > 0;
        List<Double> mercury = new ArrayList<>();
        List<Double> solids = new ArrayList<>();
        for (double rate : rhythm.byState()) {
            mercury.add(mean == 0 ? 0 : all * rate / mean);
            solids.add(mean == 0 ? 0 : balance.solids() * rate / mean);
        }
        return new PathRelease(
                path,
                mercury,
                all == 0 ? 0 : droplets / all,
                0,
                open ? OptionalDouble.empty() : OptionalDouble.of(divalent > 0 ? exchangeable / divalent : 1),
                solids,
                flowYear.spread(water));
    }

    private static List<Double> same(double value, FlowYear flowYear) {
        return Collections.nCopies(flowYear.size(), value);
    }
}
