// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import org.silverwake.cli.scenario.ScenarioInput.PlaceUse;
import org.silverwake.cli.scenario.ScenarioInput.ReleasePath;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.model.balance.Balance;
import org.silverwake.model.release.SiteRelease;
import org.silverwake.model.transport.Bound;
import org.silverwake.model.transport.TransportInput;
import org.silverwake.model.transport.YearsResult.Whereabouts;

/** Words of fixed choices, as tables and pictures show them. */
public final class Words {
    private static final String DROPLETS = "droplets";

    private Words() {}

    /** A bound. */
    public static String bound(Bound bound) {
        return switch (bound) {
            case LAID_DOWN -> "laid down";
            case CARRIED_THROUGH -> "carried through";
            case WITH_BED -> "with the bed";
        };
    }

    /** What an unknown split is taken as in a variant; empty where all splits are known. */
    public static String variant(TransportInput input, int variant) {
        if (input.variantCount() == 1) {
            return "";
        }
        Set<String> forms = new TreeSet<>();
        for (SiteRelease site : input.sites()) {
            site.further(variant).forEach((form, share) -> {
                if (share > site.furtherShares().getOrDefault(form, 0.0)) {
                    forms.add(form.startsWith(DROPLETS) ? DROPLETS : form);
                }
            });
        }
        return forms.isEmpty() ? (variant == 0 ? "exchangeable" : "grain-bound") : String.join(" or ", forms);
    }

    /** A process of the budget. */
    public static String process(Balance.Process process) {
        return plain(process.name());
    }

    /** Where released mercury is. */
    static String whereabouts(Whereabouts where) {
        return switch (where) {
            case BEGAN -> "in the beds at the beginning";
            case RELEASED -> "released since";
            case BED -> "in the beds";
            case BURIED -> "buried below them";
            case EVADED -> "gone to the air";
            case EXPORTED -> "past the outlets";
            case OVERBANK -> "on flooded land";
            case ABSTRACTED -> "taken with water";
            case HELD_DRY -> "held where there is no water";
        };
    }

    /** A path of release. */
    public static String path(ReleasePath path) {
        return plain(path.name());
    }

    /** Uses of a place. */
    public static String uses(List<PlaceUse> uses) {
        return String.join("; ", uses.stream().map(use -> plain(use.name())).toList());
    }

    /** A kind of defect. */
    public static String defect(Defect.Kind kind) {
        return plain(kind.name());
    }

    static String plain(String name) {
        return name.toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
