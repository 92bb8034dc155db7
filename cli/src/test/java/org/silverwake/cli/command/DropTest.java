// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.silverwake.cli.scenario.ScenarioException;

/** A folder or file in place of a command: what is taken, where its results go, what is said to a wrong one. */
class DropTest {
    @TempDir
    private Path folder;

    @Test
    void aFolderIsCheckedAndRunAndHoldsItsResults() throws IOException {
        Messy messy = Messy.lantern(folder.resolve("Río (alto) & 100% ok!"));
        Messy.Said said = Messy.say(messy.folder().toString());
        assertThat(said.code()).as("%s", said.err()).isZero();
        Path result = messy.folder().resolve("result");
        assertThat(result.resolve("maps")).isNotEmptyDirectory();
        assertThat(result.resolve("tables").resolve("reaches.csv")).isNotEmptyFile();
        assertThat(messy.folder().resolve("result-check").resolve("check.png")).isNotEmptyFile();
        assertThat(said.all()).contains("1. Checking", "2. Computing", "3. Results: " + result);

        byte[] first = Files.readAllBytes(result.resolve("tables").resolve("reaches.csv"));
        assertThat(Messy.say(messy.folder().toString()).code()).isZero();
        assertThat(Files.readAllBytes(result.resolve("tables").resolve("reaches.csv")))
                .as("a second drop reads nothing of the first one's results")
                .isEqualTo(first);
    }

    @Test
    void aProblemEndsItBeforeAnythingIsComputed() {
        Messy messy = Messy.lantern(folder.resolve("a")).yaml("rivers.gpkg", "river.gpkg");
        Messy.Said said = Messy.say(messy.folder().toString());
        said.refuses(2, "scenario.yaml", "there is no file river.gpkg");
        assertThat(said.all()).contains("Nothing was computed").doesNotContain("2. Computing");
        assertThat(messy.folder().resolve("result")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "rivers.shp       | is a layer or a table alone",
                "photo.JPG        | is no scenario",
                "old.xls          | save it as .xlsx",
                "data.zip         | is packed; unpack it first",
                "~$scenario.xlsx  | while a workbook is open",
                "noending         | is no scenario",
            })
    void aWrongFileIsToldWhatToDrop(String name, String said) throws IOException {
        Path file = Files.createFile(folder.resolve(name));
        Messy.say(file.toString()).refuses(2, file.toString(), said, "drop");
    }

    @Test
    void aWrongFolderIsToldWhatToDrop() throws IOException {
        Messy.say(folder.toString()).refuses(2, "there is no scenario.xlsx or scenario.yaml in it");
        Files.createDirectories(folder.resolve("inner"));
        Files.createFile(folder.resolve("inner").resolve("scenario.yaml"));
        Messy.say(folder.toString()).refuses(2, "drop the folder inner inside it");
        Path other = Files.createDirectories(folder.resolve("other"));
        Files.createFile(other.resolve("river.xlsx"));
        Messy.say(other.toString()).refuses(2, "drop the file river.xlsx itself");
        Path result = Files.createDirectories(folder.resolve("result"));
        Files.createFile(result.resolve("run.json"));
        Messy.say(result.toString()).refuses(2, "is the result of a run");
        Messy.say(folder.toString(), other.toString()).refuses(2, "1 more were dropped together; drop one");
        Messy.say(folder.resolve("gone").toString()).refuses(2, "there is no such file or folder");
    }

    @Test
    void resultsLieBesideTheScenarioUnderItsName() throws IOException {
        Path place = Files.createDirectories(folder.resolve("upper basin"));
        for (String name : List.of("scenario.yaml", "scenario.xlsx")) {
            Path file = Files.createFile(place.resolve(name));
            assertThat(DropTarget.of(List.of(file), folder))
                    .isEqualTo(new DropTarget(file, place.resolve("result"), place.resolve("result-check")));
        }
        Path other = Files.createFile(place.resolve("second.try.xlsx"));
        assertThat(DropTarget.of(List.of(other), folder).result()).isEqualTo(place.resolve("second.try-result"));
        assertThat(DropTarget.of(List.of(place), folder).result()).isEqualTo(place.resolve("result"));
        assertThatThrownBy(() -> DropTarget.of(List.of(folder), folder)).isInstanceOf(ScenarioException.class);
    }

    /** Lines as Windows types them; form of the line from memory, not seen on a machine. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "C:\\Windows\\system32\\cmd.exe /c \"\"C:\\x y\\silverwake.cmd\" C:\\a&b\"    | C:\\a&b",
                "C:\\Windows\\system32\\cmd.exe /c \"\"C:\\x y\\Silverwake.CMD\" \"C:\\a & (b)%! c\"\" | C:\\a & (b)%! c",
                "cmd /c \"\"C:\\silverwake\\silverwake.cmd\" \"D:\\Лена река\" D:\\b\"              | D:\\Лена река;D:\\b",
                "cmd /c \"\"C:\\silverwake\\silverwake.cmd\" \"                                    | ``",
                "\"C:\\Windows\\system32\\cmd.exe\"                                                 | ``",
            })
    void theLineThatWindowsTypedIsRead(String line, String paths) {
        assertThat(String.join(";", DesktopStart.dropped(line))).isEqualTo(paths);
    }

    @Test
    void foldersAreShownByTheDesktopsOwnProgram() {
        Path path = folder.resolve("a b");
        assertThat(DesktopStart.showing(path, "Windows 11", false)).containsExactly("explorer.exe", path.toString());
        assertThat(DesktopStart.showing(path, "Mac OS X", false)).containsExactly("open", path.toString());
        assertThat(DesktopStart.showing(path, "Linux", true)).containsExactly("xdg-open", path.toString());
        assertThat(DesktopStart.showing(path, "Linux", false)).isEmpty();
    }
}
