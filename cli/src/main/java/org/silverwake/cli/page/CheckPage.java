// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.run.LocatedSample;
import org.silverwake.cli.scenario.ScenarioInput;

/** Writes check.html: network, points and defects to look at, and to correct. */
public final class CheckPage {
    private CheckPage() {}

    /**
     * Writes the page.
     *
     * @param scenario what was asked
     * @param basin what was read, as far as that went
     * @param samples where samples lie
     * @param problems what keeps the scenario from running, one line each, besides points without a place
     * @param version of the program
     * @param file the page, replaced if there
     */
    public static void write(
            ScenarioInput scenario,
            Basin basin,
            List<LocatedSample> samples,
            List<String> problems,
            String version,
            Path file) {
        String data = PageData.json(scenario, basin, samples, problems, version);
        try {
            Files.writeString(
                    file,
                    PageParts.CHECK.page("en", scenario.project().title(), PageParts.checkWords(), data),
                    StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
