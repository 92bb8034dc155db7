// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.BufferedReader;
import java.io.Console;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.silverwake.cli.ask.Asking;
import org.silverwake.cli.run.OutputFolder;
import org.silverwake.cli.scenario.Nearest;
import org.silverwake.cli.scenario.ScenarioException;
import org.silverwake.geo.GeoDataException;
import org.silverwake.model.numerics.NumericalException;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program's commands and what its exit codes mean. */
@Command(
        name = "silverwake",
        mixinStandardHelpOptions = true,
        version = "Silverwake " + Silverwake.VERSION,
        description = {
            "Carries mercury from ore-processing sites down a river network and shows where it goes.",
            "Without anything in a terminal: asks eight questions and writes a workbook.",
            "With a folder or workbook in place of a command: checks it, runs it, says where the results are.",
            "",
            "A screening, not a finding of safety."
        },
        footer = {
            "",
            "Exit codes: 0 done; 1 the program's fault; 2 command line or scenario;",
            "3 river layer, points or another data file; 4 the computation failed.",
            "",
            "Example: silverwake check scenarios/lantern",
            "         silverwake run scenarios/lantern"
        },
        subcommands = {
            RunCommand.class,
            CompareCommand.class,
            ApportionCommand.class,
            PlanCommand.class,
            CheckCommand.class,
            NewCommand.class,
            GuidelinesCommand.class
        })
public final class Silverwake implements Callable<Integer> {
    /** Version of the program. */
    public static final String VERSION = "0.1.0";

    private static final int OUR_FAULT = 1;
    static final int USAGE = 2;
    static final int DATA = 3;
    private static final int NUMERICAL = 4;

    @Option(
            names = "-v",
            scope = ScopeType.INHERIT,
            description = "Where the program fails, print where in the program (the stack trace).")
    private boolean verbose;

    @Option(
            names = "--desktop",
            hidden = true,
            description = "As the launchers start it: results are opened at the end.")
    private boolean desktop;

    @Parameters(paramLabel = "PATH", arity = "0..*", hidden = true, description = "A folder or workbook.")
    private List<String> words = List.of();

    @Spec
    private CommandSpec spec;

    /** The command line, ready to be executed. */
    public static CommandLine commandLine() {
        Silverwake root = new Silverwake();
        CommandLine line = new CommandLine(root);
        line.setExecutionExceptionHandler((e, failed, parsed) -> root.explain(e, failed));
        line.setParameterExceptionHandler((e, arguments) -> usage(e));
        return line;
    }

    /** Without a command: what was dropped on a launcher, or a word that is none. */
    @Override
    public Integer call() {
        Console console = System.console();
        if (words.isEmpty() && console != null) {
            BufferedReader in = new BufferedReader(console.reader());
            return Asking.inFolder(in, console.writer(), desktop ? Optional.empty() : Optional.of(Path.of("")))
                    ? 0
                    : USAGE;
        }
        if (words.isEmpty()) {
            throw new ParameterException(spec.commandLine(), "give a command: " + String.join(", ", commands(spec)));
        }
        List<String> typed = desktop ? DesktopStart.dropped(System.getenv(DesktopStart.LINE)) : List.of();
        List<Path> paths = DesktopStart.paths(typed.isEmpty() ? words : typed).orElse(List.of());
        if (paths.isEmpty() || !desktop && !Files.exists(paths.get(0)) && isNoPath(words.get(0))) {
            throw new ParameterException(spec.commandLine(), noCommand(words.get(0), commands(spec)));
        }
        DropTarget target = DropTarget.of(paths, Path.of(System.getProperty("user.home")));
        return new Dropped(spec.commandLine(), verbose, desktop).run(target);
    }

    private static boolean isNoPath(String word) {
        return !word.contains("/") && !word.contains("\\");
    }

    private static String noCommand(String word, Set<String> known) {
        return "\"" + word + "\" is no command; " + Nearest.hint(word, known);
    }

    private static Set<String> commands(CommandSpec spec) {
        return spec.subcommands().keySet();
    }

    /** One line, and where to read more; the whole help would hide it. */
    private static int usage(ParameterException e) {
        CommandLine failed = e.getCommandLine();
        CommandSpec spec = failed.getCommandSpec();
        String message = e.getMessage();
        if (e instanceof UnmatchedArgumentException unmatched
                && !unmatched.getUnmatched().isEmpty()) {
            String word = unmatched.getUnmatched().get(0);
            boolean option = word.startsWith("-");
            Collection<String> known = option
                    ? spec.options().stream().map(OptionSpec::longestName).toList()
                    : commands(spec);
            message = "\"" + word + "\" is "
                    + (option ? "no option here" : known.isEmpty() ? "one word too many" : "no command")
                    + "; "
                    + (known.isEmpty() ? "put a path with blanks in quotes" : Nearest.hint(word, known));
        } else if (e instanceof MissingParameterException) {
            message = Character.toLowerCase(message.charAt(0)) + message.substring(1);
        }
        failed.getErr()
                .println(
                        spec.qualifiedName() + ": " + message + "; \"" + spec.qualifiedName() + " --help\" tells more");
        failed.getErr().flush();
        return USAGE;
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
        if (e instanceof UncheckedIOException) {
            err.println("a file cannot be read or written: " + OutputFolder.reason((IOException) e.getCause())
                    + "; check that there is room and that files are not open elsewhere; nothing was changed");
            trace(e, err);
            return DATA;
        }
        boolean numerical = e instanceof NumericalException;
        err.println(
                numerical
                        ? "the computation failed: " + e.getMessage()
                        : "the program failed, which is our fault, not yours: " + e + "; please report it");
        trace(e, err);
        return numerical ? NUMERICAL : OUR_FAULT;
    }

    private void trace(Exception e, PrintWriter err) {
        if (verbose) {
            e.printStackTrace(err);
        } else {
            err.println("run again with -v to see where in the program");
        }
        err.flush();
    }
}
