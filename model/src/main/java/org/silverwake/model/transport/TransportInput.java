// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import org.silverwake.model.mercury.Chemistry;
import org.silverwake.model.mercury.StateLayout;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.solids.BackgroundSediment;
import org.silverwake.model.solids.ParticleClass;
import org.silverwake.model.water.Hydraulics;

/**
 * All that solids and mercury need. Lists "by state" have one entry per flow state.
 *
 * @param hydraulics water, sections and shear
 * @param classes particle classes
 * @param sediment background suspended sediment by state
 * @param flood whether a state is a flood
 * @param backgroundContent mercury on background solids [kg/kg]
 * @param lateralFiltered filtered mercury of lateral and headwater inflow by state [kg/m3]
 * @param doc K_doc [DOC] by state [-], 0 on basis filtered
 * @param sites releases
 * @param options scalars
 * @param chemistry further forms and what turns into what
 * @param bed the bed that all flow states share; empty where the two bounds stand for it
 */
public record TransportInput(
        Hydraulics hydraulics,
        List<ParticleClass> classes,
        List<BackgroundSediment> sediment,
        List<Boolean> flood,
        double backgroundContent,
        List<Double> lateralFiltered,
        List<Double> doc,
        List<SiteRelease> sites,
        Options options,
        Chemistry chemistry,
        Optional<BedInput> bed) {
    /** Copies the lists. */
    public TransportInput {
        classes = List.copyOf(classes);
        sediment = List.copyOf(sediment);
        flood = List.copyOf(flood);
        lateralFiltered = List.copyOf(lateralFiltered);
        doc = List.copyOf(doc);
        sites = List.copyOf(sites);
    }

    /** The same with a bed. */
    public TransportInput over(BedInput shared) {
        return new TransportInput(
                hydraulics,
                classes,
                sediment,
                flood,
                backgroundContent,
                lateralFiltered,
                doc,
                sites,
                options,
                chemistry,
                Optional.of(shared));
    }

    /** The same with one site closed, its water gone from the river too, which is routed anew. */
    public TransportInput closed(int site, Hydraulics routedWithout) {
        List<SiteRelease> others = new ArrayList<>(sites);
        others.set(site, sites.get(site).closed());
        return with(routedWithout, others);
    }

    /** The same when one site alone releases mercury; all solids and all water stay. */
    TransportInput mercuryOf(int site) {
        BitSet one = new BitSet();
        one.set(site);
        return mercuryOf(one);
    }

    /** The same when some sites alone release mercury; all solids and all water stay. */
    TransportInput mercuryOf(BitSet some) {
        List<SiteRelease> releasing = new ArrayList<>();
        for (int i = 0; i < sites.size(); i++) {
            releasing.add(some.get(i) ? sites.get(i) : sites.get(i).withoutMercury());
        }
        return withSites(releasing);
    }

    /** The same with other sites, whose water stays as it is routed. */
    public TransportInput withSites(List<SiteRelease> others) {
        return with(hydraulics, others);
    }

    private TransportInput with(Hydraulics routed, List<SiteRelease> others) {
        return new TransportInput(
                routed,
                classes,
                sediment,
                flood,
                backgroundContent,
                lateralFiltered,
                doc,
                others,
                options,
                chemistry,
                bed);
    }

    /** Mercury that a site releases, mean of the year over the flow states [kg/s]. */
    public double meanRelease(int site) {
        double mean = 0;
        for (int s = 0; s < stateCount(); s++) {
            mean += sites.get(site).mercury().get(s) * hydraulics.share(s);
        }
        return mean;
    }

    /** Input without a bed. Concentrations in [kg/m3], contents in [kg/kg]. */
    public TransportInput(
            Hydraulics hydraulics,
            List<ParticleClass> classes,
            List<BackgroundSediment> sediment,
            List<Boolean> flood,
            double backgroundContent,
            List<Double> lateralFiltered,
            List<Double> doc,
            List<SiteRelease> sites,
            Options options,
            Chemistry chemistry) {
        this(
                hydraulics,
                classes,
                sediment,
                flood,
                backgroundContent,
                lateralFiltered,
                doc,
                sites,
                options,
                chemistry,
                Optional.empty());
    }

    /**
     * Scalars.
     *
     * @param netSedimentation dry solids laid down for good [kg/m2/s], at least 0
     * @param kdSlope fall of log10 Kd per decade of suspended sediment [-]
     * @param kdReference suspended sediment at which log10 Kd holds [kg/m3]
     * @param grainRelease grain-bound mercury to Hg(II) [1/s]
     * @param setDownLength e-fold length of sand set down in a flood [m]
     * @param overbankPerMeter suspended load lost overbank per length in a flood [1/m]
     * @param transverse transverse mixing coefficient [-]
     * @param cutCells whether reaches are cut into cells
     */
    public record Options(
            double netSedimentation,
            double kdSlope,
            double kdReference,
            double grainRelease,
            double setDownLength,
            double overbankPerMeter,
            double transverse,
            boolean cutCells) {}

    /** Number of flow states [-]. */
    public int stateCount() {
        return sediment.size();
    }

    /** The carried states. */
    public StateLayout layout() {
        return StateLayout.of(classes, chemistry.forms());
    }

    /** Variants of the unknown split that must be run [-]: 1, or as many as the site with most extremes has. */
    public int variantCount() {
        return sites.stream().mapToInt(SiteRelease::extremes).max().orElse(1);
    }
}
