// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What a desktop hands over when it starts the program, and how it is asked to show a folder. */
final class DesktopStart {
    /** The variable in which silverwake.cmd keeps the line that Windows typed. */
    static final String LINE = "SILVERWAKE_LINE";

    private static final Pattern AFTER_LAUNCHER =
            Pattern.compile("(?i)silverwake\\.cmd\"?\\s+(?<rest>.*?)\\s*\"?\\s*$");
    private static final Pattern WORD = Pattern.compile("\"(?<quoted>[^\"]*)\"|(?<bare>[^\\s\"]+)");

    private DesktopStart() {}

    /**
     * The paths dropped on silverwake.cmd, from the line Windows typed: {@code cmd /c ""C:\x\silverwake.cmd" C:\a&b"}. The program's own
     * arguments will not do: a path without blanks comes unquoted and is cut at an ampersand, and letters that the machine's code page
     * lacks are lost.
     *
     * @param line the line, null where there is none
     * @return paths in their order; empty where the line names none
     */
    static List<String> dropped(String line) {
        List<String> paths = new ArrayList<>();
        Matcher after = AFTER_LAUNCHER.matcher(line == null ? "" : line);
        if (after.find()) {
            Matcher word = WORD.matcher(after.group("rest"));
            while (word.find()) {
                paths.add(word.group("quoted") != null ? word.group("quoted") : word.group("bare"));
            }
        }
        return List.copyOf(paths);
    }

    /** The words as paths; empty where one of them cannot be a path. */
    static Optional<List<Path>> paths(List<String> words) {
        try {
            return Optional.of(words.stream().map(Path::of).toList());
        } catch (InvalidPathException e) {
            return Optional.empty();
        }
    }

    /**
     * The command that shows a folder or file.
     *
     * @param path what to show
     * @param system value of os.name
     * @param screen whether a Linux session has a screen
     * @return program and argument; empty where there is no screen
     */
    static List<String> showing(Path path, String system, boolean screen) {
        String name = system.toLowerCase(Locale.ROOT);
        String program = name.startsWith("windows")
                ? "explorer.exe"
                : name.startsWith("mac") ? "open" : screen ? "xdg-open" : "";
        return program.isEmpty() ? List.of() : List.of(program, path.toString());
    }

    /** Shows a folder or file in the desktop's own window; false where there is none or it will not. */
    static boolean show(Path path) {
        boolean screen = System.getenv("DISPLAY") != null || System.getenv("WAYLAND_DISPLAY") != null;
        List<String> command = showing(path, System.getProperty("os.name"), screen);
        if (command.isEmpty()) {
            return false;
        }
        try {
            new ProcessBuilder(command)
                    .redirectOutput(ProcessBuilder.Redirect.DISCARD)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
