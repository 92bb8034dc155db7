// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.silverwake.model.numerics.NumericalException;
import picocli.CommandLine;
import picocli.CommandLine.Command;

/** Words and exit codes of the command line. */
class CommandLineTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rnu x | silverwake: \"rnu\" is no command; the nearest known one is run; \"silverwake --help\" tells more",
                "'' | silverwake: give a command: run, compare, apportion, plan, check, new, guidelines",
                "run | silverwake run: missing required parameter: 'SCENARIO'",
                "run x --outt y | silverwake run: \"--outt\" is no option here; the nearest known one is --out",
                "run my scenario | \"scenario\" is one word too many; put a path with blanks in quotes",
                "new x --one-in 5 | --one-in counts the bottles of field sheets; give --field-sheets SCENARIO with it",
                "new x --field-sheets y --one-in few | --one-in few: give a whole number, 1 or more",
                "run x --formats png,gif | \"gif\" is not a kind of map file; give one or more of png, svg, pdf, tif, kmz",
                "compare x y --formats png,kmz | \"kmz\" is not a kind of picture file; give one or more of png, svg, pdf",
                "check x --all | silverwake check: \"--all\" is no option here",
            })
    void usageIsOneLine(String typed, String said) {
        Messy.Said answer = Messy.say(typed.isEmpty() ? new String[0] : typed.split(" "));
        answer.refuses(2, said, "--help");
        assertThat(answer.err()).hasSize(1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"run", "check", "new", "apportion", "guidelines", ""})
    void helpEndsWithAnExample(String command) {
        Messy.Said help = command.isEmpty() ? Messy.say("--help") : Messy.say(command, "--help");
        assertThat(help.code()).isZero();
        assertThat(help.all()).contains("Example: silverwake " + command, "-h, --help");
        assertThat(help.all()).contains("-v");
    }

    @Test
    void fieldSheetsAreForWorkbooksToo() {
        assertThat(Messy.say("new", "x", "--field-sheets", "nope").err())
                .singleElement()
                .asString()
                .contains("give a folder that holds scenario.yaml or scenario.xlsx");
    }

    /** The launcher's desktop entry opens folders. */
    @Test
    void desktopEntryIsOfferedForFolders(@TempDir Path place) throws IOException, InterruptedException {
        assumeTrue(Files.isExecutable(Path.of("/bin/sh")), "no sh on this machine: the launcher is not run");
        Process written = new ProcessBuilder("sh", "../silverwake", "--icon", place.toString()).start();
        assertThat(written.waitFor()).isZero();
        assertThat(Files.readString(place.resolve("silverwake.desktop")))
                .containsPattern("(?m)^MimeType=inode/directory;");
    }

    @Test
    void versionIsPrinted() {
        assertThat(Messy.say("--version").all()).isEqualTo("Silverwake " + Silverwake.VERSION);
    }

    @Command(name = "fail")
    private record Failing(RuntimeException failure) implements Callable<Integer> {
        @Override
        public Integer call() {
            throw failure;
        }
    }

    private static String failing(int code, RuntimeException failure, String... arguments) {
        StringWriter err = new StringWriter();
        int exit = Silverwake.commandLine()
                .addSubcommand(new CommandLine(new Failing(failure)))
                .setErr(new PrintWriter(err))
                .execute(arguments);
        assertThat(exit).isEqualTo(code);
        return err.toString();
    }

    @Test
    void numericalFailureIsFour() {
        assertThat(failing(4, new NumericalException("reach L7", "no depth was found; check its slope", 0.5), "fail"))
                .startsWith("the computation failed: reach L7: no depth was found; check its slope")
                .contains("run again with -v");
    }

    @Test
    void ourFaultIsOneAndTheTraceIsThereOnRequest() {
        RuntimeException fault = new IllegalStateException("a bug");
        assertThat(failing(1, fault, "fail"))
                .startsWith("the program failed, which is our fault, not yours: java.lang.IllegalStateException: a bug")
                .doesNotContain("\tat ");
        assertThat(failing(1, fault, "-v", "fail")).contains("\tat ", "CommandLineTest");
        assertThat(failing(1, new ArithmeticException("/ by zero"), "fail")).contains("/ by zero");
    }

    @Test
    void aFullDiskIsNotOurFault() {
        assertThat(failing(
                        3,
                        new UncheckedIOException(
                                new FileSystemException("maps/a.png", null, "No space left on device")),
                        "fail"))
                .startsWith("a file cannot be read or written: maps/a.png: No space left on device; check");
    }
}
