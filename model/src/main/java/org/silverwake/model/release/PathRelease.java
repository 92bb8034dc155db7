// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.release;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * What a site gives to the river by one path. Lists are by flow state.
 *
 * @param path the path
 * @param mercury [kg/s]
 * @param droplets share of the mercury in liquid droplets [-]
 * @param complex share of the mercury in the cyanide complex [-]
 * @param exchangeable share of the rest that is exchangeable Hg(II) [-], what then remains grain-bound; empty where the forms are
 *     not known
 * @param solids dry tailings [kg/s]
 * @param water water added [m3/s]
 */
public record PathRelease(
        Path path,
        List<Double> mercury,
        double droplets,
        double complex,
        OptionalDouble exchangeable,
        List<Double> solids,
        List<Double> water) {
    /** Ways from a site to the river. */
    public enum Path {
        SLURRY,
        LEACH_TANK,
        RUNOFF,
        EROSION
    }

    /** Copies the lists. */
    public PathRelease {
        mercury = List.copyOf(mercury);
        solids = List.copyOf(solids);
        water = List.copyOf(water);
    }

    /** Mean mercury of the year [kg/s]. */
    public double mean(FlowYear year) {
        return year.mean(mercury);
    }

    /**
     * As transport takes it. Where forms are not known, all in droplets is one more extreme.
     *
     * @param name name of the release
     * @param reach reach at whose head it enters
     * @param classShares how grain-bound mercury and solids divide over particle classes [-]
     * @param atBank whether the outfall is at the bank
     * @param dropletClasses names of the droplets' size classes, with their shares of all droplets [-]
     * @param complexName name of the cyanide complex among the forms
     */
    public SiteRelease toSiteRelease(
            String name,
            int reach,
            List<Double> classShares,
            boolean atBank,
            Map<String, Double> dropletClasses,
            String complexName) {
        Map<String, Double> further = new LinkedHashMap<>();
        if (droplets > 0) {
            dropletClasses.forEach((size, share) -> further.put(size, share * droplets));
        }
        if (complex > 0) {
            further.put(complexName, complex);
        }
        boolean isOpen = exchangeable.isEmpty() && !dropletClasses.isEmpty();
        return new SiteRelease(
                name,
                reach,
                mercury,
                exchangeable,
                classShares,
                solids,
                water,
                atBank,
                further,
                isOpen ? List.of(dropletClasses) : List.of());
    }
}
