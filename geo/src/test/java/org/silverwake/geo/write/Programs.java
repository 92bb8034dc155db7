// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.write;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;

/** Independent programs, where the machine has them. */
final class Programs {
    private Programs() {}

    /** Skips a test, with a word, where a program is absent. */
    static void require(String program) {
        assumeTrue(runs(program, "--version") != null, "no " + program + " on the path: not compared with it");
    }

    /** What a program says; it must end well. */
    static String says(String... command) {
        String text = runs(command);
        assertThat(text).as("%s ended well", String.join(" ", command)).isNotNull();
        return text;
    }

    private static String runs(String... command) {
        try {
            Process process =
                    new ProcessBuilder(command).redirectErrorStream(true).start();
            try (InputStream out = process.getInputStream()) {
                String text = new String(out.readAllBytes(), StandardCharsets.UTF_8);
                return process.waitFor(60, TimeUnit.SECONDS) && process.exitValue() == 0 ? text : null;
            }
        } catch (IOException e) {
            return null;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }
}
