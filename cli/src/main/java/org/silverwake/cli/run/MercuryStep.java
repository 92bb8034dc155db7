// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.run;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.model.Water;
import org.silverwake.model.input.Settings;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.solids.BackgroundSediment;
import org.silverwake.model.solids.FergusonChurch2004;
import org.silverwake.model.solids.MeasuredSettling;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.solids.SettlingLaw;
import org.silverwake.model.solids.Stokes1851;
import org.silverwake.model.transport.TransportInput;

/** Step 6, what it takes: classes, sediment, background and releases. */
final class MercuryStep {
    private static final double CUBIC_METERS_PER_LITER = 1e-3;

    private MercuryStep() {}

    static TransportInput input(ScenarioInput scenario, Basin basin, Water water) {
        Settings settings = scenario.settings();
        ChemistryStep chemistry = new ChemistryStep(scenario);
        TransportInput input = new TransportInput(
                water.hydraulics(),
                scenario.solids().classes().stream().map(MercuryStep::particles).toList(),
                scenario.states().stream().map(MercuryStep::sediment).toList(),
                scenario.states().stream().map(ScenarioInput.FlowState::flood).toList(),
                scenario.background().solidsContent(),
                scenario.states().stream()
                        .map(ScenarioInput.FlowState::lateralFilteredMercury)
                        .toList(),
                doc(scenario, "mercury.doc-log10-k"),
                withAllExtremes(releases(scenario, basin, chemistry), scenario, basin),
                new TransportInput.Options(
                        settings.value("solids.net-sedimentation")
                                * (1 - settings.value("solids.bed-porosity"))
                                * settings.value("solids.density"),
                        settings.value("mercury.kd-slope"),
                        settings.value("mercury.kd-reference-sediment"),
                        settings.value("mercury.grain-release-rate"),
                        settings.value("flood.set-down-length"),
                        settings.value("flood.overbank-share-per-km"),
                        settings.value("mixing.transverse-coefficient"),
                        true),
                chemistry.chemistry());
        return scenario.bed()
                .map(bed -> input.over(BedStep.input(scenario, bed, input)))
                .orElse(input);
    }

    private static ParticleClass particles(ScenarioInput.SolidsClass given) {
        return new ParticleClass(
                given.name(),
                given.diameter(),
                given.density(),
                law(given),
                given.cohesive(),
                given.criticalShearDeposition(),
                given.log10Kd(),
                given.retentionLength(),
                given.backgroundShare());
    }

    private static SettlingLaw law(ScenarioInput.SolidsClass given) {
        if (given.law().equals("measured")) {
            return new MeasuredSettling(given.settlingVelocity().orElseThrow());
        }
        return given.law().equals("stokes") ? new Stokes1851() : FergusonChurch2004.naturalGrains();
    }

    private static BackgroundSediment sediment(ScenarioInput.FlowState state) {
        return state.rating()
                .map(r -> new BackgroundSediment(r.a(), r.b()))
                .orElseGet(
                        () -> new BackgroundSediment(state.suspendedSediment().orElseThrow(), 0));
    }

    /** Binding to dissolved organic carbon by state [-], 0 on basis filtered. */
    static List<Double> doc(ScenarioInput scenario, String path) {
        if (scenario.mercury().basis() != ScenarioInput.Mercury.Basis.FREE) {
            return Collections.nCopies(scenario.states().size(), 0.0);
        }
        double coefficient = StrictMath.pow(10, scenario.settings().value(path)) * CUBIC_METERS_PER_LITER;
        return scenario.states().stream()
                .map(state -> coefficient * state.dissolvedOrganicCarbon().orElse(0))
                .toList();
    }

    /**
     * Where a history has sites whose forms are not known in some year and are in the year that is run, one of them that
     * releases nothing, so that all years know the same extremes. It comes after the scenario's own discharge points.
     */
    private static List<SiteRelease> withAllExtremes(List<SiteRelease> own, ScenarioInput scenario, Basin basin) {
        int known = own.stream().mapToInt(SiteRelease::extremes).max().orElse(1);
        List<SiteRelease> all = new ArrayList<>(own);
        HistoryStep.eras(scenario, basin).stream()
                .flatMap(era -> era.sites().stream())
                .max(Comparator.comparingInt(SiteRelease::extremes))
                .filter(site -> site.extremes() > known)
                .ifPresent(site -> all.add(site.closed()));
        return all;
    }

    /** What other discharge points of the same scenario would release, as in {@link #input}. */
    static List<SiteRelease> releases(ScenarioInput scenario, Basin basin, List<ScenarioInput.Site> sites) {
        ScenarioInput other = scenario.withSites(sites);
        return releases(other, basin, new ChemistryStep(other));
    }

    private static List<SiteRelease> releases(ScenarioInput scenario, Basin basin, ChemistryStep chemistry) {
        List<SiteRelease> releases = new ArrayList<>();
        for (ScenarioInput.Site site : scenario.sites()) {
            List<Double> mercury = new ArrayList<>();
            List<Double> solids = new ArrayList<>();
            List<Double> water = new ArrayList<>();
            for (int s = 0; s < scenario.states().size(); s++) {
                mercury.add(mercuryOf(site, s));
                solids.add(solidsOf(site, s));
                water.add(waterOf(site, s));
            }
            releases.add(new SiteRelease(
                    site.name(),
                    basin.reachOf(site),
                    mercury,
                    chemistry.isSplitKnown(site) && site.exchangeableShare().isEmpty()
                            ? OptionalDouble.of(1)
                            : site.exchangeableShare(),
                    site.classShares(),
                    solids,
                    water,
                    site.outfall() == ScenarioInput.Outfall.BANK,
                    chemistry.shares(site),
                    chemistry.moreExtremes(site)));
        }
        return releases;
    }

    /** Mercury that a site releases in a state [kg/s]. */
    static double mercuryOf(ScenarioInput.Site site, int state) {
        if (site.mercury().isPresent()) {
            return site.mercury().get().get(state);
        }
        if (site.tailings().isPresent()) {
            return site.tailings().get().mass().get(state)
                    * site.tailings().get().content();
        }
        ScenarioInput.Effluent effluent = site.effluent().orElseThrow();
        return effluent.flow().get(state) * effluent.concentration();
    }

    /** Dry tailings that a site releases in a state [kg/s]. */
    static double solidsOf(ScenarioInput.Site site, int state) {
        return site.tailings().map(t -> t.mass().get(state)).orElse(0.0);
    }

    /** All water that a site adds in a state, an effluent's own flow included [m3/s]. */
    static double waterOf(ScenarioInput.Site site, int state) {
        return site.water().get(state);
    }
}
