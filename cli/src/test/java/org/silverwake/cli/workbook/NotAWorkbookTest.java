// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.workbook;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are called scenario.xlsx and are something else: one line each, which says how to mend it. */
class NotAWorkbookTest {
    private static final String SAVE = "save it from the spreadsheet program as an Excel workbook (.xlsx)";

    /** First bytes of a compound file, in which old workbooks and locked ones are kept ([MS-CFB] 2.2). */
    private static final byte[] COMPOUND = {
        (byte) 0xd0, (byte) 0xcf, 0x11, (byte) 0xe0, (byte) 0xa1, (byte) 0xb1, 0x1a, (byte) 0xe1
    };

    @TempDir
    private Path folder;

    @Test
    void oldWorkbook() throws IOException {
        says(COMPOUND, "is a workbook of the old kind (.xls); " + SAVE);
    }

    /** The stream that holds a locked workbook is named so ([MS-OFFCRYPTO] 2.3.4.4). */
    @Test
    void lockedWorkbook() throws IOException {
        byte[] name = "EncryptedPackage".getBytes(StandardCharsets.UTF_16LE);
        byte[] bytes = new byte[COMPOUND.length + name.length];
        System.arraycopy(COMPOUND, 0, bytes, 0, COMPOUND.length);
        System.arraycopy(name, 0, bytes, COMPOUND.length, name.length);
        says(bytes, "is locked with a password; save it without one");
    }

    @Test
    void renamedText() throws IOException {
        says("name,longitude\n".getBytes(StandardCharsets.UTF_8), "is no workbook, whatever its name says; " + SAVE);
    }

    @Test
    void emptyFile() throws IOException {
        says(new byte[0], "is no workbook, whatever its name says; " + SAVE);
    }

    @Test
    void openDocument() throws IOException {
        says(zip("content.xml"), "is an OpenDocument file (.ods); " + SAVE);
    }

    @Test
    void someZip() throws IOException {
        says(zip("photo.jpg"), "is a zip file, but no workbook; " + SAVE);
    }

    @Test
    void halfAWorkbook() throws IOException {
        byte[] whole = Files.readAllBytes(SmallWorkbook.write(folder));
        Files.write(folder.resolve(WorkbookReader.FILE), java.util.Arrays.copyOf(whole, whole.length / 2));
        assertThat(WrongWorkbooksTest.refused(folder))
                .singleElement()
                .satisfies(line -> assertThat(line)
                        .startsWith("scenario.xlsx: is damaged (")
                        .endsWith(SAVE + " again"));
    }

    @Test
    void workbookOfAnotherKind() {
        Path file = SmallWorkbook.write(folder);
        RawWorkbook raw = RawWorkbook.copyOf(file);
        BookReader.read(file).forEach(sheet -> raw.remove(sheet.name()));
        raw.add("Sheet1").text("Sheet1!A1", "name").write(file);
        assertThat(WrongWorkbooksTest.refused(folder))
                .containsExactly(
                        "scenario.xlsx: holds none of Silverwake's sheets; make one with \"silverwake new DIR\" and"
                                + " fill that in, or put back cell A1 of its sheets");
    }

    @Test
    void textBesideWorkbook() throws IOException {
        SmallWorkbook.write(folder);
        Files.writeString(folder.resolve("scenario.yaml"), "title: A\n");
        assertThat(WrongWorkbooksTest.refused(folder))
                .containsExactly(
                        folder + ": holds both scenario.xlsx and scenario.yaml; give the file itself, or take one of"
                                + " the two away");
    }

    private void says(byte[] bytes, String text) throws IOException {
        Files.write(folder.resolve(WorkbookReader.FILE), bytes);
        assertThat(WrongWorkbooksTest.refused(folder)).isEqualTo(List.of("scenario.xlsx: " + text));
    }

    private byte[] zip(String entry) throws IOException {
        Path file = folder.resolve("some.zip");
        try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(file))) {
            zip.putNextEntry(new ZipEntry(entry));
            zip.write("x".getBytes(StandardCharsets.UTF_8));
            zip.closeEntry();
        }
        return Files.readAllBytes(file);
    }
}
