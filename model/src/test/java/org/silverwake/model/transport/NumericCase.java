// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.transport;

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

/**
 * One of the numeric cases of an independent implementation, read in place. Values are found by a path of keys, list items by
 * their place.
 */
final class NumericCase {
    private final Object value;

    private NumericCase(Object value) {
        this.value = value;
    }

    /** Reads a case; the test is skipped where the shared reference values are absent. */
    static NumericCase read(String name) throws IOException {
        String shared = System.getProperty("silverwake.shared", "");
        Path file = Path.of(shared, "reference", "cases-numeric", name + ".json");
        assumeTrue(
                !shared.isEmpty() && Files.isRegularFile(file),
                "skipped: the shared reference values are not here (property silverwake.shared)");
        try (JsonParser parser = new JsonFactory().createParser(Files.newInputStream(file))) {
            parser.enable(JsonParser.Feature.AUTO_CLOSE_SOURCE);
            parser.nextToken();
            return new NumericCase(tree(parser));
        }
    }

    private static Object tree(JsonParser parser) throws IOException {
        switch (parser.currentToken()) {
            case START_OBJECT -> {
                Map<String, Object> map = new LinkedHashMap<>();
                while (parser.nextToken() != JsonToken.END_OBJECT) {
                    String key = parser.currentName();
                    parser.nextToken();
                    map.put(key, tree(parser));
                }
                return map;
            }
            case START_ARRAY -> {
                List<Object> list = new ArrayList<>();
                while (parser.nextToken() != JsonToken.END_ARRAY) {
                    list.add(tree(parser));
                }
                return list;
            }
            case VALUE_NUMBER_INT, VALUE_NUMBER_FLOAT -> {
                return parser.getDoubleValue();
            }
            default -> {
                return parser.getText();
            }
        }
    }

    /** What lies at a path; fails where there is nothing. */
    NumericCase at(Object... path) {
        Object here = value;
        for (Object key : path) {
            here = key instanceof Integer place ? ((List<?>) here).get(place) : ((Map<?, ?>) here).get(key);
            if (here == null) {
                throw new IllegalStateException("no " + key + " in the case");
            }
        }
        return new NumericCase(here);
    }

    boolean has(String key) {
        return ((Map<?, ?>) value).containsKey(key);
    }

    int size() {
        return ((List<?>) value).size();
    }

    double number(Object... path) {
        return (Double) at(path).value;
    }

    String text(Object... path) {
        return (String) at(path).value;
    }
}
