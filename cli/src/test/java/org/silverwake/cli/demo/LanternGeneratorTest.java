// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.cli.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.Raster;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.silverwake.cli.demo.Plane.Spot;

/** The committed demo is what its generator makes, and has the shape the demo is meant to have. */
class LanternGeneratorTest {
    private static final Path DEMO = Path.of("..", "scenarios", "lantern");

    @TempDir
    static Path fresh;

    @BeforeAll
    static void generate() {
        LanternGenerator.write(fresh);
        if (Boolean.getBoolean("silverwake.rewrite")) {
            LanternGenerator.write(DEMO);
        }
    }

    @Test
    void tablesAreTheCommittedOnesByteForByte() throws IOException {
        for (String name : List.of("sites.csv", "places.csv", "abstractions.csv", "lab.csv")) {
            assertThat(Files.readString(DEMO.resolve(name))).isEqualTo(Files.readString(fresh.resolve(name)));
        }
    }

    @Test
    void riverLayerHoldsWhatTheCommittedOneHolds() throws SQLException {
        assertThat(rows(DEMO.resolve("rivers.gpkg"))).isEqualTo(rows(fresh.resolve("rivers.gpkg")));
    }

    @Test
    void elevationHoldsWhatTheCommittedOneHolds() throws IOException {
        Raster committed = raster(DEMO.resolve("dem.tif"));
        Raster made = raster(fresh.resolve("dem.tif"));
        assertThat(committed.getBounds()).isEqualTo(made.getBounds());
        assertThat(samples(committed)).isEqualTo(samples(made));
    }

    @Test
    void filesTogetherStayUnderOneMegabyte() throws IOException {
        try (Stream<Path> files = Files.walk(DEMO)) {
            long bytes = files.filter(Files::isRegularFile)
                    .mapToLong(file -> file.toFile().length())
                    .sum();
            assertThat(bytes).isLessThan(1_000_000);
        }
    }

    /** Sizes as the text asks: 60 to 120 reaches; the main stem's length lets wash load and settling part. */
    @Test
    void basinIsOfTheSizeMeant() {
        List<Reach> reaches = LanternNetwork.reaches();
        assertThat(reaches).hasSizeBetween(60, 120);
        assertThat(reaches.get(0).id()).isEqualTo("L001");
        assertThat(reaches.get(0).area()).isBetween(2000.0, 5000.0);
        double mainStem = reaches.stream()
                .filter(r -> r.river().equals("Lantern River"))
                .mapToDouble(Reach::length)
                .sum();
        assertThat(mainStem).isBetween(120.0, 160.0);
    }

    /** One outlet, one island: as many reaches that begin at a shared node as make one bifurcation. */
    @Test
    void networkIsATreeWithOneIsland() {
        Map<Spot, Integer> out = new HashMap<>();
        Map<Spot, Integer> in = new HashMap<>();
        for (Reach reach : LanternNetwork.reaches()) {
            out.merge(reach.line().get(0), 1, Integer::sum);
            in.merge(reach.line().get(reach.line().size() - 1), 1, Integer::sum);
        }
        assertThat(out.values().stream().filter(n -> n > 1)).containsExactly(2);
        assertThat(in.keySet().stream().filter(node -> !out.containsKey(node))).hasSize(1);
    }

    @Test
    void drainageAreaNeverFallsDownstream() {
        List<Reach> reaches = LanternNetwork.reaches();
        for (Reach above : reaches) {
            for (Reach below : reaches) {
                if (above.line()
                        .get(above.line().size() - 1)
                        .equals(below.line().get(0))) {
                    assertThat(below.area())
                            .as(above.id() + " to " + below.id())
                            .isGreaterThanOrEqualTo(above.area());
                }
            }
        }
    }

    @Test
    void riversMeetOnlyAtTheirEnds() {
        List<Reach> reaches = LanternNetwork.reaches();
        List<String> crossings = new ArrayList<>();
        for (int i = 0; i < reaches.size(); i++) {
            for (int j = i; j < reaches.size(); j++) {
                addCrossings(reaches.get(i), reaches.get(j), crossings);
            }
        }
        assertThat(crossings).isEmpty();
    }

    /** Slopes as mountain and lowland rivers have them: 0.5 to 2 % in headwaters, 0.05 to 0.2 % in the lower main stem. */
    @Test
    void slopesAreThoseOfRivers() {
        for (Reach reach : LanternNetwork.reaches()) {
            double slope = (reach.heights().get(0)
                            - reach.heights().get(reach.heights().size() - 1))
                    / (1000 * reach.length());
            if (reach.area() < 50) {
                assertThat(slope).as(reach.id()).isBetween(0.005, 0.02);
            } else if (reach.area() > 500) {
                assertThat(slope).as(reach.id()).isBetween(0.0005, 0.002);
            }
        }
    }

    private static void addCrossings(Reach one, Reach other, List<String> crossings) {
        for (int k = 1; k < one.line().size(); k++) {
            for (int m = one.equals(other) ? k + 1 : 1; m < other.line().size(); m++) {
                Spot a = one.line().get(k - 1);
                Spot b = one.line().get(k);
                Spot c = other.line().get(m - 1);
                Spot d = other.line().get(m);
                boolean shared = a.equals(c) || a.equals(d) || b.equals(c) || b.equals(d);
                if (!shared && side(a, b, c) * side(a, b, d) <= 0 && side(c, d, a) * side(c, d, b) <= 0) {
                    crossings.add(one.id() + " and " + other.id() + " at " + a);
                }
            }
        }
    }

    private static double side(Spot a, Spot b, Spot p) {
        return Math.signum((b.x() - a.x()) * (p.y() - a.y()) - (b.y() - a.y()) * (p.x() - a.x()));
    }

    private static List<String> rows(Path file) throws SQLException {
        List<String> rows = new ArrayList<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + file.toAbsolutePath());
                Statement sql = connection.createStatement();
                ResultSet set = sql.executeQuery(
                        "SELECT fid, geom, reach_id, river, area_km2, kind FROM rivers ORDER BY fid")) {
            while (set.next()) {
                rows.add(set.getInt(1) + " " + HexFormat.of().formatHex(set.getBytes(2)) + " " + set.getString(3) + " "
                        + set.getString(4) + " " + set.getDouble(5) + " " + set.getString(6));
            }
        }
        return rows;
    }

    private static Raster raster(Path file) throws IOException {
        return ImageIO.read(file.toFile()).getData();
    }

    private static float[] samples(Raster raster) {
        return raster.getSamples(0, 0, raster.getWidth(), raster.getHeight(), 0, (float[]) null);
    }
}
