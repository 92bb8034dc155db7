// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import static org.assertj.core.api.Assertions.assertThat;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.CsvRecord;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.demo.DemoCopy;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;

/** cases.md "Exported CSV will not open in German/European Excel": semicolons and decimal commas on request, read in again. */
class TableFormTest {
    @TempDir
    Path folder;

    private Path tables(String form) throws IOException {
        Path scenario = DemoCopy.into(folder.resolve(form));
        Path yaml = scenario.resolve("scenario.yaml");
        String text = Files.readString(yaml);
        assertThat(text).contains("\noutputs:\n");
        Files.writeString(yaml, text.replace("\noutputs:\n", "\noutputs:\n  tables: " + form + "\n"));
        Outcome outcome = MainRun.run(scenario, step -> {});
        Path tables = folder.resolve("tables-" + form);
        Tables.write(outcome, tables);
        return tables;
    }

    private static List<CsvRecord> records(Path file, char separator) throws IOException {
        try (CsvReader<CsvRecord> reader = CsvReader.builder()
                .fieldSeparator(separator)
                .detectBomHeader(true)
                .ofCsvRecord(file)) {
            return reader.stream().toList();
        }
    }

    @Test
    void semicolonsAndDecimalCommasHoldTheSame() throws IOException {
        Path comma = tables("comma");
        Path semicolon = tables("semicolon");
        int compared = 0;
        try (Stream<Path> files = Files.list(comma)) {
            for (Path file : files.toList()) {
                Path other = semicolon.resolve(file.getFileName());
                assertThat(Files.readString(other, StandardCharsets.UTF_8))
                        .as("the byte-order mark by which spreadsheet programs know UTF-8")
                        .startsWith("\uFEFF");
                List<CsvRecord> first = records(file, ',');
                List<CsvRecord> second = records(other, ';');
                assertThat(second).hasSameSizeAs(first);
                assertThat(second.get(0).getFields()).isEqualTo(first.get(0).getFields());
                for (int r = 1; r < first.size(); r++) {
                    List<String> points = first.get(r).getFields();
                    List<String> commas = second.get(r).getFields();
                    assertThat(commas).hasSameSizeAs(points);
                    for (int c = 0; c < points.size(); c++) {
                        String cell = points.get(c);
                        boolean number = !commas.get(c).equals(cell);
                        assertThat(number ? commas.get(c).replace(',', '.') : commas.get(c))
                                .isEqualTo(cell);
                        compared += number ? 1 : 0;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(1000);
        assertThat(Files.readString(semicolon.resolve("places.csv"))).contains(";-19,633500;-30,073100;");
    }
}
