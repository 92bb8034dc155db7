// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.PrintWriter;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.geo.GeoDataException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The program's commands and what its exit codes mean. */
@Command(
        name = "silverwake",
        mixinStandardHelpOptions = true,
        version = "Silverwake " + Silverwake.VERSION,
        description = {
            "Carries mercury from ore-processing sites down a river network and shows where it goes.",
            "",
            "A screening, not a finding of safety."
        },
        footer = {
            "",
            "Exit codes: 0 done; 1 our fault; 2 usage or scenario; 3 data; 4 numerical.",
            "Example: silverwake run scenarios/lantern"
        },
        subcommands = {RunCommand.class, CheckCommand.class, GuidelinesCommand.class})
public final class Silverwake implements Runnable {
    /** Version of the program. */
    public static final String VERSION = "0.1.0";

    private static final int OUR_FAULT = 1;
    private static final int USAGE = 2;
    private static final int DATA = 3;
    private static final int NUMERICAL = 4;

    @Option(names = "-v", description = "Print the stack trace where the program fails.")
    private boolean verbose;

    @Spec
    private CommandSpec spec;

    /** The command line, ready to be executed. */
    public static CommandLine commandLine() {
        Silverwake root = new Silverwake();
        CommandLine line = new CommandLine(root);
        line.setExecutionExceptionHandler((e, failed, parsed) -> root.explain(e, failed));
        return line;
    }

    @Override
    public void run() {
        throw new ParameterException(spec.commandLine(), "give a command");
    }

    private int explain(Exception e, CommandLine failed) {
        PrintWriter err = failed.getErr();
        if (e instanceof ScenarioException problems) {
            problems.problems().forEach(err::println);
            return USAGE;
        }
        if (e instanceof GeoDataException) {
            err.println(e.getMessage());
            return DATA;
        }
        boolean numerical =
                e instanceof ArithmeticException || e.getClass().getName().contains("math3");
        err.println((numerical ? "the computation failed: " : "the program failed, which is our fault: ") + e);
        if (verbose) {
            e.printStackTrace(err);
        } else {
            err.println("run again with -v before the command to see where");
        }
        return numerical ? NUMERICAL : OUR_FAULT;
    }
}
