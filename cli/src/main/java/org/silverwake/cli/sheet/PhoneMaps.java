// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.silverwake.cli.report.RecoveryClasses;
import org.silverwake.cli.report.Shown;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.write.KmzWriter;
import org.silverwake.geo.write.PhoneMap;
import org.silverwake.model.screening.Guideline;

/** The maps of guide values for viewers on phones, for the audience of the sheets and in their language. */
public final class PhoneMaps {
    private PhoneMaps() {}

    /**
     * Writes one for each flow state, or one where the value is compared over all, and with a history those of recovery; nothing where no value
     * is compared with reaches. Names are those of the maps.
     *
     * @param folder made if it is not there
     * @param all every guideline compared with reaches, not the default one alone
     */
    public static void write(Outcome outcome, Path folder, boolean all) {
        List<Guideline> drawn = all
                ? Shown.drawable(outcome)
                : Shown.guideline(outcome).stream().toList();
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        for (Guideline guideline : drawn) {
            if (guideline.observable().averaging().isOneForAllStates()) {
                PhoneMap map = new PhoneAnswers(outcome, guideline, AnswerSheets.ALL_STATES).map();
                write(outcome, map, folder, guideline.id());
                continue;
            }
            for (int s = 0; s < outcome.scenario().states().size(); s++) {
                String name = outcome.scenario().states().get(s).name();
                write(outcome, new PhoneAnswers(outcome, guideline, s).map(), folder, guideline.id() + "-" + name);
            }
        }
        outcome.years()
                .ifPresent(run -> new RecoveryClasses(outcome, run)
                        .drawn(all)
                        .forEach(guideline -> write(
                                outcome,
                                new PhoneRecovery(outcome, run, guideline).map(),
                                folder,
                                "recovery-" + guideline.id())));
    }

    private static void write(Outcome outcome, PhoneMap map, Path folder, String name) {
        KmzWriter.write(folder.resolve(name + ".kmz"), outcome.basin().map(), map);
    }
}
