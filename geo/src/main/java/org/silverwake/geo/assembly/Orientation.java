// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.List;
import org.silverwake.model.network.Cycles;

/** Which lines of a net flow against their drawn direction. */
final class Orientation {
    private final Net net;
    private final boolean[] flipped;
    private final List<List<Integer>> knots;

    private Orientation(Net net, boolean[] flipped) {
        this.net = net;
        this.flipped = flipped;
        this.knots = knots(net, flipped);
    }

    static Orientation of(Net net, List<AttributeReader.Values> values, AssemblyOptions options, DefectLog log) {
        return new Orientation(net, new boolean[net.size()]);
    }

    static List<List<Integer>> knots(Net net, boolean[] flipped) {
        int[] from = new int[net.size()];
        int[] to = new int[net.size()];
        for (int i = 0; i < net.size(); i++) {
            from[i] = flipped[i] ? net.line(i).endNode : net.line(i).startNode;
            to[i] = flipped[i] ? net.line(i).startNode : net.line(i).endNode;
        }
        return Cycles.find(from, to, net.nodeCount());
    }

    boolean isFlipped(int line) {
        return flipped[line];
    }

    /** Lines that still run in circles. */
    List<List<Integer>> knots() {
        return knots;
    }

    String knotText(String layer) {
        List<String> texts = new ArrayList<>();
        for (List<Integer> knot : knots) {
            texts.add(
                    layer + ": features " + DefectLog.names(net.featureIds(knot)) + " run in a circle near "
                            + DefectLog.place(net.line(knot.get(0)).start())
                            + "; turn the one that is drawn the wrong way, or let heights or drainage areas decide (orient-by)");
        }
        return String.join("\n", texts);
    }
}
