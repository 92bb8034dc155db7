// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.silverwake.cli.laboratory.LabRow;
import org.silverwake.cli.run.ComparedSample;
import org.silverwake.cli.run.LocatedSample;
import org.silverwake.cli.run.Outcome;
import org.silverwake.geo.place.LocatedPoint.OnReach;
import org.silverwake.geo.write.Column;
import org.silverwake.geo.write.GeoPackageWriter;
import org.silverwake.geo.write.Layer;
import org.silverwake.geo.write.Row;
import org.silverwake.model.sample.Agreement;
import org.silverwake.model.sample.Finding;

/** Samples as a layer of points, and in the record of the run: understood values beside the model. */
final class SampleLayer {
    private static final List<Column> COLUMNS = List.of(
            Column.text("row"),
            Column.text("sample"),
            Column.text("station"),
            Column.text("date"),
            Column.text("measured"),
            Column.text("qualifier"),
            Column.real("value_or_limit"),
            Column.text("unit"),
            Column.text("flow_states"),
            Column.real("model_low"),
            Column.real("model_high"),
            Column.real("sample_over_nearest_bound"),
            Column.text("answer"),
            Column.text("guidelines"),
            Column.text("not_compared"),
            Column.real("distance_to_river_m"),
            Column.text("feature"),
            Column.real("chainage_m"));

    private SampleLayer() {}

    /** Writes samples.gpkg; nothing where no sample lies on the river. */
    static void write(Outcome outcome, Path file) {
        List<Row> rows = new ArrayList<>();
        for (ComparedSample each : outcome.compared()) {
            each.located()
                    .at()
                    .ifPresent(at -> rows.add(Row.point(at.longitude(), at.latitude(), values(outcome, each, at))));
        }
        if (!rows.isEmpty()) {
            Layer layer = new Layer(
                    "samples",
                    outcome.scenario().project().title() + ", field samples",
                    Layer.Shape.POINT,
                    COLUMNS,
                    rows,
                    List.of());
            GeoPackageWriter.write(
                    file, List.of(layer), outcome.scenario().project().date());
        }
    }

    private static List<Object> values(Outcome outcome, ComparedSample sample, OnReach at) {
        LabRow row = sample.located().sample().row();
        Finding finding = row.finding().orElseThrow();
        return Arrays.asList(
                sample.located().sample().where(),
                row.code(),
                row.station(),
                row.date().map(Object::toString).orElse(null),
                finding.words(),
                SampleWords.qualifier(finding),
                SampleWords.shown(finding, finding.reported().value()),
                SampleWords.unit(finding),
                SampleWords.states(outcome, sample),
                sample.model().map(m -> SampleWords.shown(finding, m.low())).orElse(null),
                sample.model().map(m -> SampleWords.shown(finding, m.high())).orElse(null),
                sample.agreement()
                        .map(Agreement::ratio)
                        .filter(Double::isFinite)
                        .orElse(null),
                sample.agreement().map(Agreement::words).orElse(null),
                SampleWords.answers(outcome, sample),
                sample.notCompared(),
                at.distanceMeters(),
                at.featureId(),
                at.chainageMeters());
    }

    /** Writes every row of the laboratories with what became of it. */
    static void record(Outcome outcome, JsonGenerator json) throws IOException {
        json.writeArrayFieldStart("samples");
        for (LocatedSample each : outcome.samples()) {
            LabRow row = each.sample().row();
            json.writeStartObject();
            json.writeStringField("row", each.sample().where());
            json.writeStringField("sample", row.code());
            json.writeStringField("standing", row.standing().words());
            if (!row.reasons().isEmpty()) {
                json.writeStringField("reason", String.join("; ", row.reasons()));
            }
            if (!each.unplaced().isEmpty()) {
                json.writeStringField("notPlaced", each.unplaced());
            }
            if (row.finding().isPresent()) {
                Finding finding = row.finding().get();
                json.writeStringField("measured", finding.words());
                json.writeStringField("qualifier", SampleWords.qualifier(finding));
                json.writeNumberField(
                        "valueOrLimit",
                        SampleWords.shown(finding, finding.reported().value()));
                json.writeStringField("unit", SampleWords.unit(finding));
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
