// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;

/** Sheets and backdrop in the record of a run. */
final class SheetsWriter {
    private final JsonGenerator json;
    private final Function<Path, String> relative;

    private SheetsWriter(JsonGenerator json, Function<Path, String> relative) {
        this.json = json;
        this.relative = relative;
    }

    static void write(Outputs outputs, JsonGenerator json, Function<Path, String> relative) throws IOException {
        SheetsWriter writer = new SheetsWriter(json, relative);
        writer.sheets(outputs.sheets());
        writer.backdrop(outputs.backdrop());
    }

    private void sheets(Sheets sheets) throws IOException {
        json.writeObjectFieldStart("sheets");
        json.writeStringField("paper", sheets.size().name());
        json.writeStringField("orientation", sheets.portrait() ? "portrait" : "landscape");
        texts("kinds", sheets.kinds().stream().map(ScenarioWriter::word).toList());
        if (sheets.title().isPresent()) {
            json.writeStringField("title", sheets.title().get());
        }
        texts("what-to-do", sheets.whatToDo());
        texts("whom-to-ask", sheets.whomToAsk());
        json.writeStringField("use-until", sheets.useUntil().toString());
        number("walking-speed m/s", sheets.walking());
        number("boat-speed m/s", sheets.boat());
        if (sheets.locator().isPresent()) {
            json.writeStringField(
                    "locator.file", relative.apply(sheets.locator().get()));
        }
        json.writeEndObject();
    }

    private void backdrop(Backdrop backdrop) throws IOException {
        json.writeObjectFieldStart("backdrop");
        json.writeBooleanField("hill-shade", backdrop.hillShade());
        json.writeArrayFieldStart("layers");
        for (Backdrop.Layer layer : backdrop.layers()) {
            json.writeStartObject();
            json.writeStringField("file", relative.apply(layer.file()));
            if (layer.layer().isPresent()) {
                json.writeStringField("layer", layer.layer().get());
            }
            json.writeStringField("kind", ScenarioWriter.word(layer.kind()));
            if (layer.label().isPresent()) {
                json.writeStringField("label", layer.label().get());
            }
            if (layer.color().isPresent()) {
                json.writeStringField("color", layer.color().get());
            }
            number("width m", layer.width());
            if (layer.style().isPresent()) {
                json.writeStringField("style", relative.apply(layer.style().get()));
            }
            json.writeEndObject();
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

    private void number(String key, OptionalDouble value) throws IOException {
        if (value.isPresent()) {
            json.writeNumberField(key, value.getAsDouble());
        }
    }
}
