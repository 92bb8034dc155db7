// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.page;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import org.silverwake.cli.command.Silverwake;

/** A scenario whose rivers a test draws: lines by id, sites by name, in degrees about a place in the open ocean. */
final class Sketched {
    /** Length of a degree along the meridian [m], about; drawings need no better. */
    static final double DEGREE = 111000;

    static final double LONGITUDE = -20;
    static final double LATITUDE = -30;

    private static final String START = """
            title: %s
            prepared-by: Silverwake tests
            date: 2026-11-25
            rivers:
              file: rivers.geojson
              id: id
              name: river
              snap-tolerance: 5 m
              orient-by: [outlet, drawn]
              outlets: [%s]
            flow-states:
              mean:
                share-of-year: 1
                temperature: 20 degC
                suspended-sediment: 20 mg/L
                lateral-filtered-mercury: 0.3 ng/L
            discharge:
              method: headwaters
              headwater-discharge: {mean: 0.05 m3/s}
              lateral-inflow: {mean: 2 L/s/km}
            channel: {method: hydraulic-geometry, manning-n: 0.035}
            solids:
              classes:
                silt: {diameter: 20 um, tau-cd: 0.3 Pa, background-share: 1, tailings-share: 1}
            background: {solids-mercury-content: 0.025 mg/kg}
            """;

    private final StringBuilder features = new StringBuilder();
    private final StringBuilder sites = new StringBuilder("name,longitude,latitude,path,release,exchangeable_share\n");

    /** A line through points in meters east and north, two numbers each. */
    Sketched line(String id, String river, double... metersEastNorth) {
        features.append(features.isEmpty() ? "" : ",\n")
                .append("{\"type\":\"Feature\",\"properties\":{\"id\":\"")
                .append(id.replace("\"", "\\\""))
                .append("\",\"river\":\"")
                .append(river.replace("\"", "\\\""))
                .append("\"},\"geometry\":{\"type\":\"LineString\",\"coordinates\":[");
        for (int k = 0; k < metersEastNorth.length; k += 2) {
            features.append(k == 0 ? "" : ",")
                    .append(String.format(
                            Locale.ROOT, "[%.7f,%.7f]", east(metersEastNorth[k]), north(metersEastNorth[k + 1])));
        }
        features.append("]}}");
        return this;
    }

    static double east(double meters) {
        return LONGITUDE + meters / (DEGREE * Math.cos(Math.toRadians(LATITUDE)));
    }

    static double north(double meters) {
        return LATITUDE + meters / DEGREE;
    }

    /** A site at meters east and north. */
    Sketched site(String name, double east, double north) {
        sites.append(String.format(
                Locale.ROOT,
                "\"%s\",%.7f,%.7f,seepage,0.1 kg/yr,0.9%n",
                name.replace("\"", "\"\""),
                east(east),
                north(north)));
        return this;
    }

    /** Writes the scenario and checks it; what the check wrote is in the folder {@code out} beside it. */
    Checked check(Path folder, String title, String outlet) {
        Path scenario = folder.resolve("scenario");
        try {
            Files.createDirectories(scenario);
            Files.writeString(
                    scenario.resolve("rivers.geojson"),
                    "{\"type\":\"FeatureCollection\",\"features\":[\n" + features + "\n]}\n");
            Files.writeString(scenario.resolve("sites.csv"), sites);
            Files.writeString(
                    scenario.resolve("scenario.yaml"), START.formatted(title, outlet) + "sites: {file: sites.csv}\n");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return Checked.of(scenario, folder.resolve("out"));
    }

    /**
     * What a check said and wrote.
     *
     * @param code exit code
     * @param said standard output and error
     * @param page check.html
     */
    record Checked(int code, String said, Path page) {
        static Checked of(Path scenario, Path out) {
            StringWriter said = new StringWriter();
            PrintWriter writer = new PrintWriter(said);
            int code = Silverwake.commandLine()
                    .setOut(writer)
                    .setErr(writer)
                    .execute("check", scenario.toString(), "--out", out.toString());
            return new Checked(code, said.toString(), out.resolve("check.html"));
        }
    }
}
