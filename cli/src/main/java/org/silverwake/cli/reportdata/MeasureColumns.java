// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.io.IOException;
import java.util.Locale;
import org.silverwake.cli.whatif.FishRanges;
import org.silverwake.cli.whatif.Floats;
import org.silverwake.cli.whatif.Linear;
import org.silverwake.cli.whatif.Measured;
import org.silverwake.cli.whatif.ValueSet;
import org.silverwake.cli.whatif.ValueSet.ValueColumn;

/** The measures with their value sets. */
final class MeasureColumns {
    private MeasureColumns() {}

    static void write(DataJson json, Linear linear, Blocks blocks) throws IOException {
        json.raw().writeArrayFieldStart("measures");
        for (int m = 0; m < linear.measures().size(); m++) {
            Measured measured = linear.measures().get(m);
            json.raw().writeStartObject();
            json.raw().writeStringField("id", measured.id());
            json.raw().writeStringField("words", measured.words());
            json.raw()
                    .writeStringField(
                            "medium",
                            measured.kind().name().toLowerCase(Locale.ROOT).replace('_', '-'));
            json.raw().writeBooleanField("byState", measured.kind().isByState());
            json.raw().writeBooleanField("linear", linear.follows(measured));
            json.text("reason", measured.fixed().filter(why -> !linear.follows(measured)));
            fish(json, linear, measured, blocks);
            json.raw().writeArrayFieldStart("states");
            for (ValueSet set : linear.sets(m)) {
                set(json, set, blocks);
            }
            json.raw().writeEndArray();
            json.raw().writeEndObject();
        }
        json.raw().writeEndArray();
    }

    /** How fish follow the water; null for what is none, and where they do not. */
    private static void fish(DataJson json, Linear linear, Measured measured, Blocks blocks) throws IOException {
        if (measured.kind() != Measured.Kind.FISH || linear.fish().isEmpty()) {
            json.raw().writeNullField("fish");
            return;
        }
        FishRanges fish = linear.fish().get();
        json.raw().writeObjectFieldStart("fish");
        json.raw().writeNumberField("measure", fish.measure());
        json.raw().writeNumberField("low", fish.factors().low());
        json.raw().writeNumberField("high", fish.factors().high());
        json.raw().writeNumberField("background", fish.factors().background());
        json.numbers("sizes", fish.sizes().size(), fish.sizes()::get);
        json.numbers("reaches", fish.reaches().size(), fish.reaches()::get);
        json.raw().writeNumberField("weights", blocks.of(fish.weights()));
        json.raw().writeEndObject();
    }

    private static void set(DataJson json, ValueSet set, Blocks blocks) throws IOException {
        byte[] counts = new byte[set.units()];
        for (int u = 0; u < counts.length; u++) {
            counts[u] = (byte) set.count(u);
        }
        json.raw().writeStartObject();
        json.bytes("counts", counts);
        json.raw().writeNumberField("background", blocks.of(Floats.of(set.background())));
        json.raw().writeArrayFieldStart("columns");
        for (ValueColumn column : set.columns()) {
            json.raw().writeStartObject();
            json.raw().writeNumberField("bound", column.of().bound().ordinal());
            json.raw().writeNumberField("variant", column.of().variant());
            json.raw().writeStringField("role", column.role().name().toLowerCase(Locale.ROOT));
            json.raw().writeNumberField("base", blocks.of(column.base()));
            json.numbers(
                    "responses",
                    column.responses().size(),
                    k -> blocks.of(column.responses().get(k)));
            json.raw().writeEndObject();
        }
        json.raw().writeEndArray();
        json.raw().writeEndObject();
    }
}
