// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.mercury;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalInt;
import org.silverwake.model.solids.ParticleClass;

/**
 * The carried states: names, order, groups. The core comes first (exchangeable Hg(II), then the forms that turn into it and
 * back), then feeders (further forms, then grain-bound mercury, one state per particle class). Kernels ask for offsets once;
 * nothing else knows an index.
 */
public final class StateLayout {
    /** Name of exchangeable divalent mercury. */
    public static final String EXCHANGEABLE = "Hg(II)";

    /** Droplets above this size are not in a water sample [m] (common practice, no source). */
    static final double SAMPLED = 63e-6;

    private final List<String> names;
    private final List<Form> forms;
    private final int core;
    private final int classes;

    private StateLayout(List<String> names, List<Form> forms, int core, int classes) {
        this.names = List.copyOf(names);
        this.forms = List.copyOf(forms);
        this.core = core;
        this.classes = classes;
    }

    /** The layout for these particle classes, without further forms. */
    public static StateLayout of(List<ParticleClass> classes) {
        return of(classes, List.of());
    }

    /**
     * The layout for these particle classes and further forms.
     *
     * @throws IllegalArgumentException if two forms have one name
     */
    public static StateLayout of(List<ParticleClass> classes, List<Form> forms) {
        List<Form> ordered = forms.stream()
                .sorted(Comparator.comparing((Form form) -> !form.exchanging()))
                .toList();
        List<String> names = new ArrayList<>();
        names.add(EXCHANGEABLE);
        ordered.forEach(form -> names.add(form.name()));
        for (ParticleClass particles : classes) {
            names.add("grain-bound " + particles.name());
        }
        if (names.stream().distinct().count() < names.size()) {
            throw new IllegalArgumentException("forms: two have one name among " + names + "; give each its own");
        }
        int core = 1 + (int) forms.stream().filter(Form::exchanging).count();
        return new StateLayout(names, ordered, core, classes.size());
    }

    /** Number of states [-]. */
    public int count() {
        return names.size();
    }

    /** Number of core states [-]. */
    public int core() {
        return core;
    }

    /** Number of feeders [-]. */
    public int feeders() {
        return names.size() - core;
    }

    /** Place of exchangeable Hg(II). */
    public int exchangeable() {
        return 0;
    }

    /** Further forms, in their order here: the first stands behind exchangeable Hg(II). */
    public List<Form> forms() {
        return forms;
    }

    /** Place of a further form. */
    public int form(int further) {
        return 1 + further;
    }

    /** Place of grain-bound mercury of a particle class. */
    public int grainBound(int particleClass) {
        return 1 + forms.size() + particleClass;
    }

    /** Number of particle classes [-]. */
    public int classCount() {
        return classes;
    }

    /** Name of a state. */
    public String name(int state) {
        return names.get(state);
    }

    /**
     * Place of the state with a name.
     *
     * @throws IllegalArgumentException if there is none
     */
    public int place(String name) {
        int place = names.indexOf(name);
        if (place < 0) {
            throw new IllegalArgumentException("form " + name + " is not carried; carried are " + names);
        }
        return place;
    }

    /** Place of the state with a name; empty where it is not carried. */
    public OptionalInt find(String name) {
        int place = names.indexOf(name);
        return place < 0 ? OptionalInt.empty() : OptionalInt.of(place);
    }

    /** Whether a sample of whole water holds a state: all but droplets above 63 um. */
    public boolean isSampled(int state) {
        if (state == 0 || state > forms.size()) {
            return true;
        }
        return !(forms.get(state - 1).carriage() instanceof Form.Droplets droplets)
                || droplets.particles().diameter() <= SAMPLED;
    }
}
