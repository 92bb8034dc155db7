// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.silverwake.cli.demo.Plane.Spot;
import org.silverwake.geo.write.Column;
import org.silverwake.geo.write.GeoPackageWriter;
import org.silverwake.geo.write.GridWriter;
import org.silverwake.geo.write.Layer;
import org.silverwake.geo.write.Row;

/**
 * Writes the data of scenarios/lantern: rivers.gpkg, dem.tif, sites.csv, places.csv, abstractions.csv, lab.csv. The same
 * every time. To write them anew, run the
 * test with {@code -Dsilverwake.rewrite=true}.
 */
final class LanternGenerator {
    private static final LocalDate DATE = LocalDate.of(2026, 11, 25);

    private LanternGenerator() {}

    static void write(Path folder) {
        List<Reach> reaches = LanternNetwork.reaches();
        List<Row> rows = new ArrayList<>();
        for (Reach reach : reaches) {
            rows.add(Row.line(
                    degrees(reach.line()),
                    List.of(reach.id(), reach.river(), StrictMath.rint(10 * reach.area()) / 10, reach.kind())));
        }
        Layer rivers = new Layer(
                "rivers",
                "Lantern River",
                Layer.Shape.LINESTRING,
                List.of(Column.text("reach_id"), Column.text("river"), Column.real("area_km2"), Column.text("kind")),
                rows,
                List.of());
        GeoPackageWriter.write(folder.resolve("rivers.gpkg"), List.of(rivers), DATE);
        GridWriter.write(folder.resolve("dem.tif"), LanternDem.of(reaches));
        LanternTables tables = new LanternTables(reaches);
        text(folder.resolve("sites.csv"), tables.sites());
        text(folder.resolve("places.csv"), tables.places());
        text(folder.resolve("abstractions.csv"), tables.abstractions());
        text(folder.resolve("lab.csv"), tables.samples());
    }

    private static double[] degrees(List<Spot> line) {
        double[] lonLat = new double[2 * line.size()];
        for (int k = 0; k < line.size(); k++) {
            lonLat[2 * k] = line.get(k).longitude();
            lonLat[2 * k + 1] = line.get(k).latitude();
        }
        return lonLat;
    }

    private static void text(Path file, String text) {
        try {
            Files.write(file, text.getBytes(StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
