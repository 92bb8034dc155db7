// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.reportdata;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.silverwake.cli.run.MainRun;
import org.silverwake.cli.run.Outcome;

/** A river to be varied: a main stem with a creek at each of its joints, sites in the middle of creeks. */
final class CombRiver {
    static final String BED = "bed: {active-layer: 1 cm, tau-ce: 4 Pa}\n";

    private static final double STEP = 0.01;
    private static final String YAML = """
            title: Comb
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
              dry: {share-of-year: 0.7, temperature: 21 degC, suspended-sediment: 18 mg/L, lateral-filtered-mercury: 0.6 ng/L}
              wet: {share-of-year: 0.3, temperature: 21 degC, suspended-sediment: 90 mg/L, lateral-filtered-mercury: 0.6 ng/L}
            discharge: {method: attribute}
            channel: {method: hydraulic-geometry}
            solids:
              classes:
                silt: {diameter: 20 um, tau-cd: 4 Pa, background-share: 1, tailings-share: 1}
            sites: {file: sites.csv}
            places: {file: places.csv}
            guidelines: {use: [CCME-FW-iHg, WHO-DW-iHg, USEPA-AL-chronic, CCME-SED-ISQG]}
            """;

    private final Path folder;
    private final int creeks;
    private final List<String> sites = new ArrayList<>();
    private final List<String> places = new ArrayList<>();
    private String yaml = YAML;
    private double firstCreek = 1;

    CombRiver(Path folder, int creeks) {
        this.folder = folder;
        this.creeks = creeks;
    }

    /** A site in the middle of a creek. */
    CombRiver site(String name, String group, int creek, int kilograms, String exchangeable) {
        sites.add(String.format(
                Locale.ROOT,
                "%s,%s,%.6f,%.6f,slurry,%d kg/yr,%s,%s",
                name,
                group,
                -20 - STEP * creek,
                -30 + 0.004,
                kilograms,
                exchangeable,
                creek % 2 == 0 ? "bank" : "mid-channel"));
        return this;
    }

    /** A village on the stem, or high on a creek. */
    CombRiver village(String name, int joint, boolean onCreek) {
        places.add(String.format(
                Locale.ROOT,
                "%s,village,100,%.6f,%.6f",
                name,
                -20 - STEP * joint - (onCreek ? 0 : STEP / 2),
                onCreek ? -30 + 0.007 : -30.0));
        return this;
    }

    CombRiver yaml(String from, String to) {
        if (!yaml.contains(from)) {
            throw new IllegalArgumentException(from);
        }
        yaml = yaml.replace(from, to);
        return this;
    }

    CombRiver more(String section) {
        yaml += section;
        return this;
    }

    /** The first creek runs dry. */
    CombRiver firstCreekDry() {
        firstCreek = 0;
        return this;
    }

    Outcome run() {
        try {
            Files.createDirectories(folder);
            Files.writeString(folder.resolve("scenario.yaml"), withoutEmptyTables());
            Files.writeString(folder.resolve("r.geojson"), layer());
            write("sites.csv", "name,group,longitude,latitude,path,release,exchangeable_share,outfall", sites);
            write("places.csv", "name,use,people,longitude,latitude", places);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return MainRun.run(folder, step -> {});
    }

    private String withoutEmptyTables() {
        String text = sites.isEmpty() ? yaml.replace("sites: {file: sites.csv}\n", "") : yaml;
        return places.isEmpty() ? text.replace("places: {file: places.csv}\n", "") : text;
    }

    private void write(String file, String header, List<String> rows) throws IOException {
        Files.writeString(folder.resolve(file), header + "\n" + String.join("\n", rows) + "\n");
    }

    private String layer() {
        List<String> features = new ArrayList<>();
        double q = 0.5;
        for (int k = 0; k < creeks; k++) {
            double creek = k == 0 ? firstCreek : 1;
            double x = -20 - STEP * k;
            features.add(line("c" + k, creek, x, -30 + STEP, x, -30));
            q += creek;
            features.add(line("m" + k, q, x, -30, x - STEP, -30));
        }
        return "{\"type\":\"FeatureCollection\",\"features\":[" + String.join(",", features) + "]}";
    }

    private static String line(String id, double q, double x0, double y0, double x1, double y1) {
        return String.format(
                Locale.ROOT,
                "{\"type\":\"Feature\",\"properties\":{\"rid\":\"%s\",\"q\":%.3f,\"slope\":0.001},\"geometry\":"
                        + "{\"type\":\"LineString\",\"coordinates\":[[%.6f,%.6f],[%.6f,%.6f],[%.6f,%.6f]]}}",
                id,
                q,
                x0,
                y0,
                (x0 + x1) / 2 + 0.0007,
                (y0 + y1) / 2 + 0.0007,
                x1,
                y1);
    }
}
