// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.silverwake.cli.report.Cautions;
import org.silverwake.cli.report.Words;
import org.silverwake.cli.run.AppliedCorrection;
import org.silverwake.cli.run.Basin;
import org.silverwake.cli.run.LocatedSample;
import org.silverwake.cli.scenario.Corrections;
import org.silverwake.cli.scenario.ScenarioInput;
import org.silverwake.geo.assembly.Defect;
import org.silverwake.geo.map.MapWords;

/** What the page shows, as JSON. Its keys are this class's and the scripts' alone. */
final class PageData {
    /** Decimals of degrees; the seventh is about 1 cm. */
    static final int DECIMALS = 7;

    /** Repairs that can be left out; of the others nothing would be there to go back to. */
    private static final Set<Defect.Kind> REFUSABLE = Set.of(
            Defect.Kind.GAP,
            Defect.Kind.SPLIT_AT_JUNCTION,
            Defect.Kind.DUPLICATE_LINE,
            Defect.Kind.FLIPPED_LINE,
            Defect.Kind.LAYER_REVERSED);

    private final JsonGenerator json;

    private PageData(JsonGenerator json) {
        this.json = json;
    }

    /** The data in one text that can stand in a script element: no "&lt;" in it, no line end that JavaScript would see. */
    static String json(
            ScenarioInput scenario, Basin basin, List<LocatedSample> samples, List<String> problems, String version) {
        StringWriter text = new StringWriter();
        try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
            new PageData(json).write(scenario, basin, samples, problems, version);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return inScript(text.toString());
    }

    /** JSON that can stand in a script element. */
    static String inScript(String json) {
        return json.replace("<", "\\u003c").replace("\u2028", "\\u2028").replace("\u2029", "\\u2029");
    }

    private void write(
            ScenarioInput scenario, Basin basin, List<LocatedSample> samples, List<String> problems, String version)
            throws IOException {
        json.writeStartObject();
        json.writeStringField("title", scenario.project().title());
        json.writeStringField("date", scenario.project().date().toString());
        json.writeStringField("preparedBy", scenario.project().preparedBy());
        json.writeStringField("version", version);
        json.writeStringField("layer", basin.layer().name());
        json.writeStringField("crs", basin.layer().crs().name());
        json.writeStringField("notForPosting", MapWords.english().notForPosting());
        json.writeBooleanField("assembled", basin.failure().isEmpty());
        List<String> stops = new ArrayList<>(problems);
        basin.failure().ifPresent(failure -> stops.addAll(failure.lines().toList()));
        texts("problems", stops);
        List<String> warnings = new ArrayList<>(scenario.warnings());
        warnings.addAll(basin.warnings());
        texts("warnings", warnings);
        texts("cautions", Cautions.always());
        ReachData.write(basin, json);
        PointData.write(scenario, basin, samples, json);
        defects(basin.map().defects());
        json.writeArrayFieldStart("applied");
        for (AppliedCorrection correction : basin.corrections()) {
            correction(correction);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void texts(String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    private void defects(List<Defect> defects) throws IOException {
        json.writeArrayFieldStart("defects");
        for (Defect defect : defects) {
            json.writeStartObject();
            json.writeStringField("kind", word(defect.kind()));
            json.writeStringField("words", Words.defect(defect.kind()));
            degrees(json, "lon", defect.longitude());
            degrees(json, "lat", defect.latitude());
            texts("features", defect.featureIds());
            json.writeStringField("text", defect.text());
            json.writeStringField("remedy", defect.remedy());
            json.writeBooleanField("repaired", defect.repaired());
            json.writeBooleanField("refusable", defect.repaired() && REFUSABLE.contains(defect.kind()));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    /** A row of corrections.csv, and what became of it. */
    private void correction(AppliedCorrection correction) throws IOException {
        Corrections.Row row = correction.row();
        json.writeStartObject();
        json.writeStringField("action", row.action().name().toLowerCase(Locale.ROOT));
        json.writeStringField("kind", row.kind());
        json.writeStringField("name", row.name());
        json.writeStringField("feature", String.join("|", row.features()));
        if (row.at().isPresent()) {
            degrees(json, "lon", row.at().get().x());
            degrees(json, "lat", row.at().get().y());
        }
        if (row.was().isPresent()) {
            degrees(json, "wasLon", row.was().get().x());
            degrees(json, "wasLat", row.was().get().y());
        }
        json.writeStringField("defect", row.defect());
        json.writeStringField("note", row.note());
        json.writeBooleanField("acts", correction.isApplied());
        json.writeStringField(
                "became", correction.status() + ": " + correction.outcome().text());
        json.writeEndObject();
    }

    /** A kind as corrections.csv names it. */
    static String word(Defect.Kind kind) {
        return kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** A position's number; left out where there is none. */
    static void degrees(JsonGenerator json, String key, double degrees) throws IOException {
        number(json, key, degrees, DECIMALS);
    }

    /** A number with so many decimals; left out where it is not finite. */
    static void number(JsonGenerator json, String key, double value, int decimals) throws IOException {
        if (Double.isFinite(value)) {
            json.writeFieldName(key);
            json.writeNumber(rounded(value, decimals));
        }
    }

    static String rounded(double value, int decimals) {
        return new BigDecimal(value)
                .setScale(decimals, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }
}
