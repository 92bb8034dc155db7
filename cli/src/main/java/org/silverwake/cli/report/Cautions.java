// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.run.FormNotes;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.text.Texts;
import org.silverwake.model.fish.FishRun;

/** What stands on every map and at the end of every run. */
public final class Cautions {
    private Cautions() {}

    /** What holds for every scenario. */
    public static List<String> always() {
        return Texts.of("en").numbered("caution");
    }

    private static void ofFish(FishRun fish, boolean areDamsKnown, List<String> cautions) {
        if (fish.isModelled()) {
            cautions.add("Fish: " + FishTable.AT_BEST
                    + (areDamsKnown ? "." : "; dams that keep fish apart are not known here."));
        } else {
            cautions.add("Fish was not assessed"
                    + (fish.measured() > 0 ? " but where it was measured" : "")
                    + ": methylmercury is not carried.");
        }
    }

    public static List<String> of(Outcome outcome) {
        List<String> cautions = new ArrayList<>(always());
        if (outcome.scenario().sites().isEmpty()) {
            cautions.add("No site is listed: what is shown is background alone.");
        }
        if (!outcome.scenario().fieldNotes().trial().isEmpty()) {
            cautions.add("This is a trial with other releases, not the present.");
        }
        cautions.addAll(CyanideReport.cautions(outcome));
        if (outcome.result().variants() > 1) {
            cautions.add("Where the form of mercury is not known, "
                    + (outcome.result().variants() > 2 ? "all" : "both") + " extremes were run.");
        }
        if (outcome.basin().waters().withoutData()) {
            cautions.add(
                    "Still water of unknown area or depth is taken as river: more gets through it here than in truth,"
                            + " and less stays.");
        }
        cautions.addAll(FormNotes.cautions(outcome.result()));
        outcome.result()
                .bedAnswer()
                .flatMap(bed -> bed.afterYears().stream().boxed().findFirst())
                .ifPresent(years -> cautions.add(
                        "Beds change slowly: shown is what is there after " + years + " years at this rate."));
        outcome.fish()
                .ifPresent(fish -> ofFish(
                        fish, !outcome.scenario().fish().orElseThrow().dams().isEmpty(), cautions));
        cautions.addAll(outcome.breaks().cautions());
        return List.copyOf(cautions);
    }
}
