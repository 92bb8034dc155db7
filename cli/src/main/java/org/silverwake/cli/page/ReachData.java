// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntUnaryOperator;
import org.silverwake.cli.run.Basin;
import org.silverwake.geo.assembly.RiverMap;
import org.silverwake.model.network.RiverNetwork;
import org.silverwake.model.network.StreamOrder;

/**
 * The reaches of the page: one array for each thing known of them, in the order of the map. Points of all lines follow one
 * another in one array of whole numbers, longitude and latitude by turns in millionths of a degree (about 0.1 m), each as the
 * difference to the one before: a tenth of the size that GeoJSON has.
 */
final class ReachData {
    private static final double MILLION = 1e6;

    private ReachData() {}

    static void write(Basin basin, JsonGenerator json) throws IOException {
        RiverMap map = basin.map();
        RiverNetwork network = basin.network();
        int[] order = StreamOrder.strahler(network);
        json.writeObjectFieldStart("reaches");
        texts(json, "id", map.ids());
        Numbering features = new Numbering();
        Numbering names = new Numbering();
        Map<List<Integer>, Integer> lines = new HashMap<>();
        numbers(json, "feature", map, i -> features.of(map.reach(i).part().featureId()));
        texts(json, "features", features.texts());
        numbers(json, "name", map, i -> map.reach(i).name().map(names::of).orElse(-1));
        texts(json, "names", names.texts());
        numbers(
                json,
                "line",
                map,
                i -> lines.computeIfAbsent(
                        List.of(
                                map.reach(i).part().feature(),
                                map.reach(i).part().part()),
                        key -> lines.size()));
        numbers(json, "along", map, i -> (int) Math.round(map.reach(i).part().fromMeters()));
        numbers(json, "against", map, i -> map.reach(i).part().flipped() ? 1 : 0);
        numbers(json, "from", map, i -> map.reach(i).fromNode());
        numbers(json, "to", map, i -> map.reach(i).toNode());
        numbers(json, "length", map, i -> (int) Math.round(map.reach(i).lengthMeters()));
        numbers(json, "order", map, i -> order[network.reachOfInput(i)]);
        numbers(json, "size", map, i -> map.reach(i).pointCount());
        points(json, map);
        json.writeEndObject();
    }

    private static void points(JsonGenerator json, RiverMap map) throws IOException {
        json.writeArrayFieldStart("points");
        long longitude = 0;
        long latitude = 0;
        for (RiverMap.Reach reach : map.reaches()) {
            for (int k = 0; k < reach.pointCount(); k++) {
                long x = Math.round(reach.longitude(k) * MILLION);
                long y = Math.round(reach.latitude(k) * MILLION);
                json.writeNumber(x - longitude);
                json.writeNumber(y - latitude);
                longitude = x;
                latitude = y;
            }
        }
        json.writeEndArray();
    }

    private static void numbers(JsonGenerator json, String key, RiverMap map, IntUnaryOperator of) throws IOException {
        json.writeArrayFieldStart(key);
        for (int i = 0; i < map.reachCount(); i++) {
            json.writeNumber(of.applyAsInt(i));
        }
        json.writeEndArray();
    }

    private static void texts(JsonGenerator json, String key, Iterable<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }

    /** Each text once, numbered from 0. */
    private static final class Numbering {
        private final Map<String, Integer> numbers = new java.util.LinkedHashMap<>();

        int of(String text) {
            return numbers.computeIfAbsent(text, key -> numbers.size());
        }

        Iterable<String> texts() {
            return numbers.keySet();
        }
    }
}
