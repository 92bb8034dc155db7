// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.scenario;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Function;
import org.silverwake.cli.scenario.WaterBodyPlan.WaterBody;
import org.silverwake.cli.scenario.WaterBodyPlan.WaterPolygons;

/** Still waters and wetlands in the record of a run; nothing where there are none. */
final class WaterBodiesWriter {
    private final JsonGenerator json;
    private final Function<Path, String> relative;

    WaterBodiesWriter(JsonGenerator json, Function<Path, String> relative) {
        this.json = json;
        this.relative = relative;
    }

    void write(WaterBodyPlan bodies) throws IOException {
        if (bodies.table().isEmpty() && bodies.polygons().isEmpty()) {
            return;
        }
        json.writeObjectFieldStart(WaterBodiesSection.TABLE);
        json.writeArrayFieldStart("table");
        for (WaterBody body : bodies.table()) {
            json.writeStartObject();
            json.writeStringField("name", body.name());
            text("kind", body.kind().map(kind -> kind.word()));
            ScenarioWriter.number(json, "area [m2]", body.area());
            ScenarioWriter.number(json, "mean_depth [m]", body.depth());
            json.writeEndObject();
        }
        json.writeEndArray();
        if (bodies.polygons().isPresent()) {
            polygons(bodies.polygons().get());
        }
        json.writeEndObject();
    }

    private void polygons(WaterPolygons polygons) throws IOException {
        json.writeObjectFieldStart("polygons");
        json.writeStringField("file", relative.apply(polygons.file()));
        text("layer", polygons.layer());
        text("crs", polygons.crs());
        text("filter", polygons.filter());
        text("id", polygons.columns().id());
        text("name", polygons.columns().name());
        text("kind", polygons.columns().kind());
        text("depth", polygons.columns().depth());
        json.writeNumberField("factor to m", polygons.columns().toMeters());
        json.writeArrayFieldStart("missing");
        for (String word : polygons.columns().missing()) {
            json.writeString(word);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void text(String key, Optional<String> value) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(key, value.get());
        }
    }
}
