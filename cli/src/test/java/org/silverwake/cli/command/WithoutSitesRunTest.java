// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a run for everybody leaves to be posted, of the demo whose sites the office sees. */
class WithoutSitesRunTest {
    private static final List<String> SITES = List.of(
            "Sconcesheds",
            "Wickmill",
            "PestleHouse",
            "Quinquetmill",
            "TwoLamps",
            "Mantlesheds",
            "Chimneysheds",
            "Girandoletanks");

    @TempDir
    private Path folder;

    @Test
    void oneOptionTakesSitesOffMapsProfilesSheetsAndPage() throws IOException {
        assertThat(naming("run")).contains("maps", "profiles", "sheets", "report.html");
        assertThat(naming("run", "--without-sites")).isEmpty();
    }

    @Test
    void comparisonsToo() throws IOException {
        Messy lantern = office("pair");
        lantern.file("half.yaml", lantern.text("scenario.yaml").replace("sites.csv", "half.csv"));
        lantern.file("half.csv", lantern.text("sites.csv").replace("slurry,900,", "slurry,450,"));
        Path out = folder.resolve("pair-out");
        Messy.Said said = Messy.say(
                "compare",
                lantern.folder().toString(),
                lantern.folder().resolve("half.yaml").toString(),
                "--without-sites",
                "--out",
                out.toString(),
                "--formats",
                "svg");
        assertThat(said.code()).as("%s", said.err()).isZero();
        assertThat(out.resolve("sheets")).isNotEmptyDirectory();
        assertThat(naming(out)).isEmpty();
    }

    private Messy office(String name) {
        Messy lantern = Messy.lantern(folder.resolve(name));
        lantern.yaml("\noutputs:\n", "\noutputs:\n  audience: office\n");
        return lantern;
    }

    private List<String> naming(String... how) throws IOException {
        Messy lantern = office("lantern" + how.length);
        Path out = folder.resolve("out" + how.length);
        Messy.Said said = Messy.say(Stream.of(
                        Stream.of(how),
                        Stream.of(lantern.folder().toString(), "--out", out.toString()),
                        Stream.of("--formats", "svg", "--sheets", "svg,pdf"))
                .flatMap(words -> words)
                .toArray(String[]::new));
        assertThat(said.code()).as("%s", said.err()).isZero();
        return naming(out);
    }

    /** What has a site's name in it: folders of pictures, and the page. Tables, layers and the record are the office's. */
    private static List<String> naming(Path out) throws IOException {
        try (Stream<Path> files = Files.walk(out)) {
            return files.filter(file -> file.toString().matches(".*\\.(svg|pdf|html)"))
                    .filter(file -> SITES.stream().anyMatch(text(file)::contains))
                    .map(file -> out.relativize(file).getName(0).toString())
                    .distinct()
                    .sorted()
                    .toList();
        }
    }

    /** What a reader of the file finds, without blanks. */
    private static String text(Path file) {
        try {
            if (!file.toString().endsWith(".pdf")) {
                return Files.readString(file).replaceAll("\\s+", "");
            }
            try (PDDocument document = Loader.loadPDF(file.toFile())) {
                return new PDFTextStripper().getText(document).replaceAll("\\s+", "");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
