// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Optional;
import org.silverwake.cli.fieldkit.FieldKit;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.run.Scenarios;
import org.silverwake.cli.scenario.ScenarioInput;
import picocli.CommandLine.Option;

/** The part of {@code new} that makes paper for the field. */
final class FieldSheetsOption {
    @Option(
            names = "--field-sheets",
            paramLabel = "SCENARIO",
            description = "Write field sheets, custody forms, bottle labels (PDF) and the table for results, for this"
                    + " scenario's places.")
    private Optional<Path> scenario;

    @Option(
            names = "--one-in",
            paramLabel = "N",
            description =
                    "One duplicate and one field blank for every N samples of a kind (default " + FieldKit.EVERY + ").")
    private Optional<String> every;

    /** Whether field sheets are asked for. */
    boolean isGiven() {
        return scenario.isPresent();
    }

    /** What is wrong with the options beside each other; empty where nothing is. */
    Optional<String> problem() {
        if (every.isPresent() && scenario.isEmpty()) {
            return Optional.of("--one-in counts the bottles of field sheets; give --field-sheets SCENARIO with it");
        }
        return every.filter(written -> !written.matches("[1-9]\\d{0,8}"))
                .map(written -> "--one-in " + written + ": give a whole number, 1 or more");
    }

    /** Writes them into a folder and says so; the exit code. */
    int write(Path folder, PrintWriter print) {
        ScenarioInput input = Scenarios.read(scenario.orElseThrow());
        FieldKit.write(
                        input,
                        Basin.of(input),
                        folder,
                        every.map(Integer::valueOf).orElse(FieldKit.EVERY))
                .forEach(print::println);
        print.flush();
        return 0;
    }
}
