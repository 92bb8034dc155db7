// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.tutorial;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.ask.Asking;
import org.silverwake.cli.command.Silverwake;
import picocli.CommandLine;

/**
 * Does what docs/tutorial/first-map.md says, with the files it names and nothing else, and compares the conversation it
 * prints. Written anew with {@code -Dsilverwake.rewrite=true}.
 */
class FirstMapTutorialTest {
    private static final Path TUTORIAL = Path.of("..", "docs", "tutorial");
    private static final Path PAGE = TUTORIAL.resolve("first-map.md");
    private static final String OPEN = "<!-- conversation, checked by a test -->\n```\n";
    private static final String CLOSE = "```\n";

    /** What the person types; an empty line is Enter alone. */
    private static final List<String> ANSWERS = List.of(
            "", // the river file, the only one there
            "", // columns
            "", // outlet
            "", // states
            "", // dry
            "", // wet
            "", // flood
            "gauge",
            "Glimmer gauge",
            "-20.3746",
            "-30.0052",
            "15 m3/s",
            "82 m3/s",
            "450 m3/s",
            "", // the list of sites, the only table there
            "", // the columns of the list
            "", // slurry
            "", // the country: international
            "", // a value of river water from elsewhere
            "Lantern River, first map",
            "Ana Pereira, district office");

    @TempDir
    Path temp;

    @Test
    void fromTwoFilesToFirstMap() throws IOException {
        Path folder = Files.createDirectory(temp.resolve("lantern"));
        Files.copy(Path.of("..", "scenarios", "lantern", "rivers.gpkg"), folder.resolve("rivers.gpkg"));
        Files.copy(TUTORIAL.resolve("ten-sites.csv"), folder.resolve("ten-sites.csv"));

        String conversation = ask(folder);
        comparePage(conversation.replace(folder.toString(), "lantern").replace('\\', '/'));

        String workbook = folder.resolve("scenario.xlsx").toString();
        Path check = temp.resolve("check");
        assertThat(silverwake("check", workbook, "--out", check.toString())).isEqualTo(0);
        assertThat(check.resolve("check.html")).isNotEmptyFile();
        Path out = temp.resolve("out");
        assertThat(silverwake("run", workbook, "--out", out.toString())).isEqualTo(0);
        try (Stream<Path> maps = Files.list(out.resolve("maps"))) {
            assertThat(maps.map(p -> p.getFileName().toString())).anyMatch(name -> name.endsWith("dry.png"));
        }
        assertThat(Files.readAllLines(out.resolve("tables/sites.csv")))
                .as("heading, ten sites, three states")
                .hasSize(31);
    }

    private static String ask(Path folder) throws IOException {
        StringWriter shown = new StringWriter();
        PrintWriter out = new PrintWriter(shown);
        BufferedReader typed = new BufferedReader(new StringReader(String.join("\n", ANSWERS) + "\n")) {
            @Override
            public String readLine() throws IOException {
                String line = super.readLine();
                out.println(line == null ? "" : line);
                return line;
            }
        };
        assertThat(Asking.run(typed, out, folder, LocalDate.of(2026, 11, 25))).isTrue();
        assertThat(typed.readLine()).as("an answer that was not asked for").isNull();
        return shown.toString().replace(System.lineSeparator(), "\n").replaceAll("(?m)[ ]+$", "");
    }

    private static void comparePage(String conversation) throws IOException {
        String page = Files.readString(PAGE, StandardCharsets.UTF_8);
        int from = page.indexOf(OPEN) + OPEN.length();
        int to = page.indexOf(CLOSE, from);
        assertThat(from).isGreaterThan(OPEN.length());
        String body = conversation.strip() + "\n";
        if (Boolean.getBoolean("silverwake.rewrite")) {
            Files.writeString(PAGE, page.substring(0, from) + body + page.substring(to));
            return;
        }
        assertThat(page.substring(from, to)).isEqualTo(body);
    }

    private static int silverwake(String... arguments) {
        StringWriter words = new StringWriter();
        CommandLine line = Silverwake.commandLine();
        line.setOut(new PrintWriter(words));
        line.setErr(new PrintWriter(words));
        int code = line.execute(arguments);
        assertThat(code).as(words.toString()).isEqualTo(0);
        return code;
    }
}
