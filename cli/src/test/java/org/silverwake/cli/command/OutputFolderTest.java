// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermission;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.silverwake.cli.run.OutputFolder;

/** Nothing half-written, nothing of other people's lost. */
class OutputFolderTest {
    private static final int USAGE = 2;

    @TempDir
    private Path temporary;

    private Messy messy;

    @BeforeEach
    void copy() {
        messy = Messy.lantern(temporary.resolve("lantern"));
    }

    private static Map<String, Long> files(Path folder) throws IOException {
        Map<String, Long> found = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                found.put(
                        folder.relativize(file).toString(),
                        Files.getLastModifiedTime(file).toMillis());
            }
        }
        return found;
    }

    private long beside() throws IOException {
        try (Stream<Path> all = Files.list(temporary)) {
            return all.count();
        }
    }

    @Test
    void aRunThatFailsLateLeavesTheLastGoodOutput() throws IOException {
        assertThat(messy.does("run").code()).isZero();
        Map<String, Long> good = files(messy.out());
        long beside = beside();
        messy.with("sites.csv", "slurry,900,", "slurry,900000000,"); // refused when solids are carried
        assertThat(messy.does("run").code()).isEqualTo(USAGE);
        assertThat(files(messy.out())).isEqualTo(good);
        assertThat(beside()).isEqualTo(beside);

        messy.with("sites.csv", "slurry,900000000,", "slurry,901,");
        assertThat(messy.does("run").code()).isZero();
        assertThat(files(messy.out())).isNotEqualTo(good).containsOnlyKeys(good.keySet());
        assertThat(beside()).isEqualTo(beside);
    }

    @Test
    void whatStopsWhileWritingIsThrownAway() throws IOException {
        Path target = temporary.resolve("deep/er/out");
        OutputFolder folder = OutputFolder.begin(target);
        Files.writeString(folder.path().resolve("half"), "half");
        folder.discard();
        assertThat(temporary.resolve("deep")).doesNotExist();
    }

    @ParameterizedTest
    @ValueSource(strings = {"check", "run"})
    void otherPeoplesFilesStay(String command) throws IOException {
        Path theirs = messy.out().resolve("checklist.docx");
        Files.createDirectories(messy.out());
        Files.writeString(theirs, "theirs");
        messy.does(command).refuses(USAGE, "--out", "holds checklist.docx, which is no file of an earlier output");
        assertThat(theirs).hasContent("theirs");
    }

    @Test
    void aNotePutIntoTheResultsStaysToo() throws IOException {
        assertThat(messy.does("check").code()).isZero();
        assertThat(messy.does("check").code()).isZero();
        Files.writeString(messy.out().resolve(".DS_Store"), "left by a desktop");
        assertThat(messy.does("check").code()).isZero();
        Path note = messy.out().resolve("note for Tuesday.txt");
        Files.writeString(note, "ask in Tallowby");
        messy.does("check").refuses(USAGE, "holds note for Tuesday.txt", "move it, or give");
        assertThat(note).hasContent("ask in Tallowby");
    }

    @Test
    void aFileIsNoFolder() throws IOException {
        Files.writeString(messy.out(), "a file");
        messy.does("run").refuses(USAGE, "--out", "is a file; give a folder");
        Messy.say(
                        "run",
                        messy.folder().toString(),
                        "--out",
                        messy.out().resolve("below").toString())
                .refuses(USAGE, "cannot be written (there is a file at ", "give another folder");
        assertThat(messy.out()).hasContent("a file");
    }

    @Test
    void aFolderThatMayNotBeWritten() throws IOException {
        Path locked = Files.createDirectory(temporary.resolve("locked"));
        assumeTrue(Files.getFileStore(locked).supportsFileAttributeView("posix"), "no POSIX permissions here");
        Files.setPosixFilePermissions(locked, java.util.Set.of(PosixFilePermission.OWNER_READ));
        assumeTrue(!Files.isWritable(locked), "this user may write everywhere");
        Messy.say(
                        "run",
                        messy.folder().toString(),
                        "--out",
                        locked.resolve("out").toString())
                .refuses(USAGE, "cannot be written (no permission for");
    }

    @Test
    void colleaguesMayReadTheResults() throws IOException {
        assumeTrue(Files.getFileStore(temporary).supportsFileAttributeView("posix"), "no POSIX permissions here");
        Path usual = Files.createDirectory(temporary.resolve("usual"));
        assertThat(messy.does("check").code()).isZero();
        assertThat(Files.getPosixFilePermissions(messy.out())).isEqualTo(Files.getPosixFilePermissions(usual));
    }
}
