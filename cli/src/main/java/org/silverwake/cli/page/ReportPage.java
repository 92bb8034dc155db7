// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.silverwake.cli.reportdata.ReportData;
import org.silverwake.cli.run.Outcome;
import org.silverwake.cli.scenario.ScenarioInput;

/** Writes report.html: what a run found, as a map, tables and sliders, for the office or for everybody. */
public final class ReportPage {
    private ReportPage() {}

    /**
     * Writes the page.
     *
     * @param outcome the run
     * @param version of the program
     * @param file the page, replaced if there
     */
    public static void write(Outcome outcome, String version, Path file) {
        ScenarioInput.Project project = outcome.scenario().project();
        String data = ReportData.json(outcome, outcome.scenario().outputs().audience(), version);
        try {
            Files.writeString(
                    file,
                    PageParts.REPORT.page(
                            project.language(),
                            project.title(),
                            ReportWords.json(outcome.scenario().outputs().sheets()),
                            data),
                    StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
