// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.command;

import java.nio.file.Path;

/** A small river to break: two creeks, a with the site and b, flow into c, on which Wick lies. */
final class ThreeReaches {
    static final String CORRECTIONS =
            "action,kind,name,feature,longitude,latitude,was_longitude,was_latitude,defect,note\n";
    static final String A = "[-20,-30],[-20.05,-30]";
    static final String B = "[-20,-30.05],[-20.05,-30]";
    static final String C = "[-20.05,-30],[-20.1,-30]";

    private static final String YAML = """
            title: Three reaches
            prepared-by: test
            date: 2026-11-25
            rivers:
              file: r.geojson
              id: rid
              snap-tolerance: 2 m
              columns:
                discharge: {column: q, unit: m3/s}
                slope: {column: slope, unit: m/m}
            flow-states:
              dry: {share-of-year: 1, temperature: 21 degC, suspended-sediment: 18 mg/L, lateral-filtered-mercury: 0.6 ng/L}
            discharge: {method: attribute}
            channel: {method: hydraulic-geometry}
            solids:
              classes:
                silt: {diameter: 20 um, background-share: 1, tailings-share: 1}
            sites: {file: sites.csv}
            places: {file: places.csv}
            guidelines: {use: [CCME-FW-iHg]}
            """;

    private ThreeReaches() {}

    /** The scenario with a site on a, places at a and c, and one more; its river layer is still to be written. */
    static Messy scenario(Path folder, String place) {
        return Messy.empty(folder)
                .file("scenario.yaml", YAML)
                .file("sites.csv", "name,longitude,latitude,path,release\nShed,-20.02,-30.001,slurry,12 kg/yr\n")
                .file(
                        "places.csv",
                        "name,use,people,longitude,latitude\nUp,village,20,-20.03,-30\nWick,village,420,-20.08,-30\n"
                                + place + "\n");
    }

    /** A layer. */
    static String layer(String... features) {
        return "{\"type\":\"FeatureCollection\",\"features\":[" + String.join(",", features) + "]}";
    }

    /** A feature. */
    static String feature(String properties, String type, String points) {
        return "{\"type\":\"Feature\",\"properties\":{" + properties + "},\"geometry\":{\"type\":\"" + type
                + "\",\"coordinates\":[" + points + "]}}";
    }

    /** A line with its discharge [m3/s]. */
    static String line(String id, String points, double q) {
        return feature("\"rid\":\"" + id + "\",\"q\":" + q + ",\"slope\":0.001", "LineString", points);
    }
}
