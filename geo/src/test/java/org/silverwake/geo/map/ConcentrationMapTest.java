// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.map;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.silverwake.geo.assembly.RiverMap;

class ConcentrationMapTest {
    @Test
    void draws() throws Exception {
        RiverMap map = InventedRivers.tree(4, 6);
        Path folder = Files.createDirectories(Path.of("target/pictures"));
        for (int k = 0; k < 3; k++) {
            long start = System.nanoTime();
            int dropped = ConcentrationMap.draw(map, Sheets.full(map, 5, Paper.A4), folder.resolve("tree.png"));
            System.err.println(map.reachCount() + " reaches, dropped " + dropped + ", ms "
                    + (System.nanoTime() - start) / 1000000);
        }
        assertThat(Files.size(folder.resolve("tree.png"))).isPositive();
    }
}
