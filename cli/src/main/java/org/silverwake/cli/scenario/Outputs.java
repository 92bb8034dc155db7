// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.cli.text.TableForm;

/**
 * What is drawn: one medium for every flow state, the profiles, forms of mercury by themselves and the media in which they
 * are shown; how tables are written; who sees page and sheets, and what these say and lie upon.
 */
public record Outputs(
        Optional<String> mapMedium,
        Optional<String> mapGuideline,
        List<Profile> profiles,
        Set<ShownForm> forms,
        Set<ShownMedium> formMedia,
        TableForm tables,
        Audience audience,
        Sheets sheets,
        Backdrop backdrop) {
    /** Copies the collections; sets in the order of their constants. */
    public Outputs {
        profiles = List.copyOf(profiles);
        forms = Collections.unmodifiableSet(new TreeSet<>(forms));
        formMedia = Collections.unmodifiableSet(new TreeSet<>(formMedia));
    }

    /** The same for everybody. */
    Outputs forEverybody() {
        return new Outputs(
                mapMedium, mapGuideline, profiles, forms, formMedia, tables, Audience.PUBLIC, sheets, backdrop);
    }

    /** Who sees sheets and page: everybody, so that no single site may show; or the office alone. */
    public enum Audience {
        PUBLIC,
        OFFICE
    }

    /** A form of mercury of which pictures can be drawn, in the order in which forms are stacked. */
    public enum ShownForm {
        DIVALENT,
        GRAIN_BOUND,
        DROPLETS,
        COMPLEX,
        ELEMENTAL,
        METHYL
    }

    /** A medium in which pictures show a form of mercury. */
    public enum ShownMedium {
        WHOLE_WATER,
        FILTERED_WATER,
        SUSPENDED_SOLIDS,
        BED_SEDIMENT
    }

    /** A profile down the network from a feature or a place to the outlet, or to {@code to}. */
    public record Profile(String name, String from, Optional<String> to) {}
}
