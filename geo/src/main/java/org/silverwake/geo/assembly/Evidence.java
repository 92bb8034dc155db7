// Copyright 2026 The Silverwake authors
// SPDX-License-Identifier: Apache-2.0

package org.silverwake.geo.assembly;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.locationtech.jts.geom.Coordinate;

/**
 * What heights and drainage areas say about the direction of each line. Heights come from the mapped columns where both
 * are there, else from the elevation source; areas are compared with those of the lines that meet at either end.
 */
final class Evidence {
    private static final double SAME_AREA = 1e-6;

    private final Net net;
    private final List<AttributeReader.Values> values;
    private final double[] drop;
    private final boolean[] hasDrop;
    private final boolean[] measured;
    private final int[] areaVote;

    private Evidence(Net net, List<AttributeReader.Values> values) {
        this.net = net;
        this.values = values;
        this.drop = new double[net.size()];
        this.hasDrop = new boolean[net.size()];
        this.measured = new boolean[net.size()];
        this.areaVote = new int[net.size()];
    }

    static Evidence of(Net net, List<AttributeReader.Values> values, AssemblyOptions options) {
        Evidence evidence = new Evidence(net, values);
        evidence.attributeDrops();
        options.elevation().ifPresent(evidence::sampledDrops);
        for (int i = 0; i < net.size(); i++) {
            evidence.areaVote[i] = evidence.vote(i);
        }
        return evidence;
    }

    private void attributeDrops() {
        boolean swapped = upperIsAtDrawnEnd();
        for (int i = 0; i < net.size(); i++) {
            Line line = net.line(i);
            Map<String, Double> numbers = numbers(i);
            Double upper = numbers.get(ReachNumbers.UPPER);
            Double lower = numbers.get(ReachNumbers.LOWER);
            if (upper != null && lower != null) {
                double share = line.length() / net.partLength(line);
                drop[i] = (swapped ? lower - upper : upper - lower) * share;
                hasDrop[i] = true;
            }
        }
    }

    /** Whether the heights of neighbors fit together better when each upper height is put at the drawn end. */
    private boolean upperIsAtDrawnEnd() {
        double asDrawn = 0;
        double turned = 0;
        for (int k = 0; k < net.nodeCount(); k++) {
            asDrawn += spread(k, ReachNumbers.UPPER, ReachNumbers.LOWER);
            turned += spread(k, ReachNumbers.LOWER, ReachNumbers.UPPER);
        }
        return turned < asDrawn / 2;
    }

    private double spread(int node, String atStart, String atEnd) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i : net.at(node)) {
            Line line = net.line(i);
            Double height = numbers(i).get(line.startNode == node ? atStart : atEnd);
            if (height != null && line.length() == net.partLength(line)) {
                low = Math.min(low, height);
                high = Math.max(high, height);
            }
        }
        return high > low ? high - low : 0;
    }

    private void sampledDrops(ElevationSource source) {
        List<OptionalDouble> heights = new ArrayList<>();
        for (int k = 0; k < net.nodeCount(); k++) {
            Coordinate at = net.node(k);
            heights.add(source.elevation(at.x, at.y));
        }
        for (int i = 0; i < net.size(); i++) {
            OptionalDouble start = heights.get(net.line(i).startNode);
            OptionalDouble end = heights.get(net.line(i).endNode);
            if (!hasDrop[i] && start.isPresent() && end.isPresent()) {
                drop[i] = start.getAsDouble() - end.getAsDouble();
                hasDrop[i] = true;
                measured[i] = true;
            }
        }
    }

    private Map<String, Double> numbers(int i) {
        return values.get(net.line(i).feature).numbers();
    }

    private int vote(int i) {
        Double area = numbers(i).get("drainage-area");
        if (area == null) {
            return 0;
        }
        Line line = net.line(i);
        int start = compare(i, line.startNode, area);
        int end = compare(i, line.endNode, area);
        if ((start > 0) != (end > 0)) {
            return end > 0 ? 1 : -1;
        }
        if (start > 0 || (start < 0) == (end < 0)) {
            return 0;
        }
        return start < 0 ? 1 : -1;
    }

    /** +1 where a line with a larger area meets at the node, -1 where all are smaller, 0 where none tells. */
    private int compare(int i, int node, double area) {
        boolean smaller = false;
        for (int j : net.at(node)) {
            Double other = numbers(j).get("drainage-area");
            if (j == i || other == null) {
                continue;
            }
            if (other > area * (1 + SAME_AREA)) {
                return 1;
            }
            smaller |= other < area * (1 - SAME_AREA);
        }
        return smaller ? -1 : 0;
    }

    boolean hasDrop(int line) {
        return hasDrop[line];
    }

    /** Whether the fall comes from the elevation source, not from columns. */
    boolean isMeasured(int line) {
        return measured[line];
    }

    /** Fall from the drawn start to the drawn end [m], 0 where not known. */
    double drop(int line) {
        return drop[line];
    }

    /** +1 where areas rise along the drawn direction, -1 where against it, 0 where they cannot tell. */
    int areaVote(int line) {
        return areaVote[line];
    }
}
