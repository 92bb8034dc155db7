// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.silverwake.cli.report.Profiles;
import org.silverwake.cli.report.RecoveryClasses;
import org.silverwake.cli.report.Shown;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.Outputs;
import org.silverwake.cli.scenario.Sheets;
import org.silverwake.geo.map.MapFormat;
import org.silverwake.geo.map.WallPainter;
import org.silverwake.geo.map.WallSheet;
import org.silverwake.model.screening.Guideline;

/** Writes the sheets that a scenario asks for. */
public final class PrintedSheets {
    private final Outcome outcome;
    private final Path folder;
    private final Set<MapFormat> formats;

    private PrintedSheets(Outcome outcome, Path folder, Set<MapFormat> formats) {
        this.outcome = outcome;
        this.folder = folder;
        this.formats = formats;
    }

    /** Draws what {@code sheets.kinds} asks for; nothing of it where no value is compared with reaches. */
    public static void draw(Outcome outcome, Path folder, Set<MapFormat> formats) {
        PrintedSheets sheets = new PrintedSheets(outcome, folder, formats);
        Set<Sheets.Kind> kinds = outcome.scenario().outputs().sheets().kinds();
        if (kinds.contains(Sheets.Kind.MAP)) {
            Shown.guideline(outcome).ifPresent(sheets::maps);
        }
        if (kinds.contains(Sheets.Kind.FLOW_STATES)) {
            Shown.guideline(outcome)
                    .filter(g -> !g.observable().averaging().isOneForAllStates())
                    .ifPresent(g -> sheets.write("flow-states", new AnswerSheets(outcome, g).states()));
        }
        if (kinds.contains(Sheets.Kind.PROFILE)) {
            Shown.guideline(outcome).ifPresent(sheets::profiles);
        }
        if (kinds.contains(Sheets.Kind.RECOVERY)) {
            outcome.years().ifPresent(run -> {
                for (Guideline guideline : new RecoveryClasses(outcome, run).drawn(false)) {
                    sheets.write("recovery-" + guideline.id(), new RecoverySheet(outcome, run, guideline).sheet());
                }
            });
        }
        if (kinds.contains(Sheets.Kind.SITE_SHARES)
                && !outcome.scenario().places().isEmpty()
                && !outcome.scenario().sites().isEmpty()) {
            ShareSheets.of(outcome).forEach((name, sheet) -> sheets.write("site-shares-" + name, sheet));
        }
    }

    private void maps(Guideline guideline) {
        AnswerSheets answers = new AnswerSheets(outcome, guideline);
        if (guideline.observable().averaging().isOneForAllStates()) {
            write("map", answers.one(AnswerSheets.ALL_STATES));
            return;
        }
        for (int s = 0; s < outcome.scenario().states().size(); s++) {
            write("map-" + outcome.scenario().states().get(s).name(), answers.one(s));
        }
    }

    private void profiles(Guideline guideline) {
        ProfileSheet profiles = new ProfileSheet(outcome, guideline);
        for (Outputs.Profile wanted : outcome.scenario().outputs().profiles()) {
            profiles.of(wanted).ifPresent(sheet -> write("profile-" + Profiles.fileName(wanted.name()), sheet));
        }
    }

    private void write(String name, WallSheet sheet) {
        write(outcome, folder, formats, name, sheet);
    }

    static void write(Outcome outcome, Path folder, Set<MapFormat> formats, String name, WallSheet sheet) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        List<Path> files = formats.stream()
                .map(format -> folder.resolve(name + "." + format.ending()))
                .toList();
        WallPainter.draw(outcome.basin().map(), sheet, files);
    }
}
