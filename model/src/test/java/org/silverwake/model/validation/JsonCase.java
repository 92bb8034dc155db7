// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.validation;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A numeric case from the shared folder as nested maps and lists; numbers are doubles. */
public record JsonCase(Map<String, Object> values) {

    /** Reads a case; skips the test where the folder or the file is absent. */
    public static JsonCase read(String name) throws IOException {
        String shared = System.getProperty("silverwake.shared", "");
        assumeTrue(!shared.isEmpty() && Files.isDirectory(Path.of(shared)), "skipped: silverwake.shared is absent");
        Path file = Path.of(shared, "reference", "cases-numeric", name);
        assumeTrue(Files.exists(file), "skipped: silverwake.shared has no numeric case " + name);
        try (JsonParser parser = new JsonFactory().createParser(file.toFile())) {
            parser.nextToken();
            return new JsonCase(map(value(parser)));
        }
    }

    private static Object value(JsonParser parser) throws IOException {
        JsonToken token = parser.currentToken();
        if (token == JsonToken.START_OBJECT) {
            Map<String, Object> map = new LinkedHashMap<>();
            while (parser.nextToken() != JsonToken.END_OBJECT) {
                String key = parser.currentName();
                parser.nextToken();
                map.put(key, value(parser));
            }
            return map;
        }
        if (token == JsonToken.START_ARRAY) {
            List<Object> list = new ArrayList<>();
            while (parser.nextToken() != JsonToken.END_ARRAY) {
                list.add(value(parser));
            }
            return list;
        }
        if (token == JsonToken.VALUE_NULL) {
            return null;
        }
        return token.isNumeric() ? (Object) parser.getDoubleValue() : parser.getText();
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> map(Object value) {
        return (Map<String, Object>) value;
    }

    /** The objects of a list below "expected". */
    public List<Map<String, Object>> expected(String key) {
        List<Map<String, Object>> rows = new ArrayList<>();
        for (Object row : (List<?>) map(values.get("expected")).get(key)) {
            rows.add(map(row));
        }
        return rows;
    }

    /** A number of an object. */
    public static double number(Map<String, Object> row, String key) {
        return (Double) row.get(key);
    }
}
