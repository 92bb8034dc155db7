// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.silverwake.cli.demo.DemoCopy;

/** A copy of a scenario in a temporary folder, broken the way people break theirs, and what the program says to it. */
final class Messy {
    static final Path LANTERN = DemoCopy.LANTERN;

    /**
     * What the program said.
     *
     * @param code exit code
     * @param out lines of standard output
     * @param err lines of standard error
     */
    record Said(int code, List<String> out, List<String> err) {
        /** The problem is told: exit code, and every part of it in one and the same line. */
        void refuses(int expected, String... parts) {
            assertThat(err)
                    .as("exit code %d", code)
                    .anySatisfy(line -> assertThat(line).contains(parts));
            assertThat(code).as("%s", err).isEqualTo(expected);
        }

        String all() {
            return String.join("\n", out);
        }
    }

    private final Path folder;

    private Messy(Path folder) {
        this.folder = folder;
    }

    /** The demo's files. */
    static Messy lantern(Path folder) {
        return new Messy(DemoCopy.into(folder));
    }

    /** An empty folder. */
    static Messy empty(Path folder) {
        try {
            Files.createDirectories(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return new Messy(folder);
    }

    Path folder() {
        return folder;
    }

    String text(String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Messy file(String name, String text) {
        return file(name, text, StandardCharsets.UTF_8);
    }

    Messy file(String name, String text, Charset charset) {
        try {
            Files.write(folder.resolve(name), text.getBytes(charset));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    Messy without(String name) {
        try {
            Files.delete(folder.resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return this;
    }

    /** Replaces a piece of a file, which must be there. */
    Messy with(String file, String old, String replacement) {
        String text = text(file);
        assertThat(text).as("the test's own scenario").contains(old);
        return file(file, text.replace(old, replacement));
    }

    Messy yaml(String old, String replacement) {
        return with("scenario.yaml", old, replacement);
    }

    /** Changes the demo's river layer. */
    Messy rivers(String statement) {
        String url = "jdbc:sqlite:" + folder.resolve("rivers.gpkg");
        try (Connection connection = DriverManager.getConnection(url);
                Statement sql = connection.createStatement()) {
            List<String> triggers = new ArrayList<>();
            try (ResultSet found = sql.executeQuery("SELECT name FROM sqlite_master WHERE type = 'trigger'")) {
                while (found.next()) {
                    triggers.add(found.getString(1));
                }
            }
            for (String trigger : triggers) { // they call functions that bare SQLite does not have
                sql.execute("DROP TRIGGER \"" + trigger + "\"");
            }
            sql.executeUpdate(statement);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
        return this;
    }

    /** Runs a command on this scenario; results go to the folder {@code out} beside it. */
    Said does(String command) {
        return say(command, folder.toString(), "--out", out().toString());
    }

    Path out() {
        return folder.resolveSibling("out");
    }

    /** A line of a table of results, as fields by its quotes. */
    List<String> table(String name) {
        try {
            return Files.readAllLines(out().resolve("tables").resolve(name));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Said say(String... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int code = Silverwake.commandLine()
                .setOut(new PrintWriter(out))
                .setErr(new PrintWriter(err))
                .execute(arguments);
        return new Said(code, lines(out), lines(err));
    }

    private static List<String> lines(StringWriter text) {
        return Arrays.asList(text.toString().split("\\R"));
    }
}
