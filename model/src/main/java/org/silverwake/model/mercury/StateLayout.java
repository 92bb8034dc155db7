// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.model.solids.ParticleClass;

/**
 * The carried states: names, order, groups. The core comes first (exchangeable Hg(II)), then feeders (grain-bound mercury, one per
 * particle class). Kernels ask for offsets once; nothing else knows an index.
 */
public final class StateLayout {
    /** Name of exchangeable divalent mercury. */
    public static final String EXCHANGEABLE = "Hg(II)";

    private final List<String> names;
    private final int grainBound;
    private final int classes;

    private StateLayout(List<String> names, int grainBound, int classes) {
        this.names = List.copyOf(names);
        this.grainBound = grainBound;
        this.classes = classes;
    }

    /** The layout for these particle classes. */
    public static StateLayout of(List<ParticleClass> classes) {
        List<String> names = new ArrayList<>();
        names.add(EXCHANGEABLE);
        for (ParticleClass particles : classes) {
            names.add("grain-bound " + particles.name());
        }
        return new StateLayout(names, 1, classes.size());
    }

    /** Number of states [-]. */
    public int count() {
        return names.size();
    }

    /** Number of core states [-]. */
    public int core() {
        return grainBound;
    }

    /** Number of feeders [-]. */
    public int feeders() {
        return names.size() - grainBound;
    }

    /** Place of exchangeable Hg(II). */
    public int exchangeable() {
        return 0;
    }

    /** Place of grain-bound mercury of a particle class. */
    public int grainBound(int particleClass) {
        return grainBound + particleClass;
    }

    /** Number of particle classes [-]. */
    public int classCount() {
        return classes;
    }

    /** Name of a state. */
    public String name(int state) {
        return names.get(state);
    }
}
