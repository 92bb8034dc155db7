// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.planning;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The solver library greets machines that it does not know on the console; here it keeps quiet. */
class QuietTest {
    /** A plan, in a Java of its own: the greeting comes once per process. */
    public static void main(String[] arguments) {
        Planner.of(
                        List.of(new Option("a", "site", "", CostRange.of(1), 1)),
                        List.of(Limit.of("village", 1)),
                        LinearResponse.of(new double[] {2}, new double[][] {{-1}}),
                        Adoption.ALL_OR_NOTHING,
                        1)
                .cheapest(Level.MIDDLE);
    }

    @Test
    void nothingIsWrittenToTheConsole() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        QuietTest.class.getName())
                .redirectErrorStream(true)
                .start();
        String written = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(written).isZero();
        assertThat(written).isEmpty();
    }
}
