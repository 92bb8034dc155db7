// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.fieldkit;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.laboratory.RowReader;
import org.silverwake.cli.text.TableForm;

/** The table in which results come back: the columns of samples, one row per bottle, with all that is known before. Coordinates are left to be filled in as read there; blank, the place stands for them. Units are the laboratory's to name. */
final class ResultsTemplate {
    private ResultsTemplate() {}

    static void write(SamplePlan plan, Path file, TableForm form) {
        try (CsvWriter writer = form.open(file)) {
            List<String> columns = new ArrayList<>(RowReader.columns());
            columns.addAll(columns.indexOf("date"), List.of("longitude", "latitude"));
            writer.writeRecord(columns);
            for (Bottle bottle : plan.bottles()) {
                List<String> row = new ArrayList<>();
                columns.forEach(column -> row.add(cell(column, bottle, plan)));
                writer.writeRecord(row);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String cell(String column, Bottle bottle, SamplePlan plan) {
        Analysis analysis = bottle.analysis();
        return switch (column) {
            case "name" -> bottle.code();
            case "station" -> plan.stops().get(bottle.stop()).name();
            case "type" -> bottle.role().type();
            case "medium" -> analysis.medium().word();
            case "substance" -> analysis.substance().word();
            case "fraction" -> analysis.fraction().word();
            case "basis" -> analysis.basis().word();
            default -> "";
        };
    }
}
