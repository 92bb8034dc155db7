// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.sheet;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.awt.GraphicsEnvironment;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.Main;

/** A machine without fonts draws the demo as one with fonts does: fontconfig, by which Java finds fonts on Linux, is given no folder. */
class NoFontsTest {
    private static final String NONE =
            "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"fonts.dtd\"><fontconfig></fontconfig>";
    /** Names that stand for whatever font there is (documentation of java.awt.Font). */
    private static final Set<String> LOGICAL = Set.of("Dialog", "DialogInput", "Monospaced", "SansSerif", "Serif");

    @TempDir
    private Path folder;

    /** Says which families of fonts Java finds. */
    static final class Families {
        private Families() {}

        public static void main(String[] arguments) throws IOException {
            String names;
            try {
                names = String.join(
                        "\n", GraphicsEnvironment.getLocalGraphicsEnvironment().getAvailableFontFamilyNames());
            } catch (RuntimeException | InternalError e) {
                names = ""; // some releases of Java give up where there is none
            }
            Files.writeString(Path.of(arguments[0]), names);
        }
    }

    @Test
    void picturesAreTheSameToTheByte() throws Exception {
        Path found = folder.resolve("families.txt");
        java(true, Families.class, found.toString());
        assumeTrue(
                Files.readAllLines(found).stream().allMatch(name -> name.isBlank() || LOGICAL.contains(name)),
                "skipped: this machine's Java finds its fonts without fontconfig");
        TreeMap<String, String> with = drawn(false);
        assertThat(with.keySet()).anyMatch(name -> name.endsWith("map-dry.svg")).hasSizeGreaterThan(12);
        assertThat(drawn(true)).isEqualTo(with);
    }

    /** Sums of all pictures by their names. */
    private TreeMap<String, String> drawn(boolean bare) throws Exception {
        Path out = folder.resolve(bare ? "bare" : "usual");
        String demo = Path.of("..", "scenarios", "lantern").toString();
        java(bare, Main.class, "run", demo, "--out", out.toString(), "--sheets", "pdf,svg", "--formats", "svg,png");
        TreeMap<String, String> sums = new TreeMap<>();
        try (Stream<Path> files = Files.walk(out)) {
            for (Path file : files.filter(f -> f.toString().matches(".*\\.(svg|pdf|png)"))
                    .toList()) {
                byte[] sum = java.security.MessageDigest.getInstance("SHA-256").digest(Files.readAllBytes(file));
                sums.put(
                        out.relativize(file).toString(),
                        java.util.HexFormat.of().formatHex(sum));
            }
        }
        return sums;
    }

    private void java(boolean bare, Class<?> main, String... arguments) throws Exception {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Djava.awt.headless=true",
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                main.getName()));
        if (bare) {
            command.add(1, "-Duser.home=" + folder); // Java keeps there what fontconfig told it once
        }
        command.addAll(List.of(arguments));
        ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true);
        if (bare) {
            Path none = Files.writeString(folder.resolve("none.conf"), NONE);
            builder.environment().put("FONTCONFIG_FILE", none.toString());
        }
        Process process = builder.start();
        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).as(said).isZero();
    }
}
