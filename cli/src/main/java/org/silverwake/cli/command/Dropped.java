// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

/** A folder or workbook without a command, as a drop on the launcher gives it: check, then run, then show. */
final class Dropped {
    private final CommandLine line;
    private final boolean verbose;
    private final boolean desktop;

    /**
     * @param line where to print
     * @param verbose whether a failure prints where in the program
     * @param desktop whether the results are opened at the end
     */
    Dropped(CommandLine line, boolean verbose, boolean desktop) {
        this.line = line;
        this.verbose = verbose;
        this.desktop = desktop;
    }

    /** Runs; the exit code of check, or of run. */
    int run(DropTarget target) {
        say("Silverwake " + Silverwake.VERSION + ": a screening, not a finding of safety");
        say("1. Checking " + target.scenario());
        int code = execute("check", target.scenario(), target.check());
        if (code != 0) {
            say("Nothing was computed. The lines above say what is wrong and what to do; then drop it again.");
            return code;
        }
        Path page = target.check().resolve("check.html");
        if (Files.exists(page)) {
            say("Repairs and placed points, to be looked at: " + page);
        }
        say("2. Computing");
        code = execute("run", target.scenario(), target.result());
        if (code != 0) {
            say("There are no new results. The lines above say what is wrong and what to do; then drop it again.");
            return code;
        }
        say("3. Results: " + target.result());
        say("   maps: concentration maps; profiles: along the river; tables: for each place and reach");
        if (desktop && DesktopStart.show(target.result())) {
            say("   The folder is being opened.");
        }
        return 0;
    }

    private int execute(String command, Path scenario, Path out) {
        List<String> words = new ArrayList<>(List.of(command, scenario.toString(), "--out", out.toString()));
        if (verbose) {
            words.add("-v");
        }
        int code = Silverwake.commandLine()
                .setOut(line.getOut())
                .setErr(line.getErr())
                .setExpandAtFiles(false)
                .execute(words.toArray(String[]::new));
        line.getOut().flush();
        line.getErr().flush();
        return code;
    }

    private void say(String words) {
        line.getOut().println(words);
        line.getOut().flush();
    }
}
