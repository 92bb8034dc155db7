// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.model.water;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.silverwake.model.network.RiverNetwork;

/** A river and two canals, all with width 5 m and depth 2 m in the layer but the last; Q = 12 m3/s. */
class GivenSectionsTest {
    private static final HydraulicGeometry GEOMETRY = new HydraulicGeometry(8, 0.5, 0.5, 0.4, 0.26, 0.40);

    private static Optional<Column> column(double value) {
        Column column = new Column(3);
        column.put(0, value);
        column.put(1, value);
        return Optional.of(column);
    }

    private static ChannelShape shape() {
        ReachTable reaches = new ReachTable(
                RiverNetwork.of(List.of("river", "canal", "ditch"), new int[] {0, 1, 2}, new int[] {1, 2, 3}),
                new double[] {100, 100, 100},
                new int[] {0, 1, 2},
                Map.of(),
                List.of(ReachKind.CHANNEL, ReachKind.CANAL, ReachKind.CANAL));
        return new GivenSections(
                        reaches,
                        new AttributeChannel(
                                List.of(Optional.empty()), List.of(column(2)), List.of(column(5)), GEOMETRY))
                .over(GEOMETRY);
    }

    @Test
    void aCanalHasTheSectionItWasGiven() {
        Section canal = shape().section(1, 0, 12, 9);
        assertThat(canal.width()).isEqualTo(5);
        assertThat(canal.depth()).isEqualTo(2);
        assertThat(canal.velocity()).isEqualTo(1.2);
    }

    @Test
    void aRiverAndACanalOfUnknownSectionFollowTheGeometry() {
        assertThat(shape().section(0, 0, 12, 9)).isEqualTo(GEOMETRY.section(0, 0, 12, 9));
        assertThat(shape().section(2, 0, 12, 9)).isEqualTo(GEOMETRY.section(2, 0, 12, 9));
    }
}
