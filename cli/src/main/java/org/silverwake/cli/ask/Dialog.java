// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.ask;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.util.Locale;
import java.util.Set;
import java.util.function.Function;

/**
 * Questions and answers, line by line. A blank line takes the proposal; "stop" (or quit, or exit) ends without having
 * written anything.
 */
final class Dialog {
    /** Thrown where the user stops, or the input ends. */
    static final class Stopped extends RuntimeException {
        private static final long serialVersionUID = 1;

        Stopped(String message) {
            super(message);
        }
    }

    private static final Set<String> STOP = Set.of("stop", "quit", "exit");
    private static final Set<String> YES = Set.of("", "y", "yes", "ok", "right");

    private final BufferedReader in;
    private final PrintWriter out;

    Dialog(BufferedReader in, PrintWriter out) {
        this.in = in;
        this.out = out;
    }

    /** Prints a line. */
    void say(String line) {
        out.println(line);
    }

    /** Prints an indented line. */
    void note(String line) {
        out.println("   " + line);
    }

    /** The answer, or the proposal where the line is blank; the proposal may itself be blank. */
    String ask(String prompt, String proposal) {
        out.print("   " + prompt + (proposal.isEmpty() ? "" : " [" + proposal + "]") + ": ");
        out.flush();
        try {
            String line = in.readLine();
            if (line == null || STOP.contains(line.strip().toLowerCase(Locale.ROOT))) {
                out.println();
                throw new Stopped("stopped; nothing was written");
            }
            return line.isBlank() ? proposal : line.strip();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * Asks until the answer can be read.
     *
     * @param read gives the value, or throws IllegalArgumentException in words for the user
     */
    <T> T askUntil(String prompt, String proposal, Function<String, T> read) {
        while (true) {
            try {
                return read.apply(ask(prompt, proposal));
            } catch (IllegalArgumentException e) {
                note(e.getMessage());
            }
        }
    }

    /** Whether an answer says no more than that it is right as it stands. */
    static boolean isYes(String answer) {
        return YES.contains(answer.toLowerCase(Locale.ROOT));
    }
}
