// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Base64;
import java.util.BitSet;
import java.util.Collection;
import java.util.Optional;
import java.util.function.IntUnaryOperator;
import org.silverwake.model.release.Spread;

/** Ways of writing that the data's parts share. */
final class DataJson {
    private static final MathContext SIX = new MathContext(6);

    private final JsonGenerator json;

    DataJson(JsonGenerator json) {
        this.json = json;
    }

    /** The generator, for what is written once. */
    JsonGenerator raw() {
        return json;
    }

    void texts(String key, Collection<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    void numbers(String key, int count, IntUnaryOperator of) throws IOException {
        json.writeArrayFieldStart(key);
        for (int i = 0; i < count; i++) {
            json.writeNumber(of.applyAsInt(i));
        }
        json.writeEndArray();
    }

    /** Indices, each as the difference to the one before. */
    void runs(String key, BitSet set) throws IOException {
        json.writeArrayFieldStart(key);
        runs(set);
        json.writeEndArray();
    }

    /** The same as an item of a list. */
    void runsItem(BitSet set) throws IOException {
        json.writeStartArray();
        runs(set);
        json.writeEndArray();
    }

    private void runs(BitSet set) throws IOException {
        int before = 0;
        for (int i = set.nextSetBit(0); i >= 0; i = set.nextSetBit(i + 1)) {
            json.writeNumber(i - before);
            before = i;
        }
    }

    void bytes(String key, byte[] bytes) throws IOException {
        json.writeStringField(key, Base64.getEncoder().encodeToString(bytes));
    }

    /** A number with six digits; null where it is not finite. */
    void number(String key, double value) throws IOException {
        json.writeFieldName(key);
        number(value);
    }

    /** The same as an item of a list. */
    void number(double value) throws IOException {
        if (!Double.isFinite(value)) {
            json.writeNull();
        } else if (value == 0) {
            json.writeNumber(0);
        } else {
            BigDecimal rounded = new BigDecimal(value).round(SIX).stripTrailingZeros();
            json.writeNumber(rounded.scale() < 0 ? rounded.setScale(0) : rounded);
        }
    }

    void text(String key, Optional<String> text) throws IOException {
        if (text.isPresent()) {
            json.writeStringField(key, text.get());
        } else {
            json.writeNullField(key);
        }
    }

    /** Low, middle and high in other units. */
    void spread(String key, Optional<Spread> spread, double unit) throws IOException {
        if (spread.isEmpty()) {
            json.writeNullField(key);
            return;
        }
        json.writeObjectFieldStart(key);
        number("low", spread.get().low() * unit);
        number("middle", spread.get().middle() * unit);
        number("high", spread.get().high() * unit);
        json.writeEndObject();
    }
}
