// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** The classes of reaches' part of {@link ScenarioWriter}. */
final class ReachClassWriter {
    private final JsonGenerator json;
    private final Function<Path, String> relative;

    ReachClassWriter(JsonGenerator json, Function<Path, String> relative) {
        this.json = json;
        this.relative = relative;
    }

    void write(List<ReachClass> classes) throws IOException {
        json.writeArrayFieldStart("reach-classes");
        for (ReachClass each : classes) {
            json.writeStartObject();
            json.writeStringField("name", each.name());
            texts("guidelines", each.guidelines());
            json.writeStringField("use", each.use());
            json.writeStringField("legal", each.legal());
            selection(each.selection());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void selection(ReachClass.Selection selection) throws IOException {
        if (selection instanceof ReachClass.ByColumn by) {
            json.writeStringField("column", by.column());
            texts("values", by.values());
        } else if (selection instanceof ReachClass.Along along) {
            json.writeArrayFieldStart("ranges");
            for (ReachClass.Range range : along.ranges()) {
                json.writeStartObject();
                json.writeStringField("from", range.from());
                text("to", range.to());
                ScenarioWriter.number(json, "from-chainage [m]", range.fromChainage());
                ScenarioWriter.number(json, "to-chainage [m]", range.toChainage());
                json.writeEndObject();
            }
            json.writeEndArray();
        } else if (selection instanceof ReachClass.Within within) {
            json.writeObjectFieldStart("polygons");
            json.writeStringField("file", relative.apply(within.file()));
            text("layer", within.layer());
            text("crs", within.crs());
            text("filter", within.filter());
            json.writeEndObject();
        } else {
            json.writeBooleanField("default", true);
        }
    }

    private void text(String key, Optional<String> value) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(key, value.get());
        }
    }

    private void texts(String key, List<String> values) throws IOException {
        json.writeArrayFieldStart(key);
        for (String value : values) {
            json.writeString(value);
        }
        json.writeEndArray();
    }
}
