// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;

/**
 * The demo's run by field notes with both its pages.
 *
 * @param outcome the run
 * @param scenario its file, in a copy of the demo's folder
 * @param office the page for the office
 * @param everybody the page for everybody
 */
record DemoPages(Outcome outcome, Path scenario, Path office, Path everybody) {
    static DemoPages in(Path folder) throws IOException {
        Path today = DemoCopy.into(folder.resolve("lantern")).resolve("today.yaml");
        Files.writeString(today, Files.readString(today).replaceFirst("outputs:\n", "outputs:\n  audience: office\n"));
        Outcome outcome = MainRun.run(today, step -> {});
        DemoPages pages = new DemoPages(outcome, today, folder.resolve("office.html"), folder.resolve("public.html"));
        ReportPage.write(outcome, "test", pages.office);
        ReportPage.write(outcome.forEverybody(), "test", pages.everybody);
        return pages;
    }
}
